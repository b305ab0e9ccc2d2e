#include "core/compose/OfferedTimes.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace matwright {
namespace {

constexpr double kRegionsFocus = 0.4, kSpineFocus = 0.3, kSkillsFocus = 0.15; // of the length
constexpr double kRound = 0.03;
constexpr Region kLarge[] = {Region::shoulders, Region::upperBack,  Region::abdominals, Region::waist,
                             Region::hips,      Region::frontThigh, Region::backThigh};
constexpr SpineAction kMoved[] = {SpineAction::flexion, SpineAction::extension, SpineAction::sideBend,
                                  SpineAction::rotation};
constexpr std::int64_t kSlack = 100; // milliseconds: times are rounded before they are summed up

std::int64_t milliseconds(Seconds seconds) { return std::llround(seconds.value() * 1000); }

// As Balance shares time out: the whole to the main one, half to each further one.
template <class Name> double partOf(const std::vector<Name>& names, Name name) {
  const auto at = std::find(names.begin(), names.end(), name);
  return at == names.end() ? 0 : at == names.begin() ? 1 : 0.5;
}

class Times {
public:
  Times(const Schedule& schedule, std::span<const StepFacts> facts, FillProblem& problem)
      : schedule_(schedule), facts_(facts), problem_(problem), isThere_(problem.items.size(), 0) {
    for (int item : problem.offered)
      isThere_[item] = 1;
    for (const std::vector<int>& section : problem.kept)
      for (int item : section)
        isThere_[item] = 1;
  }

  void wish(ComposePart part, std::int64_t wished, Region region) {
    add(part, wished, [&](std::size_t item) { return partOf(schedule_.steps[item].movement->regions, region); });
  }
  void wish(ComposePart part, std::int64_t wished, SpineAction action) {
    add(part, wished, [&](std::size_t item) { return partOf(schedule_.steps[item].movement->spine, action); });
  }
  void wish(ComposePart part, std::int64_t wished, Feature skill) {
    add(part, wished, [&](std::size_t item) { return facts_[item].features.contains(skill) ? 1.0 : 0.0; });
  }

private:
  template <class Part> void add(ComposePart part, std::int64_t wished, Part partOfWork) {
    const int need = static_cast<int>(problem_.needs.size());
    bool anything = part == ComposePart::focus; // a focus that nothing works is told as short
    for (std::size_t item = 0; item < problem_.items.size(); ++item) {
      const TimedStep& timed = schedule_.steps[item];
      const double given = isThere_[item] && timed.movement ? partOfWork(item) : 0;
      if (given <= 0)
        continue;
      problem_.items[item].gives.push_back({need, std::llround(given * timed.work.whole.value() * 1000)});
      anything = true;
    }
    problem_.needs.push_back({anything ? wished : 0, part});
  }

  const Schedule& schedule_;
  std::span<const StepFacts> facts_;
  FillProblem& problem_;
  std::vector<char> isThere_; // by item: offered or kept
};

} // namespace

void relateFamilies(const ClassWishes& wishes, Offer& offer) {
  FillProblem& problem = offer.problem;
  const std::size_t families = offer.movements.size();
  problem.families = static_cast<int>(families);
  problem.needed.resize(families);
  problem.known.resize(families);
  problem.counterOf.resize(families);
  const auto familyOf = [&](const MovementId& id) {
    const auto at = offer.family.find(id);
    return at == offer.family.end() ? -1 : at->second;
  };
  for (std::size_t family = 0; family < families; ++family) {
    const Movement* movement = offer.movements[family];
    if (!movement)
      continue;
    for (const MovementId& id : movement->prerequisites)
      if (const int needed = familyOf(id); needed >= 0)
        problem.needed[family].push_back(needed);
    if (spineTurnOf(*movement) == SpineTurn::flexion)
      for (const MovementId& id : movement->counters)
        if (const int counter = familyOf(id); counter >= 0)
          problem.counterOf[counter].push_back(static_cast<int>(family));
  }
  const auto know = [&](const MovementId& id) {
    if (const int family = familyOf(id); family >= 0)
      problem.known[family] = 1;
  };
  std::for_each(wishes.known.begin(), wishes.known.end(), know);
  if (wishes.recentIsKnown)
    for (const RecentClass& recent : wishes.recent)
      std::for_each(recent.movements.begin(), recent.movements.end(), know);
  for (const MovementId& id : wishes.include)
    if (const int family = familyOf(id);
        family >= 0 && std::find(problem.included.begin(), problem.included.end(), family) == problem.included.end())
      problem.included.push_back(family);
}

void boundTimes(const ClassWishes& wishes, FillProblem& problem) {
  const auto around = [](Seconds length, Seconds tolerance) {
    const std::int64_t room = milliseconds(tolerance) - kSlack;
    return std::pair(milliseconds(length) - room, milliseconds(length) + room);
  };
  std::tie(problem.least, problem.most) = around(wishes.length, kLengthTolerance);
  for (const WishedSection& section : wishes.sections) {
    FillSection& bounds = problem.sections.emplace_back();
    if (section.length > Seconds{})
      std::tie(bounds.least, bounds.most) = around(section.length, kSectionTolerance);
  }
  const auto seconds = static_cast<int>(std::ceil(wishes.length.value()));
  const double hardest = hardestOf(wishes.challenge).value();
  for (int second = 0; second <= seconds; ++second)
    problem.wishedEffort.push_back(
        std::llround(100 * std::min(hardest, wishedEffort(Seconds(second), wishes.length, wishes.arc))));
}

void wishForTime(const ClassWishes& wishes, const Schedule& schedule, std::span<const StepFacts> facts,
                 FillProblem& problem) {
  Times times(schedule, facts, problem);
  const double length = static_cast<double>(milliseconds(wishes.length));
  const auto share = [&](double part, int among) { return std::llround(length * part / among); };
  const ClassFocus& focus = wishes.focus;
  focus.regions.forEach(
      [&](Region region) { times.wish(ComposePart::focus, share(kRegionsFocus, focus.regions.size()), region); });
  focus.spine.forEach(
      [&](SpineAction action) { times.wish(ComposePart::focus, share(kSpineFocus, focus.spine.size()), action); });
  focus.skills.forEach(
      [&](Feature skill) { times.wish(ComposePart::focus, share(kSkillsFocus, focus.skills.size()), skill); });
  for (Region region : kLarge)
    times.wish(ComposePart::roundness, share(kRound, 1), region);
  for (SpineAction action : kMoved)
    times.wish(ComposePart::roundness, share(kRound, 1), action);
}

} // namespace matwright
