#include "core/evaluate/ClassLoad.h"
#include "tests/support/RestingPoses.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

constexpr auto kHip = static_cast<std::size_t>(LoadedJoint::hip);
constexpr auto kLowBack = static_cast<std::size_t>(LoadedJoint::lowBack);

Pose straightLegs(double hip) {
  Pose pose = faceUpBent();
  for (LegAngles& leg : pose.legs)
    leg = {.hip = hip, .knee = 0};
  pose.on = {Contact::back, Contact::head};
  return pose;
}

// The small knowledge with legs that are lowered, by each movement to another height.
const Knowledge& lowering() {
  static const Knowledge knowledge = [] {
    Knowledge made = smallKnowledge();
    std::vector<Movement> movements = made.catalogue.movements();
    double lowest = 60;
    for (Movement& movement : movements)
      movement.poses = {straightLegs(90), straightLegs(lowest -= 5)};
    made.catalogue = Catalogue(std::move(movements));
    return made;
  }();
  return knowledge;
}

ClassLoad loadFor(const ClassPlan& plan) {
  const Knowledge& knowledge = lowering();
  const Schedule schedule =
      scheduleOf(knowledge.catalogue, knowledge.transitions, Ways(knowledge.transitions, {}), plan);
  return loadOf(*knowledge.loads, schedule, plan);
}

TEST(ClassLoad, AddsMeansOverTheTimeOfWorkAndFindsThePeak) {
  const ClassLoad load = loadFor(classOf({step(1, "curl"), step(2, "swing"), step(3, "kick"), step(4, "nothing")}));
  ASSERT_EQ(load.steps.size(), 4u);
  EXPECT_GT(load.steps[0].mean[kLowBack], 0);
  // curl 30 s, swing 36 s, kick 2 x 30 s; see Balance.OfAClassWorkedOutByHand
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    EXPECT_NEAR(load.momentSeconds[i],
                30 * load.steps[0].mean[i] + 36 * load.steps[1].mean[i] + 60 * load.steps[2].mean[i], 1e-12);
  EXPECT_EQ(load.steps[3], StepLoad{}); // not in the catalogue
  const auto heaviest = heaviestStep(load, LoadedJoint::lowBack);
  ASSERT_TRUE(heaviest);
  EXPECT_EQ(load.steps[*heaviest].peak[kLowBack], load.peak[kLowBack]);
  for (const StepLoad& each : load.steps)
    EXPECT_LE(each.peak[kLowBack], load.peak[kLowBack]);
}

TEST(ClassLoad, OfTwoStepsThatAreAlikeTheFirstIsTheHeaviest) {
  ClassLoad load;
  load.steps.resize(3);
  EXPECT_EQ(heaviestStep(load, LoadedJoint::hip), std::nullopt);
  load.steps[1].peak[kHip] = load.steps[2].peak[kHip] = 0.02;
  EXPECT_EQ(heaviestStep(load, LoadedJoint::hip), 1u);
  EXPECT_EQ(heaviestStep(load, LoadedJoint::shoulder), std::nullopt);
  EXPECT_EQ(heaviestStep({}, LoadedJoint::hip), std::nullopt);
}

TEST(ClassLoad, GoesByTheTempoOfTheStep) {
  Step held = step(1, "curl");
  const StepLoad usual = loadFor(classOf({held})).steps[0];
  held.tempo = {Seconds(0.5), {{Breath::out, 2}, {Breath::hold, 20}, {Breath::in, 2}}};
  const StepLoad holding = loadFor(classOf({held})).steps[0];
  EXPECT_GT(holding.mean[kHip], usual.mean[kHip] * 1.2); // the legs stay low
  EXPECT_NEAR(holding.peak[kHip], usual.peak[kHip], 1e-9);
  held.tempo.secondsPerCount = Seconds(2);
  EXPECT_EQ(loadFor(classOf({held})).steps[0], holding); // shares of time alone count
}

} // namespace
} // namespace matwright::test
