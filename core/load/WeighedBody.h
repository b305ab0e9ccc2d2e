// A posed body as a tree of heavy segments, with the lengths of a table. Lengths in statures, weights in body weights,
// moments in body weights times statures.
#pragma once

#include "core/base/EnumSet.h"
#include "core/figure/PosedBody.h"
#include "core/load/BodyTable.h"

#include <span>

namespace matwright {

// The lumbar spine and the thorax have four links each, from below. A segment's parent stands before it.
enum class Segment {
  pelvis,
  lumbar1,
  lumbar2,
  lumbar3,
  lumbar4,
  thorax1,
  thorax2,
  thorax3,
  thorax4,
  headAndNeck,
  upperArmNear,
  forearmNear,
  handNear,
  upperArmFar,
  forearmFar,
  handFar,
  thighNear,
  lowerLegNear,
  thighFar,
  lowerLegFar
};
template <> struct Words<Segment> {
  static constexpr auto list =
      wordList("pelvis", "lumbar.1", "lumbar.2", "lumbar.3", "lumbar.4", "thorax.1", "thorax.2", "thorax.3", "thorax.4",
               "head-and-neck", "upper-arm.near", "forearm.near", "hand.near", "upper-arm.far", "forearm.far",
               "hand.far", "thigh.near", "lower-leg.near", "thigh.far", "lower-leg.far");
};
using SegmentSet = EnumSet<Segment>;
inline constexpr std::size_t kSegments = kWordCount<Segment>;

constexpr std::size_t index(Segment segment) { return static_cast<std::size_t>(segment); }

// The segment it hangs on; the pelvis hangs on itself.
Segment parentOf(Segment segment);
// The segment and all that hang on it.
SegmentSet beyond(Segment segment);

constexpr Segment upperArmOf(Limb limb) { return limb == Limb::near ? Segment::upperArmNear : Segment::upperArmFar; }
constexpr Segment handOf(Limb limb) { return limb == Limb::near ? Segment::handNear : Segment::handFar; }
constexpr Segment thighOf(Limb limb) { return limb == Limb::near ? Segment::thighNear : Segment::thighFar; }
constexpr Segment lowerLegOf(Limb limb) { return limb == Limb::near ? Segment::lowerLegNear : Segment::lowerLegFar; }

struct WeighedSegment {
  double weight = 0;
  Vec3 joint;  // where it hangs on its parent; of the pelvis: the middle of the hips
  Vec3 end;    // its other end
  Vec3 centre; // where its weight acts
};

struct WeighedBody {
  std::array<WeighedSegment, kSegments> segments; // by Segment

  const WeighedSegment& operator[](Segment segment) const { return segments[index(segment)]; }
};

WeighedBody weighed(const PosedBody& body, BodyTable table);

// The moment about a place that it takes to change the motion of some segments, when their centres have the
// accelerations and their long axes the second derivatives given (by Segment, a square second). In body masses times
// square statures a square second. Radii of gyration are those of the table.
struct SegmentMotion {
  Vec3 acceleration, axisChange;
};
Vec3 inertialMoment(const WeighedBody& body, BodyTable table, Vec3 place, SegmentSet segments,
                    std::span<const SegmentMotion, kSegments> motion);

SegmentKind kindOf(Segment segment);

// A force that acts on a segment from outside, such as the floor's.
struct Force {
  Segment segment{};
  Vec3 at, force;
};

// The moment about a place of the weights of some segments and of the forces on them.
Vec3 momentAbout(const WeighedBody& body, Vec3 place, SegmentSet segments, std::span<const Force> forces = {});

SegmentSet wholeBody();

} // namespace matwright
