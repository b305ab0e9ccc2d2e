#include "core/evaluate/Remarks.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <unordered_map>

namespace matwright {
namespace {

constexpr Seconds kOverTolerance{15};
constexpr double kUnderPart = 0.9;
constexpr Seconds kMuchBending = minutes(3);
constexpr double kBendsToArch = 4;
constexpr Seconds kUneven{1};

Seconds apart(Seconds a, Seconds b) { return a < b ? b - a : a - b; }

void remarkOnLength(const ClassPlan& plan, const Schedule& schedule, std::vector<Remark>& remarks) {
  if (schedule.length > plan.target + kOverTolerance)
    remarks.push_back({RemarkKind::overTarget, {}, 0, {}, schedule.length, plan.target});
  else if (schedule.length < plan.target * kUnderPart)
    remarks.push_back({RemarkKind::underTarget, {}, 0, {}, schedule.length, plan.target});
}

void remarkOnSpine(const Balance& balance, std::vector<Remark>& remarks) {
  const Seconds bend = balance.spine[static_cast<std::size_t>(SpineAction::flexion)].time;
  const Seconds arch = balance.spine[static_cast<std::size_t>(SpineAction::extension)].time;
  if (bend > kMuchBending && bend > arch * kBendsToArch)
    remarks.push_back({RemarkKind::bendWithoutArch, {}, 0, {}, bend, arch});
}

// All steps of one movement of the catalogue.
struct Occurrences {
  std::size_t first = 0;  // index in the schedule
  std::size_t uneven = 0; // the step whose own sides differ most
  Seconds left, right;
};

using ByMovement = std::unordered_map<const Movement*, Occurrences>;

ByMovement occurrencesIn(std::span<const TimedStep> steps) {
  ByMovement all;
  all.reserve(steps.size());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (!steps[i].movement)
      continue;
    const auto [at, isNew] = all.try_emplace(steps[i].movement, Occurrences{i, i, {}, {}});
    Occurrences& movement = at->second;
    const Work& work = steps[i].work;
    const Work& most = steps[movement.uneven].work;
    if (!isNew && apart(work.left, work.right) > apart(most.left, most.right))
      movement.uneven = i;
    movement.left += work.left;
    movement.right += work.right;
  }
  return all;
}

} // namespace

std::vector<Remark> remarksOn(const ClassPlan& plan, const Schedule& schedule, const Balance& balance) {
  std::vector<Remark> remarks;
  remarkOnLength(plan, schedule, remarks);
  remarkOnSpine(balance, remarks);
  for (std::size_t section = 0; section < plan.sections.size(); ++section)
    if (plan.sections[section].steps.empty())
      remarks.push_back({RemarkKind::emptySection, {}, section, {}, {}, {}});

  const ByMovement movements = occurrencesIn(schedule.steps);
  std::unordered_map<MovementId, std::size_t> firstOf;
  for (const auto& [movement, occurrences] : movements)
    firstOf.emplace(movement->id, occurrences.first);
  for (std::size_t i = 0; i < schedule.steps.size(); ++i) {
    const TimedStep& step = schedule.steps[i];
    if (!step.movement)
      continue;
    const Occurrences& occurrences = movements.at(step.movement);
    if (occurrences.first == i)
      for (const MovementId& prerequisite : step.movement->prerequisites) {
        const auto at = firstOf.find(prerequisite);
        if (at != firstOf.end() && at->second > i)
          remarks.push_back({RemarkKind::beforePrerequisite, step.id, step.section, prerequisite, {}, {}});
      }
    if (occurrences.uneven == i && step.movement->sides != Sides::together &&
        apart(occurrences.left, occurrences.right) >= kUneven)
      remarks.push_back(
          {RemarkKind::sidesUneven, step.id, step.section, step.movement->id, occurrences.left, occurrences.right});
  }
  return remarks;
}

} // namespace matwright
