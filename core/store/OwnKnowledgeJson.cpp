#include "core/store/OwnKnowledgeJson.h"

#include "core/base/Text.h"
#include "core/store/KnowledgeParts.h"
#include "core/store/ScreeningJson.h"

#include <iterator>

namespace matwright {
namespace {

// Ids that come with the program never begin so: what is one's own cannot stand in for it.
void askForOwnId(const std::string& id, const Origin& origin, Errors& errors) {
  if (!id.empty() && !id.starts_with(kOwnPrefix))
    noteAt(errors, origin, "/id", ErrorCode::wrongType, "id that begins with " + std::string(kOwnPrefix), id);
}

// A rule that is no more, or whose threshold is no longer open, does no harm: its amount is kept and not used.
std::map<RuleId, double> readThresholds(const std::optional<Spot>& spot) {
  std::map<RuleId, double> thresholds;
  for (const auto& [id, value] : readEntries(spot)) {
    if (!isIdText(id))
      value.note(ErrorCode::wrongType, "the id of a rule", extractOf(id));
    thresholds[{id}] = readNumber(value, 0, Threshold::kMost);
  }
  return thresholds;
}

template <class Value, class Draft> std::vector<Value> valuesOf(std::vector<Draft>& drafts, Value Draft::*value) {
  std::vector<Value> values;
  for (Draft& draft : drafts)
    values.push_back(std::move(draft.*value));
  return values;
}

// What comes with the program as drafts without a place, before those of the file.
template <class Draft, class Value>
std::vector<Draft> behind(const std::vector<Value>& builtIn, Value Draft::*value, const std::vector<Draft>& own) {
  std::vector<Draft> all(builtIn.size());
  for (std::size_t i = 0; i < builtIn.size(); ++i)
    all[i].*value = builtIn[i];
  all.insert(all.end(), own.begin(), own.end());
  return all;
}

template <class Value> Json listJson(const std::vector<Value>& values, Json (*write)(const Value&)) {
  Json list = Json::array();
  for (const Value& value : values)
    list.push_back(write(value));
  return list;
}

} // namespace

OwnKnowledge readOwnKnowledgeTree(const Json& tree, const Knowledge* builtIn, Reading& reading) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  auto movements = readMovementList(root.find("movements"));
  auto conditions = readConditionList(root.find("conditions"));
  auto sources = readSourceList(root.find("sources"));
  auto rules = readRuleList(root.find("rules"));
  OwnKnowledge own;
  own.thresholds = readThresholds(root.find("thresholds"));
  root.keepRest("");

  Errors& errors = reading.errors;
  for (const MovementDraft& draft : movements)
    askForOwnId(draft.movement.id.value, draft.origin, errors);
  for (const ConditionDraft& draft : conditions)
    askForOwnId(draft.condition.id.value, draft.origin, errors);
  for (const SourceDraft& draft : sources)
    askForOwnId(draft.source.id.value, draft.origin, errors);
  for (const RuleDraft& draft : rules)
    askForOwnId(draft.rule.id.value, draft.origin, errors);
  checkConditions(conditions, errors);
  checkSources(sources, errors);
  if (builtIn) {
    const auto positions = behind(builtIn->transitions.positions(), &PositionDraft::position, {});
    checkMovements(movements, &positions, true, errors, Written::own, &builtIn->catalogue);
    const auto allConditions = behind(builtIn->rules.conditions, &ConditionDraft::condition, conditions);
    const auto allSources = behind(builtIn->rules.sources, &SourceDraft::source, sources);
    checkRules(rules, &allConditions, &allSources, errors);
  } else {
    checkMovements(movements, nullptr, false, errors, Written::own);
    checkRules(rules, nullptr, nullptr, errors);
  }
  own.movements = valuesOf(movements, &MovementDraft::movement);
  own.conditions = valuesOf(conditions, &ConditionDraft::condition);
  own.sources = valuesOf(sources, &SourceDraft::source);
  own.rules = valuesOf(rules, &RuleDraft::rule);
  return own;
}

Result<Stored<OwnKnowledge>, std::vector<Error>> parseOwnKnowledge(std::string_view text, const std::string& file,
                                                                   const Knowledge& builtIn) {
  const auto tree = openTree(text, file, kOwnKnowledgeFormat);
  if (!tree)
    return failure(std::vector{tree.error()});
  Reading reading{file, {}, {}, nullptr};
  OwnKnowledge own = readOwnKnowledgeTree(*tree, &builtIn, reading);
  if (!reading.errors.empty())
    return failure(std::move(reading.errors));
  return Stored<OwnKnowledge>{std::move(own), std::make_shared<const SourceTree>(std::move(reading.leftovers)),
                              fingerprintOf(text)};
}

Result<Stored<OwnKnowledge>, std::vector<Error>> readOwnKnowledge(const std::filesystem::path& file,
                                                                  const Knowledge& builtIn) {
  const auto text = readFile(file);
  if (!text)
    return failure(std::vector{text.error()});
  return parseOwnKnowledge(*text, file.string(), builtIn);
}

std::string ownKnowledgeText(const OwnKnowledge& own, const KeptTree& kept) {
  Json root = framed(kOwnKnowledgeFormat);
  if (!own.movements.empty())
    root["movements"] = listJson(own.movements, movementJson);
  if (!own.conditions.empty())
    root["conditions"] = listJson(own.conditions, conditionJson);
  if (!own.sources.empty())
    root["sources"] = listJson(own.sources, sourceJson);
  if (!own.rules.empty())
    root["rules"] = listJson(own.rules, ruleJson);
  for (const auto& [rule, amount] : own.thresholds)
    root["thresholds"][rule.value] = amount;
  putBack(kept.get(), "", root);
  return canonicalText(root);
}

} // namespace matwright
