#include "core/figure/Settle.h"
#include "core/figure/Skeleton.h"
#include "tests/support/RestingPoses.h"

#include <gmock/gmock.h>
#include <random>

namespace matwright {
namespace {

using namespace test;

namespace sk = skeleton;

void expectAtRest(const Settled& shape) {
  EXPECT_LT(shape.largestGap, kMillimetre);
  EXPECT_LT(shape.deepestSink, kMillimetre);
}

// Drillis and Contini: the hip of a standing body at .530 of the stature, the ankle at .039.
TEST(Settle, StandsOnItsSoles) {
  const Settled shape = settled(standing());
  expectAtRest(shape);
  EXPECT_NEAR(shape.body.legs[0].hip.y, 0.530, 1e-4);
  EXPECT_NEAR(shape.body.legs[0].ankle.y, 0.039, 1e-4);
  EXPECT_NEAR(shape.body.crown.y, 1, 1e-4);
  EXPECT_NEAR(shape.body.legs[0].heel.y, sk::kHeelRadius, 1e-4);
  EXPECT_NEAR(shape.body.legs[0].toes.y, sk::kToeRadius, 1e-4);
}

TEST(Settle, LiesOnItsBackWithFlatFeetWhateverTheAnkleSays) {
  Pose pose = faceUpBent();
  for (LegAngles& leg : pose.legs)
    leg.ankle = 33;
  const Settled shape = settled(pose);
  expectAtRest(shape);
  for (const PosedLeg& leg : shape.body.legs) {
    EXPECT_NEAR(leg.toes.y - sk::kToeRadius, 0, kMillimetre);
    EXPECT_NEAR(leg.heel.y - sk::kHeelRadius, 0, kMillimetre);
    EXPECT_GT(leg.toes.x, leg.heel.x); // away from the body
  }
  EXPECT_NEAR(clearance(shape.body, Contact::head), 0, kMillimetre);
}

TEST(Settle, ResultSaysTheAnglesAsTheyBecame) {
  const Settled shape = settled(faceUpBent());
  const Settled again = settled(shape.articulation.pose);
  for (const Limb limb : kBothLimbs) {
    EXPECT_NEAR(length(shape.body.legs[index(limb)].knee - again.body.legs[index(limb)].knee), 0, kMillimetre);
    EXPECT_NEAR(length(shape.body.legs[index(limb)].toes - again.body.legs[index(limb)].toes), 0, kMillimetre);
  }
  EXPECT_NEAR(length(shape.body.head - again.body.head), 0, kMillimetre);
}

TEST(Settle, TheBodyTiltsOntoHandsAndKnees) {
  const Settled shape = settled(handsAndKnees());
  expectAtRest(shape);
  // the arm is longer than the thigh: shoulders higher than hips
  EXPECT_GT(shape.body.neck().y, shape.body.pelvis().y + 0.02);
  EXPECT_NEAR(shape.articulation.pose.arms[0].elbow, 0, 1);
}

TEST(Settle, TheBodyTiltsOntoHandsAndToes) {
  Pose pose;
  pose.lean = 90;
  for (ArmAngles& arm : pose.arms)
    arm.shoulder = 80;
  pose.on = {Contact::handNear, Contact::handFar, Contact::toesNear, Contact::toesFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_LT(shape.articulation.pose.lean, 85);
  // still one line from heel to shoulder
  const Vec3 trunk = direction(shape.body.neck() - shape.body.pelvis(), {});
  const Vec3 leg = direction(shape.body.legs[0].hip - shape.body.legs[0].ankle, {});
  EXPECT_GT(dot(trunk, leg), std::cos(12 * kRadiansPerDegree));
}

TEST(Settle, ABridgeRestsOnUpperBackAndFeet) {
  Pose pose = faceUpBent();
  pose.lean = -112;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 2, .knee = 85};
  pose.on = {Contact::upperBack, Contact::head, Contact::footNear, Contact::footFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_GT(shape.body.pelvis().y, shape.body.neck().y + 0.08);
}

TEST(Settle, AHollowBackRestsOnPelvisAndRibs) {
  Pose pose = faceUpBent();
  pose.lean = -80;
  pose.lumbar.bend = -14;
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_NEAR(clearance(shape.body, Contact::seat), 0, kMillimetre);
  EXPECT_NEAR(clearance(shape.body, Contact::upperBack), 0, 0.012);
  const Vec3 waist = shape.body.spine[PosedBody::kLumbar + 2];
  EXPECT_GT(waist.y - trunkRadius(PosedBody::kLumbar + 2), 0.004);
}

TEST(Settle, ARollingBodyTurnsUntilItsUpperBackCarriesIt) {
  Pose pose;
  pose.lean = -100;
  pose.lumbar.bend = 30;
  pose.thorax.bend = 30;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 120, .knee = 130};
  pose.on = {Contact::upperBack};
  const Settled shape = settled(pose);
  EXPECT_NEAR(clearance(shape.body, Contact::upperBack), 0, kMillimetre);
  EXPECT_LT(shape.articulation.pose.lean, -110);
}

TEST(Settle, LyingOnTheSideRestsOnHipAndRibsWithTheShoulderDrawnIn) {
  Pose pose;
  pose.lean = -90;
  pose.roll = 90;
  pose.arms[index(Limb::near)].shoulder = 170;
  pose.on = {Contact::side};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_LT(shape.articulation.shoulderOffsets[index(Limb::near)], sk::kShoulderOffset - 0.01);
  EXPECT_EQ(shape.articulation.shoulderOffsets[index(Limb::far)], sk::kShoulderOffset);
  EXPECT_NEAR(shape.body.neck().y, shape.body.pelvis().y, 1e-6);
}

TEST(Settle, KneesRestWithTheBacksOfTheFeetOnTheFloor) {
  Pose pose;
  for (LegAngles& leg : pose.legs)
    leg.knee = 90;
  pose.on = {Contact::shinNear, Contact::shinFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_NEAR(shape.body.legs[0].toes.y, sk::kToeRadius, kMillimetre);
  EXPECT_LT(shape.body.legs[0].toes.x, shape.body.legs[0].heel.x);
}

TEST(Settle, ALimbThatWouldSinkIsLifted) {
  Pose pose;
  pose.lean = -90;
  pose.arms[0].shoulder = -40;
  pose.legs[1].hip = -25;
  pose.on = {Contact::back};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  EXPECT_GT(shape.articulation.pose.arms[0].shoulder, -15);
  EXPECT_GT(shape.articulation.pose.legs[1].hip, -6);
}

TEST(Settle, ATooLongArmBendsAtTheElbow) {
  Pose pose;
  for (LegAngles& leg : pose.legs)
    leg.hip = 90;
  pose.on = {Contact::seat, Contact::handNear, Contact::handFar, Contact::heelNear, Contact::heelFar};
  pose.lumbar.bend = 20;
  pose.thorax.bend = 15;
  const Settled shape = settled(pose);
  expectAtRest(shape);
}

TEST(Settle, SaysHowFarAnImpossiblePoseMisses) {
  Pose pose;
  pose.on = {Contact::seat, Contact::head};
  const Settled shape = settled(pose);
  EXPECT_GT(shape.largestGap, 0.2);
  EXPECT_NEAR(clearance(shape.body, Contact::head), shape.largestGap, 1e-12);
}

// Whatever the angles: with the trunk lying on the floor it neither floats nor sinks.
TEST(Settle, TheTrunkLiesOnTheFloorForAnyAngles) {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> any(-90, 170), bend(0, 140), small(-30, 30);
  for (int i = 0; i < 400; ++i) {
    Pose pose;
    pose.lean = i % 2 == 0 ? -90 + small(random) : 90 + small(random);
    pose.lumbar = {small(random), small(random), small(random)};
    pose.thorax = {small(random), small(random), small(random)};
    for (ArmAngles& arm : pose.arms)
      arm = {any(random), small(random), bend(random)};
    for (LegAngles& leg : pose.legs)
      leg = {any(random), small(random), small(random), bend(random), small(random)};
    pose.on = {i % 2 == 0 ? Contact::back : Contact::front};
    const Settled shape = settled(pose);
    ASSERT_NEAR(clearance(shape.body, i % 2 == 0 ? Contact::back : Contact::front), 0, 1e-9);
  }
}

TEST(Settle, MirroringTheDrawingChangesNothingOfTheBody) {
  Pose pose = handsAndKnees();
  const Settled plain = settled(pose);
  pose.flip = true;
  EXPECT_EQ(settled(pose).body.legs[0].toes, plain.body.legs[0].toes);
}

TEST(Settle, TheWallStandsBehindABackThatLeansOnIt) {
  Pose pose = standing();
  pose.wall = {WallContact::back};
  const Settled shape = settled(pose);
  ASSERT_TRUE(shape.wall);
  EXPECT_NEAR(shape.wall->at, shape.body.head.x - sk::kHeadRadius, 1e-9);
  pose.neck.bend = 20;
  EXPECT_NEAR(settled(pose).wall->at, shape.body.pelvis().x - sk::kChestRadius, 1e-3);
  pose.lumbar.bend = 70; // rolled down, the seat stays at the wall
  pose.thorax.bend = 60;
  const Settled rolled = settled(pose);
  EXPECT_LT(rolled.wall->at, rolled.body.pelvis().x);
}

TEST(Settle, BothFeetComeToOneWallWithTheirSolesFlat) {
  Pose pose = faceUpBent();
  pose.on = {Contact::back, Contact::head};
  pose.wall = {WallContact::footNear, WallContact::footFar};
  pose.legs[0] = {.hip = 90, .knee = 90};
  pose.legs[1] = {.hip = 80, .knee = 75};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  ASSERT_TRUE(shape.wall);
  for (const PosedLeg& leg : shape.body.legs) {
    EXPECT_NEAR(leg.ankle.x + sk::kAnkleHeight, shape.wall->at, kMillimetre);
    EXPECT_NEAR(leg.toes.x + sk::kToeRadius, shape.wall->at, kMillimetre);
    EXPECT_GT(leg.toes.y, leg.heel.y);
  }
}

TEST(Settle, HandsLieFlatOnTheWallInFront) {
  Pose pose = standing();
  for (ArmAngles& arm : pose.arms)
    arm.shoulder = 88;
  pose.wall = {WallContact::handNear, WallContact::handFar};
  const Settled shape = settled(pose);
  expectAtRest(shape);
  ASSERT_TRUE(shape.wall);
  EXPECT_GT(shape.wall->at, shape.body.neck().x + 0.3);
  EXPECT_GT(shape.body.arms[0].fingertips.y, shape.body.arms[0].wrist.y + 0.05);
}

TEST(Settle, WithoutAWallContactThereIsNoWall) { EXPECT_FALSE(settled(standing()).wall); }

TEST(Settle, HoldsBringAFootToItsPlaceAndKeepTheOther) {
  const Settled shape = settled(faceUpBent());
  const Vec3 near = placeOf(shape.body, Contact::footNear) + Vec3{0.05, 0, 0};
  const Vec3 far = placeOf(shape.body, Contact::footFar);
  const std::array<Hold, 2> holds{Hold{Contact::footNear, near}, Hold{Contact::footFar, far}};
  const Settled moved = settledFrom(shape.articulation, holds);
  EXPECT_NEAR(placeOf(moved.body, Contact::footNear).x, near.x, 0.008);
  EXPECT_NEAR(placeOf(moved.body, Contact::footFar).x, far.x, 0.008);
  EXPECT_LT(moved.largestGap, 2 * kMillimetre);
}

} // namespace
} // namespace matwright
