#include "core/figure/Joint.h"
#include "core/load/WeighedBody.h"
#include "tests/support/RandomPose.h"
#include "tests/support/Seeds.h"
#include "tests/support/Weights.h"

#include <cmath>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using test::centreOfMass;
using test::potentialEnergy;

constexpr BodySize kReference{.mass = 70, .stature = 1.75};

// Face up, thigh `thigh` degrees above the horizontal, knee bent by `knee`.
Pose supine(double thigh, double knee) {
  Pose pose;
  pose.lean = -90;
  for (LegAngles& leg : pose.legs)
    leg = {.hip = thigh, .knee = knee};
  return pose;
}

double moment(const WeighedBody& body, Vec3 about, SegmentSet part, const BodySize& size = kReference) {
  return newtonMetres(size) * length(momentAbout(body, about, part));
}

double oneLeg(double thigh, double knee, const BodySize& size = kReference, BodyTable table = BodyTable::winter) {
  const WeighedBody body = weighed(posed(supine(thigh, knee)), table);
  return moment(body, body[Segment::thighNear].joint, beyond(Segment::thighNear), size);
}

// Worked from Winter's table 4.1 (thigh .100, .433; foot and shank .061, .606) and the lengths of fig. 4.1, for 70 kg
// and 1.75 m, g 9.81: the moment of one leg about its hip in N m.
TEST(WeighedBody, AStraightLegAndATabletopLegWeighAsWorkedOut) {
  EXPECT_NEAR(oneLeg(0, 0), 41.64, 0.005);
  EXPECT_NEAR(oneLeg(90, 90), 10.93, 0.005);
  EXPECT_NEAR(oneLeg(0, 0) / oneLeg(90, 90), 3.81, 0.005);
  const WeighedBody straight = weighed(posed(supine(0, 0)), BodyTable::winter),
                    tabletop = weighed(posed(supine(90, 90)), BodyTable::winter);
  const SegmentSet both = beyond(Segment::thighNear) | beyond(Segment::thighFar);
  EXPECT_NEAR(moment(straight, straight[Segment::pelvis].joint, both), 83.27, 0.005);
  EXPECT_NEAR(moment(tabletop, tabletop[Segment::pelvis].joint, both), 21.86, 0.01);
}

// The same, by angle.
TEST(WeighedBody, AStraightLegWeighsLessTheHigherItIs) {
  EXPECT_NEAR(oneLeg(30, 0), 36.06, 0.005);
  EXPECT_NEAR(oneLeg(45, 0), 29.44, 0.005);
  EXPECT_NEAR(oneLeg(60, 0), 20.82, 0.005);
  EXPECT_NEAR(oneLeg(90, 0), 0, 1e-9);
}

// The same: feet just off the floor with bent knees equal a straight leg at 45 degrees, 2.7 times tabletop.
TEST(WeighedBody, BentLegsWeighAsWorkedOut) {
  EXPECT_NEAR(oneLeg(45, 90), 29.44, 0.005);
  EXPECT_NEAR(oneLeg(45, 90) / oneLeg(90, 90), 2.7, 0.05);
  EXPECT_NEAR(oneLeg(60, 60), 26.28, 0.005);
  EXPECT_NEAR(oneLeg(45, 45), 32.64, 0.005);
}

// The same for other bodies; the ratio does not depend on the body.
TEST(WeighedBody, GoesWithMassAndStature) {
  EXPECT_NEAR(oneLeg(0, 0, {60, 1.65}), 33.65, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {60, 1.65}), 8.83, 0.005);
  EXPECT_NEAR(oneLeg(0, 0, {73.0, 1.741}), 43.20, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {73.0, 1.741}), 11.34, 0.005);
  EXPECT_NEAR(oneLeg(0, 0, {61.9, 1.735}), 36.50, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {61.9, 1.735}), 9.58, 0.005);
}

// Worked from de Leva 1996, table 4, for his two bodies: thigh .3685 and .4222 m, shank .4323 and .4340 m, the foot's
// weight at the malleolus. Men 44.94 and 10.17 N m, women 34.48 and 8.88.
TEST(WeighedBody, LegsOfDeLevasBodiesWeighAsWorkedOut) {
  EXPECT_NEAR(oneLeg(0, 0, {73.0, 1.741}, BodyTable::deLevaMen), 44.94, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {73.0, 1.741}, BodyTable::deLevaMen), 10.17, 0.005);
  EXPECT_NEAR(oneLeg(0, 0, {61.9, 1.735}, BodyTable::deLevaWomen), 34.48, 0.005);
  EXPECT_NEAR(oneLeg(90, 90, {61.9, 1.735}, BodyTable::deLevaWomen), 8.88, 0.005);
}

