#include "core/figure/Moment.h"
#include "core/figure/Settle.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

constexpr BodySize kReference{.mass = 70, .stature = 1.75};

// Face up, thigh `thigh` degrees above the horizontal, knee bent by `knee`.
Pose supine(double thigh, double knee) {
  Pose pose;
  pose.lean = -90;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = thigh, .knee = knee};
  return pose;
}

double oneLeg(double thigh, double knee, const BodySize& size = kReference) {
  const PosedBody body = posed(supine(thigh, knee));
  return gravityMoment(body, body.legs[0].hip, legSegments(Limb::near), size);
}

// Worked from Winter's table 4.1 (thigh .100, .433; foot and shank .061, .606) and the lengths of fig. 4.1, for 70 kg
// and 1.75 m, g 9.81: the moment of one leg about its hip in N m.
TEST(Moment, AStraightLegAndATabletopLegWeighAsWorkedOut) {
  EXPECT_NEAR(oneLeg(0, 0), 41.64, 0.005);
  EXPECT_NEAR(oneLeg(90, 90), 10.93, 0.005);
  EXPECT_NEAR(oneLeg(0, 0) / oneLeg(90, 90), 3.81, 0.005);
  const PosedBody straight = posed(supine(0, 0)), tabletop = posed(supine(90, 90));
  const SegmentSet both = legSegments(Limb::near) | legSegments(Limb::far);
  EXPECT_NEAR(gravityMoment(straight, straight.pelvis(), both, kReference), 83.27, 0.005);
  EXPECT_NEAR(gravityMoment(tabletop, tabletop.pelvis(), both, kReference), 21.86, 0.01);
}

// The same, by angle.
TEST(Moment, AStraightLegWeighsLessTheHigherItIs) {
  EXPECT_NEAR(oneLeg(30, 0), 36.06, 0.005);
  EXPECT_NEAR(oneLeg(45, 0), 29.44, 0.005);
  EXPECT_NEAR(oneLeg(60, 0), 20.82, 0.005);
  EXPECT_NEAR(oneLeg(90, 0), 0, 1e-9);
}

// The same: feet just off the floor with bent knees equal a straight leg at 45 degrees.
TEST(Moment, BentLegsWeighAsWorkedOut) {
  EXPECT_NEAR(oneLeg(45, 90), 29.44, 0.005);
  EXPECT_NEAR(oneLeg(60, 60), 26.28, 0.005);
  EXPECT_NEAR(oneLeg(45, 45), 32.64, 0.005);
}

// The same for other bodies; the ratio does not depend on the body.
TEST(Moment, GoesWithMassAndStature) {
  EXPECT_NEAR(oneLeg(0, 0, {60, 1.65}), 33.65, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {60, 1.65}), 8.83, 0.005);
  EXPECT_NEAR(oneLeg(0, 0, {73.0, 1.741}), 43.20, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {73.0, 1.741}), 11.34, 0.005);
  EXPECT_NEAR(oneLeg(0, 0, {61.9, 1.735}), 36.50, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {61.9, 1.735}), 9.58, 0.005);
}

// Winter's rows for joined segments, within the spread the same source gives for them: total leg .161, .447 over .491
// of the stature: 42.46 N m, 2 % more than the sum of the parts.
TEST(Moment, AgreesWithTheRowForTheWholeLeg) {
  EXPECT_NEAR(oneLeg(0, 0), 0.161 * 0.447 * 0.491 * 70 * 1.75 * kGravity, 0.025 * 42.46);
}

// Statics: a weight straight above or below a joint has no moment about it, and a limb turned about the vertical keeps
// its moment.
TEST(Moment, DependsOnTheHorizontalDistanceAlone) {
  Pose pose;
  const PosedBody standing = posed(pose);
  EXPECT_NEAR(gravityMoment(standing, standing.legs[0].hip, legSegments(Limb::near), kReference), 0, 1e-9);
  pose.arms[0].shoulder = 90;
  const PosedBody forward = posed(pose);
  pose.arms[0].out = 70;
  const PosedBody outward = posed(pose);
  const double before = gravityMoment(forward, forward.arms[0].shoulder, armSegments(Limb::near), kReference);
  EXPECT_GT(before, 5);
  EXPECT_NEAR(gravityMoment(outward, outward.arms[0].shoulder, armSegments(Limb::near), kReference), before, 1e-9);
}

TEST(Moment, WhatRestsIsNotHeld) {
  Pose pose = supine(50, 90);
  pose.on = {Contact::back, Contact::head, Contact::footNear, Contact::footFar, Contact::handNear, Contact::handFar};
  EXPECT_TRUE(heldSegments(pose).empty());
  EXPECT_EQ(lowBackMoment(settled(pose).body, pose, kReference), 0);
  pose.on.erase(Contact::footFar);
  EXPECT_EQ(heldSegments(pose), legSegments(Limb::far));
  pose.on.erase(Contact::head);
  EXPECT_TRUE(heldSegments(pose).contains(Segment::headAndNeck));
  EXPECT_FALSE(heldSegments(pose).contains(Segment::thorax)); // the ribs lie on the floor
}

TEST(Moment, LongLegsLoadTheLowBackMoreThanTabletop) {
  Pose tabletop = supine(90, 90), low = supine(30, 0);
  tabletop.on = low.on = {Contact::back, Contact::head};
  const double easy = lowBackMoment(settled(tabletop).body, tabletop, kReference);
  const double hard = lowBackMoment(settled(low).body, low, kReference);
  EXPECT_GT(easy, 0);
  EXPECT_GT(hard, 2 * easy);
}

TEST(Moment, AForwardHingeLoadsTheLowBackByTheUpperBody) {
  Pose pose;
  pose.on = {Contact::footNear, Contact::footFar};
  EXPECT_NEAR(lowBackMoment(settled(pose).body, pose, kReference), 0, 1.5);
  pose.lean = 60;
  for (LegAngles& leg : pose.legs)
    leg.hip = 60;
  const double hinged = lowBackMoment(settled(pose).body, pose, kReference);
  EXPECT_GT(hinged, 60);
  pose.on |= {Contact::handNear, Contact::handFar}; // propped on the arms
  EXPECT_EQ(lowBackMoment(settled(pose).body, pose, kReference), 0);
}

} // namespace
} // namespace matwright
