#include "core/knowledge/OwnKnowledge.h"
#include "tests/support/PanelFixture.h"
#include "ui/rules/RuleReport.h"
#include "ui/rules/RuleRows.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Not;

// The knowledge of the program with a condition of one's own, two rules for it and one for everybody.
Knowledge withOwn() {
  OwnKnowledge own;
  Condition tired;
  tired.id = {"own-tired"};
  tired.name = "Zest is low";
  tired.about = "Slept badly.";
  own.conditions = {tired};
  const Rule like = *testing::knowledge()->rules.findRule({"everyone-neck-stretch"});
  for (const char* id : {"own-slow", "own-low", "own-all"}) {
    own.rules.push_back(like);
    own.rules.back().id = {id};
    own.rules.back().condition = ConditionId{"own-tired"};
  }
  own.rules[1].level = Level::leaveOut;
  own.rules[2].condition.reset();
  own.thresholds = {{{"everyone-kneel-stretch"}, 60}};
  return layered(*testing::knowledge(), own);
}

std::vector<RuleGroup> groupsOf(const Knowledge& knowledge, const RuleFilter& filter) {
  return ruleGroups(knowledge.rules, filter, rulesConcerning(knowledge.rules, testing::sixPeople(), testing::today()));
}

std::vector<const Rule*> rulesIn(const Knowledge& knowledge, const RuleFilter& filter) {
  std::vector<const Rule*> all;
  for (const RuleGroup& group : groupsOf(knowledge, filter))
    for (const RuleRow& row : group.rows)
      all.push_back(knowledge.rules.findRule(row.rule));
  return all;
}

std::vector<std::string> idsIn(const Knowledge& knowledge, const RuleFilter& filter) {
  std::vector<std::string> ids;
  for (const Rule* rule : rulesIn(knowledge, filter))
    ids.push_back(rule->id.value);
  return ids;
}

TEST(RuleRows, EveryRuleStandsOnceUnderItsCondition) {
  const Knowledge all = withOwn();
  const auto groups = groupsOf(all, {});
  EXPECT_FALSE(groups.front().condition);
  std::set<RuleId> seen;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    EXPECT_TRUE(i < 2 || groups[i - 1].title.compare(groups[i].title, Qt::CaseInsensitive) <= 0);
    for (const RuleRow& row : groups[i].rows) {
      EXPECT_EQ(all.rules.findRule(row.rule)->condition, groups[i].condition);
      EXPECT_TRUE(seen.insert(row.rule).second) << row.rule.value;
    }
  }
  EXPECT_EQ(seen.size(), all.rules.rules.size());
  EXPECT_EQ(groups.size(), all.rules.conditions.size() + 1);
  EXPECT_EQ(groups.back().title, QStringLiteral("Zest is low"));
  ASSERT_EQ(groups.back().rows.size(), 2U);
  EXPECT_EQ(groups.back().rows[0].rule.value, "own-low"); // the stronger one
}

TEST(RuleRows, ARowSaysItsLevelInWordsAndWhoseItIs) {
  const Knowledge all = withOwn();
  const auto groups = groupsOf(all, {});
  const RuleRow& row = groups.back().rows[0];
  EXPECT_TRUE(row.title.startsWith(QStringLiteral("Leave out: "))) << row.title.toStdString();
  EXPECT_EQ(row.mark, QStringLiteral("your own"));
  EXPECT_TRUE(row.spoken.contains(row.title) && row.spoken.contains(row.body) && row.spoken.contains(row.mark));
  for (const RuleRow& each : groups.front().rows)
    if (each.rule.value == "everyone-kneel-stretch") {
      EXPECT_EQ(each.mark, QStringLiteral("your threshold; usually 3:00"));
    } else if (each.rule.value != "own-all") {
      EXPECT_EQ(each.mark, QString());
    }
}

TEST(RuleRows, WordsAreFoundInConditionReasonAndSource) {
  const Knowledge all = withOwn();
  const auto found = [&](const char* words) {
    RuleFilter filter;
    filter.words = QString::fromLatin1(words);
    return idsIn(all, filter);
  };
  EXPECT_THAT(found("zest LOW"), ElementsAre("own-low", "own-slow"));
  EXPECT_THAT(found("McCowan"), Contains("pregnancy-supine-stretch"));
  EXPECT_THAT(found("three minutes back"), Contains("pregnancy-supine-stretch"));
  EXPECT_THAT(found("turn to the side now"), Contains("pregnancy-supine-stretch"));
  EXPECT_THAT(found("M43.1"), Contains("spondylolisthesis-acute"));
  EXPECT_THAT(found("zest McCowan"), ElementsAre());
}

TEST(RuleRows, EachFilterLetsThroughWhatItAsksForAndNothingElse) {
  const Knowledge all = withOwn();
  const auto holds = [&](const RuleFilter& filter, auto fits) {
    const auto rules = rulesIn(all, filter);
    EXPECT_FALSE(rules.empty());
    EXPECT_EQ(static_cast<std::ptrdiff_t>(rules.size()),
              std::count_if(all.rules.rules.begin(), all.rules.rules.end(), fits));
    EXPECT_TRUE(std::all_of(rules.begin(), rules.end(), [&](const Rule* rule) { return fits(*rule); }));
  };
  RuleFilter filter;
  filter.levels = {Level::leaveOut, Level::watch};
  holds(filter, [](const Rule& rule) { return rule.level == Level::leaveOut || rule.level == Level::watch; });
  filter = {};
  filter.scopes = {Scope::order};
  filter.strengths = {Strength::practice};
  holds(filter, [](const Rule& rule) { return rule.scope == Scope::order && rule.strength == Strength::practice; });
  filter = {};
  filter.contested = true;
  holds(filter, [](const Rule& rule) { return !rule.contested.empty(); });
  filter = {};
  filter.own = true;
  holds(filter, [](const Rule& rule) { return isOwn(rule.id); });
  filter = {};
  filter.open = true;
  holds(filter, [](const Rule& rule) { return thresholdIsOpen(rule) && !isOwn(rule.id); });
  filter = {};
  filter.changed = true;
  EXPECT_THAT(idsIn(all, filter), ElementsAre("everyone-kneel-stretch"));
}

