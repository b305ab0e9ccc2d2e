#include "core/knowledge/Exchange.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

Knowledge builtIn() {
  RuleBook book;
  book.conditions = {test::condition("back")};
  book.sources = {{{"paper"}, "Paper", SourceKind::study}};
  Rule open = test::rule("open", Scope::total, Level::watch, {Feature::flexLoad});
  open.threshold = Threshold{100, MeasureUnit::seconds, ThresholdOrigin::ours, 100};
  Rule published = open;
  published.id = {"published"};
  published.threshold->origin = ThresholdOrigin::published;
  book.rules = {open, published};
  return test::smallKnowledge(std::move(book));
}

// A condition, a source, and a rule that is for the one and cites the other.
OwnKnowledge screening(const std::string& about = "Tired") {
  OwnKnowledge own;
  own.conditions = {test::condition("own-tired")};
  own.conditions[0].about = about;
  own.sources = {{{"own-talk"}, about + ", a talk", SourceKind::practice}};
  own.rules = {test::rule("own-slow", Scope::step, Level::watch, {Feature::rise}, "own-tired")};
  own.rules[0].sources = {{"own-talk"}, {"paper"}};
  return own;
}

Movement named(const std::string& id, const std::string& name, std::vector<MovementId> counters = {}) {
  Movement made = test::movement(id, "lying");
  made.name = name;
  made.counters = std::move(counters);
  return made;
}

template <class Value> std::vector<std::string> idsOf(const std::vector<Value>& values) {
  std::vector<std::string> ids;
  for (const Value& value : values)
    ids.push_back(value.id.value);
  return ids;
}

TEST(Exchange, WhatIsNotHereIsTakenAsItCame) {
  const OwnKnowledge came = screening();
  const Merged done = merged(builtIn(), {}, came);
  EXPECT_EQ(done.own, came);
  EXPECT_EQ(done.taken, came);
  EXPECT_EQ(done.alreadyHere + done.renamed, 0);
}

TEST(Exchange, WhatIsHereStays) {
  OwnKnowledge own = screening();
  own.movements = {named("own-swim", "Swim")};
  const Merged done = merged(builtIn(), own, own);
  EXPECT_EQ(done.own, own);
  EXPECT_TRUE(done.taken.empty());
  EXPECT_EQ(done.alreadyHere, 4);
}

TEST(Exchange, AnIdThatIsSomethingElsesIsMadeAnewWhereItIsNamedToo) {
  const OwnKnowledge own = screening("Mine"), came = screening("Hers");
  const Merged done = merged(builtIn(), own, came);
  EXPECT_THAT(idsOf(done.own.conditions), ElementsAre("own-tired", "own-tired-2"));
  EXPECT_EQ(done.own.conditions[0], own.conditions[0]);
  EXPECT_EQ(done.own.conditions[1].about, "Hers");
  EXPECT_THAT(idsOf(done.own.sources), ElementsAre("own-talk", "own-talk-2"));
  ASSERT_THAT(idsOf(done.own.rules), ElementsAre("own-slow", "own-slow-2"));
  EXPECT_EQ(done.own.rules[0], own.rules[0]);
  EXPECT_EQ(done.own.rules[1].condition->value, "own-tired-2");
  EXPECT_EQ(done.own.rules[1].sources, (std::vector<SourceId>{{"own-talk-2"}, {"paper"}}));
  EXPECT_EQ(done.renamed, 3);
}

// The rule is the same in every letter, but the condition that it is for is another one.
TEST(Exchange, ARuleForAnotherConditionOfTheSameIdIsAnotherRule) {
  OwnKnowledge own = screening(), came = screening();
  came.conditions[0].about = "Another tiredness";
  const Merged done = merged(builtIn(), own, came);
  ASSERT_THAT(idsOf(done.own.rules), ElementsAre("own-slow", "own-slow-2"));
  EXPECT_EQ(done.own.rules[0].condition->value, "own-tired");
  EXPECT_EQ(done.own.rules[1].condition->value, "own-tired-2");
  EXPECT_EQ(done.own.rules[1].sources.front().value, "own-talk");
}

TEST(Exchange, ARuleWithAFreeIdIsForTheConditionThatCameWithIt) {
  OwnKnowledge own = screening("Mine"), came = screening("Hers");
  own.rules.clear();
  const Merged done = merged(builtIn(), own, came);
  ASSERT_THAT(idsOf(done.own.rules), ElementsAre("own-slow"));
  EXPECT_EQ(done.own.rules[0].condition->value, "own-tired-2");
}

TEST(Exchange, ANewIdIsNoneThatCameEither) {
  OwnKnowledge own = screening("Mine"), came = screening("Hers");
  came.conditions.push_back(test::condition("own-tired-2"));
  const Merged done = merged(builtIn(), own, came);
  EXPECT_THAT(idsOf(done.own.conditions), ElementsAre("own-tired", "own-tired-3", "own-tired-2"));
  EXPECT_EQ(done.own.rules[1].condition->value, "own-tired-3");
}

