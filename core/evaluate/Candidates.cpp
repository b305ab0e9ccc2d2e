#include "core/evaluate/Evaluation.h"
#include "core/evaluate/Outcome.h"

#include <algorithm>
#include <tuple>

namespace matwright {
namespace {

Candidate candidateOf(const Movement& movement, const Outcome& without, const Outcome& with, const Chosen& chosen) {
  Candidate candidate;
  candidate.movement = &movement;
  candidate.added = with.schedule.length - without.schedule.length;
  candidate.addedMoving = with.schedule.moving - without.schedule.moving;
  candidate.addedChanges = with.schedule.changes - without.schedule.changes;
  std::vector<Caution> added = newCautions(without, with);
  std::erase_if(added, [&](const Caution& caution) { return !chosen.concernedBy(caution); });
  candidate.addedCautions = countLevels(added);
  candidate.strongest = strongestOf(candidate.addedCautions);
  return candidate;
}

// Nothing is weaker than `watch`: an empty optional compares less than any level.
bool fitsBetter(const Candidate& a, const Candidate& b) {
  return std::tie(a.strongest, a.addedChanges, a.addedMoving) < std::tie(b.strongest, b.addedChanges, b.addedMoving);
}

} // namespace

std::vector<Candidate> candidatesFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                     Date day, Place place, std::span<const PersonId> seen) {
  if (place.section >= plan.sections.size() || place.index > plan.sections[place.section].steps.size())
    return {};
  const Group group(knowledge, plan.people, roster, day);
  const Chosen chosen(group.ids(), seen);
  const Outcome without = outcomeOf(knowledge, group, plan);
  ClassPlan with = plan;
  auto& steps = with.sections[place.section].steps;
  steps.insert(steps.begin() + static_cast<std::ptrdiff_t>(place.index), Step{});
  Step& tried = steps[place.index];
  const StepId id{highestStepId(plan).value + 1};
  std::vector<Candidate> candidates;
  candidates.reserve(knowledge.catalogue.movements().size());
  for (const Movement& movement : knowledge.catalogue.movements()) {
    tried = stepOf(id, movement);
    candidates.push_back(candidateOf(movement, without, outcomeOf(knowledge, group, with), chosen));
  }
  std::stable_sort(candidates.begin(), candidates.end(), fitsBetter);
  return candidates;
}

} // namespace matwright
