#include "core/plan/ClassPlan.h"
#include "core/store/KnowledgeParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostConditions = 1000, kMostSources = 5000, kMostRules = 10000;
constexpr std::size_t kMostOfOne = 50; // qualifiers of a condition, tests and sources of a rule
constexpr int kMostWeeks = 52 * 100;
constexpr double kMostSummed = 24 * 3600; // seconds or repetitions of a threshold
constexpr int kLongestInstead = 8;        // words

QualifierSpec readQualifierSpec(const Spot& spot) {
  ObjectReader object(spot);
  QualifierSpec spec;
  spec.id = readText(object.need("id"), 1, kLongestName);
  spec.name = readText(object.need("name"), 1, kLongestNote); // a question may be long
  const auto kind = findWord<QualifierKind>(object.need("kind"));
  spec.kind = kind.value_or(QualifierKind{});
  const auto choices = object.find("choices");
  if (kind && *kind == QualifierKind::choice && !choices)
    object.note(ErrorCode::missingKey, "choices", "key choices");
  if (kind && *kind != QualifierKind::choice && choices)
    object.note(ErrorCode::unknownKey, "choices", "choices only for kind choice");
  for (const Spot& entry : readList(choices, 1, kMostOfOne)) {
    ObjectReader choice(entry);
    spec.choices.push_back(
        {readText(choice.need("id"), 1, kLongestName), readText(choice.need("name"), 1, kLongestNote)});
    choice.refuseRest();
  }
  object.refuseRest();
  return spec;
}

ConditionDraft readCondition(const Spot& spot) {
  ObjectReader object(spot);
  ConditionDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  draft.condition.id = readId<ConditionId>(object.need("id"));
  draft.condition.name = readText(object.need("name"), 1, kLongestName);
  for (const Spot& code : readList(object.need("icd10"), 0, kMostOfOne))
    draft.condition.icd10.push_back(readText(code, 1, kLongestName));
  draft.condition.about = readText(object.need("about"), 1, kLongestNote);
  for (const Spot& entry : readList(object.need("qualifiers"), 0, kMostOfOne))
    draft.condition.qualifiers.push_back(readQualifierSpec(entry));
  object.refuseRest();
  return draft;
}

SourceDraft readSource(const Spot& spot) {
  ObjectReader object(spot);
  SourceDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  draft.source.id = readId<SourceId>(object.need("id"));
  draft.source.cite = readText(object.need("cite"), 1, kLongestNote);
  draft.source.kind = readWord<SourceKind>(object.need("kind"));
  object.refuseRest();
  return draft;
}

// Weeks, choices or a flag; which of them the qualifier takes is not known here.
QualifierTest readTest(const Spot& spot) {
  ObjectReader object(spot);
  QualifierTest test;
  test.qualifier = readText(object.need("qualifier"), 1, kLongestName);
  if (const auto from = object.find("from"))
    test.from = static_cast<int>(readInteger(from, -kMostWeeks, kMostWeeks));
  if (const auto below = object.find("below"))
    test.below = static_cast<int>(readInteger(below, -kMostWeeks, kMostWeeks));
  if (test.from && test.below && *test.from >= *test.below)
    object.note(ErrorCode::outOfRange, "below", "a number above from", std::to_string(*test.below));
  const auto is = object.find("is");
  for (const Spot& entry : readList(is, 1, kMostOfOne)) {
    if (entry.json->is_boolean() && !test.flag && test.choices.empty())
      test.flag = readFlag(entry);
    else if (entry.json->is_string() && !test.flag)
      test.choices.push_back(readText(entry, 1, kLongestName));
    else
      entry.note(ErrorCode::wrongType, "choices, or one of true and false");
  }
  if (const auto open = object.find("ifOpen"))
    test.openHolds = readFlag(open);
  const bool weeks = test.from || test.below;
  if (object && weeks == is.has_value())
    object.note(weeks ? ErrorCode::unknownKey : ErrorCode::missingKey, "is", "either is, or from and below");
  object.refuseRest();
  return test;
}

