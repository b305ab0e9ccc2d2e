#include "core/screening/Screening.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

const Date kDay = day(2026, 6, 1);
constexpr std::size_t kNone = Finding::kNone;

StepFacts asks(FeatureSet features, FeatureSet wayFeatures = {}) {
  StepFacts facts;
  facts.features = features;
  facts.wayFeatures = wayFeatures;
  facts.gap = Seconds(5);
  facts.work = Seconds(30);
  facts.repetitions = 5;
  return facts;
}

std::vector<Finding> screened(const RuleBook& book, const std::vector<Person>& people,
                              const std::vector<StepFacts>& steps) {
  return screen(book, people, activeRules(book, people, kDay), steps, kDay);
}

RuleBook bookOf(std::vector<Rule> rules) {
  RuleBook book;
  book.conditions = {condition("ache"), condition("pang")};
  book.rules = std::move(rules);
  return book;
}

TEST(Screening, AStepRuleSpeaksWhereTheStepAsksItAndNowhereElse) {
  const RuleBook book = bookOf({rule("r", Scope::step, Level::adapt, {Feature::rot}, "ache")});
  const auto found = screened(book, {person("ida", {"ache"})},
                              {asks({}), asks({Feature::rot, Feature::kneel}), asks({}, {Feature::rot})});
  ASSERT_THAT(found, SizeIs(1));
  Finding expected{0, 0, 0, 1, Level::adapt, {Feature::rot}, false, false, 0};
  expected.asked = {{Feature::rot, Feature::kneel}, {}, Effort{}};
  EXPECT_EQ(found[0], expected);
}

TEST(Screening, AWayRuleSpeaksForTheWayAlone) {
  const RuleBook book = bookOf({rule("r", Scope::way, Level::adapt, {Feature::rise}, "ache")});
  const auto found = screened(book, {person("ida", {"ache"})}, {asks({Feature::rise}), asks({}, {Feature::rise})});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_EQ(found[0].step, 1u);
}

TEST(Screening, AClassRuleSpeaksOnceForEachWhomItConcernsEvenInAnEmptyClass) {
  const RuleBook book = bookOf({rule("r", Scope::wholeClass, Level::askFirst, {}, "ache")});
  const std::vector<Person> people{person("ida", {"ache"}), person("bo"), person("cy", {"ache"})};
  for (const std::vector<StepFacts>& steps : {std::vector<StepFacts>{}, {asks({}), asks({Feature::rot})}}) {
    const auto found = screened(book, people, steps);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_EQ(found[0], (Finding{0, 0, 0, kNone, Level::askFirst, {}, false, false, 0}));
    EXPECT_EQ(found[1].person, 2u);
  }
}

TEST(Screening, ARuleForEverybodyNamesNobody) {
  const RuleBook book = bookOf({rule("r", Scope::step, Level::watch, {Feature::rot})});
  const auto found = screened(book, {person("ida"), person("bo")}, {asks({Feature::rot})});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_EQ(found[0].person, kNone);
  EXPECT_EQ(found[0].condition, kNone);
}

TEST(Screening, TwoConditionsMayGiveTwoCautionsForOneStep) {
  const RuleBook book = bookOf({rule("one", Scope::step, Level::adapt, {Feature::rot}, "ache"),
                                rule("two", Scope::step, Level::watch, {Feature::rot}, "pang")});
  const auto found = screened(book, {person("ida", {"pang", "ache"})}, {asks({Feature::rot})});
  ASSERT_THAT(found, SizeIs(2));
  EXPECT_EQ(found[0].rule, 0u);
  EXPECT_EQ(found[0].condition, 1u);
  EXPECT_EQ(found[1].rule, 1u);
  EXPECT_EQ(found[1].condition, 0u);
}

TEST(Screening, ARuleDoesNotSpeakTwiceForOnePersonAndStep) {
  const RuleBook book = bookOf({rule("one", Scope::step, Level::askFirst, {Feature::rot}, "ache"),
                                rule("two", Scope::wholeClass, Level::watch, {}, "ache")});
  EXPECT_THAT(screened(book, {person("ida", {"ache", "ache"})}, {asks({Feature::rot})}), SizeIs(2));
}

