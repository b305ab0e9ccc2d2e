#include "core/load/Reactions.h"
#include "tests/support/PoseFile.h"
#include "tests/support/RestingPoses.h"
#include "tests/support/Weights.h"

#include <filesystem>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using test::centreOfMass;

namespace fs = std::filesystem;

const std::string kResources = MATWRIGHT_SOURCE_DIR "/resources";
const std::string kPositions = kResources + "/positions/positions.json";

struct Carried {
  explicit Carried(const Pose& pose)
      : shape(settled(pose)), body(weighed(shape.body, BodyTable::winter)),
        forces(reactions(body, bearingsOf(shape, body))) {}

  // Of the body's weight, upward.
  double share(SegmentSet segments) const {
    double sum = 0;
    for (const Force& force : forces)
      sum += segments.contains(force.segment) ? force.force.y : 0;
    return sum;
  }

  Settled shape;
  WeighedBody body;
  std::vector<Force> forces;
};

const SegmentSet kArms = beyond(Segment::upperArmNear) | beyond(Segment::upperArmFar);

Pose pushUp(double elbow) {
  Pose pose = test::handsAndKnees();
  for (LegAngles& leg : pose.legs)
    leg = {};
  for (ArmAngles& arm : pose.arms)
    arm = {.shoulder = 90 - elbow / 2, .elbow = elbow};
  pose.on = {Contact::handNear, Contact::handFar, Contact::toesNear, Contact::toesFar};
  return pose;
}

TEST(Reactions, NothingCarriesWithoutBearings) {
  EXPECT_TRUE(reactions(weighed(posed(Pose{}), BodyTable::winter), {}).empty());
}

// A pose that names no contact is put on the floor all the same, and rests with what is lowest.
TEST(Reactions, WhatIsAsLowAsTheFloorRestsOnIt) {
  const Carried carried(Pose{});
  EXPECT_NEAR(carried.share(beyond(Segment::thighNear) | beyond(Segment::thighFar)), 1, 1e-4);
}

TEST(Reactions, CarryTheWholeWeightAndTurnNothing) {
  for (const Pose& pose : {test::handsAndKnees(), test::standing(), pushUp(0), pushUp(80)}) {
    const Carried carried(pose);
    EXPECT_NEAR(carried.share(wholeBody()), 1, 1e-4);
    const Vec3 turning = momentAbout(carried.body, carried.body[Segment::pelvis].joint, wholeBody(), carried.forces);
    EXPECT_NEAR(turning.z, 0, 1e-4);
    EXPECT_NEAR(turning.x, 0, 1e-4);
  }
}

TEST(Reactions, NeverPull) {
  for (const auto& entry : fs::directory_iterator(kResources + "/catalogue"))
    for (const LabelledPose& pose : readCataloguePoses(entry.path().string(), kPositions, {}).poses)
      for (const Force& force : Carried(pose.pose).forces)
        EXPECT_GE(force.force.y, 0) << pose.label;
}

// A beam on two supports: each bears by the other's distance. Worked by hand: hands and toes share a plank by where the
// centre of mass is between them.
TEST(Reactions, HandsAndToesShareByTheirDistances) {
  const Carried carried(pushUp(0));
  double handsAt = 0, hands = 0, toesAt = 0, toes = 0;
  for (const Force& force : carried.forces) {
    (kArms.contains(force.segment) ? handsAt : toesAt) += force.at.x * force.force.y;
    (kArms.contains(force.segment) ? hands : toes) += force.force.y;
  }
  handsAt /= hands;
  toesAt /= toes;
  const double centre = centreOfMass(carried.body, wholeBody()).x;
  EXPECT_NEAR(hands, (centre - toesAt) / (handsAt - toesAt), 1e-3);
}

// Suprak, Dawes and Stephenson 2011, J Strength Cond Res 25: 497-503, as remembered: 28 trained men, hands bear about
// 69 % of the body's weight at the top of a push-up and 75 % at the bottom; 54 and 62 % on the knees. From memory, so
// with a wide margin: hands bear more than half, more at the bottom, less on the knees.
TEST(Reactions, HandsBearAboutTwoThirdsInAPushUp) {
  const double top = Carried(pushUp(0)).share(kArms), bottom = Carried(pushUp(100)).share(kArms);
  EXPECT_NEAR(top, 0.69, 0.06);
  EXPECT_NEAR(bottom, 0.75, 0.07);
  EXPECT_GT(bottom, top);
  Pose knees = pushUp(0);
  for (LegAngles& leg : knees.legs)
    leg.knee = 90;
  knees.on = {Contact::handNear, Contact::handFar, Contact::kneeNear, Contact::kneeFar};
  const double onKnees = Carried(knees).share(kArms);
  EXPECT_NEAR(onKnees, 0.54, 0.09);
  EXPECT_LT(onKnees, top);
}

TEST(Reactions, AreTheSameOnBothSidesOfASymmetricalBody) {
  const Carried carried(test::handsAndKnees());
  EXPECT_NEAR(carried.share(beyond(Segment::upperArmNear)), carried.share(beyond(Segment::upperArmFar)), 1e-5);
  EXPECT_NEAR(carried.share(beyond(Segment::thighNear)), carried.share(beyond(Segment::thighFar)), 1e-5);
}

// A wall pushes level, and the floor holds against it: the feet of somebody who sits against a wall do not slide.
TEST(Reactions, TheFloorHoldsAgainstAWall) {
  Pose sit;
  for (LegAngles& leg : sit.legs)
    leg = {.hip = 90, .knee = 90};
  sit.on = {Contact::footNear, Contact::footFar};
  sit.wall = {WallContact::back};
  const Carried carried(sit);
  Vec3 sum;
  double level = 0;
  for (const Force& force : carried.forces) {
    sum = sum + force.force;
    level += std::abs(force.force.x);
  }
  EXPECT_NEAR(sum.x, 0, 1e-4);
  EXPECT_NEAR(sum.y, 1, 1e-4);
  EXPECT_GT(level, 0.2);
}

TEST(Reactions, TheTrunkTouchesTheFloorWhereItLies) {
  const Touching flat = touchingBelow(settled(test::faceUpBent()));
  EXPECT_LE(flat.first, PosedBody::kLumbar);
  EXPECT_GE(flat.last, PosedBody::kNeck - 2);
  Pose curl = test::faceUpBent();
  curl.thorax.bend = 45;
  curl.on.erase(Contact::head);
  const Touching lifted = touchingBelow(settled(curl));
  EXPECT_LE(lifted.first, PosedBody::kLumbar);
  EXPECT_LT(lifted.last, flat.last);
  EXPECT_FALSE(touchingBelow(settled(test::standing())).any());
}

} // namespace
} // namespace matwright
