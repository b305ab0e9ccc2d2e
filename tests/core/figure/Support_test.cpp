#include "core/figure/Joint.h"
#include "core/figure/Passage.h"
#include "core/figure/Resting.h"
#include "core/figure/Settle.h"
#include "core/figure/Skeleton.h"
#include "core/figure/Support.h"
#include "tests/support/RestingPoses.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

namespace sk = skeleton;
using test::kMillimetre;

Pose seated() {
  Pose pose;
  for (LegAngles& leg : pose.legs)
    leg.hip = leg.knee = 90;
  pose.on = {Contact::footNear, Contact::footFar};
  pose.onSupport(Support::chair) = {Contact::seat};
  return pose;
}

Pose lying() {
  Pose pose;
  pose.lean = -90;
  for (LegAngles& leg : pose.legs) {
    leg.hip = 50;
    leg.knee = 100;
  }
  pose.on = {Contact::footNear, Contact::footFar};
  return pose;
}

void expectAtRest(const Settled& shape) {
  EXPECT_LT(shape.largestGap, kMillimetre);
  EXPECT_LT(shape.deepestSink, kMillimetre);
}

TEST(Support, ASeatedBodySitsAtTheHeightOfTheSeatWithItsSolesOnTheFloor) {
  const Settled shape = settled(seated());
  expectAtRest(shape);
  EXPECT_NEAR(shape.body.pelvis().y - sk::kPelvisRadius, kSeatHeight, 0.006);
  EXPECT_NEAR(clearance(shape.body, Contact::seat), kSeatHeight, kMillimetre);
  EXPECT_NEAR(clearance(shape, Contact::seat), 0, kMillimetre);
  EXPECT_NEAR(shape.body.legs[0].ankle.y, sk::kAnkleHeight, kMillimetre);
}

// A usual chair is 45 cm high (common practice, no source).
TEST(Support, TheSeatIsAsHighAsTheHollowOfTheKnee) {
  EXPECT_NEAR(kSeatHeight * 1.75, 0.45, 0.02);
  const Settled shape = settled(seated());
  EXPECT_NEAR(shape.body.legs[0].knee.y - sk::kKneeRadius, kSeatHeight, 0.02);
}

TEST(Support, TheChairStandsUnderWhoSitsOnItAndFacesTheSameWay) {
  const Settled shape = settled(seated());
  ASSERT_TRUE(shape.furniture.chair);
  EXPECT_EQ(shape.furniture.chair->facing, 1);
  const double back = shape.furniture.chair->place.x, pelvis = shape.body.pelvis().x;
  EXPECT_LT(back, pelvis - sk::kPelvisRadius);
  EXPECT_GT(back + kSeatDepth, pelvis + sk::kPelvisRadius);
  EXPECT_FALSE(shape.furniture.roller);
}

TEST(Support, ABackThatLeansOnItTouchesTheBackRest) {
  Pose pose = seated();
  pose.lean = -8;
  pose.onSupport(Support::chairBack) = {Contact::back};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  double reach = 1e9;
  for (std::size_t i = 0; i < PosedBody::kNeck; ++i)
    reach = std::min(reach, shape.body.spine[i].x - trunkRadius(i));
  EXPECT_NEAR(shape.furniture.chair->place.x, reach, 1e-9);
}

TEST(Support, ACushionOnAChairRaisesTheSeat) {
  Pose pose = seated();
  pose.onSupport(Support::cushion) = {Contact::seat};
  EXPECT_NEAR(surfaceUnder(pose, Contact::seat), kSeatHeight + kCushionHeight, 1e-12);
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_NEAR(clearance(shape.body, Contact::seat), kSeatHeight + kCushionHeight, kMillimetre);
}

