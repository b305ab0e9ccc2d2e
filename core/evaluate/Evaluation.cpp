#include "core/evaluate/Evaluation.h"

#include "core/evaluate/Facts.h"
#include "core/evaluate/Group.h"
#include "core/evaluate/Outcome.h"
#include "core/evaluate/Remarks.h"

#include <algorithm>

namespace matwright {

std::optional<Level> Evaluation::strongestAt(StepId step) const {
  std::optional<Level> strongest;
  for (const Caution& caution : cautions)
    if (caution.step == step && (!strongest || caution.level > *strongest))
      strongest = caution.level;
  return strongest;
}

const TimedStep* Evaluation::timed(StepId step) const {
  const auto at = std::find_if(schedule.steps.begin(), schedule.steps.end(),
                               [&](const TimedStep& candidate) { return candidate.id == step; });
  return at == schedule.steps.end() ? nullptr : &*at;
}

std::optional<PersonId> Evaluation::whom(const Caution& caution) const {
  return caution.person < people.size() ? std::optional{people[caution.person]} : std::nullopt;
}

Evaluation evaluate(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day) {
  const Group group(knowledge, plan.people, roster, day);
  Evaluation evaluation;
  evaluation.people = group.ids();
  evaluation.schedule = scheduleOf(knowledge.catalogue, knowledge.transitions, group.ways(), plan);
  evaluation.balance = balanceOf(knowledge.transitions, evaluation.schedule);
  evaluation.load = loadOf(*knowledge.loads, evaluation.schedule, plan);
  evaluation.facts = factsOf(knowledge, evaluation.schedule);
  evaluation.cautions = group.cautionsOn(plan, evaluation.schedule, evaluation.facts);
  evaluation.cautionCounts = countLevels(evaluation.cautions);
  evaluation.remarks = remarksOn(plan, evaluation.schedule, evaluation.balance);
  return evaluation;
}

Evaluation seenFor(Evaluation whole, std::span<const PersonId> people) {
  const Chosen chosen(whole.people, people);
  std::erase_if(whole.cautions, [&](const Caution& caution) { return !chosen.concernedBy(caution); });
  whole.cautionCounts = countLevels(whole.cautions);
  return whole;
}

} // namespace matwright
