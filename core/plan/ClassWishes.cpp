#include "core/plan/ClassWishes.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

bool isShaped(const EffortArc& arc) {
  if (arc.empty() || arc.size() > ClassWishes::kMostArcPoints)
    return false;
  double before = 0;
  for (const ArcPoint& point : arc) {
    if (!(point.at >= before && point.at <= 1 && point.effort >= 0 && point.effort <= 10))
      return false;
    before = point.at;
  }
  return true;
}

bool haveLengths(const ClassWishes& wishes) {
  Seconds sum;
  std::size_t with = 0;
  for (const WishedSection& section : wishes.sections) {
    if (!(section.length >= Seconds{}))
      return false;
    with += section.length > Seconds{} ? 1 : 0;
    sum += section.length;
  }
  return with == 0 || (with == wishes.sections.size() && std::abs((sum - wishes.length).value()) <= 1);
}

} // namespace

Effort hardestOf(Challenge challenge) {
  switch (challenge) {
  case Challenge::gentle:
    return Effort(4);
  case Challenge::middle:
    return Effort(7);
  case Challenge::strong:
    break;
  }
  return Effort(10);
}

const EffortArc& usualArc() {
  static const EffortArc arc{{0, 2}, {1.0 / 3, 6}, {0.75, 6}, {1, 1}};
  return arc;
}

double effortAt(const EffortArc& arc, double part) {
  const auto next = std::find_if(arc.begin(), arc.end(), [&](const ArcPoint& point) { return point.at > part; });
  if (next == arc.begin())
    return next->effort;
  const ArcPoint& before = *(next - 1);
  if (next == arc.end())
    return before.effort;
  return std::lerp(before.effort, next->effort, (part - before.at) / (next->at - before.at));
}

std::optional<WishesFault> faultIn(const ClassWishes& wishes) {
  if (!(wishes.length >= ClassPlan::kShortestTarget && wishes.length <= ClassPlan::kLongestTarget))
    return WishesFault::lengthOutOfRange;
  if (wishes.sections.empty() || wishes.sections.size() > ClassPlan::kMostSections)
    return WishesFault::noSection;
  if (!haveLengths(wishes))
    return WishesFault::sectionLengths;
  const auto isTooLong = [](const auto& named) { return named.name.size() > kLongestName; };
  if (isTooLong(wishes) || std::any_of(wishes.sections.begin(), wishes.sections.end(), isTooLong) ||
      std::any_of(wishes.recent.begin(), wishes.recent.end(), isTooLong))
    return WishesFault::nameTooLong;
  if (!isWellFormed(wishes.pace))
    return WishesFault::paceOutOfRange;
  if (!isShaped(wishes.arc))
    return WishesFault::arcMisshapen;
  constexpr std::size_t most = ClassWishes::kMostNamed;
  if (wishes.people.size() > ClassPlan::kMostPeople || wishes.recent.size() > ClassWishes::kMostRecent ||
      wishes.include.size() > most || wishes.leaveOut.size() > most || wishes.known.size() > most ||
      std::any_of(wishes.recent.begin(), wishes.recent.end(),
                  [](const RecentClass& each) { return each.movements.size() > ClassPlan::kMostSteps; }))
    return WishesFault::tooManyNamed;
  return std::nullopt;
}

std::vector<WishedSection> usualSections(Seconds length) {
  constexpr double parts[] = {0.1, 0.2, 0.55, 0.15};
  constexpr std::size_t longest = 2;
  std::vector<WishedSection> sections;
  Seconds left = length;
  for (const Section& section : emptyClass({}).sections) {
    const Seconds part = minutes(std::max(1.0, std::round(length.value() * parts[sections.size()] / 60)));
    sections.push_back({section.name, part});
    left = left - part;
  }
  sections[longest].length += left;
  return sections;
}

RecentClass recentClass(const ClassPlan& plan) {
  RecentClass recent{plan.name, {}};
  forEachStep(plan, [&](const Step& step) {
    if (std::find(recent.movements.begin(), recent.movements.end(), step.movement) == recent.movements.end())
      recent.movements.push_back(step.movement);
  });
  return recent;
}

ClassPlan blankClass(const ClassWishes& wishes) {
  ClassPlan plan;
  plan.name = wishes.name;
  plan.date = wishes.date;
  plan.target = wishes.length;
  plan.pace = wishes.pace;
  plan.people = wishes.people;
  for (const WishedSection& section : wishes.sections)
    plan.sections.push_back({section.name, {}});
  return plan;
}

ClassWishes wishesFor(const ClassPlan& plan) {
  ClassWishes wishes;
  wishes.name = plan.name;
  wishes.date = plan.date;
  wishes.length = plan.target;
  wishes.challenge = Challenge::strong;
  wishes.sections.clear();
  for (const Section& section : plan.sections)
    wishes.sections.push_back({section.name, {}});
  wishes.people = plan.people;
  wishes.pace = plan.pace;
  for (std::size_t i = 0; i < kWordCount<Prop>; ++i)
    wishes.props.insert(static_cast<Prop>(i));
  return wishes;
}

} // namespace matwright
