#include "core/figure/Passage.h"
#include "tests/support/RestingPoses.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using namespace test;

Pose bridge() {
  Pose pose = faceUpBent();
  pose.lean = -112;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 2, .knee = 85};
  pose.on = {Contact::upperBack, Contact::head, Contact::footNear, Contact::footFar};
  return pose;
}

double farthestJoint(const PosedBody& a, const PosedBody& b) {
  double farthest = std::max(length(a.head - b.head), length(a.pelvis() - b.pelvis()));
  for (const Limb limb : kBothLimbs) {
    farthest = std::max(farthest, length(a.arms[index(limb)].wrist - b.arms[index(limb)].wrist));
    farthest = std::max(farthest, length(a.legs[index(limb)].toes - b.legs[index(limb)].toes));
  }
  return farthest;
}

TEST(Interpolated, GoesEvenlyAndTakesTheRestFromTheNearerEnd) {
  Pose end = bridge();
  end.view = View::front;
  const Pose quarter = interpolated(faceUpBent(), end, 0.25);
  EXPECT_DOUBLE_EQ(quarter.lean, -95.5);
  EXPECT_DOUBLE_EQ(quarter.legs[0].hip, 38);
  EXPECT_EQ(quarter.on, faceUpBent().on);
  EXPECT_EQ(quarter.view, View::side);
  EXPECT_EQ(interpolated(faceUpBent(), end, 0.75).view, View::front);
  EXPECT_EQ(interpolated(faceUpBent(), end, 0), faceUpBent());
  EXPECT_EQ(interpolated(faceUpBent(), end, 1), end);
}

TEST(AlignedTo, SharedFeetStayInPlace) {
  const Settled start = settled(faceUpBent()), end = alignedTo(start, settled(bridge()));
  EXPECT_NEAR(end.body.legs[0].ankle.x, start.body.legs[0].ankle.x, 0.03);
  EXPECT_NEAR(end.body.pelvis().y, settled(bridge()).body.pelvis().y, 1e-12);
}

TEST(AlignedTo, WithNothingSharedThePelvesMeet) {
  Pose sitting;
  sitting.on = {Contact::seat};
  Pose standing;
  standing.on = {Contact::footNear, Contact::footFar};
  const Settled start = settled(sitting);
  EXPECT_NEAR(alignedTo(start, settled(standing)).body.pelvis().x, start.body.pelvis().x, 1e-12);
}

TEST(Passage, BeginsAndEndsWithTheKeyShapes) {
  const Settled start = settled(faceUpBent()), end = settled(bridge());
  const Passage passage(start, end);
  EXPECT_EQ(farthestJoint(passage.at(0).body, start.body), 0);
  EXPECT_EQ(farthestJoint(passage.at(1).body, alignedTo(start, end).body), 0);
  EXPECT_EQ(farthestJoint(passage.at(-1).body, passage.start().body), 0);
  EXPECT_EQ(farthestJoint(passage.at(2).body, passage.end().body), 0);
}

TEST(Passage, MovesWithoutLeapsWhileFeetStayAndNothingSinks) {
  const Passage passage(settled(faceUpBent()), settled(bridge()));
  PosedBody before = passage.at(0).body;
  const double feet = before.legs[0].ankle.x;
  for (int i = 1; i <= 100; ++i) {
    const PosedBody body = passage.at(i / 100.0).body;
    ASSERT_LT(farthestJoint(before, body), 0.02) << i;
    ASSERT_GT(clearance(body), -kMillimetre) << i;
    ASSERT_NEAR(clearance(body, Contact::footNear), 0, 2 * kMillimetre) << i;
    ASSERT_NEAR(body.legs[0].ankle.x, feet, 0.03) << i;
    before = body;
  }
}

TEST(Passage, ArmsGoRoundTheFloorByTheSide) {
  Pose start, end;
  start.lean = end.lean = 90;
  start.on = end.on = {Contact::front};
  for (ArmAngles& arm : start.arms)
    arm.shoulder = 165;
  for (ArmAngles& arm : end.arms)
    arm.shoulder = 5;
  const Passage passage(settled(start), settled(end));
  PosedBody before = passage.at(0).body;
  for (int i = 1; i <= 48; ++i) {
    const PosedBody body = passage.at(i / 48.0).body;
    ASSERT_GT(clearance(body), -kMillimetre);
    ASSERT_LT(farthestJoint(before, body), 0.1);
    ASSERT_NEAR(body.pelvis().y, before.pelvis().y, 0.01);
    before = body;
  }
  const PosedArm halfway = passage.at(0.5).body.arms[index(Limb::near)];
  EXPECT_GT(halfway.wrist.z - halfway.shoulder.z, 0.2);
}

TEST(Passage, OnePoseTwiceStandsStill) {
  const Settled shape = settled(bridge());
  const Passage passage(shape, shape);
  EXPECT_LT(farthestJoint(passage.at(0.37).body, shape.body), 2 * kMillimetre);
}

} // namespace
} // namespace matwright