TEST(Screening, OfTwoConditionsTheOneThatWeighsMoreSpeaks) {
  RuleBook book = bookOf({rule("one", Scope::step, Level::askFirst, {Feature::rot}, "ache")});
  Person ida = person("ida", {"ache", "ache"});
  ida.conditions[0].clearances = {{kDay, {}, "", {}, {}, ""}};
  const auto found = screened(book, {ida}, {asks({Feature::rot})});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_EQ(found[0].condition, 1u); // the other one is not cleared
  EXPECT_EQ(found[0].level, Level::askFirst);
}

TEST(Screening, OfTwoConditionsAnAnsweredOneWeighsMoreThanAnAssumedOne) {
  RuleBook book = bookOf({rule("one", Scope::step, Level::adapt, {Feature::rot}, "ache")});
  book.conditions[0].qualifiers = {{"sore", "", QualifierKind::flag, {}}};
  book.rules[0].when = {{"sore", {}, {}, {}, true}};
  Person ida = person("ida", {"ache", "ache"});
  ida.conditions[1].qualifiers["sore"] = true;
  const auto found = screened(book, {ida}, {asks({Feature::rot})});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_EQ(found[0].condition, 1u);
  EXPECT_FALSE(found[0].assumed);
}

TEST(Screening, AnAssumptionIsCarriedIntoTheFinding) {
  RuleBook book = bookOf({rule("one", Scope::step, Level::adapt, {Feature::rot}, "ache")});
  book.conditions[0].qualifiers = {{"sore", "", QualifierKind::flag, {}}};
  book.rules[0].when = {{"sore", {}, {}, {}, true}};
  const auto found = screened(book, {person("ida", {"ache"})}, {asks({Feature::rot})});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_TRUE(found[0].assumed);
}

TEST(Screening, FindingsAreOrderedByStepThenLevelThenPersonThenRule) {
  const RuleBook book = bookOf({rule("a", Scope::step, Level::watch, {Feature::rot}, "ache"),
                                rule("b", Scope::step, Level::leaveOut, {Feature::rot}, "pang"),
                                rule("c", Scope::step, Level::watch, {Feature::rot}),
                                rule("d", Scope::wholeClass, Level::watch, {}, "pang"),
                                rule("e", Scope::step, Level::watch, {Feature::rot}, "ache"),
                                rule("f", Scope::wholeClass, Level::adapt, {}, "ache")});
  const auto found = screened(book, {person("ida", {"ache"}), person("bo", {"pang", "ache"})},
                              {asks({Feature::rot}), asks({Feature::rot})});
  std::vector<std::string> order;
  for (const Finding& each : found)
    order.push_back(std::string(1, each.step == kNone ? '-' : static_cast<char>('0' + each.step)) +
                    (each.person == kNone ? "*"
                     : each.person == 0   ? "i"
                                          : "b") +
                    book.rules[each.rule].id.value);
  EXPECT_THAT(order, testing::ElementsAre("-if", "-bf", "-bd",                        // the class as a whole
                                          "0bb", "0*c", "0ia", "0ie", "0ba", "0be",   // the first step
                                          "1bb", "1*c", "1ia", "1ie", "1ba", "1be")); // the second
}

TEST(Screening, TheOrderOfActiveRulesDoesNotMatter) {
  const RuleBook book = bookOf({rule("a", Scope::step, Level::watch, {Feature::rot}, "ache"),
                                rule("b", Scope::step, Level::adapt, {Feature::rot})});
  const std::vector<Person> people{person("ida", {"ache", "ache"}), person("bo", {"ache"})};
  const std::vector<StepFacts> steps{asks({Feature::rot})};
  auto active = activeRules(book, people, kDay);
  const auto found = screen(book, people, active, steps, kDay);
  std::reverse(active.begin(), active.end());
  EXPECT_EQ(screen(book, people, active, steps, kDay), found);
}

// ---- clearances ----

