#include "core/screening/Rule.h"

namespace matwright {

bool namesNothing(const Demand& demand) {
  return demand.any.empty() && demand.all.empty() && demand.at.empty() && demand.effortFrom == 0 &&
         demand.leverFrom == 0;
}

std::optional<FeatureSet> met(const Demand& demand, const Asked& asked) {
  const FeatureSet some = asked.features & demand.any;
  if (namesNothing(demand) || !asked.features.containsAll(demand.all) || (some.empty() && !demand.any.empty()) ||
      (!demand.at.empty() && !asked.at.intersects(demand.at)) || asked.effort.value() < demand.effortFrom ||
      asked.lever < demand.leverFrom)
    return std::nullopt;
  return some | demand.all;
}

const Condition* RuleBook::findCondition(const ConditionId& id) const { return findById(conditions, id); }
const Source* RuleBook::findSource(const SourceId& id) const { return findById(sources, id); }
const Rule* RuleBook::findRule(const RuleId& id) const { return findById(rules, id); }

std::vector<const Demand*> leverDemands(const RuleBook& book) {
  std::vector<const Demand*> demands;
  const auto take = [&demands](const Demand& demand) {
    if (demand.leverFrom > 0)
      demands.push_back(&demand);
  };
  for (const Rule& rule : book.rules) {
    take(rule.asks);
    if (rule.after)
      take(rule.after->demand);
  }
  return demands;
}

} // namespace matwright
