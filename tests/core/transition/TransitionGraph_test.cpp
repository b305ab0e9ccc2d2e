#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

std::vector<Change> between(const TransitionGraph& graph, const std::string& from, const std::string& to) {
  std::vector<Change> found;
  for (const Change& each : graph.changes())
    if (each.from.value == from && each.to.value == to)
      found.push_back(each);
  return found;
}

TransitionGraph sidesAnd(std::vector<Change> changes) { return {smallPositions(), std::move(changes)}; }

TEST(TransitionGraph, FindsPositionsById) {
  const TransitionGraph graph(smallPositions(), smallChanges());
  ASSERT_NE(graph.find(PositionId{"four"}), nullptr);
  EXPECT_EQ(graph.find(PositionId{"four"})->elevation, Elevation::handsAndKnees);
  EXPECT_EQ(graph.find(PositionId{"hanging"}), nullptr);
}

TEST(TransitionGraph, MirrorsWhatHasSidesAndNothingElse) {
  const TransitionGraph graph(smallPositions(), smallChanges());
  EXPECT_EQ(graph.mirrored(PositionId{"side-left"}).value, "side-right");
  EXPECT_EQ(graph.mirrored(PositionId{"side-right"}).value, "side-left");
  EXPECT_EQ(graph.mirrored(PositionId{"sit"}).value, "sit");
  const PositionId unknown{"hanging"};
  EXPECT_EQ(graph.mirrored(unknown).value, "hanging");
}

TEST(TransitionGraph, AddsTheOtherSideOfEachChangeThatHasOne) {
  const TransitionGraph graph(smallPositions(), smallChanges());
  // 13 are listed, five of them touch a side.
  EXPECT_EQ(graph.changes().size(), 18u);
  const auto up = between(graph, "side-right", "sit");
  ASSERT_EQ(up.size(), 1u);
  EXPECT_EQ(up[0].cue, "Press up with the left hand.");
  EXPECT_EQ(up[0].seconds, Seconds(5));
  EXPECT_EQ(up[0].features, FeatureSet{Feature::wristLoad});
}

TEST(TransitionGraph, ChangesBetweenSymmetricalPositionsAreUsedAsTheyAre) {
  const TransitionGraph graph = sidesAnd({change("sit", "stand", 6, {}, "Left foot first.")});
  ASSERT_EQ(graph.changes().size(), 1u);
  EXPECT_EQ(graph.changes()[0].cue, "Left foot first.");
}

TEST(TransitionGraph, AChangeFromSideToSideIsMirroredToo) {
  const TransitionGraph graph = sidesAnd({change("side-left", "side-right", 6, {}, "Roll to the right.")});
  ASSERT_EQ(graph.changes().size(), 2u);
  EXPECT_EQ(between(graph, "side-right", "side-left").at(0).cue, "Roll to the left.");
}

TEST(TransitionGraph, WhatIsListedForBothSidesIsTakenAsListed) {
  const TransitionGraph graph =
      sidesAnd({change("side-left", "sit", 5, {}, "one"), change("side-right", "sit", 8, {}, "two")});
  ASSERT_EQ(graph.changes().size(), 2u);
  EXPECT_EQ(between(graph, "side-right", "sit").at(0).seconds, Seconds(8));
}

TEST(TransitionGraph, TwoMeansBetweenTheSamePositionsAreMirroredEach) {
  const TransitionGraph graph = sidesAnd({change("side-left", "sit", 5, {}, "one", "hands"),
                                          change("side-left", "sit", 7, {}, "two", "left forearm"),
                                          change("side-right", "sit", 6, {}, "three", "hands")});
  EXPECT_EQ(graph.changes().size(), 4u);
  const auto other = between(graph, "side-right", "sit");
  ASSERT_EQ(other.size(), 2u);
  EXPECT_EQ(other[0].by, "right forearm");
  EXPECT_EQ(other[0].seconds, Seconds(7));
  EXPECT_EQ(other[1].cue, "three");
}

TEST(TransitionGraph, AMirroredChangeStandsRightAfterItsOriginal) {
  const TransitionGraph graph(smallPositions(), smallChanges());
  for (std::size_t i = 1; i < graph.changes().size(); ++i) {
    const Change& each = graph.changes()[i];
    if (each.from.value == "side-right" || each.to.value == "side-right") {
      const Change& before = graph.changes()[i - 1];
      if (each.from.value == "side-left")
        continue; // listed
      EXPECT_EQ(graph.mirrored(before.from), each.from);
      EXPECT_EQ(graph.mirrored(before.to), each.to);
    }
  }
}

TEST(TransitionGraph, MirroringEveryChangeGivesTheSameChanges) {
  const TransitionGraph graph(smallPositions(), smallChanges());
  std::vector<std::pair<std::string, std::string>> pairs, mirrors;
  for (const Change& each : graph.changes()) {
    pairs.emplace_back(each.from.value, each.to.value);
    mirrors.emplace_back(graph.mirrored(each.from).value, graph.mirrored(each.to).value);
  }
  EXPECT_THAT(mirrors, testing::UnorderedElementsAreArray(pairs));
}

TEST(TransitionGraph, AnEmptyOneKnowsNothing) {
  const TransitionGraph graph;
  EXPECT_EQ(graph.find(PositionId{"sit"}), nullptr);
  EXPECT_EQ(Ways(graph, {}).between(PositionId{"sit"}, PositionId{"sit"}), std::nullopt);
}

TEST(TransitionGraphDeathTest, UnknownPositionsOneSidedMirrorsAndRepeatedIdsAreProgrammersErrors) {
  EXPECT_DEATH(TransitionGraph(smallPositions(), {change("sit", "hanging", 3)}), "");
  EXPECT_DEATH(TransitionGraph({position("a", Elevation::sitting, {}, "b"), position("b", Elevation::sitting)}, {}),
               "");
  EXPECT_DEATH(TransitionGraph({position("a", Elevation::sitting, {}, "b")}, {}), "");
  EXPECT_DEATH(TransitionGraph({position("a", Elevation::sitting), position("a", Elevation::sitting)}, {}), "");
}

} // namespace
} // namespace matwright::test