std::vector<Finding> clearedBy(const Clearance& clearance, Level level, FeatureSet any, Scope scope = Scope::step) {
  const RuleBook book = bookOf({rule("r", scope, level, any, "ache")});
  Person ida = person("ida", {"ache"});
  ida.conditions[0].clearances = {clearance};
  return screened(book, {ida}, {asks(any)});
}

const Clearance kForAll{kDay, std::nullopt, "clinician", {}, {}, ""};

TEST(Clearances, LowerAskFirstToWatchAndSaySo) {
  const auto found = clearedBy(kForAll, Level::askFirst, {Feature::rot});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_EQ(found[0].level, Level::watch);
  EXPECT_TRUE(found[0].cleared);
}

TEST(Clearances, NeverLowerLeaveOutAndChangeNothingElse) {
  for (Level level : {Level::leaveOut, Level::adapt, Level::watch}) {
    const auto found = clearedBy(kForAll, level, {Feature::rot});
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].level, level);
    EXPECT_FALSE(found[0].cleared);
  }
}

TEST(Clearances, NamingFeaturesCoverOnlyThose) {
  Clearance clearance = kForAll;
  clearance.features = {Feature::rot, Feature::kneel};
  EXPECT_TRUE(clearedBy(clearance, Level::askFirst, {Feature::rot})[0].cleared);
  EXPECT_TRUE(clearedBy(clearance, Level::askFirst, {Feature::rot, Feature::kneel})[0].cleared);
  EXPECT_FALSE(clearedBy(clearance, Level::askFirst, {Feature::rot, Feature::latflex})[0].cleared);
}

TEST(Clearances, NamingFeaturesDoNotCoverTheClassAsAWhole) {
  Clearance clearance = kForAll;
  EXPECT_TRUE(clearedBy(clearance, Level::askFirst, {}, Scope::wholeClass)[0].cleared);
  clearance.features = {Feature::rot};
  EXPECT_FALSE(clearedBy(clearance, Level::askFirst, {}, Scope::wholeClass)[0].cleared);
}

TEST(Clearances, HoldOnTheirDaysAlone) {
  Clearance clearance = kForAll;
  clearance.given = daysAfter(kDay, 1);
  EXPECT_FALSE(clearedBy(clearance, Level::askFirst, {Feature::rot})[0].cleared);
  clearance.given = daysAfter(kDay, -30);
  clearance.until = kDay;
  EXPECT_TRUE(clearedBy(clearance, Level::askFirst, {Feature::rot})[0].cleared);
  clearance.until = daysAfter(kDay, -1);
  EXPECT_FALSE(clearedBy(clearance, Level::askFirst, {Feature::rot})[0].cleared);
}

TEST(Clearances, SpeakForTheirOwnConditionAndPersonAlone) {
  const RuleBook book = bookOf({rule("r", Scope::step, Level::askFirst, {Feature::rot}, "ache")});
  Person ida = person("ida", {"pang", "ache"});
  ida.conditions[0].clearances = {kForAll};
  Person bo = person("bo", {"ache"});
  bo.conditions[0].clearances = {kForAll};
  const auto found = screened(book, {ida, bo}, {asks({Feature::rot})});
  ASSERT_THAT(found, SizeIs(2));
  EXPECT_EQ(found[0].person, 0u);
  EXPECT_EQ(found[0].level, Level::askFirst);
  EXPECT_EQ(found[1].person, 1u);
  EXPECT_EQ(found[1].level, Level::watch);
}

TEST(Clearances, DoNotTouchRulesForEverybody) {
  const RuleBook book = bookOf({rule("r", Scope::step, Level::askFirst, {Feature::rot})});
  Person ida = person("ida", {"ache"});
  ida.conditions[0].clearances = {kForAll};
  EXPECT_EQ(screened(book, {ida}, {asks({Feature::rot})})[0].level, Level::askFirst);
}

TEST(Screening, NobodyAndNothingGiveNoFindings) {
  EXPECT_THAT(screened(bookOf({}), {}, {}), IsEmpty());
  EXPECT_THAT(screened(bookOf({rule("r", Scope::step, Level::adapt, {Feature::rot}, "ache")}), {person("ida")},
                       {asks({Feature::rot})}),
              IsEmpty());
}

} // namespace
} // namespace matwright::test
