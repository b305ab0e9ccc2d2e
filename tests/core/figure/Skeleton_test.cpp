#include "core/figure/Moment.h"
#include "core/figure/Skeleton.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

namespace sk = skeleton;

// Drillis and Contini 1966, landmark heights over the stature, by way of Winter, fig. 4.1: ankle .039, knee .285, hip
// .530, shoulder .818, crown 1.
TEST(Skeleton, LandmarksStandAtTheirPublishedHeights) {
  const PosedBody body = posed(Pose{});
  const PosedLeg& leg = body.legs[index(Limb::near)];
  const double floor = leg.ankle.y - 0.039;
  EXPECT_NEAR(leg.knee.y - floor, 0.285, 1e-9);
  EXPECT_NEAR(leg.hip.y - floor, 0.530, 1e-9);
  EXPECT_NEAR(body.arms[0].shoulder.y - floor, 0.818, 1e-9);
  EXPECT_NEAR(body.crown.y - floor, 1.000, 1e-9);
}

// The same table: upper arm .186, forearm .146, hand .108, foot .152, shoulder breadth .259, hip breadth .191.
TEST(Skeleton, LimbsHaveTheirPublishedLengths) {
  const PosedBody body = posed(Pose{});
  const PosedArm& arm = body.arms[index(Limb::near)];
  EXPECT_NEAR(length(arm.elbow - arm.shoulder), 0.186, 1e-9);
  EXPECT_NEAR(length(arm.wrist - arm.elbow), 0.146, 1e-9);
  EXPECT_NEAR(length(arm.fingertips - arm.wrist) + sk::kFingerRadius, 0.108, 1e-9);
  const PosedLeg& leg = body.legs[index(Limb::near)];
  EXPECT_NEAR(leg.toes.x + sk::kToeRadius - (leg.heel.x - sk::kHeelRadius), 0.152, 1e-9);
  const double shoulders = body.arms[0].shoulder.z - body.arms[1].shoulder.z + 2 * sk::kShoulderRadius;
  EXPECT_NEAR(shoulders, 0.259, 1e-9);
  EXPECT_NEAR(body.legs[0].hip.z - body.legs[1].hip.z + 2 * sk::kHipRadius, 0.191, 1e-9);
}

// Winter, table 4.1: all segments make the whole body; trunk .497 of .216 + .139 + .142; total arm .050; total leg
// .161.
TEST(Skeleton, MassesMakeAWholeBody) {
  double whole = 0;
  for (std::size_t i = 0; i < kWordCount<Segment>; ++i)
    whole += massShare(static_cast<Segment>(i));
  EXPECT_NEAR(whole, 1.0, 1e-9);
  EXPECT_NEAR(massShare(Segment::thorax) + massShare(Segment::abdomen) + massShare(Segment::pelvis), 0.497, 1e-9);
  double arm = 0, leg = 0;
  armSegments(Limb::far).forEach([&](Segment segment) { arm += massShare(segment); });
  legSegments(Limb::far).forEach([&](Segment segment) { leg += massShare(segment); });
  EXPECT_NEAR(arm, 0.050, 1e-9);
  EXPECT_NEAR(leg, 0.161, 1e-9);
}

// Winter, table 4.1: the trunk's centre at .50 of its length; total arm .530 of shoulder to wrist; trunk, head and neck
// .66 and head, arms and trunk .626 of hip to shoulder. Rows for joined segments differ from their parts by some per
// cent in the table itself (total leg .560 against .553).
TEST(Skeleton, CentresOfJoinedSegmentsAgreeWithTheirOwnRows) {
  const PosedBody body = posed(Pose{});
  const double hip = body.pelvis().y, trunk = body.neck().y - hip;
  const SegmentSet torso{Segment::thorax, Segment::abdomen, Segment::pelvis};
  EXPECT_NEAR((centreOfMass(body, torso).y - hip) / trunk, 0.50, 0.001);
  const PosedArm& arm = body.arms[0];
  const double armCentre = arm.shoulder.y - centreOfMass(body, armSegments(Limb::near)).y;
  EXPECT_NEAR(armCentre / (arm.shoulder.y - arm.wrist.y), 0.530, 0.05 * 0.530);
  const SegmentSet trunkHeadNeck = torso | SegmentSet{Segment::headAndNeck};
  EXPECT_NEAR((centreOfMass(body, trunkHeadNeck).y - hip) / trunk, 0.66, 0.08 * 0.66);
  const SegmentSet headArmsTrunk = trunkHeadNeck | armSegments(Limb::near) | armSegments(Limb::far);
  EXPECT_NEAR((centreOfMass(body, headArmsTrunk).y - hip) / trunk, 0.626, 0.08 * 0.626);
}

} // namespace
} // namespace matwright
