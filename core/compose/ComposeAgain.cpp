#include "core/compose/ComposeAgain.h"

#include "core/compose/ComposeCheck.h"
#include "core/evaluate/Evaluation.h"

#include <algorithm>
#include <unordered_set>

namespace matwright {
namespace {

constexpr Seconds kNone{0.001}; // of a section without steps: 0 would mean that it may take what it likes

bool hasLengths(const ClassWishes& wishes) { return wishes.sections.front().length > Seconds{}; }

// What each section takes, and what is left of the length for the one that is composed anew.
void takeLengths(ClassWishes& wishes, const Schedule& schedule, std::size_t section) {
  Seconds left = wishes.length;
  for (std::size_t i = 0; i < wishes.sections.size(); ++i) {
    if (i == section)
      continue;
    const Seconds end = i + 1 < schedule.sectionBegin.size() ? schedule.sectionBegin[i + 1] : schedule.length;
    wishes.sections[i].length = std::max(kNone, end - schedule.sectionBegin[i]);
    left = left - wishes.sections[i].length;
  }
  wishes.sections[section].length = std::max(kNone, left);
}

bool choosesElsewhere(const ComposeResult& result, std::size_t section) {
  return std::any_of(result.chosen.begin(), result.chosen.end(),
                     [&](StepId step) { return placeOf(result.plan, step)->section != section; });
}

} // namespace

ClassPlan keptWith(const Catalogue& catalogue, const ClassPlan& plan, std::span<const StepId> steps) {
  std::unordered_set<StepId> kept;
  std::vector<const Step*> open;
  const auto keep = [&](const Step& step) {
    if (kept.insert(step.id).second)
      open.push_back(&step);
  };
  for (StepId id : steps)
    if (const Step* step = findStep(plan, id))
      keep(*step);
  while (!open.empty()) {
    const Movement* movement = catalogue.find(open.back()->movement);
    open.pop_back();
    if (!movement)
      continue;
    forEachStep(plan, [&](const Step& step) {
      const auto& needed = movement->prerequisites;
      if (std::find(needed.begin(), needed.end(), step.movement) != needed.end())
        keep(step);
    });
  }
  ClassPlan result = plan;
  for (Section& section : result.sections)
    std::erase_if(section.steps, [&](const Step& step) { return !kept.contains(step.id); });
  return result;
}

std::vector<MovementId> movementsBeyond(const ClassPlan& plan, const ClassPlan& kept) {
  std::vector<MovementId> movements;
  forEachStep(plan, [&](const Step& step) {
    if (!findStep(kept, step.id) && std::find(movements.begin(), movements.end(), step.movement) == movements.end())
      movements.push_back(step.movement);
  });
  return movements;
}

Result<ComposeResult, WishesFault> sectionComposedAgain(const Knowledge& knowledge, const ClassWishes& wishes,
                                                        std::span<const Person> roster, Date day, const ClassPlan& base,
                                                        const ClassPlan& plan, std::size_t section,
                                                        const ComposeLimits& limits,
                                                        std::span<const MovementId> unlike) {
  std::vector<StepId> staying;
  for (std::size_t i = 0; i < plan.sections.size(); ++i)
    for (const Step& step : plan.sections[i].steps)
      if (i != section || findStep(base, step.id))
        staying.push_back(step.id);
  const ClassPlan kept = keptWith(knowledge.catalogue, plan, staying);
  ClassWishes narrowed = wishes;
  if (wishes.sections.size() > 1 && wishes.sections.size() == plan.sections.size() && !hasLengths(wishes))
    takeLengths(narrowed, evaluate(knowledge, plan, roster, day).schedule, section);
  std::optional<ComposeResult> last;
  for (int tries = 0; tries < kSectionTries; ++tries, ++narrowed.seed) {
    auto result = composed(knowledge, narrowed, roster, day, kept, limits, unlike);
    if (!result)
      return failure(result.error());
    if (result->status != ComposeStatus::composed)
      return result;
    if (!choosesElsewhere(*result, section) && breachesOf(knowledge, wishes, roster, day, base, result->plan).empty()) {
      result->chosen.clear();
      forEachStep(result->plan, [&](const Step& step) {
        if (!findStep(base, step.id))
          result->chosen.push_back(step.id);
      });
      return result;
    }
    last = *std::move(result);
    if (last->stopped)
      break;
  }
  ComposeResult none;
  none.status = last->stopped ? ComposeStatus::cancelled : ComposeStatus::notFound;
  none.plan = plan;
  none.stopped = last->stopped;
  none.evaluations = last->evaluations;
  return none;
}

} // namespace matwright
