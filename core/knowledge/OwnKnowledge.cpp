#include "core/knowledge/OwnKnowledge.h"

#include "core/base/Text.h"

#include <algorithm>

namespace matwright {
namespace {

constexpr std::size_t kLongestStem = 100; // bytes: leaves room for prefix and number

std::string stemFrom(std::string_view name, const char* otherwise) {
  std::string stem = idTextFrom(name);
  if (stem.size() > kLongestStem)
    stem.resize(kLongestStem);
  while (stem.ends_with('-'))
    stem.pop_back();
  return stem.empty() ? otherwise : stem;
}

// A name may say "own" by itself: "Own way" is own-way, not own-own-way.
template <class AnyId, class Value>
AnyId mint(const std::vector<Value>& all, std::string_view name, const char* otherwise) {
  const std::string stem = stemFrom(name, otherwise);
  const std::string own = stem.starts_with(kOwnPrefix) ? stem : std::string(kOwnPrefix) + stem;
  return {untakenId(own, [&](const std::string& id) {
    return std::any_of(all.begin(), all.end(), [&](const Value& value) { return value.id.value == id; });
  })};
}

template <class Value> void append(std::vector<Value>& to, const std::vector<Value>& more) {
  to.insert(to.end(), more.begin(), more.end());
}

template <class AnyId> bool holds(const std::vector<AnyId>& ids, const AnyId& id) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

template <class Value, class AnyId> void eraseId(std::vector<Value>& values, const AnyId& id) {
  std::erase_if(values, [&](const Value& value) { return value.id == id; });
}

} // namespace

bool thresholdIsOpen(const Rule& rule) { return rule.threshold && rule.threshold->origin == ThresholdOrigin::ours; }

Knowledge layered(const Knowledge& builtIn, const OwnKnowledge& own) {
  std::vector<Movement> movements = builtIn.catalogue.movements();
  append(movements, own.movements);
  Knowledge all = builtIn;
  all.catalogue = Catalogue(std::move(movements));
  for (Rule& rule : all.rules.rules)
    if (const auto set = own.thresholds.find(rule.id); set != own.thresholds.end() && thresholdIsOpen(rule))
      rule.threshold->amount = set->second;
  append(all.rules.conditions, own.conditions);
  append(all.rules.sources, own.sources);
  append(all.rules.rules, own.rules);
  return all;
}

Uses usesOf(const OwnKnowledge& own, const MovementId& movement) {
  Uses uses;
  for (const Movement& each : own.movements)
    if (holds(each.prerequisites, movement) || holds(each.counters, movement))
      uses.movements.push_back(each.id);
  return uses;
}

Uses usesOf(const OwnKnowledge& own, const ConditionId& condition) {
  Uses uses;
  for (const Rule& rule : own.rules)
    if (rule.condition == condition)
      uses.rules.push_back(rule.id);
  return uses;
}

Uses usesOf(const OwnKnowledge& own, const SourceId& source) {
  Uses uses;
  for (const Rule& rule : own.rules)
    if (holds(rule.sources, source))
      uses.rules.push_back(rule.id);
  return uses;
}

OwnKnowledge without(OwnKnowledge own, const MovementId& movement) {
  eraseId(own.movements, movement);
  for (Movement& each : own.movements) {
    std::erase(each.prerequisites, movement);
    std::erase(each.counters, movement);
  }
  return own;
}

OwnKnowledge without(OwnKnowledge own, const ConditionId& condition) {
  eraseId(own.conditions, condition);
  std::erase_if(own.rules, [&](const Rule& rule) { return rule.condition == condition; });
  return own;
}

OwnKnowledge without(OwnKnowledge own, const SourceId& source) {
  eraseId(own.sources, source);
  for (Rule& rule : own.rules)
    if (std::erase(rule.sources, source) > 0 && rule.sources.empty())
      rule.strength = Strength::practice;
  return own;
}

OwnKnowledge without(OwnKnowledge own, const RuleId& rule) {
  eraseId(own.rules, rule);
  return own;
}

MovementId mintMovementId(const Knowledge& all, std::string_view name) {
  return mint<MovementId>(all.catalogue.movements(), name, "movement");
}

ConditionId mintConditionId(const Knowledge& all, std::string_view name) {
  return mint<ConditionId>(all.rules.conditions, name, "condition");
}

SourceId mintSourceId(const Knowledge& all, std::string_view name) {
  return mint<SourceId>(all.rules.sources, name, "source");
}

RuleId mintRuleId(const Knowledge& all, std::string_view name) { return mint<RuleId>(all.rules.rules, name, "rule"); }

OptionId mintOptionId(const Movement& movement, std::string_view name) {
  return {untakenId(stemFrom(name, "option"),
                    [&](const std::string& id) { return findOption(movement, {id}) != nullptr; })};
}

OwnKnowledge copyWithRules(const Knowledge& all, const ConditionId& condition, std::string name) {
  OwnKnowledge copy;
  const Condition* original = all.rules.findCondition(condition);
  if (!original)
    return copy;
  copy.conditions = {*original};
  copy.conditions[0].id = mintConditionId(all, original->id.value);
  copy.conditions[0].name = std::move(name);
  Knowledge grown = all; // ids must differ among themselves too
  for (const Rule& rule : all.rules.rules) {
    if (rule.condition != condition)
      continue;
    Rule& own = copy.rules.emplace_back(rule);
    own.id = mintRuleId(grown, rule.id.value);
    own.condition = copy.conditions[0].id;
    if (own.threshold)
      own.threshold->usual = own.threshold->amount;
    grown.rules.rules.push_back(own);
  }
  return copy;
}

} // namespace matwright
