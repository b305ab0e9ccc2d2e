#include "core/knowledge/OwnKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::ElementsAre;

Rule summed(const std::string& id, double amount, ThresholdOrigin origin) {
  Rule made = test::rule(id, Scope::total, Level::watch, {Feature::flexLoad});
  made.threshold = Threshold{amount, MeasureUnit::seconds, origin, amount};
  return made;
}

Knowledge builtIn() {
  RuleBook book;
  book.conditions = {test::condition("back")};
  book.sources = {{{"paper"}, "Paper", SourceKind::study}};
  book.rules = {summed("open", 100, ThresholdOrigin::ours), summed("published", 100, ThresholdOrigin::published),
                test::rule("plain", Scope::step, Level::adapt, {Feature::flexLoad})};
  return test::smallKnowledge(std::move(book));
}

template <class Value> std::vector<std::string> idsOf(const std::vector<Value>& values) {
  std::vector<std::string> ids;
  for (const Value& value : values)
    ids.push_back(value.id.value);
  return ids;
}

TEST(OwnKnowledge, ComesAfterWhatComesWithTheProgram) {
  OwnKnowledge own;
  own.movements = {test::movement("own-swim", "lying"), test::movement("own-arch", "four")};
  own.conditions = {test::condition("own-tired")};
  own.sources = {{{"own-talk"}, "A talk", SourceKind::practice}};
  own.rules = {test::rule("own-slow", Scope::step, Level::watch, {Feature::rise})};
  const Knowledge all = layered(builtIn(), own);
  EXPECT_THAT(idsOf(all.catalogue.movements()),
              ElementsAre("curl", "kick", "swing", "arch", "roll", "fold", "own-swim", "own-arch"));
  EXPECT_EQ(all.catalogue.find({"own-arch"})->start.value, "four");
  EXPECT_THAT(idsOf(all.rules.conditions), ElementsAre("back", "own-tired"));
  EXPECT_THAT(idsOf(all.rules.sources), ElementsAre("paper", "own-talk"));
  EXPECT_THAT(idsOf(all.rules.rules), ElementsAre("open", "published", "plain", "own-slow"));
  EXPECT_NE(all.transitions.find({"four"}), nullptr);
}

TEST(OwnKnowledge, ThatIsEmptyChangesNothing) {
  const Knowledge before = builtIn(), all = layered(before, {});
  EXPECT_TRUE(OwnKnowledge{}.empty());
  EXPECT_EQ(all.catalogue.movements(), before.catalogue.movements());
  EXPECT_EQ(all.rules.rules, before.rules.rules);
}

TEST(OwnKnowledge, SetsOnlyThresholdsThatAreOurs) {
  OwnKnowledge own;
  own.thresholds = {{{"open"}, 40}, {{"published"}, 40}, {{"plain"}, 40}, {{"gone"}, 40}};
  const Knowledge all = layered(builtIn(), own);
  EXPECT_EQ(all.rules.rules[0].threshold->amount, 40);
  EXPECT_EQ(all.rules.rules[0].threshold->usual, 100);
  EXPECT_EQ(all.rules.rules[1].threshold->amount, 100);
  EXPECT_FALSE(all.rules.rules[2].threshold);
  EXPECT_EQ(all.rules.rules.size(), 3u);
}

TEST(OwnKnowledge, HasIdsOfItsOwn) {
  EXPECT_TRUE(isOwn(MovementId{"own-swim"}));
  EXPECT_FALSE(isOwn(MovementId{"owner"}));
  EXPECT_FALSE(isOwn(MovementId{}));
  OwnKnowledge own;
  own.movements = {test::movement("own-swim", "lying"), test::movement("own-swim-2", "lying")};
  const Knowledge all = layered(builtIn(), own);
  EXPECT_EQ(mintMovementId(all, "Swim").value, "own-swim-3");
  EXPECT_EQ(mintMovementId(all, "Curl").value, "own-curl");
  EXPECT_EQ(mintMovementId(all, "Own way").value, "own-way");
  EXPECT_EQ(mintMovementId(all, "!?").value, "own-movement");
  EXPECT_EQ(mintMovementId(all, "Own!").value, "own-own");
  EXPECT_EQ(mintConditionId(all, "").value, "own-condition");
  EXPECT_EQ(mintSourceId(all, "Paper, 2019").value, "own-paper-2019");
  EXPECT_EQ(mintRuleId(all, "Open").value, "own-open");
}