// Total and stretch have a threshold, the others none.
std::optional<Threshold> readThreshold(ObjectReader& object, const std::optional<Scope>& scope) {
  const auto over = object.find("over");
  const auto origin = object.find("threshold");
  const bool sums = scope == Scope::total || scope == Scope::stretch;
  for (const auto& [spot, key] : {std::pair(over, "over"), std::pair(origin, "threshold")}) {
    if (scope && sums && !spot)
      object.note(ErrorCode::missingKey, key, std::string("key ") + key);
    if (scope && !sums && spot)
      object.note(ErrorCode::unknownKey, key, std::string(key) + " only for scope total or stretch");
  }
  if (!over)
    return std::nullopt;
  ObjectReader amounts(over);
  Threshold threshold;
  threshold.amount = readNumber(amounts.need("amount"), 0, kMostSummed);
  threshold.unit = readWord<MeasureUnit>(amounts.need("unit"));
  threshold.origin = readWord<ThresholdOrigin>(origin);
  amounts.refuseRest();
  return threshold;
}

void readFeatures(ObjectReader& object, Rule& rule, const std::optional<Scope>& scope) {
  const auto any = object.find("any");
  const auto all = object.find("all");
  rule.any = readWordSet<Feature>(any, 1);
  rule.all = readWordSet<Feature>(all, 1);
  if (scope == Scope::wholeClass) {
    for (const auto& [spot, key] : {std::pair(any, "any"), std::pair(all, "all")})
      if (spot)
        object.note(ErrorCode::unknownKey, key, std::string(key) + " only for other scopes than class");
  } else if (scope && !any && !all) {
    object.note(ErrorCode::missingKey, "any", "key any or all");
  }
}

RuleDraft readRule(const Spot& spot) {
  ObjectReader object(spot);
  RuleDraft draft;
  draft.origin = {spot.reading->file, spot.path};
  Rule& rule = draft.rule;
  rule.id = readId<RuleId>(object.need("id"));
  if (const auto condition = object.find("condition"))
    rule.condition = readId<ConditionId>(condition);
  for (const Spot& entry : readList(object.find("when"), 0, kMostOfOne))
    rule.when.push_back(readTest(entry));
  const auto scope = findWord<Scope>(object.need("scope"));
  rule.scope = scope.value_or(Scope{});
  readFeatures(object, rule, scope);
  rule.over = readThreshold(object, scope);
  rule.level = readWord<Level>(object.need("level"));
  rule.why = readText(object.need("why"), 1, kLongestNote);
  rule.instead = readWords(object.need("instead"), 1, kLongestInstead);
  const auto strength = findWord<Strength>(object.need("strength"));
  rule.strength = strength.value_or(Strength{});
  rule.check = readWord<Verification>(object.need("check"));
  if (const auto contested = object.find("contested"))
    rule.contested = readText(contested, 1, kLongestNote);
  const std::size_t fewest = strength && *strength != Strength::practice ? 1 : 0;
  for (const Spot& entry : readList(object.need("sources"), fewest, kMostOfOne))
    rule.sources.push_back(readId<SourceId>(entry));
  rule.reviewed = readDate(object.need("reviewed"));
  object.refuseRest();
  return draft;
}

template <class Draft>
std::vector<Draft> readDrafts(const Json& tree, Reading& reading, const char* key, std::size_t most,
                              Draft (*read)(const Spot&)) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  std::vector<Draft> drafts;
  for (const Spot& entry : readList(root.need(key), 0, most))
    drafts.push_back(read(entry));
  root.refuseRest();
  return drafts;
}

} // namespace

std::vector<ConditionDraft> readConditionDrafts(const Json& tree, Reading& reading) {
  return readDrafts(tree, reading, "conditions", kMostConditions, readCondition);
}

std::vector<SourceDraft> readSourceDrafts(const Json& tree, Reading& reading) {
  return readDrafts(tree, reading, "sources", kMostSources, readSource);
}

std::vector<RuleDraft> readRuleDrafts(const Json& tree, Reading& reading) {
  return readDrafts(tree, reading, "rules", kMostRules, readRule);
}

} // namespace matwright