// Winter's row for the whole leg: .161, .447 over .491 of the stature: 42.46 N m, 2 % more than the sum of the parts.
TEST(WeighedBody, AgreesWithTheRowForTheWholeLeg) {
  EXPECT_NEAR(oneLeg(0, 0), 0.161 * 0.447 * 0.491 * newtonMetres(kReference), 0.025 * 42.46);
}

// Winter, table 4.1: the trunk's centre at .50 of its length; total arm .530 of shoulder to wrist; trunk, head and neck
// .66 and head, arms and trunk .626 of hip to shoulder. Rows for joined segments differ from their parts by some per
// cent in the table itself.
TEST(WeighedBody, CentresOfJoinedSegmentsAgreeWithTheirOwnRows) {
  const WeighedBody body = weighed(posed(Pose{}), BodyTable::winter);
  const double hip = body[Segment::pelvis].joint.y, trunk = body[Segment::headAndNeck].joint.y - hip;
  const SegmentSet limbs = beyond(Segment::upperArmNear) | beyond(Segment::upperArmFar) | beyond(Segment::thighNear) |
                           beyond(Segment::thighFar);
  const SegmentSet trunkHeadNeck = wholeBody().without(limbs);
  EXPECT_NEAR((centreOfMass(body, trunkHeadNeck.without({Segment::headAndNeck})).y - hip) / trunk, 0.50, 0.001);
  const WeighedSegment& upperArm = body[Segment::upperArmNear];
  const double armCentre = upperArm.joint.y - centreOfMass(body, beyond(Segment::upperArmNear)).y;
  EXPECT_NEAR(armCentre / (upperArm.joint.y - body[Segment::handNear].joint.y), 0.530, 0.05 * 0.530);
  EXPECT_NEAR((centreOfMass(body, trunkHeadNeck).y - hip) / trunk, 0.66, 0.08 * 0.66);
  const SegmentSet headArmsTrunk = beyond(Segment::lumbar1) | SegmentSet{Segment::pelvis};
  EXPECT_NEAR((centreOfMass(body, headArmsTrunk).y - hip) / trunk, 0.626, 0.08 * 0.626);
}

TEST(WeighedBody, HasTheLengthsOfItsTableAndTheWeightsOfAWholeBody) {
  test::RandomPose random(3);
  for (std::size_t t = 0; t < kWordCount<BodyTable>; ++t) {
    const auto table = static_cast<BodyTable>(t);
    const WeighedBody body = weighed(posed(random.anywhere()), table);
    double weight = 0;
    for (const WeighedSegment& segment : body.segments)
      weight += segment.weight;
    EXPECT_NEAR(weight, 1, 2e-4);
    const auto lengthOf = [&](Segment segment) { return length(body[segment].end - body[segment].joint); };
    EXPECT_NEAR(lengthOf(Segment::thighFar), rowOf(table, SegmentKind::thigh).length, 1e-9);
    EXPECT_NEAR(lengthOf(Segment::lowerLegNear), rowOf(table, SegmentKind::lowerLeg).length, 1e-9);
    EXPECT_NEAR(lengthOf(Segment::handNear), rowOf(table, SegmentKind::hand).length, 1e-9);
    for (std::size_t i = 1; i < kSegments; ++i) {
      const auto segment = static_cast<Segment>(i);
      const bool fromMiddle = segment == upperArmOf(Limb::near) || segment == upperArmOf(Limb::far) ||
                              segment == thighOf(Limb::near) || segment == thighOf(Limb::far);
      if (!fromMiddle) {
        EXPECT_EQ(body[segment].joint, body[parentOf(segment)].end) << word(segment);
      }
    }
  }
}

// De Leva's centres of the trunk's parts, which are not in their middle, come out as they are in the table.
TEST(WeighedBody, CentresOfTheTrunksPartsAreThoseOfTheTable) {
  const WeighedBody body = weighed(posed(Pose{}), BodyTable::deLevaWomen);
  const SegmentSet thorax{Segment::thorax1, Segment::thorax2, Segment::thorax3, Segment::thorax4};
  const double foot = body[Segment::thorax1].joint.y, top = body[Segment::thorax4].end.y;
  EXPECT_NEAR((centreOfMass(body, thorax).y - foot) / (top - foot), 1 - 0.2077, 1e-9);
}

