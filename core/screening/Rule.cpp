#include "core/screening/Rule.h"

#include <algorithm>

namespace matwright {

bool namesNothing(const Demand& demand) {
  return demand.any.empty() && demand.all.empty() && demand.at.empty() && demand.effortFrom == 0;
}

std::optional<FeatureSet> met(const Demand& demand, const Asked& asked) {
  const FeatureSet some = asked.features & demand.any;
  if (namesNothing(demand) || !asked.features.containsAll(demand.all) || (some.empty() && !demand.any.empty()) ||
      (!demand.at.empty() && !asked.at.intersects(demand.at)) || asked.effort.value() < demand.effortFrom)
    return std::nullopt;
  return some | demand.all;
}

const Condition* RuleBook::findCondition(const ConditionId& id) const {
  const auto at = std::find_if(conditions.begin(), conditions.end(),
                               [&](const Condition& condition) { return condition.id == id; });
  return at == conditions.end() ? nullptr : &*at;
}

const Source* RuleBook::findSource(const SourceId& id) const {
  const auto at = std::find_if(sources.begin(), sources.end(), [&](const Source& source) { return source.id == id; });
  return at == sources.end() ? nullptr : &*at;
}

} // namespace matwright
