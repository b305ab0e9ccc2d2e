#include "core/screening/Rule.h"

#include <algorithm>

namespace matwright {

FeatureSet matched(const Rule& rule, FeatureSet asked) {
  const FeatureSet some = asked & rule.any;
  if (!asked.containsAll(rule.all) || (some.empty() && !rule.any.empty()))
    return {};
  return some | rule.all;
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
