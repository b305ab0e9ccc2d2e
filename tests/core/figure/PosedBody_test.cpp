// The conventions of resources/FORMAT.md, section 5.
#include "core/figure/PosedBody.h"
#include "core/figure/Skeleton.h"

#include <gmock/gmock.h>
#include <random>

namespace matwright {
namespace {

namespace sk = skeleton;

const PosedLeg& nearLeg(const PosedBody& body) { return body.legs[index(Limb::near)]; }
const PosedLeg& farLeg(const PosedBody& body) { return body.legs[index(Limb::far)]; }
const PosedArm& nearArm(const PosedBody& body) { return body.arms[index(Limb::near)]; }
const PosedArm& farArm(const PosedBody& body) { return body.arms[index(Limb::far)]; }

Pose randomPose(std::mt19937& random) {
  std::uniform_real_distribution<double> any(-120, 120), small(-40, 40), bend(0, 140);
  Pose pose;
  pose.lean = any(random);
  pose.roll = any(random);
  for (SpineAngles* part : {&pose.lumbar, &pose.thorax, &pose.neck})
    *part = {small(random), small(random), small(random)};
  for (ArmAngles& arm : pose.arms)
    arm = {any(random), any(random), bend(random)};
  for (LegAngles& leg : pose.legs)
    leg = {any(random), small(random), small(random), bend(random), small(random)};
  return pose;
}

TEST(PosedBody, NeutralStandsUprightFacesRightWithItsRightSideNear) {
  const PosedBody body = posed(Pose{});
  EXPECT_GT(body.crown.y, body.pelvis().y);
  EXPECT_NEAR(body.crown.x, 0, 1e-9);
  EXPECT_GT(nearLeg(body).toes.x, nearLeg(body).heel.x);
  EXPECT_GT(nearLeg(body).hip.z, farLeg(body).hip.z);
  EXPECT_LT(nearArm(body).fingertips.y, nearArm(body).shoulder.y);
}

TEST(PosedBody, LeanNinetyLiesFaceDownAndMinusNinetyFaceUp) {
  Pose pose;
  pose.lean = 90;
  const PosedBody down = posed(pose);
  EXPECT_GT(down.crown.x, 0.4);
  EXPECT_NEAR(down.crown.y, 0, 1e-9);
  EXPECT_NEAR(down.turns[0].forward.y, -1, 1e-9);
  pose.lean = -90;
  const PosedBody up = posed(pose);
  EXPECT_LT(up.crown.x, -0.4);
  EXPECT_NEAR(up.turns[0].forward.y, 1, 1e-9);
}

TEST(PosedBody, RollNinetyFaceUpLiesOnTheNearSideWithTheFrontToTheViewer) {
  Pose pose;
  pose.lean = -90;
  pose.roll = 90;
  const PosedBody body = posed(pose);
  EXPECT_LT(nearLeg(body).hip.y, farLeg(body).hip.y);
  EXPECT_NEAR(body.turns[0].forward.z, 1, 1e-9);
  EXPECT_LT(body.crown.x, -0.4);
}

TEST(PosedBody, SpineBendsForwardToTheNearSideAndTurnsTheFrontNear) {
  for (SpineAngles Pose::*part : {&Pose::lumbar, &Pose::thorax, &Pose::neck}) {
    Pose pose;
    (pose.*part).bend = 40;
    EXPECT_GT(posed(pose).crown.x, 0.05);
    pose = {};
    (pose.*part).side = 30;
    EXPECT_GT(posed(pose).crown.z, 0.03);
    pose = {};
    (pose.*part).turn = 60;
    EXPECT_GT(posed(pose).headTurn.forward.z, 0.5);
    EXPECT_NEAR(posed(pose).crown.x, 0, 1e-9);
  }
}

TEST(PosedBody, SpineIsSmooth) {
  Pose pose;
  pose.lumbar.bend = 60;
  pose.thorax.bend = 40;
  const PosedBody body = posed(pose);
  for (std::size_t i = 0; i + 1 < PosedBody::kSpinePoints; ++i)
    EXPECT_GT(dot(body.turns[i].up, body.turns[i + 1].up), std::cos(16 * kRadiansPerDegree)) << i;
  EXPECT_NEAR(dot(body.turns[PosedBody::kNeck].up, body.turns[0].up), std::cos(100 * kRadiansPerDegree), 1e-9);
}

TEST(PosedBody, ShoulderRaisesTheArmForwardOverheadBehindAndOut) {
  Pose pose;
  pose.arms[index(Limb::near)].shoulder = 90;
  EXPECT_NEAR(nearArm(posed(pose)).wrist.x, 0.332, 1e-9);
  pose.arms[index(Limb::near)].shoulder = 180;
  EXPECT_NEAR(nearArm(posed(pose)).wrist.y - nearArm(posed(pose)).shoulder.y, 0.332, 1e-9);
  pose.arms[index(Limb::near)].shoulder = -30;
  EXPECT_LT(nearArm(posed(pose)).wrist.x, -0.1);
  pose = {};
  pose.arms[0].out = pose.arms[1].out = 90;
  const PosedBody wide = posed(pose);
  EXPECT_NEAR(nearArm(wide).wrist.z - nearArm(wide).shoulder.z, 0.332, 1e-9);
  EXPECT_NEAR(farArm(wide).wrist.z - farArm(wide).shoulder.z, -0.332, 1e-9);
}

TEST(PosedBody, ElbowBringsTheHandForwardAndUp) {
  Pose pose;
  pose.arms[0].elbow = 90;
  const PosedArm arm = posed(pose).arms[0];
  EXPECT_NEAR(arm.wrist.x - arm.elbow.x, sk::kForearm, 1e-9);
  EXPECT_NEAR(arm.wrist.y, arm.elbow.y, 1e-9);
}

TEST(PosedBody, HipKneeAndAnkleBendAsWritten) {
  Pose pose;
  pose.legs[0] = {.hip = 90, .knee = 90};
  const PosedLeg tabletop = posed(pose).legs[0];
  EXPECT_NEAR(tabletop.knee.x - tabletop.hip.x, sk::kThigh, 1e-9);
  EXPECT_NEAR(tabletop.knee.y - tabletop.ankle.y, sk::kShank, 1e-9);
  pose.legs[0] = {.knee = 130};
  const PosedLeg bent = posed(pose).legs[0];
  EXPECT_LT(length(bent.heel - bent.hip), 0.26); // the heel near the seat
  EXPECT_LT(bent.ankle.x, bent.knee.x);
  pose.legs[0] = {.ankle = 20};
  const PosedLeg pulled = posed(pose).legs[0];
  EXPECT_GT(pulled.toes.y, pulled.heel.y);
  pose.legs[0] = {.ankle = -50};
  EXPECT_LT(posed(pose).legs[0].toes.y, pulled.toes.y);
}

TEST(PosedBody, LegsGoOutCrossAndTurnOutOnEitherSide) {
  Pose pose;
  for (LegAngles& leg : pose.legs)
    leg.out = 30;
  const PosedBody wide = posed(pose);
  EXPECT_NEAR(nearLeg(wide).knee.z - nearLeg(wide).hip.z, sk::kThigh * 0.5, 1e-9);
  EXPECT_NEAR(farLeg(wide).knee.z - farLeg(wide).hip.z, -sk::kThigh * 0.5, 1e-9);
  pose = {};
  pose.legs[0].out = -25;
  EXPECT_LT(nearLeg(posed(pose)).ankle.z, 0); // over the midline
  pose = {};
  for (LegAngles& leg : pose.legs)
    leg.turn = 45;
  const PosedBody turned = posed(pose);
  EXPECT_GT(nearLeg(turned).toes.z, nearLeg(turned).heel.z + 0.05);
  EXPECT_LT(farLeg(turned).toes.z, farLeg(turned).heel.z - 0.05);
}

TEST(PosedBody, LengthsStayWhateverTheAngles) {
  std::mt19937 random(20);
  for (int i = 0; i < 500; ++i) {
    const PosedBody body = posed(randomPose(random));
    for (const Limb limb : kBothLimbs) {
      const PosedArm& arm = body.arms[index(limb)];
      const PosedLeg& leg = body.legs[index(limb)];
      ASSERT_NEAR(length(arm.elbow - arm.shoulder), sk::kUpperArm, 1e-9);
      ASSERT_NEAR(length(arm.wrist - arm.elbow), sk::kForearm, 1e-9);
      ASSERT_NEAR(length(leg.knee - leg.hip), sk::kThigh, 1e-9);
      ASSERT_NEAR(length(leg.ankle - leg.knee), sk::kShank, 1e-9);
    }
    double spine = 0;
    for (std::size_t k = 0; k + 1 < PosedBody::kSpinePoints; ++k)
      spine += length(body.spine[k + 1] - body.spine[k]);
    ASSERT_NEAR(spine, sk::kTrunk + sk::kNeck, 1e-9);
    for (const Frame& turn : body.turns) {
      ASSERT_NEAR(length(turn.up), 1, 1e-9);
      ASSERT_NEAR(length(cross(turn.forward, turn.up) - turn.right), 0, 1e-9);
    }
  }
}

// The mirror image of a body is the body with its sides exchanged.
TEST(PosedBody, ExchangedSidesGiveTheMirrorImage) {
  std::mt19937 random(7);
  for (int i = 0; i < 200; ++i) {
    Pose pose = randomPose(random);
    Pose mirrored = pose;
    mirrored.roll = -pose.roll;
    for (SpineAngles* part : {&mirrored.lumbar, &mirrored.thorax, &mirrored.neck})
      *part = {part->bend, -part->side, -part->turn};
    std::swap(mirrored.arms[0], mirrored.arms[1]);
    std::swap(mirrored.legs[0], mirrored.legs[1]);
    const PosedBody one = posed(pose), other = posed(mirrored);
    const auto expectMirrored = [](Vec3 a, Vec3 b) { ASSERT_NEAR(length(Vec3{a.x, a.y, -a.z} - b), 0, 1e-9); };
    expectMirrored(one.crown, other.crown);
    expectMirrored(one.arms[0].fingertips, other.arms[1].fingertips);
    expectMirrored(one.legs[1].toes, other.legs[0].toes);
  }
}

} // namespace
} // namespace matwright
