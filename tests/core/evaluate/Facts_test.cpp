#include "core/evaluate/Facts.h"
#include "tests/support/RestingPoses.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

class FactsTest : public testing::Test {
protected:
  std::vector<StepFacts> of(std::vector<Step> steps, FeatureSet avoid = {}) const {
    const Ways ways(knowledge_.transitions, avoid);
    return factsOf(knowledge_,
                   scheduleOf(knowledge_.catalogue, knowledge_.transitions, ways, classOf(std::move(steps))));
  }
  Knowledge knowledge_ = smallKnowledge();
};

const FeatureSet kLying{Feature::supine, Feature::reclineFlat};

TEST_F(FactsTest, FeaturesAreThoseOfTheMovementAndItsPositions) {
  const StepFacts curl = of({step(1, "curl")})[0];
  EXPECT_EQ(curl.features, (kLying | FeatureSet{Feature::flexLoad, Feature::neckLift}));
  EXPECT_EQ(curl.shapeFeatures, kLying);
  EXPECT_EQ(of({step(1, "arch")})[0].features, (FeatureSet{Feature::wristLoad, Feature::kneel}));
}

TEST_F(FactsTest, BothPositionsCountWhereAMovementStartsAndEndsInTwo) {
  knowledge_.transitions = TransitionGraph(
      {position("lying", Elevation::faceUp, kLying), position("sit", Elevation::sitting, {Feature::hipFlex90})}, {});
  EXPECT_EQ(of({step(1, "roll")})[0].features, (kLying | FeatureSet{Feature::hipFlex90, Feature::flexLoad}));
}

TEST_F(FactsTest, BothSidesCountThoughTheyMayDiffer) {
  knowledge_.transitions =
      TransitionGraph({position("side-left", Elevation::sideLying, {Feature::sidelie}, "side-right"),
                       position("side-right", Elevation::sideLying, {Feature::sidelie, Feature::armOver}, "side-left")},
                      {change("side-left", "side-right", 6)});
  EXPECT_EQ(of({step(1, "kick")})[0].features, (FeatureSet{Feature::sidelie, Feature::armOver}));
  EXPECT_EQ(of({onlySide(step(1, "kick"), Side::left)})[0].features, FeatureSet{Feature::sidelie});
}

TEST_F(FactsTest, AnOptionTakesAwayAndAdds) {
  EXPECT_EQ(of({step(1, "curl", "low")})[0].features, kLying);
  EXPECT_EQ(of({step(1, "curl", "hard")})[0].features,
            (kLying | FeatureSet{Feature::flexLoad, Feature::neckLift, Feature::legsLong}));
}

TEST_F(FactsTest, AnOptionMayTakeAwayWhatComesFromThePosition) {
  std::vector<Movement> movements = smallMovements();
  movements[0].options[0].removes = kLying;
  knowledge_.catalogue = Catalogue(movements);
  const auto facts = of({step(1, "curl", "low"), step(2, "curl")});
  EXPECT_EQ(facts[0].features, (FeatureSet{Feature::flexLoad, Feature::neckLift}));
  EXPECT_TRUE(facts[0].shapeFeatures.empty());
  EXPECT_TRUE(facts[0].restFeatures.empty());
  EXPECT_TRUE(facts[1].restFeatures.empty()); // they were not lying before, whatever the position says
}

TEST_F(FactsTest, AnUnknownOptionTakesNothingAway) {
  EXPECT_EQ(of({step(1, "curl", "gone")})[0].features, of({step(1, "curl")})[0].features);
}

