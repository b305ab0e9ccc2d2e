#include "core/store/ScreeningJson.h"

#include "core/base/Text.h"
#include "core/screening/ScopeForm.h"
#include "core/store/KnowledgeParts.h"

namespace matwright {
namespace {

constexpr std::size_t kMostConditions = 1000, kMostSources = 5000, kMostRules = 10000;
constexpr std::size_t kMostOfOne = 50; // qualifiers of a condition, tests and sources of a rule
constexpr int kMostWeeks = 52 * 100;

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

// The key under which the rules of a scope give their amount; null when they measure nothing.
const char* amountKeyOf(Scope scope) {
  switch (scope) {
  case Scope::step:
  case Scope::total:
  case Scope::stretch:
    return "over";
  case Scope::early:
  case Scope::late:
    return "within";
  case Scope::order:
    return "between";
  case Scope::way:
  case Scope::missing:
  case Scope::wholeClass:
    break;
  }
  return nullptr;
}

// The scopes that have a key, for telling where it may stand.
const char* scopesWith(std::string_view key) {
  return key == "over"      ? "over only for scope step, total or stretch"
         : key == "within"  ? "within only for scope early or late"
         : key == "between" ? "between only for scope order"
                            : "after only for scope order";
}

std::string wordsOf(EnumSet<MeasureUnit> units) {
  std::vector<std::string_view> words;
  units.forEach([&](MeasureUnit unit) { words.push_back(word(unit)); });
  return oneOf(words.data(), words.size());
}

struct Measure {
  double amount = 0;
  MeasureUnit unit{};
};

Measure readMeasure(const std::optional<Spot>& spot, double least, EnumSet<MeasureUnit> units) {
  ObjectReader object(spot);
  const auto amount = object.need("amount");
  const auto unitSpot = object.need("unit");
  const auto unit = findWord<MeasureUnit>(unitSpot);
  if (unit && !units.contains(*unit))
    unitSpot->note(ErrorCode::unknownWord, wordsOf(units));
  const Measure measure{readNumber(amount, least, mostOf(unit.value_or(MeasureUnit{}))), unit.value_or(MeasureUnit{})};
  object.refuseRest();
  return measure;
}

// The one amount of a rule, and where it comes from.
std::optional<Threshold> readThreshold(ObjectReader& object, const std::optional<Scope>& scope) {
  const ScopeForm form = scope ? formOf(*scope) : ScopeForm{};
  const char* const amountKey = scope ? amountKeyOf(*scope) : nullptr;
  const bool mayBeAbsent = form.amount == ScopeForm::Amount::maybe;
  std::optional<Spot> amount;
  for (const char* key : {"over", "within", "between"}) {
    const auto spot = object.find(key);
    if (!scope)
      continue;
    if (amountKey && std::string_view(amountKey) == key) {
      amount = spot;
      if (!spot && !mayBeAbsent)
        object.note(ErrorCode::missingKey, key, std::string("key ") + key);
    } else if (spot) {
      object.note(ErrorCode::unknownKey, key, scopesWith(key));
    }
  }
  const auto origin = object.find("threshold");
  const bool needed = amountKey && (amount || !mayBeAbsent);
  if (scope && needed && !origin)
    object.note(ErrorCode::missingKey, "threshold", "key threshold");
  if (scope && !needed && origin)
    object.note(ErrorCode::unknownKey, "threshold", "threshold only beside an amount");
  if (!amount)
    return std::nullopt;
  const Measure measure = readMeasure(amount, form.least, form.units);
  return Threshold{measure.amount, measure.unit, readWord<ThresholdOrigin>(origin), measure.amount};
}

// `form`: none when the scope is not known.
Demand readDemand(ObjectReader& object, const std::optional<ScopeForm>& form) {
  const auto any = object.find("any");
  const auto all = object.find("all");
  const auto at = object.find("at");
  const auto effort = object.find("effortFrom");
  const auto lever = object.find("leverFrom");
  Demand demand;
  demand.any = readWordSet<Feature>(any, 1);
  demand.all = readWordSet<Feature>(all, 1);
  demand.at = readWordSet<Elevation>(at, 1);
  if (effort)
    demand.effortFrom = static_cast<int>(readInteger(effort, 1, Effort::kHighest));
  if (lever)
    demand.leverFrom = static_cast<int>(readInteger(lever, 1, Demand::kMostLever));
  if (!form)
    return demand;
  const auto refuse = [&](const std::optional<Spot>& spot, const char* key, const char* why) {
    if (spot)
      object.note(ErrorCode::unknownKey, key, std::string(key) + why);
  };
  if (!form->asks) {
    refuse(any, "any", " only for other scopes than class");
    refuse(all, "all", " only for other scopes than class");
  }
  if (!form->onSteps) {
    refuse(at, "at", " only where a rule looks at steps");
    refuse(effort, "effortFrom", " only where a rule looks at steps");
    refuse(lever, "leverFrom", " only where a rule looks at steps");
  }
  const bool enough = any || all || (form->onSteps && (at || effort || lever));
  if (form->asks && !enough)
    object.note(ErrorCode::missingKey, "any",
                form->onSteps ? "key any, all, at, effortFrom or leverFrom" : "key any or all");
  return demand;
}

std::optional<Earlier> readEarlier(ObjectReader& object, const std::optional<Scope>& scope) {
  const auto after = object.find("after");
  if (scope && scope != Scope::order) {
    if (after)
      object.note(ErrorCode::unknownKey, "after", scopesWith("after"));
    return std::nullopt;
  }
  if (scope && !after)
    object.note(ErrorCode::missingKey, "after", "key after");
  if (!after)
    return std::nullopt;
  ObjectReader before(after);
  Earlier earlier;
  earlier.demand = readDemand(before, before ? std::optional(formOf(Scope::order)) : std::nullopt);
  if (const auto over = before.find("over"))
    earlier.lasting = Seconds(readMeasure(over, 1, {MeasureUnit::seconds}).amount);
  before.refuseRest();
  return earlier;
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
  rule.ages = readWordSet<AgeBand>(object.find("ages"), 1);
  const auto scope = findWord<Scope>(object.need("scope"));
  rule.scope = scope.value_or(Scope{});
  rule.threshold = readThreshold(object, scope);
  const auto measured = rule.threshold ? std::optional(rule.threshold->unit) : std::nullopt;
  const auto form = scope ? std::optional(formOf(*scope, measured)) : std::nullopt;
  rule.asks = readDemand(object, form);
  rule.after = readEarlier(object, scope);
  rule.level = readWord<Level>(object.need("level"));
  rule.why = readText(object.need("why"), 1, kLongestNote);
  rule.instead = readWords(object.need("instead"), 1, Rule::kLongestInstead);
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

template <class Enum> Json wordsJson(EnumSet<Enum> set) {
  Json list = Json::array();
  set.forEach([&](Enum value) { list.push_back(word(value)); });
  return list;
}

template <class Enum> void setWords(Json& object, const char* key, EnumSet<Enum> set) {
  if (!set.empty())
    object[key] = wordsJson(set);
}

Json measureJson(double amount, MeasureUnit unit) { return {{"amount", amount}, {"unit", word(unit)}}; }

void setDemand(Json& object, const Demand& demand) {
  setWords(object, "any", demand.any);
  setWords(object, "all", demand.all);
  setWords(object, "at", demand.at);
  if (demand.effortFrom > 0)
    object["effortFrom"] = demand.effortFrom;
  if (demand.leverFrom > 0)
    object["leverFrom"] = demand.leverFrom;
}

Json testJson(const QualifierTest& test) {
  Json object = {{"qualifier", test.qualifier}};
  if (test.from)
    object["from"] = *test.from;
  if (test.below)
    object["below"] = *test.below;
  if (test.flag)
    object["is"] = Json::array({*test.flag});
  else if (!test.choices.empty())
    object["is"] = test.choices;
  if (!test.openHolds)
    object["ifOpen"] = false;
  return object;
}

template <class Draft>
std::vector<Draft> readEach(const std::optional<Spot>& spot, std::size_t most, Draft (*read)(const Spot&)) {
  std::vector<Draft> drafts;
  for (const Spot& entry : readList(spot, 0, most))
    drafts.push_back(read(entry));
  return drafts;
}

template <class Draft>
std::vector<Draft> readDrafts(const Json& tree, Reading& reading, const char* key,
                              std::vector<Draft> (*read)(const std::optional<Spot>&)) {
  ObjectReader root(Spot{&tree, {}, &reading});
  takeFrame(root);
  auto drafts = read(root.need(key));
  root.refuseRest();
  return drafts;
}

} // namespace

std::vector<ConditionDraft> readConditionList(const std::optional<Spot>& spot) {
  return readEach(spot, kMostConditions, readCondition);
}

std::vector<SourceDraft> readSourceList(const std::optional<Spot>& spot) {
  return readEach(spot, kMostSources, readSource);
}

std::vector<RuleDraft> readRuleList(const std::optional<Spot>& spot) { return readEach(spot, kMostRules, readRule); }

std::vector<ConditionDraft> readConditionDrafts(const Json& tree, Reading& reading) {
  return readDrafts(tree, reading, "conditions", readConditionList);
}

std::vector<SourceDraft> readSourceDrafts(const Json& tree, Reading& reading) {
  return readDrafts(tree, reading, "sources", readSourceList);
}

std::vector<RuleDraft> readRuleDrafts(const Json& tree, Reading& reading) {
  return readDrafts(tree, reading, "rules", readRuleList);
}

Json conditionJson(const Condition& condition) {
  Json qualifiers = Json::array();
  for (const QualifierSpec& spec : condition.qualifiers) {
    Json qualifier = {{"id", spec.id}, {"name", spec.name}, {"kind", word(spec.kind)}};
    for (const Choice& choice : spec.choices)
      qualifier["choices"].push_back({{"id", choice.id}, {"name", choice.name}});
    qualifiers.push_back(std::move(qualifier));
  }
  return {{"id", condition.id.value},
          {"name", condition.name},
          {"icd10", condition.icd10},
          {"about", condition.about},
          {"qualifiers", std::move(qualifiers)}};
}

Json sourceJson(const Source& source) {
  return {{"id", source.id.value}, {"cite", source.cite}, {"kind", word(source.kind)}};
}

Json ruleJson(const Rule& rule) {
  Json object = {{"id", rule.id.value},       {"scope", word(rule.scope)}, {"level", word(rule.level)},
                 {"why", rule.why},           {"instead", rule.instead},   {"strength", word(rule.strength)},
                 {"check", word(rule.check)}, {"sources", Json::array()},  {"reviewed", isoDate(rule.reviewed)}};
  if (rule.condition)
    object["condition"] = rule.condition->value;
  setWords(object, "ages", rule.ages);
  for (const QualifierTest& test : rule.when)
    object["when"].push_back(testJson(test));
  setDemand(object, rule.asks);
  if (const char* key = amountKeyOf(rule.scope); key && rule.threshold) {
    object[key] = measureJson(rule.threshold->amount, rule.threshold->unit);
    object["threshold"] = word(rule.threshold->origin);
  }
  if (rule.after) {
    Json& after = object["after"];
    setDemand(after, rule.after->demand);
    if (rule.after->lasting > Seconds{})
      after["over"] = measureJson(rule.after->lasting.value(), MeasureUnit::seconds);
  }
  if (!rule.contested.empty())
    object["contested"] = rule.contested;
  for (const SourceId& source : rule.sources)
    object["sources"].push_back(source.value);
  return object;
}

} // namespace matwright
