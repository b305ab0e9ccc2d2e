// Conditions, sources and rules that were written read back as the same values.
#include "core/store/KnowledgeParts.h"
#include "core/store/ScreeningJson.h"
#include "tests/core/store/ErrorWords.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

template <class Value>
Json fileOf(const Format& format, const char* key, const std::vector<Value>& values, Json (*entry)(const Value&)) {
  Json root = framed(format);
  root[key] = Json::array();
  for (const Value& each : values)
    root[key].push_back(entry(each));
  return root;
}

// Through text, as in a file.
template <class Draft>
std::vector<Draft> readBack(const Json& tree, const Format& format, std::vector<Draft> (*read)(const Json&, Reading&)) {
  const auto opened = openTree(canonicalText(tree), "written.json", format);
  EXPECT_TRUE(opened);
  Reading reading{"written.json", {}, {}, nullptr};
  auto drafts = read(opened.value_or(tree), reading);
  for (const Error& error : reading.errors)
    ADD_FAILURE() << codeAndPath(error) << ": " << error.expected << ", found " << error.found;
  return drafts;
}

void expectToReadBack(const std::vector<Rule>& rules) {
  const auto drafts = readBack(fileOf(kRulesFormat, "rules", rules, ruleJson), kRulesFormat, readRuleDrafts);
  ASSERT_EQ(drafts.size(), rules.size());
  for (std::size_t i = 0; i < rules.size(); ++i)
    EXPECT_EQ(drafts[i].rule, rules[i]) << rules[i].id.value;
}

class Written : public testing::Test {
protected:
  void SetUp() override { ASSERT_TRUE(readRealKnowledge()) << whatIsWrongWithRealKnowledge(); }
  const RuleBook& book() const { return realKnowledge().rules; }
};

TEST_F(Written, EveryRuleOfTheBookReadsBack) {
  ASSERT_FALSE(book().rules.empty());
  expectToReadBack(book().rules);
}

TEST_F(Written, EveryConditionOfTheBookReadsBack) {
  const auto& conditions = book().conditions;
  const auto drafts = readBack(fileOf(kConditionsFormat, "conditions", conditions, conditionJson), kConditionsFormat,
                               readConditionDrafts);
  ASSERT_EQ(drafts.size(), conditions.size());
  for (std::size_t i = 0; i < conditions.size(); ++i)
    EXPECT_EQ(drafts[i].condition, conditions[i]) << conditions[i].id.value;
}

TEST_F(Written, EverySourceOfTheBookReadsBack) {
  const auto drafts =
      readBack(fileOf(kSourcesFormat, "sources", book().sources, sourceJson), kSourcesFormat, readSourceDrafts);
  ASSERT_EQ(drafts.size(), book().sources.size());
  for (std::size_t i = 0; i < drafts.size(); ++i)
    EXPECT_EQ(drafts[i].source, book().sources[i]);
}

// One rule with everything that a rule can hold, and then one of each scope in each of its units.
TEST(WrittenRule, OfEveryKindReadsBack) {
  using enum MeasureUnit;
  Rule full = rule("full", Scope::order, Level::askFirst, {Feature::rot, Feature::kneel}, "ache");
  full.ages = {AgeBand::under18, AgeBand::from80};
  full.when = {{"weeks", -2, 6, {}, {}, true},
               {"phase", {}, {}, {"acute", "settled"}, {}, true},
               {"signs", {}, {}, {}, false, false},
               {"since", 3, {}, {}, {}, false}};
  full.asks = {{Feature::rot}, {Feature::prone}, {Elevation::standing, Elevation::sitting}, 10};
  full.threshold = Threshold{2.5, seconds, ThresholdOrigin::published, 2.5};
  full.after = Earlier{{{Feature::supine}, {Feature::inverted}, {Elevation::faceUp}, 3}, Seconds(90.5)};
  full.why = "Because.";
  full.contested = "Some say \"no\".";
  full.sources = {SourceId{"one"}, SourceId{"two"}};
  std::vector<Rule> rules{full};
  const auto add = [&](Scope scope, std::vector<MeasureUnit> units) {
    for (MeasureUnit unit : units) {
      Rule made = rule("r" + std::to_string(rules.size()), scope, Level::watch, {Feature::rot});
      made.why = "Because.";
      made.threshold = Threshold{7, unit, ThresholdOrigin::ours, 7};
      if (scope == Scope::order)
        made.after = Earlier{{{Feature::supine}, {}, {}, 0}, Seconds{}};
      rules.push_back(made);
    }
  };
  add(Scope::step, {seconds});
  add(Scope::total, {seconds, repetitions, steps, changes});
  add(Scope::stretch, {seconds, repetitions, steps});
  add(Scope::early, {seconds, percent});
  add(Scope::late, {seconds, percent});
  add(Scope::order, {seconds, steps});
  for (Scope scope : {Scope::step, Scope::way, Scope::missing, Scope::wholeClass}) {
    Rule made = rule("r" + std::to_string(rules.size()), scope, Level::watch);
    made.why = "Because.";
    if (scope != Scope::wholeClass)
      made.asks.all = {Feature::rot};
    rules.push_back(made);
  }
  expectToReadBack(rules);
}

// A file knows one amount: it becomes the usual one.
TEST(WrittenRule, KeepsTheAmountThatTheTeacherSet) {
  Rule changed = rule("r", Scope::total, Level::watch, {Feature::rot});
  changed.why = "Because.";
  changed.threshold = Threshold{30, MeasureUnit::repetitions, ThresholdOrigin::ours, 60};
  const auto drafts =
      readBack(fileOf(kRulesFormat, "rules", std::vector{changed}, ruleJson), kRulesFormat, readRuleDrafts);
  ASSERT_EQ(drafts.size(), 1u);
  EXPECT_EQ(drafts[0].rule.threshold, (Threshold{30, MeasureUnit::repetitions, ThresholdOrigin::ours, 30}));
}

} // namespace
} // namespace matwright::test