TEST(Exchange, ComingTwiceIsTakenOnce) {
  OwnKnowledge own = screening("Mine"), came = screening("Hers");
  own.movements = {named("own-swim", "Mine"), named("own-dive", "Mine")};
  came.movements = {named("own-swim", "Hers", {{"own-dive"}}), named("own-dive", "Hers", {{"own-swim"}})};
  const Merged once = merged(builtIn(), own, came), twice = merged(builtIn(), once.own, came);
  EXPECT_THAT(idsOf(once.own.movements), ElementsAre("own-swim", "own-dive", "own-swim-2", "own-dive-2"));
  EXPECT_EQ(twice.own, once.own);
  EXPECT_TRUE(twice.taken.empty());
  EXPECT_EQ(twice.alreadyHere, 5);
}

TEST(Exchange, MovementsThatNameEachOtherKeepDoingSo) {
  OwnKnowledge own, came;
  own.movements = {named("own-swim", "Mine")};
  came.movements = {named("own-swim", "Hers", {{"own-dive"}, {"curl"}}), named("own-dive", "Dive", {{"own-swim"}})};
  const Merged done = merged(builtIn(), own, came);
  ASSERT_THAT(idsOf(done.own.movements), ElementsAre("own-swim", "own-swim-2", "own-dive"));
  EXPECT_EQ(done.own.movements[1].counters, (std::vector<MovementId>{{"own-dive"}, {"curl"}}));
  EXPECT_EQ(done.own.movements[2].counters, (std::vector<MovementId>{{"own-swim-2"}}));
}

// Both dives are alike, but they are countered by different swims.
TEST(Exchange, AMovementThatNamesAnotherOneOfTheSameIdIsAnotherMovement) {
  OwnKnowledge own, came;
  own.movements = {named("own-swim", "Mine"), named("own-dive", "Dive", {{"own-swim"}})};
  came.movements = {named("own-swim", "Hers"), named("own-dive", "Dive", {{"own-swim"}})};
  const Merged done = merged(builtIn(), own, came);
  ASSERT_THAT(idsOf(done.own.movements), ElementsAre("own-swim", "own-dive", "own-swim-2", "own-dive-2"));
  EXPECT_EQ(done.own.movements[3].counters, (std::vector<MovementId>{{"own-swim-2"}}));
}

TEST(Exchange, MovementsThatNameEachOtherAndAreHereStay) {
  OwnKnowledge own;
  own.movements = {named("own-swim", "Swim", {{"own-dive"}}), named("own-dive", "Dive", {{"own-swim"}})};
  EXPECT_EQ(merged(builtIn(), own, own).own, own);
}

TEST(Exchange, OnesOwnThresholdsStayAsTheyAre) {
  OwnKnowledge own, came;
  came.thresholds = {{{"open"}, 40}, {{"published"}, 40}, {{"gone"}, 40}};
  const Merged fresh = merged(builtIn(), own, came);
  EXPECT_EQ(fresh.own.thresholds, (std::map<RuleId, double>{{{"open"}, 40}}));
  EXPECT_EQ(fresh.taken.thresholds, fresh.own.thresholds);
  EXPECT_THAT(fresh.idleThresholds, ElementsAre(RuleId{"gone"}, RuleId{"published"}));
  own.thresholds = {{{"open"}, 60}};
  const Merged kept = merged(builtIn(), own, came);
  EXPECT_EQ(kept.own.thresholds, own.thresholds);
  EXPECT_THAT(kept.keptThresholds, ElementsAre(RuleId{"open"}));
  EXPECT_EQ(merged(builtIn(), own, own).alreadyHere, 1);
}

TEST(Exchange, AThingIsGivenWithWhatItNeeds) {
  OwnKnowledge own = screening();
  own.conditions.push_back(test::condition("own-other"));
  own.sources.push_back({{"own-book"}, "A book", SourceKind::study});
  own.rules.push_back(test::rule("own-low", Scope::step, Level::watch, {Feature::inverted}));
  const OwnKnowledge whole = screening();
  EXPECT_EQ(withWhatItNames(own, RuleId{"own-slow"}), whole);
  EXPECT_EQ(withWhatItNames(own, ConditionId{"own-tired"}), whole);
  const OwnKnowledge alone = withWhatItNames(own, RuleId{"own-low"});
  EXPECT_THAT(idsOf(alone.rules), ElementsAre("own-low"));
  EXPECT_TRUE(alone.conditions.empty() && alone.sources.empty());
  EXPECT_THAT(idsOf(withWhatItNames(own, ConditionId{"own-other"}).conditions), ElementsAre("own-other"));
  EXPECT_TRUE(withWhatItNames(own, RuleId{"open"}).empty());
  own.movements = {named("own-swim", "Swim", {{"own-dive"}}), named("own-dive", "Dive", {{"own-swim"}}),
                   named("own-apart", "Apart")};
  EXPECT_THAT(idsOf(withWhatItNames(own, MovementId{"own-dive"}).movements), ElementsAre("own-dive", "own-swim"));
  EXPECT_THAT(screeningOf(own).movements, IsEmpty());
  EXPECT_EQ(screeningOf(own).rules, own.rules);
}

} // namespace
} // namespace matwright