TEST(OwnKnowledge, HasIdsThatFilesTake) {
  const std::string minted = mintMovementId(builtIn(), std::string(99, 'a') + " " + std::string(400, 'b')).value;
  EXPECT_EQ(minted, "own-" + std::string(99, 'a'));
}

TEST(OwnKnowledge, GivesOptionsIdsWithinTheirMovement) {
  const Movement curl = *builtIn().catalogue.find({"curl"});
  EXPECT_EQ(mintOptionId(curl, "Low").value, "low-2");
  EXPECT_EQ(mintOptionId(curl, "Feet on a chair").value, "feet-on-a-chair");
  EXPECT_EQ(mintOptionId(curl, " ").value, "option");
}

// Two movements of which one needs the other, and two rules of which one is for a condition and cites a source.
OwnKnowledge joined() {
  OwnKnowledge own;
  own.movements = {test::movement("own-swim", "lying"), test::movement("own-dive", "lying")};
  own.movements[1].prerequisites = {{"own-swim"}, {"curl"}};
  own.movements[1].counters = {{"own-swim"}};
  own.conditions = {test::condition("own-tired")};
  own.sources = {{{"own-talk"}, "A talk", SourceKind::practice}};
  own.rules = {test::rule("own-slow", Scope::step, Level::watch, {Feature::rise}, "own-tired"),
               test::rule("own-low", Scope::step, Level::watch, {Feature::inverted})};
  own.rules[1].sources = {{"own-talk"}};
  own.rules[1].strength = Strength::consensus;
  return own;
}

TEST(OwnKnowledge, KnowsWhatRefersToAThing) {
  const OwnKnowledge own = joined();
  EXPECT_EQ(usesOf(own, MovementId{"own-swim"}), (Uses{{{"own-dive"}}, {}}));
  EXPECT_TRUE(usesOf(own, MovementId{"own-dive"}).empty());
  EXPECT_EQ(usesOf(own, ConditionId{"own-tired"}), (Uses{{}, {{"own-slow"}}}));
  EXPECT_EQ(usesOf(own, SourceId{"own-talk"}), (Uses{{}, {{"own-low"}}}));
}

TEST(OwnKnowledge, IsWithoutAThingAndWhatReferredToIt) {
  const OwnKnowledge own = joined();
  const OwnKnowledge unswum = without(own, MovementId{"own-swim"});
  EXPECT_THAT(idsOf(unswum.movements), ElementsAre("own-dive"));
  EXPECT_EQ(unswum.movements[0].prerequisites, std::vector<MovementId>{{"curl"}});
  EXPECT_TRUE(unswum.movements[0].counters.empty());
  const OwnKnowledge untired = without(own, ConditionId{"own-tired"});
  EXPECT_TRUE(untired.conditions.empty());
  EXPECT_THAT(idsOf(untired.rules), ElementsAre("own-low"));
  const OwnKnowledge untold = without(own, SourceId{"own-talk"});
  EXPECT_TRUE(untold.sources.empty() && untold.rules[1].sources.empty());
  EXPECT_EQ(untold.rules[1].strength, Strength::practice);
  EXPECT_THAT(idsOf(without(own, RuleId{"own-slow"}).rules), ElementsAre("own-low"));
}

TEST(OwnKnowledge, ACopyOfAConditionBringsItsRulesUnderIdsOfTheirOwn) {
  Knowledge all = builtIn();
  all.rules.rules[0].condition = all.rules.rules[2].condition = ConditionId{"back"};
  all.rules.rules[0].threshold->usual = 7;
  const OwnKnowledge copy = copyWithRules(all, {"back"}, "My back");
  EXPECT_THAT(idsOf(copy.conditions), ElementsAre("own-back"));
  EXPECT_EQ(copy.conditions[0].name, "My back");
  EXPECT_THAT(idsOf(copy.rules), ElementsAre("own-open", "own-plain"));
  for (const Rule& rule : copy.rules)
    EXPECT_EQ(rule.condition, ConditionId{"own-back"});
  EXPECT_EQ(copy.rules[0].threshold->usual, copy.rules[0].threshold->amount);
  const OwnKnowledge again = copyWithRules(layered(all, copy), {"back"}, "My back");
  EXPECT_THAT(idsOf(again.conditions), ElementsAre("own-back-2"));
  EXPECT_THAT(idsOf(again.rules), ElementsAre("own-open-2", "own-plain-2"));
  EXPECT_TRUE(copyWithRules(all, {"unknown"}, "x").empty());
}

} // namespace
} // namespace matwright
