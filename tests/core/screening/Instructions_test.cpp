// Written instructions of a clinician: they set the level of what they cover.
#include "core/screening/Screening.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

Clearance instruction(Level sets, FeatureSet features = {}, Date given = kDay) {
  return {given, std::nullopt, "clinician", features, sets, ""};
}
Clearance allowance(FeatureSet features = {}) { return {kDay, std::nullopt, "clinician", features, {}, ""}; }

// What one rule says to somebody with these papers.
Finding heeding(std::vector<Clearance> papers, Level level, FeatureSet asked = {Feature::rot},
                Scope scope = Scope::step) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("r", scope, level, asked, "ache")};
  Person ida = person("ida", {"ache"});
  ida.conditions[0].clearances = std::move(papers);
  StepFacts facts;
  facts.features = asked;
  const std::vector<StepFacts> steps{facts};
  const std::vector<Person> people{ida};
  const auto found = screen(book, people, activeRules(book, people, kDay), steps, kDay);
  EXPECT_EQ(found.size(), 1u);
  return found.empty() ? Finding{} : found[0];
}

TEST(Instructions, SetEveryLevelUpAndDown) {
  for (std::size_t from = 0; from < kWordCount<Level>; ++from)
    for (std::size_t to = 0; to < kWordCount<Level>; ++to) {
      const Finding found = heeding({instruction(static_cast<Level>(to))}, static_cast<Level>(from));
      EXPECT_EQ(found.level, static_cast<Level>(to));
      EXPECT_TRUE(found.instructed);
      EXPECT_FALSE(found.cleared);
      EXPECT_EQ(found.clearance, 0u);
    }
}

TEST(Instructions, OutweighAnOrdinaryClearanceWhicheverComesFirst) {
  for (const std::vector<Clearance>& papers :
       {std::vector{allowance(), instruction(Level::leaveOut, {}, daysAfter(kDay, -90))},
        std::vector{instruction(Level::leaveOut, {}, daysAfter(kDay, -90)), allowance()}}) {
    const Finding found = heeding(papers, Level::askFirst);
    EXPECT_EQ(found.level, Level::leaveOut);
    EXPECT_TRUE(found.instructed);
    EXPECT_FALSE(found.cleared);
    EXPECT_TRUE(papers[found.clearance].sets);
  }
}

TEST(Instructions, TheLatestThatHoldsAndCoversWins) {
  const Clearance old = instruction(Level::leaveOut, {}, daysAfter(kDay, -90));
  const Clearance latest = instruction(Level::watch, {}, daysAfter(kDay, -3));
  EXPECT_EQ(heeding({old, latest}, Level::adapt).level, Level::watch);
  EXPECT_EQ(heeding({latest, old}, Level::adapt).level, Level::watch);
  EXPECT_EQ(heeding({latest, old}, Level::adapt).clearance, 0u);
  const Clearance elsewhere = instruction(Level::adapt, {Feature::kneel});
  EXPECT_EQ(heeding({old, latest, elsewhere}, Level::askFirst).level, Level::watch);
  const Clearance toCome = instruction(Level::adapt, {}, daysAfter(kDay, 1));
  EXPECT_EQ(heeding({old, latest, toCome}, Level::askFirst).level, Level::watch);
  Clearance ended = instruction(Level::adapt, {}, daysAfter(kDay, -2));
  ended.until = daysAfter(kDay, -1);
  EXPECT_EQ(heeding({old, latest, ended}, Level::askFirst).level, Level::watch);
}

TEST(Instructions, OfOneDayTheStrongerWins) {
  const Clearance mild = instruction(Level::watch), strong = instruction(Level::leaveOut);
  EXPECT_EQ(heeding({mild, strong}, Level::adapt).level, Level::leaveOut);
  EXPECT_EQ(heeding({strong, mild}, Level::adapt).level, Level::leaveOut);
}

TEST(Instructions, NamingFeaturesCoverOnlyThose) {
  const Clearance named = instruction(Level::leaveOut, {Feature::rot, Feature::kneel});
  EXPECT_TRUE(heeding({named}, Level::watch, {Feature::rot}).instructed);
  EXPECT_TRUE(heeding({named}, Level::watch, {Feature::rot, Feature::kneel}).instructed);
  const Finding other = heeding({named}, Level::watch, {Feature::rot, Feature::latflex});
  EXPECT_EQ(other.level, Level::watch);
  EXPECT_FALSE(other.instructed);
  EXPECT_EQ(other.clearance, Finding::kNone);
}

TEST(Instructions, NamingFeaturesDoNotCoverTheClassAsAWhole) {
  EXPECT_TRUE(heeding({instruction(Level::watch)}, Level::leaveOut, {}, Scope::wholeClass).instructed);
  EXPECT_FALSE(heeding({instruction(Level::watch, {Feature::rot})}, Level::leaveOut, {}, Scope::wholeClass).instructed);
}

TEST(Instructions, ThatSayWhatTheRuleSaysAreStillNamed) {
  const Finding found = heeding({instruction(Level::adapt)}, Level::adapt);
  EXPECT_EQ(found.level, Level::adapt);
  EXPECT_TRUE(found.instructed);
}

TEST(Instructions, SpeakForTheirOwnConditionAlone) {
  RuleBook book;
  book.conditions = {condition("ache"), condition("pang")};
  book.rules = {rule("one", Scope::step, Level::askFirst, {Feature::rot}, "ache"),
                rule("two", Scope::step, Level::askFirst, {Feature::rot}, "pang"),
                rule("age", Scope::step, Level::askFirst, {Feature::rot})};
  book.rules[2].ages = {AgeBand::from65};
  Person ida = person("ida", {"ache", "pang"});
  ida.ageBand = AgeBand::from65;
  ida.conditions[0].clearances = {instruction(Level::watch)};
  StepFacts facts;
  facts.features = {Feature::rot};
  const std::vector<StepFacts> steps{facts};
  const std::vector<Person> people{ida};
  const auto found = screen(book, people, activeRules(book, people, kDay), steps, kDay);
  ASSERT_EQ(found.size(), 3u);
  EXPECT_EQ(found[0].rule, 1u);
  EXPECT_EQ(found[1].rule, 2u);
  EXPECT_EQ(found[1].condition, Finding::kNone);
  EXPECT_EQ(found[2].rule, 0u);
  for (const Finding& each : found)
    EXPECT_EQ(each.instructed, each.rule == 0);
}

TEST(Clearances, NameTheOneThatLowered) {
  const Finding found = heeding({allowance({Feature::kneel}), allowance(), allowance()}, Level::askFirst);
  EXPECT_TRUE(found.cleared);
  EXPECT_EQ(found.clearance, 1u);
  EXPECT_EQ(heeding({allowance()}, Level::adapt).clearance, Finding::kNone);
}

} // namespace
} // namespace matwright::test