// Statics: a weight straight above or below a joint has no moment about it, and a limb turned about the vertical keeps
// its moment.
TEST(WeighedBody, MomentsDependOnTheHorizontalDistanceAlone) {
  Pose pose;
  const WeighedBody standing = weighed(posed(pose), BodyTable::winter);
  EXPECT_NEAR(moment(standing, standing[Segment::thighNear].joint, beyond(Segment::thighNear)), 0, 1e-9);
  const auto ofArm = [&pose] {
    const WeighedBody body = weighed(posed(pose), BodyTable::winter);
    return moment(body, body[Segment::upperArmNear].joint, beyond(Segment::upperArmNear));
  };
  pose.arms[0].shoulder = 90;
  const double forward = ofArm();
  pose.arms[0].out = 70;
  EXPECT_GT(forward, 5);
  EXPECT_NEAR(ofArm(), forward, 1e-9);
}

// The moment about a joint, along the axis it turns about, is how fast the energy of what hangs on it grows with the
// angle (virtual work). The axis comes from how the segments move.
TEST(WeighedBody, MomentsAreTheSlopesOfTheEnergyInAnyPose) {
  struct Turn {
    Joint joint;
    Segment first;
  };
  constexpr std::array turns{
      Turn{Joint::hipNear, Segment::thighNear},       Turn{Joint::legOutFar, Segment::thighFar},
      Turn{Joint::kneeNear, Segment::lowerLegNear},   Turn{Joint::kneeFar, Segment::lowerLegFar},
      Turn{Joint::shoulderFar, Segment::upperArmFar}, Turn{Joint::armOutNear, Segment::upperArmNear},
      Turn{Joint::elbowNear, Segment::forearmNear}};
  constexpr double kStep = 1e-3; // degrees
  int checked = 0;
  test::forEachSeed<test::RandomPose>(1, 60, [&](test::RandomPose& random) {
    const Pose pose = random.anywhere();
    for (std::size_t t = 0; t < kWordCount<BodyTable>; ++t) {
      const auto table = static_cast<BodyTable>(t);
      const auto with = [&](Joint joint, double by) {
        Pose other = pose;
        angleOf(other, joint) += by;
        return weighed(posed(other), table);
      };
      for (const Turn& turn : turns) {
        const SegmentSet part = beyond(turn.first);
        const WeighedBody body = weighed(posed(pose), table), less = with(turn.joint, -kStep),
                          more = with(turn.joint, kStep);
        const double radians = 2 * kStep * kRadiansPerDegree;
        const WeighedSegment& first = body[turn.first];
        const Vec3 arm = first.end - first.joint;
        const Vec3 slope = (more[turn.first].end - less[turn.first].end) * (1 / radians);
        const double grown = (potentialEnergy(more, part) - potentialEnergy(less, part)) / radians;
        const Vec3 centre = centreOfMass(body, part) - first.joint;
        const Vec3 rise = (centreOfMass(more, part) - centreOfMass(less, part)) * (1 / radians);
        // axis x arm = slope and axis x centre = rise, solved for the axis. Where arm and centre lie in one line, what
        // the axis has along it counts for nothing.
        const bool inLine = length(cross(arm, centre)) < 1e-6;
        if (!inLine && std::abs(dot(slope, centre)) < 1e-3)
          continue;
        const Vec3 axis =
            inLine ? cross(arm, slope) * (1 / dot(arm, arm)) : cross(slope, rise) * (1 / dot(slope, centre));
        ++checked;
        EXPECT_NEAR(grown, -dot(momentAbout(body, first.joint, part), axis), 1e-5) << word(turn.joint);
      }
    }
  });
  EXPECT_GT(checked, 800);
}

TEST(WeighedBody, AMirroredBodyHasTheMirroredMoments) {
  test::forEachSeed<test::RandomPose>(1, 40, [](test::RandomPose& random) {
    const Pose pose = random.anywhere();
    const WeighedBody one = weighed(posed(pose), BodyTable::winter),
                      other = weighed(posed(sidesExchanged(pose)), BodyTable::winter);
    const auto sizeOf = [](const WeighedBody& body, Segment first) {
      return length(momentAbout(body, body[first].joint, beyond(first)));
    };
    EXPECT_NEAR(sizeOf(one, Segment::thighNear), sizeOf(other, Segment::thighFar), 1e-9);
    EXPECT_NEAR(sizeOf(one, Segment::upperArmFar), sizeOf(other, Segment::upperArmNear), 1e-9);
    EXPECT_NEAR(sizeOf(one, Segment::lumbar1), sizeOf(other, Segment::lumbar1), 1e-9);
  });
}

} // namespace
} // namespace matwright
