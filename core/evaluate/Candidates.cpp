#include "core/evaluate/Evaluation.h"
#include "core/evaluate/Facts.h"
#include "core/evaluate/Group.h"

#include <algorithm>
#include <tuple>

namespace matwright {
namespace {

// What of a class a candidate is compared by.
struct Outcome {
  Seconds length, moving;
  int changes = 0;
  std::vector<Caution> cautions; // in an order by which two outcomes can be told apart
};

bool runs(const Caution& caution) {
  return caution.rule && (caution.rule->scope == Scope::total || caution.rule->scope == Scope::stretch);
}

// Where a caution belongs. A running sum has no place of its own: it may pass its threshold earlier without being new.
auto identity(const Caution& caution) {
  const std::int64_t step = runs(caution) || !caution.step ? 0 : caution.step->value;
  return std::tuple(caution.kind, step, caution.rule, caution.person + 1, caution.level);
}
bool before(const Caution& a, const Caution& b) { return identity(a) < identity(b); }

Outcome outcomeOf(const Knowledge& knowledge, const Group& group, const ClassPlan& plan) {
  const Schedule schedule = scheduleOf(knowledge.catalogue, knowledge.transitions, group.ways(), plan);
  Outcome outcome{schedule.length, schedule.moving, schedule.changes,
                  group.cautionsOn(plan, schedule, factsOf(knowledge.transitions, schedule))};
  std::sort(outcome.cautions.begin(), outcome.cautions.end(), before);
  return outcome;
}

Candidate candidateOf(const Movement& movement, const Outcome& without, const Outcome& with) {
  Candidate candidate;
  candidate.movement = &movement;
  candidate.added = with.length - without.length;
  candidate.addedMoving = with.moving - without.moving;
  candidate.addedChanges = with.changes - without.changes;
  std::vector<Caution> added;
  std::set_difference(with.cautions.begin(), with.cautions.end(), without.cautions.begin(), without.cautions.end(),
                      std::back_inserter(added), before);
  for (const Caution& caution : added) {
    ++candidate.addedCautions[static_cast<std::size_t>(caution.level)];
    candidate.strongest = std::max(candidate.strongest, std::optional(caution.level));
  }
  return candidate;
}

// Nothing is weaker than `watch`: an empty optional compares less than any level.
bool fitsBetter(const Candidate& a, const Candidate& b) {
  return std::tie(a.strongest, a.addedChanges, a.addedMoving) < std::tie(b.strongest, b.addedChanges, b.addedMoving);
}

} // namespace

std::vector<Candidate> candidatesFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                     Date day, Place place) {
  if (place.section >= plan.sections.size() || place.index > plan.sections[place.section].steps.size())
    return {};
  const Group group(knowledge, plan.people, roster, day);
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
    candidates.push_back(candidateOf(movement, without, outcomeOf(knowledge, group, with)));
  }
  std::stable_sort(candidates.begin(), candidates.end(), fitsBetter);
  return candidates;
}

} // namespace matwright
