#include "core/figure/JointLimits.h"
#include "core/figure/PoseDrag.h"
#include "tests/support/RestingPoses.h"

#include <gmock/gmock.h>
#include <random>

namespace matwright {
namespace {

using namespace test;

template <class Each> void forEachHandle(Each each) {
  for (std::size_t i = 0; i < kWordCount<Handle>; ++i)
    each(static_cast<Handle>(i));
}

// Where the handle is when the angles become those of `pose` and nothing else happens.
Point2 placeBeforeSettling(const Settled& shape, const Pose& pose, Handle handle) {
  Articulation body = shape.articulation;
  body.pose = pose;
  for (const Limb limb : kBothLimbs)
    if (handle == (limb == Limb::near ? Handle::toesNear : Handle::toesFar))
      body.feet[index(limb)] = footAt(pose.legs[index(limb)].ankle);
  return seenFrom(pose.view, pose.flip, placeOf(posed(body), handle));
}

double apart(Point2 a, Point2 b) { return std::hypot(a.x - b.x, a.y - b.y); }

Pose seen(Pose pose, View view, bool flip = false) {
  pose.view = view;
  pose.flip = flip;
  return pose;
}

TEST(PoseDrag, ToWhereTheHandleIsChangesNothing) {
  for (const Pose& pose : {standing(), faceUpBent(), handsAndKnees()}) {
    for (const View view : {View::side, View::front, View::top}) {
      const Settled shape = settled(seen(pose, view));
      forEachHandle([&](Handle handle) {
        const Drag drag = dragged(shape, handle, seenPlaceOf(shape, handle));
        EXPECT_EQ(drag.pose, shape.articulation.pose) << word(handle);
        EXPECT_TRUE(drag.atLimit.empty()) << word(handle);
      });
    }
  }
}

// The pointer is put where forward kinematics says the handle can be: other angles of its joints that move it in the
// plane of the view.
TEST(PoseDrag, PutsTheHandleUnderThePointerWhereverItsJointsReach) {
  std::mt19937 random(7);
  for (const Pose& pose : {standing(), faceUpBent(), handsAndKnees()}) {
    for (const bool flip : {false, true}) {
      const Settled shape = settled(seen(pose, View::side, flip));
      forEachHandle([&](Handle handle) {
        const auto joints = jointsOf(handle);
        if (joints.empty() || handle == Handle::hipNear || handle == Handle::hipFar || handle == Handle::shoulderNear ||
            handle == Handle::shoulderFar)
          return; // these hardly move in the side view
        for (int trial = 0; trial < 12; ++trial) {
          Pose wanted = shape.articulation.pose;
          const std::size_t plane = handle == Handle::handNear || handle == Handle::handFar ||
                                            handle == Handle::footNear || handle == Handle::footFar
                                        ? 2
                                        : 1;
          for (std::size_t i = 0; i < plane; ++i) {
            const AngleRange range = rangeIn(shape.articulation.pose, joints[i]);
            angleOf(wanted, joints[i]) = std::uniform_real_distribution<>(range.least, range.most)(random);
          }
          const Point2 pointer = placeBeforeSettling(shape, wanted, handle);
          const Drag drag = dragged(shape, handle, pointer);
          EXPECT_LT(apart(placeBeforeSettling(shape, drag.pose, handle), pointer), kMillimetre)
              << word(handle) << " trial " << trial;
          EXPECT_NEAR(drag.miss, 0, kMillimetre);
        }
      });
    }
  }
}

TEST(PoseDrag, KeepsEveryAngleWithinItsRangeWhereverThePointerIs) {
  std::mt19937 random(11);
  std::uniform_real_distribution<> anywhere(-1.2, 1.2);
  for (const Pose& pose : {standing(), faceUpBent(), handsAndKnees()})
    for (const View view : {View::side, View::front, View::top}) {
      const Settled shape = settled(seen(pose, view));
      forEachHandle([&](Handle handle) {
        if (handle == Handle::seat)
          return; // moves by settling, which has limits of its own
        for (int trial = 0; trial < 6; ++trial) {
          const Drag drag = dragged(shape, handle, {anywhere(random), anywhere(random)});
          for (const Joint joint : jointsOf(handle)) {
            const double before = angleOf(shape.articulation.pose, joint), now = angleOf(drag.pose, joint);
            const AngleRange range = rangeOf(joint);
            EXPECT_GE(now, std::min(before, range.least) - 1e-9) << word(joint);
            EXPECT_LE(now, std::max(before, range.most) + 1e-9) << word(joint);
          }
        }
      });
    }
}

TEST(PoseDrag, TurnsNoJointButThoseOfTheHandle) {
  const Settled shape = settled(seen(faceUpBent(), View::side));
  const Point2 at = seenPlaceOf(shape, Handle::footNear);
  Pose changed = dragged(shape, Handle::footNear, {at.x + 0.05, at.y + 0.2}).pose;
  for (const Joint joint : jointsOf(Handle::footNear))
    angleOf(changed, joint) = angleOf(shape.articulation.pose, joint);
  EXPECT_EQ(changed, shape.articulation.pose);
}

TEST(PoseDrag, FromTheSideLeavesAbductionAlone) {
  const Settled shape = settled(seen(standing(), View::side));
  const Drag drag = dragged(shape, Handle::handNear, {0.3, 0.9});
  EXPECT_EQ(drag.pose.arms[0].out, shape.articulation.pose.arms[0].out);
  EXPECT_GT(drag.pose.arms[0].shoulder, 30);
}

TEST(PoseDrag, FromTheFrontLiftsTheArmAside) {
  const Settled shape = settled(seen(standing(), View::front));
  const Point2 shoulder = seenPlaceOf(shape, Handle::shoulderNear);
  const Drag drag = dragged(shape, Handle::elbowNear, {shoulder.x - 0.186, shoulder.y});
  EXPECT_NEAR(drag.pose.arms[0].out, 90, 0.5);
  EXPECT_NEAR(drag.pose.arms[0].shoulder, 0, 0.5);
}

TEST(PoseDrag, SaysWhichJointStopsIt) {
  const Settled shape = settled(seen(standing(), View::side));
  // A knee that is pulled up behind the back.
  const Point2 hip = seenPlaceOf(shape, Handle::hipNear);
  const Drag drag = dragged(shape, Handle::kneeNear, {hip.x - 0.2, hip.y + 0.05});
  EXPECT_TRUE(drag.atLimit.contains(Joint::hipNear));
  EXPECT_GT(drag.miss, 0.05);
  EXPECT_EQ(drag.pose.legs[0].hip, rangeOf(Joint::hipNear).least);
}

TEST(PoseDrag, ALegThatIsPulledTooFarIsStraightAndPointsAtThePointer) {
  const Settled shape = settled(seen(faceUpBent(), View::side));
  const Point2 hip = seenPlaceOf(shape, Handle::hipNear);
  const Drag drag = dragged(shape, Handle::footNear, {hip.x + 0.7, hip.y + 0.7});
  EXPECT_NEAR(drag.pose.legs[0].knee, 0, 1);
  const Point2 foot = placeBeforeSettling(shape, drag.pose, Handle::footNear);
  EXPECT_NEAR(std::atan2(foot.y - hip.y, foot.x - hip.x), std::atan2(0.7, 0.7), 0.02);
}

TEST(PoseDrag, LeaningThePelvisLeavesLegsThatStandWhereTheyStand) {
  const Settled shape = settled(seen(standing(), View::side));
  const Point2 seat = seenPlaceOf(shape, Handle::seat);
  const Drag drag = dragged(shape, Handle::pelvis, {seat.x + 0.05, seat.y + 0.05});
  EXPECT_GT(drag.pose.lean, 30);
  EXPECT_NEAR(drag.pose.legs[0].hip, drag.pose.lean, 0.5);
  EXPECT_NEAR(drag.pose.legs[1].hip, drag.pose.lean, 0.5);
}

TEST(PoseDrag, AHipRollsTheBodyWhereItIsSeenFromTheFront) {
  Pose pose = seen(Pose{}, View::top);
  const Settled shape = settled(pose);
  const Point2 at = seenPlaceOf(shape, Handle::hipNear);
  const Drag drag = dragged(shape, Handle::hipNear, {at.x + 0.02, at.y});
  EXPECT_NE(drag.pose.roll, 0);
  EXPECT_GT(seenPlaceOf(settled(drag.pose), Handle::hipNear).x, at.x);
}

TEST(PoseDrag, LoweringTheSeatOfAStandingBodyBendsItsLegsAndKeepsItsFeet) {
  const Settled shape = settled(seen(standing(), View::side));
  const Point2 seat = seenPlaceOf(shape, Handle::seat);
  const Drag drag = dragged(shape, Handle::seat, {seat.x - 0.08, seat.y - 0.15});
  EXPECT_LT(drag.miss, 0.02);
  EXPECT_GT(drag.pose.legs[0].knee, 30);
  EXPECT_LE(drag.pose.legs[0].knee, rangeOf(Joint::kneeNear).most);
  const Settled again = settled(drag.pose); // the angles alone bring it there again
  EXPECT_NEAR(seenPlaceOf(again, Handle::seat).y, seat.y - 0.15, 0.02);
  EXPECT_LT(again.largestGap, kMillimetre);
}

TEST(PoseDrag, TheSeatOfALyingBodyStaysDown) {
  const Settled shape = settled(seen(faceUpBent(), View::side));
  const Point2 seat = seenPlaceOf(shape, Handle::seat);
  const Drag drag = dragged(shape, Handle::seat, {seat.x, seat.y + 0.2});
  EXPECT_EQ(drag.pose, shape.articulation.pose);
  EXPECT_NEAR(drag.miss, 0.2, 1e-9);
}

} // namespace
} // namespace matwright
