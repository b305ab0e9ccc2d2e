// The moments of weight about the joints of a body: an estimate from tables of segments, not a measurement, and not
// what muscles or discs bear.
#pragma once

#include "core/base/EnumSet.h"
#include "core/figure/PosedBody.h"

namespace matwright {

enum class Segment {
  headAndNeck,
  thorax,
  abdomen,
  pelvis,
  upperArmNear,
  upperArmFar,
  forearmNear,
  forearmFar,
  handNear,
  handFar,
  thighNear,
  thighFar,
  lowerLegNear, // shank and foot
  lowerLegFar
};

template <> struct Words<Segment> {
  static constexpr auto list =
      wordList("head-and-neck", "thorax", "abdomen", "pelvis", "upper-arm.near", "upper-arm.far", "forearm.near",
               "forearm.far", "hand.near", "hand.far", "thigh.near", "thigh.far", "lower-leg.near", "lower-leg.far");
};

using SegmentSet = EnumSet<Segment>;

SegmentSet armSegments(Limb limb);
SegmentSet legSegments(Limb limb);
// Thorax, abdomen, head, neck and arms: what the foot of the lumbar spine holds when the trunk is lifted.
SegmentSet upperBodySegments();

struct BodySize {
  double mass = 70;      // kg
  double stature = 1.75; // m
  friend bool operator==(const BodySize&, const BodySize&) = default;
};

constexpr double kGravity = 9.81; // m/s2

double massShare(Segment segment); // of the whole body; all segments make 1
Vec3 centreOfMass(const PosedBody& body, Segment segment);
Vec3 centreOfMass(const PosedBody& body, SegmentSet segments); // the set must not be empty

// The size of the moment of the segments' weight about a point of the body, in newton metres.
double gravityMoment(const PosedBody& body, Vec3 about, SegmentSet segments, const BodySize& size);

// The segments of `pose` that the floor or the wall does not carry: limbs and head that rest nowhere, and the trunk
// when it neither lies nor leans.
SegmentSet heldSegments(const Pose& pose);

// What the pose leaves to the low back: the moment about the foot of the lumbar spine of the legs that are held, or of
// the upper body when it is, whichever is larger. In newton metres.
double lowBackMoment(const PosedBody& body, const Pose& pose, const BodySize& size);

} // namespace matwright
