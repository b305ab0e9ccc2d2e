#include "core/load/MovementLoad.h"
#include "tests/support/RestingPoses.h"

#include <cmath>
#include <gmock/gmock.h>
#include <thread>

namespace matwright {
namespace {

constexpr std::size_t kLowBack = index(LoadedJoint::lowBack);
constexpr std::size_t kHip = index(LoadedJoint::hip);

Pose legs(double thigh, double knee) { return test::faceUpLegsLifted(thigh, knee); }

Tempo thereAndBack(int there = 3, int back = 3) { return {Seconds(1), {{Breath::out, there}, {Breath::in, back}}}; }

Movement lowering() {
  Movement movement;
  movement.poses = {legs(90, 0), legs(30, 0)};
  movement.tempo = thereAndBack();
  return movement;
}

TEST(MovementLoad, AHeldShapeWeighsTheSameAllTheTime) {
  const MovementLoad load = loadOf({legs(90, 90), legs(90, 90)}, thereAndBack(), BodyTable::winter);
  const double held = jointMoments(settled(legs(90, 90)), BodyTable::winter).lowBack;
  EXPECT_NEAR(load.peak[kLowBack], held, 1e-12);
  EXPECT_NEAR(load.mean[kLowBack], held, 1e-12);
  EXPECT_NEAR(load.course[17][kLowBack], held, 1e-12);
}

// A straight leg from upright to 30 degrees above the floor: the hip bears the cosine of the way (see the series of
// angles in WeighedBody_test).
TEST(MovementLoad, FollowsTheWayThereAndBack) {
  const Movement movement = lowering();
  const MovementLoad load = loadOf(movement.poses, movement.tempo, BodyTable::winter);
  constexpr double kUnit = 70 * 1.75 * kGravity;
  EXPECT_NEAR(load.course.front()[kHip] * kUnit, 0, 0.05);
  EXPECT_NEAR(load.course[MovementLoad::kTimes / 2][kHip] * kUnit, 36.06, 0.1);
  EXPECT_NEAR(load.course.back()[kHip] * kUnit, 0, 0.05);
  EXPECT_NEAR(load.course[MovementLoad::kTimes / 4][kHip] * kUnit, 20.82, 0.3); // 60 degrees, half way
  EXPECT_NEAR(load.peak[kHip], load.course[MovementLoad::kTimes / 2][kHip], 1e-12);
  EXPECT_LT(load.mean[kHip], load.peak[kHip]);
  EXPECT_GT(load.mean[kHip], 0.3 * load.peak[kHip]);
}

TEST(MovementLoad, AHoldAtTheEndWeighsForAsLongAsItLasts) {
  const KeyPoses poses = lowering().poses;
  const Tempo held{Seconds(1), {{Breath::out, 2}, {Breath::free, 8}, {Breath::in, 2}}};
  const MovementLoad flowing = loadOf(poses, thereAndBack(), BodyTable::winter),
                     holding = loadOf(poses, held, BodyTable::winter);
  EXPECT_GT(holding.mean[kHip], flowing.mean[kHip] * 1.4);
  EXPECT_NEAR(holding.peak[kHip], flowing.peak[kHip], 1e-9);
}

TEST(MovementLoad, WeightDoesNotDependOnThePace) {
  const KeyPoses poses = lowering().poses;
  Tempo slow = thereAndBack();
  slow.secondsPerCount = Seconds(2.5);
  const MovementLoad slowly = loadOf(poses, slow, BodyTable::winter),
                     usually = loadOf(poses, thereAndBack(), BodyTable::winter);
  EXPECT_EQ(slowly.course, usually.course);
  EXPECT_NEAR(slowly.swing[kHip] * 2.5 * 2.5, usually.swing[kHip], 1e-9); // but what is left out grows with its square
}

// A straight leg that goes through 60 degrees in three seconds and sets off as gently as it stops: its greatest
// acceleration is 6 x 60 degrees / 9 square seconds = .698 a square second. Times the moment of inertia of thigh and
// lower leg about the hip, from Winter's table 4.1: .100 (.323^2 + .433^2) .245^2 + .061 ((.416 x .246)^2 + (.245 +
// .606 x .246)^2).
TEST(MovementLoad, ASwingingLegTakesItsInertiaTimesItsAcceleration) {
  const Movement movement = lowering();
  const MovementLoad load = loadOf(movement.poses, movement.tempo, BodyTable::winter);
  const double thigh = 0.100 * (0.323 * 0.323 + 0.433 * 0.433) * 0.245 * 0.245;
  const double lower = 0.061 * (std::pow(0.416 * 0.246, 2) + std::pow(0.245 + 0.606 * 0.246, 2));
  const double expected = (thigh + lower) * 6 * (60 * kRadiansPerDegree) / 9;
  EXPECT_NEAR(load.swing[kHip], expected, 0.06 * expected);
  EXPECT_LT(swingNewtonMetres(load.swing[kHip], {}), 0.1 * newtonMetres({}) * load.peak[kHip]);
  EXPECT_EQ(load.swing[kLowBack], 0);
}

TEST(MovementLoad, AHeldShapeSwingsNothing) {
  EXPECT_EQ(loadOf({legs(90, 90), legs(90, 90)}, thereAndBack(), BodyTable::winter).swing[kHip], 0);
}

TEST(MovementLoad, IsWorkedOutOnceAndNeverTakenForAnother) {
  const Loads loads;
  Movement movement = lowering();
  const auto first = loads.of(movement, nullptr);
  EXPECT_EQ(loads.of(movement, nullptr), first);
  EXPECT_EQ(*first, loadOf(movement.poses, movement.tempo, BodyTable::winter));
  movement.poses.end.on.insert(Contact::handNear); // nothing that a hash of angles sees
  EXPECT_NE(loads.of(movement, nullptr), first);
  Option bent;
  bent.poses = KeyPoses{legs(90, 90), legs(60, 90)};
  EXPECT_LT(loads.of(movement, &bent)->peak[kLowBack], first->peak[kLowBack]);
}

TEST(MovementLoad, WhatIsRememberedIsOfThePaceThatIsAskedFor) {
  const Loads loads;
  const KeyPoses poses = lowering().poses;
  Tempo slow = thereAndBack();
  const double usual = loads.of(poses, slow)->swing[kHip];
  slow.secondsPerCount = Seconds(2);
  EXPECT_NEAR(loads.of(poses, slow)->swing[kHip], usual / 4, 1e-9);
}

TEST(MovementLoad, TheLeverIsAShareOfTwoStraightLegs) {
  for (const BodyTable table : {BodyTable::winter, BodyTable::deLevaWomen, BodyTable::deLevaMen}) {
    const Loads loads(table);
    EXPECT_NEAR(loads.lever(straightLegMoment(table)), 1, 1e-12);
    EXPECT_EQ(loads.lever(0), 0);
    const MovementLoad level = loadOf({legs(0.5, 0), legs(0.5, 0)}, thereAndBack(), table);
    EXPECT_GE(loads.lever(level.peak[kLowBack]), 0);
  }
}

TEST(MovementLoad, CanBeAskedFromSeveralThreadsAtOnce) {
  const Loads loads;
  const Movement movement = lowering();
  std::vector<std::shared_ptr<const MovementLoad>> answers(4);
  {
    std::vector<std::thread> askers;
    for (auto& answer : answers)
      askers.emplace_back([&] { answer = loads.of(movement, nullptr); });
    for (std::thread& asker : askers)
      asker.join();
  }
  for (const auto& answer : answers)
    EXPECT_EQ(answer, answers.front());
}

} // namespace
} // namespace matwright
