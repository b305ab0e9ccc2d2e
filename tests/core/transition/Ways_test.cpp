#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;

class WaysTest : public testing::Test {
protected:
  Way way(const std::string& from, const std::string& to, FeatureSet avoid = {}) const {
    const auto found = Ways(graph_, avoid).between(PositionId{from}, PositionId{to});
    EXPECT_TRUE(found) << from << " -> " << to;
    return found.value_or(Way{});
  }
  // The positions passed, the last one included.
  std::vector<std::string> stops(const std::string& from, const std::string& to, FeatureSet avoid = {}) const {
    std::vector<std::string> passed;
    for (const Change* each : way(from, to, avoid).changes)
      passed.push_back(each->to.value);
    return passed;
  }
  TransitionGraph graph_{smallPositions(), smallChanges()};
};

TEST_F(WaysTest, FromAPositionToItselfNothingHappens) {
  EXPECT_EQ(way("sit", "sit"), Way{});
  EXPECT_EQ(way("sit", "sit", {Feature::rise}), Way{});
}

// lying -4-> sit -6-> stand
TEST_F(WaysTest, LyingToStandingGoesStraightUp) {
  EXPECT_THAT(stops("lying", "stand"), ElementsAre("sit", "stand"));
  EXPECT_EQ(way("lying", "stand").seconds, Seconds(10));
  EXPECT_EQ(way("lying", "stand").features, (FeatureSet{Feature::flexLoad, Feature::rise}));
}

// lying -4-> side-left -5-> sit -6-> stand
TEST_F(WaysTest, AvoidingLoadedBendingRollsToTheSideFirst) {
  EXPECT_THAT(stops("lying", "stand", {Feature::flexLoad}), ElementsAre("side-left", "sit", "stand"));
  EXPECT_EQ(way("lying", "stand", {Feature::flexLoad}).seconds, Seconds(15));
  EXPECT_TRUE(way("lying", "stand", {Feature::flexLoad}).unavoided.empty());
}

// stand -2-> sit -3-> lying, and -2-> sit -5-> side-left -4-> lying
TEST_F(WaysTest, TheWayDownIsNotTheWayUpReversed) {
  EXPECT_EQ(way("stand", "lying").seconds, Seconds(5));
  EXPECT_EQ(way("stand", "lying", {Feature::flexLoad}).seconds, Seconds(11));
}

TEST_F(WaysTest, WhatCannotBeAvoidedIsSaid) {
  const Way up = way("lying", "stand", {Feature::rise, Feature::flexLoad});
  EXPECT_EQ(up.seconds, Seconds(15));
  EXPECT_EQ(up.unavoided, FeatureSet{Feature::rise});
}

// Straight up bends, over the side loads the wrist: one offence each, and straight up is shorter.
TEST_F(WaysTest, AmongEqualOffencesTheShorterWayWins) {
  const Way up = way("lying", "sit", {Feature::flexLoad, Feature::wristLoad});
  EXPECT_EQ(up.seconds, Seconds(4));
  EXPECT_EQ(up.unavoided, FeatureSet{Feature::flexLoad});
}

TEST_F(WaysTest, FewerOffencesWinOverAnyNumberOfSeconds) {
  const TransitionGraph graph(smallPositions(), {change("lying", "sit", 1, {Feature::flexLoad}),
                                                 change("lying", "four", 500), change("four", "sit", 500)});
  EXPECT_EQ(Ways(graph, {Feature::flexLoad}).between(PositionId{"lying"}, PositionId{"sit"})->seconds, Seconds(1000));
}

// Over the left or the right side takes 9 s either way.
TEST_F(WaysTest, AmongEqualWaysTheChangeListedFirstWins) {
  EXPECT_THAT(stops("lying", "sit", {Feature::flexLoad}), ElementsAre("side-left", "sit"));
  const TransitionGraph rightFirst(smallPositions(),
                                   {change("lying", "side-right", 4), change("side-right", "sit", 5)});
  const auto way = Ways(rightFirst, {}).between(PositionId{"lying"}, PositionId{"sit"});
  ASSERT_TRUE(way);
  EXPECT_EQ(way->changes.front()->to.value, "side-right");
}

TEST_F(WaysTest, AmongTwoMeansTheOneWithoutTheAvoidedFeatureIsTaken) {
  const TransitionGraph graph(smallPositions(), {change("side-left", "sit", 5, {Feature::wristLoad}, "push", "hands"),
                                                 change("side-left", "sit", 7, {}, "lean", "forearm")});
  const PositionId from{"side-left"}, to{"sit"};
  EXPECT_EQ(Ways(graph, {}).between(from, to)->changes.at(0)->by, "hands");
  EXPECT_EQ(Ways(graph, {Feature::wristLoad}).between(from, to)->changes.at(0)->by, "forearm");
}

TEST_F(WaysTest, BothSidesAreTheSameWithTheCuesExchanged) {
  const Way left = way("side-left", "stand");
  const Way right = way("side-right", "stand");
  EXPECT_EQ(left.seconds, Seconds(11));
  EXPECT_EQ(right.seconds, left.seconds);
  EXPECT_EQ(left.changes.at(0)->cue, "Press up with the right hand.");
  EXPECT_EQ(right.changes.at(0)->cue, "Press up with the left hand.");
}

TEST_F(WaysTest, NothingLeadsWhereNoChangeLeads) {
  const TransitionGraph graph(smallPositions(), {change("lying", "sit", 4)});
  const Ways ways(graph, {});
  EXPECT_TRUE(ways.between(PositionId{"lying"}, PositionId{"sit"}));
  EXPECT_FALSE(ways.between(PositionId{"sit"}, PositionId{"lying"}));
  EXPECT_FALSE(ways.between(PositionId{"stand"}, PositionId{"lying"}));
}

TEST_F(WaysTest, UnknownPositionsHaveNoWayEvenToThemselves) {
  const Ways ways(graph_, {});
  EXPECT_FALSE(ways.between(PositionId{"hanging"}, PositionId{"sit"}));
  EXPECT_FALSE(ways.between(PositionId{"sit"}, PositionId{"hanging"}));
  EXPECT_FALSE(ways.between(PositionId{"hanging"}, PositionId{"hanging"}));
}

TEST_F(WaysTest, ChangesThatTakeNoTimeLeadNobodyInCircles) {
  const TransitionGraph graph(smallPositions(), {change("sit", "four", 0), change("four", "sit", 0),
                                                 change("four", "stand", 0), change("stand", "four", 0)});
  const auto way = Ways(graph, {}).between(PositionId{"sit"}, PositionId{"stand"});
  ASSERT_TRUE(way);
  EXPECT_EQ(way->changes.size(), 2u);
}

TEST_F(WaysTest, KnowsWhatItAvoids) {
  const FeatureSet avoid{Feature::rise, Feature::kneel};
  EXPECT_EQ(Ways(graph_, avoid).avoided(), avoid);
}

} // namespace
} // namespace matwright::test