TEST(Support, HandsThatPushUpFromASeatAreAtItsHeight) {
  Pose pose;
  pose.lean = 56;
  for (ArmAngles& arm : pose.arms)
    arm.shoulder = 64;
  pose.on = {Contact::toesNear, Contact::toesFar};
  pose.onSupport(Support::chair) = {Contact::handNear, Contact::handFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  for (const PosedArm& arm : shape.body.arms)
    EXPECT_NEAR(arm.wrist.y - sk::kWristRadius, kSeatHeight, kMillimetre);
  EXPECT_EQ(shape.furniture.chair->facing, -1); // the seat is nearer than the back-rest
  EXPECT_GT(shape.furniture.chair->place.x, shape.body.arms[0].wrist.x);
}

TEST(Support, HandsOnTheTopOfAChairLeaveTheBodyUpright) {
  Pose pose = test::standing();
  for (ArmAngles& arm : pose.arms)
    arm.shoulder = 30;
  pose.onSupport(Support::chairTop) = {Contact::handNear, Contact::handFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_NEAR(shape.body.arms[0].wrist.y - sk::kWristRadius, kChairTopHeight, kMillimetre);
  EXPECT_NEAR(shape.articulation.pose.lean, 0, 3);
  EXPECT_NEAR(shape.furniture.chair->place.x, shape.body.arms[0].wrist.x, 1e-9);
}

// 15 cm for a stature of 1.75 m: the usual roller (common practice, no source).
TEST(Support, ABodyAlongARollerLiesAsHighAsItIsThick) {
  Pose pose = lying();
  pose.onSupport(Support::rollerAlong) = {Contact::head, Contact::back};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_NEAR(2 * kRollerRadius * 1.75, 0.15, 1e-9);
  EXPECT_NEAR(clearance(shape.body, Contact::back), 2 * kRollerRadius, kMillimetre);
  EXPECT_NEAR(clearance(shape.body, Contact::head), 2 * kRollerRadius, kMillimetre);
  ASSERT_TRUE(shape.furniture.roller);
  EXPECT_GT(std::abs(shape.furniture.roller->place.x - shape.body.pelvis().x), 0.1);
}

TEST(Support, ARollerAcrossLiesUnderTheUpperBackWhileTheSeatIsOnTheFloor) {
  Pose pose = lying();
  pose.lean = -70;
  pose.on.insert(Contact::seat);
  pose.onSupport(Support::rollerAcross) = {Contact::upperBack};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_NEAR(clearance(shape.body, Contact::upperBack), 2 * kRollerRadius, kMillimetre);
  EXPECT_NEAR(clearance(shape.body, Contact::seat), 0, kMillimetre);
  const double roller = shape.furniture.roller->place.x;
  EXPECT_LT(std::abs(roller - shape.body.thorax().x), sk::kThorax);
}

TEST(Support, WithoutSupportsThereIsNoFurniture) { EXPECT_EQ(settled(test::standing()).furniture, Furniture{}); }

TEST(Support, OneHandMayRestAgainstTheWall) {
  Pose pose = test::standing();
  pose.arms[0].shoulder = 85;
  pose.wall = {WallContact::handNear};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  ASSERT_TRUE(shape.wall);
  EXPECT_FALSE(shape.wall->beside);
  EXPECT_NEAR(shape.body.arms[0].wrist.x + sk::kWristRadius, shape.wall->at, kMillimetre);
  EXPECT_LT(shape.body.arms[1].wrist.x, shape.wall->at - 0.2);
}

TEST(Support, AHandThatReachesAsideFindsAWallBesideTheBody) {
  Pose pose = test::standing();
  pose.arms[1].out = 60;
  pose.wall = {WallContact::handFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  ASSERT_TRUE(shape.wall);
  EXPECT_TRUE(shape.wall->beside);
  EXPECT_NEAR(shape.body.arms[1].wrist.z - sk::kWristRadius, shape.wall->at, kMillimetre);
}

// Who sits down on a chair finds it there all the way.
TEST(Support, AChairOfOneKeyPoseStandsThroughoutThePassage) {
  const Settled up = settled(test::standing()), down = settled(seated());
  const Passage passage(down, up);
  const Settled half = passage.at(0.5);
  ASSERT_TRUE(half.furniture.chair);
  EXPECT_NEAR(half.furniture.chair->place.x, down.furniture.chair->place.x, 1e-6);
}

TEST(Support, WhatRestsOnAChairThroughoutStaysAtItsHeight) {
  Pose round = seated();
  round.lumbar.bend = round.thorax.bend = 25;
  const Passage passage(settled(seated()), settled(round));
  for (int i = 1; i < 8; ++i)
    EXPECT_NEAR(clearance(passage.at(i / 8.0), Contact::seat), 0, 2 * kMillimetre) << i;
}

TEST(Support, ExchangedSidesExchangeWhatRestsAndWhatIsHeld) {
  Pose pose = seated();
  pose.onSupport(Support::chair).insert(Contact::handNear);
  pose.wall = {WallContact::footFar};
  pose.holds = HeldProp{Held::band, HeldAt::footNear};
  const Pose other = sidesExchanged(pose);
  EXPECT_EQ(other.onSupport(Support::chair), (EnumSet<Contact>{Contact::seat, Contact::handFar}));
  EXPECT_EQ(other.wall, EnumSet<WallContact>{WallContact::footNear});
  EXPECT_EQ(other.holds, (HeldProp{Held::band, HeldAt::footFar}));
  EXPECT_EQ(sidesExchanged(other), pose);
}

} // namespace
} // namespace matwright
