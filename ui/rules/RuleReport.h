// What a rule concerns here and now: the catalogue, the people on file, the class that is open.
#pragma once

#include "ui/document/PlanDocument.h"
#include "ui/rules/RuleRows.h"

#include <QStringList>

namespace matwright {

// Movements as the screening sees them, each alone and as written.
class ConcernedMovements {
public:
  // Those that meet what a rule asks, by name; nothing for a rule that looks at ways or at the class as a whole.
  // Computed anew when the knowledge is another one.
  std::optional<QStringList> of(const Rule& rule, std::shared_ptr<const Knowledge> knowledge);

private:
  std::shared_ptr<const Knowledge> knowledge_;
  std::vector<StepFacts> facts_; // one a movement, in the order of the catalogue
};

// The people on file for whom the rule holds on the day of the class, by name; for a rule for everybody nobody.
QStringList peopleConcerned(const Rule& rule, const PlanDocument& document);
// The people who have a condition on file, by name.
QStringList peopleWith(const ConditionId& condition, const PlanDocument& document);

// Where the rule speaks in the class that is open: one line a step, or for the class as a whole, with whom it is about.
QStringList spokenIn(const Rule& rule, const PlanDocument& document);

} // namespace matwright