TEST_F(FactsTest, WayFeaturesAreThoseOfTheWayInAndOfTheTurn) {
  const auto facts = of({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  EXPECT_TRUE(facts[0].wayFeatures.empty());
  EXPECT_EQ(facts[1].wayFeatures, (FeatureSet{Feature::flexLoad, Feature::rise}));
  EXPECT_EQ(facts[2].wayFeatures, FeatureSet{Feature::rise});
  knowledge_.transitions = TransitionGraph(
      smallPositions(), {change("lying", "side-left", 4), change("side-left", "side-right", 6, {Feature::neckEnd})});
  EXPECT_EQ(of({step(1, "curl"), step(2, "kick")})[1].wayFeatures, FeatureSet{Feature::neckEnd});
}

TEST_F(FactsTest, WhatBothRestingShapesHaveLastsThroughTheGap) {
  EXPECT_EQ(of({step(1, "curl"), step(2, "curl")})[1].restFeatures, kLying);
  EXPECT_TRUE(of({step(1, "curl"), step(2, "arch")})[1].restFeatures.empty());
}

TEST_F(FactsTest, BeforeTheFirstStepPeopleRestWhereItStarts) {
  EXPECT_EQ(of({step(1, "curl")})[0].restFeatures, kLying);
}

TEST_F(FactsTest, WhatTheWayBetweenDoesNotHaveDoesNotLast) {
  // From hands and knees over sitting to a front support: the hands bear weight before and after, not between.
  std::vector<Position> positions = smallPositions();
  positions.push_back(position("plank", Elevation::handsAndKnees, {Feature::wristLoad}));
  std::vector<Movement> movements = smallMovements();
  movements.push_back(movement("hold", "plank"));
  knowledge_.catalogue = Catalogue(movements);
  Step hold = stepOf(StepId{2}, movements.back());
  knowledge_.transitions = TransitionGraph(positions, {change("four", "sit", 3), change("sit", "plank", 3)});
  EXPECT_TRUE(of({step(1, "arch"), hold})[1].restFeatures.empty());
  knowledge_.transitions = TransitionGraph(positions, {change("four", "plank", 3)});
  EXPECT_EQ(of({step(1, "arch"), hold})[1].restFeatures, FeatureSet{Feature::wristLoad});
}

TEST_F(FactsTest, TimesAndRepetitionsAreThoseOfTheSchedule) {
  const auto facts = of({step(1, "curl"), step(2, "kick")});
  EXPECT_EQ(facts[0].gap, Seconds(4));
  EXPECT_EQ(facts[0].work, Seconds(30));
  EXPECT_EQ(facts[0].repetitions, 5);
  EXPECT_EQ(facts[1].gap, Seconds(6));
  EXPECT_EQ(facts[1].work, Seconds(60));
  EXPECT_EQ(facts[1].repetitions, 10); // both sides
}

TEST_F(FactsTest, WorkBeginsAndEndsWhereTheScheduleHasIt) {
  // curl: gap 4, work 30; kick: lying to its side 4, gap 6 with settling, 30 a side and 6 to turn between.
  const auto facts = of({step(1, "curl"), step(2, "kick")});
  EXPECT_EQ(facts[0].workBegin, Seconds(4));
  EXPECT_EQ(workEnd(facts[0]), Seconds(34));
  EXPECT_EQ(facts[1].workBegin, Seconds(40));
  EXPECT_EQ(facts[1].turning, Seconds(6));
  EXPECT_EQ(workEnd(facts[1]), Seconds(106));
}

TEST_F(FactsTest, OneSideIsTheLongerOneOrTheWholeWhereSidesAreNotDoneOneByOne) {
  EXPECT_EQ(of({step(1, "curl")})[0].oneSide, Seconds(30));
  EXPECT_EQ(of({step(1, "kick")})[0].oneSide, Seconds(30));
  EXPECT_EQ(of({onlySide(step(1, "kick"), Side::right)})[0].oneSide, Seconds(30));
  EXPECT_EQ(of({step(1, "swing")})[0].oneSide, Seconds(36)); // alternating: the sides relieve each other
}

TEST_F(FactsTest, EffortIsThatOfTheOption) {
  EXPECT_EQ(of({step(1, "curl")})[0].effort, Effort(4));
  EXPECT_EQ(of({step(1, "curl", "hard")})[0].effort, Effort(7));
  EXPECT_EQ(of({step(1, "handstand")})[0].effort, Effort{});
}

TEST_F(FactsTest, HeightsAreThoseOfAllPositionsItStartsOrEndsASideIn) {
  using Heights = EnumSet<Elevation>;
  EXPECT_EQ(of({step(1, "curl")})[0].at, Heights{Elevation::faceUp});
  EXPECT_EQ(of({step(1, "roll")})[0].at, (Heights{Elevation::faceUp, Elevation::sitting}));
  EXPECT_TRUE(of({step(1, "handstand")})[0].at.empty());
  knowledge_.transitions = TransitionGraph({position("side-left", Elevation::sideLying, {}, "side-right"),
                                            position("side-right", Elevation::kneeling, {}, "side-left")},
                                           {change("side-left", "side-right", 6)});
  EXPECT_EQ(of({step(1, "kick")})[0].at, (Heights{Elevation::sideLying, Elevation::kneeling}));
  EXPECT_EQ(of({onlySide(step(1, "kick"), Side::left)})[0].at, Heights{Elevation::sideLying});
}

TEST_F(FactsTest, AHeightLastsThroughTheGapWhereEveryPositionOnTheWayHasIt) {
  using Heights = EnumSet<Elevation>;
  const auto facts = of({step(1, "curl"), step(2, "curl"), step(3, "arch")});
  EXPECT_EQ(facts[0].restAt, Heights{Elevation::faceUp}); // people rest where it starts
  EXPECT_EQ(facts[1].restAt, Heights{Elevation::faceUp});
  EXPECT_TRUE(facts[2].restAt.empty());
  // From hands and knees over sitting to another shape on hands and knees.
  std::vector<Position> positions = smallPositions();
  positions.push_back(position("plank", Elevation::handsAndKnees));
  std::vector<Movement> movements = smallMovements();
  movements.push_back(movement("hold", "plank"));
  knowledge_.catalogue = Catalogue(movements);
  const Step hold = stepOf(StepId{2}, movements.back());
  knowledge_.transitions = TransitionGraph(positions, {change("four", "sit", 3), change("sit", "plank", 3)});
  EXPECT_TRUE(of({step(1, "arch"), hold})[1].restAt.empty());
  knowledge_.transitions = TransitionGraph(positions, {change("four", "plank", 3)});
  EXPECT_EQ(of({step(1, "arch"), hold})[1].restAt, Heights{Elevation::handsAndKnees});
}

// On the back with legs lifted: straight legs 30 degrees above the floor, and the same bent, as an option.
Movement legsLifted() {
  Movement lift = movement("lift", "lying");
  const Pose straight = faceUpLegsLifted(30, 0), bent = faceUpLegsLifted(90, 90);
  lift.poses = {straight, straight};
  Option tabletop;
  tabletop.id = OptionId{"tabletop"};
  tabletop.poses = KeyPoses{bent, bent};
  lift.options = {tabletop};
  return lift;
}

TEST_F(FactsTest, ALeverIsKnownWhereARuleAsksForIt) {
  const Movement lift = legsLifted();
  knowledge_.catalogue = Catalogue({lift});
  Step straight = stepOf(StepId{1}, lift), bent = stepOf(StepId{2}, lift);
  bent.option = OptionId{"tabletop"};
  const Step unknown = step(3, "handstand");
  EXPECT_EQ(of({straight})[0].lever, 0); // nobody asks
  Rule far;
  far.id = RuleId{"far"};
  far.asks.leverFrom = 60;
  knowledge_.rules.rules.push_back(far);
  const auto facts = of({straight, bent, unknown});
  // 30 degrees: (83.27 x cos 30 + .322 x .072 x 1201.725) / 111.13, and 49.7 / 111.13; see the worked examples of
  // core/load.
  EXPECT_EQ(facts[0].lever, 90);
  EXPECT_EQ(facts[1].lever, 45);
  EXPECT_EQ(facts[2].lever, 0);
}

TEST_F(FactsTest, OfAnUnknownMovementOnlyThePositionIsKnown) {
  const auto facts = of({step(1, "curl"), step(2, "handstand"), step(3, "curl")});
  EXPECT_EQ(facts[1].at, EnumSet<Elevation>{Elevation::faceUp});
  EXPECT_EQ(facts[1].features, kLying);
  EXPECT_EQ(facts[1].restFeatures, kLying);
  EXPECT_EQ(facts[2].restFeatures, kLying);
  EXPECT_TRUE(of({step(1, "handstand")})[0].features.empty());
}

} // namespace
} // namespace matwright::test
