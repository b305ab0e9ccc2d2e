#include "core/tidy/TidyItems.h"

#include "core/evaluate/Facts.h"
#include "core/tidy/OrderWishes.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace matwright {
namespace {

// Every step of the class, in runs that stay together.
std::vector<TidyItem> runsOf(const ClassPlan& plan, const Schedule& schedule, const TidyRequest& request) {
  const std::unordered_set<StepId> chosen(request.steps.begin(), request.steps.end());
  const std::unordered_set<StepId> pinned(request.pinned.begin(), request.pinned.end());
  std::vector<TidyItem> runs;
  const Step* before = nullptr;
  std::size_t at = 0;
  forEachStep(plan, [&](const Step& step) {
    const TimedStep& timed = schedule.steps[at];
    const bool sameSection = !runs.empty() && runs.back().section == timed.section;
    const bool isSeries = sameSection && before->movement == step.movement;
    const bool goesAlong = before && !timed.movement;
    if (!isSeries && !goesAlong)
      runs.push_back({at, at, timed.section, !timed.movement});
    TidyItem& run = runs.back();
    run.fixed |= run.section != timed.section || pinned.contains(step.id) ||
                 (request.section && *request.section != timed.section) ||
                 (!chosen.empty() && !chosen.contains(step.id));
    run.section = timed.section;
    run.end = ++at;
    before = &step;
  });
  return runs;
}

void cut(std::vector<TidyItem>& runs, TidyItems& items) {
  const auto moves = [](const TidyItem& item) { return !item.fixed; };
  items.movable = static_cast<int>(std::count_if(runs.begin(), runs.end(), moves));
  if (items.movable == 0)
    return;
  const auto first = std::find_if(runs.begin(), runs.end(), moves);
  auto end = std::find_if(runs.rbegin(), runs.rend(), moves).base();
  items.closed = end != runs.end();
  if (items.closed)
    (end++)->fixed = true;
  items.items.assign(first, end);
}

class Pairs {
public:
  Pairs(const Schedule& schedule, TidyItems& items) : schedule_(schedule), items_(items) {
    itemOf_.assign(schedule.steps.size(), -1);
    const std::size_t ordered = items.items.size() - (items.closed ? 1 : 0);
    for (std::size_t item = 0; item < ordered; ++item)
      for (std::size_t step = items.items[item].first; step < items.items[item].end; ++step)
        itemOf_[step] = static_cast<int>(item);
  }

  void findPrerequisites() {
    std::unordered_map<MovementId, std::size_t> firstOf;
    for (std::size_t step = 0; step < schedule_.steps.size(); ++step)
      if (const Movement* movement = schedule_.steps[step].movement)
        firstOf.try_emplace(movement->id, step);
    for (std::size_t step = 0; step < schedule_.steps.size(); ++step) {
      const Movement* movement = schedule_.steps[step].movement;
      if (!movement || itemOf_[step] < 0)
        continue;
      for (const MovementId& id : movement->prerequisites)
        if (const auto needed = firstOf.find(id); needed != firstOf.end())
          note(needed->second, step, firstOf.at(movement->id));
    }
  }

  void findWarmFirst(const std::vector<StepFacts>& facts) {
    const auto endRange = [&](const TidyItem& item) {
      return std::any_of(facts.begin() + static_cast<std::ptrdiff_t>(item.first),
                         facts.begin() + static_cast<std::ptrdiff_t>(item.end),
                         [](const StepFacts& each) { return goesToEndRange(each.features); });
    };
    const std::size_t ordered = items_.items.size() - (items_.closed ? 1 : 0);
    for (std::size_t late = 0; late < ordered && items_.items[late].section == 0; ++late)
      if (endRange(items_.items[late]))
        for (std::size_t early = 0; early < late; ++early)
          if (!endRange(items_.items[early]))
            items_.warmFirst.emplace_back(early, late);
  }

private:
  // Nothing where another section settles it, or another step of the same movement.
  void note(std::size_t needed, std::size_t step, std::size_t firstOfMovement) {
    const int early = itemOf_[needed], late = itemOf_[step];
    const auto sectionOf = [&](std::size_t at) { return schedule_.steps[at].section; };
    if (early < 0 || early == late || sectionOf(needed) != sectionOf(step) ||
        sectionOf(firstOfMovement) != sectionOf(step))
      return;
    (early < late ? items_.prerequisites : items_.mended).emplace_back(early, late);
  }

  const Schedule& schedule_;
  TidyItems& items_;
  std::vector<int> itemOf_; // by step; -1: not put in order
};

} // namespace

TidyItems itemsOf(const Knowledge& knowledge, const ClassPlan& plan, const Schedule& schedule,
                  const TidyRequest& request) {
  TidyItems items;
  std::vector<TidyItem> runs = runsOf(plan, schedule, request);
  cut(runs, items);
  if (items.items.empty())
    return items;
  Pairs pairs(schedule, items);
  pairs.findPrerequisites();
  if (plan.sections.size() > 1)
    pairs.findWarmFirst(factsOf(knowledge, schedule));
  return items;
}

} // namespace matwright