// Of the six people one is pregnant, in week 22, and none has epilepsy.
TEST(RuleRows, WhatConcernsPeopleOnFileIsFound) {
  const Knowledge all = withOwn();
  RuleFilter filter;
  filter.onFile = true;
  const auto ids = idsIn(all, filter);
  EXPECT_THAT(ids, Contains("pregnancy-supine-stretch"));
  EXPECT_THAT(ids, Not(Contains("pregnancy-heat"))); // before week 14
  EXPECT_THAT(ids, Not(Contains("everyone-kneel-stretch")));
  for (const Rule* rule : rulesIn(all, filter))
    EXPECT_NE(rule->condition, ConditionId{"epilepsy"});
}

TEST(RuleRows, AConditionWithoutRulesIsThereWhenItIsLookedFor) {
  OwnKnowledge own;
  Condition tired;
  tired.id = {"own-tired"};
  tired.name = "Zest is low";
  own.conditions = {tired};
  const Knowledge all = layered(*testing::knowledge(), own);
  const auto listed = [&](const RuleFilter& filter) {
    const auto groups = groupsOf(all, filter);
    return std::any_of(groups.begin(), groups.end(),
                       [](const RuleGroup& group) { return group.condition == ConditionId{"own-tired"}; });
  };
  RuleFilter filter;
  EXPECT_TRUE(listed(filter));
  filter.words = QStringLiteral("zest");
  EXPECT_TRUE(listed(filter));
  filter.own = true;
  EXPECT_TRUE(listed(filter));
  filter.words = QStringLiteral("knee");
  EXPECT_FALSE(listed(filter));
  filter = {};
  filter.levels = {Level::adapt};
  EXPECT_FALSE(listed(filter));
}

TEST(RuleRows, WhatIsNotKeptYetIsListedAndSaidWhateverIsAskedFor) {
  RuleBook book = withOwn().rules;
  Rule blank;
  blank.id = {"own-blank"};
  book.rules.push_back(blank);
  Condition nameless;
  nameless.id = {"own-nameless"};
  book.conditions.push_back(nameless);
  RuleFilter filter;
  filter.words = QStringLiteral("nothing has these words");
  const auto groups = ruleGroups(book, filter, {}, {{blank.id}, {nameless.id}});
  ASSERT_EQ(groups.size(), 2U);
  ASSERT_EQ(groups[0].rows.size(), 1U);
  EXPECT_TRUE(groups[0].rows[0].mark.contains(QStringLiteral("not kept yet")));
  EXPECT_TRUE(groups[0].rows[0].title.contains(QStringLiteral("(not written yet)")));
  EXPECT_EQ(groups[1].title, QStringLiteral("(no name yet)"));
  EXPECT_TRUE(groups[1].mark.contains(QStringLiteral("not kept yet")));
}

TEST(RuleReport, CountsMovementsAsTheScreeningSeesThem) {
  ConcernedMovements concerned;
  const auto knowledge = testing::knowledge();
  const auto lying = concerned.of(*knowledge->rules.findRule({"pregnancy-supine-stretch"}), knowledge);
  ASSERT_TRUE(lying);
  EXPECT_THAT(*lying, Contains(QString::fromStdString(knowledge->catalogue.find({"hundred"})->name)));
  EXPECT_THAT(*lying, Not(Contains(QString::fromStdString(knowledge->catalogue.find({"swan-preparation"})->name))));
  EXPECT_FALSE(concerned.of(*knowledge->rules.findRule({"bppv-changes"}), knowledge)); // counts ways
}

TEST(RuleReport, NamesPeopleAndTheirStepsInTheOpenClass) {
  testing::Panels panels;
  const Rule& rule = *panels.document.knowledge().rules.findRule({"pregnancy-supine"});
  EXPECT_EQ(peopleConcerned(rule, panels.document), QStringList{QStringLiteral("Wanda Ostrow")});
  const QStringList lines = spokenIn(rule, panels.document);
  EXPECT_THAT(lines, Contains(QString::fromStdString(panels.document.knowledge().catalogue.find({"hundred"})->name) +
                              QStringLiteral(": Wanda Ostrow")));
  EXPECT_EQ(peopleWith({"pregnancy"}, panels.document), QStringList{QStringLiteral("Wanda Ostrow")});
}

// A person with a shoulder pain of which nothing more is known.
TEST(RuleReport, SaysWhenSomethingIsNotFilledIn) {
  testing::Panels panels;
  Person person = panels.people.people()[0];
  person.conditions = {PersonCondition{{"pregnancy"}, {}, {}, {}}};
  panels.people.change(person, QStringLiteral("Change"));
  const QStringList names =
      peopleConcerned(*panels.document.knowledge().rules.findRule({"pregnancy-supine"}), panels.document);
  EXPECT_THAT(names, Contains(QStringLiteral("Rosa Amberley (something is not filled in yet)")));
}

} // namespace
} // namespace matwright
