#include "core/figure/PosedBody.h"
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

} // namespace
} // namespace matwright
