// The moments of weight about the joints of a body that rests as its pose says.
//
// A rigid-body estimate of weight alone, from tables of segments: nothing is known of the muscles that share the work,
// of what bears on a disc, of what hands hold, or of hands that hold up another part of the body. Moments are sizes, in
// body weights times statures; newtonMetres() of a body's size makes newton metres of them.
//
//   hip, shoulder  The weight of a leg or arm that rests nowhere. Of one that rests while the trunk lies: nothing, what
//                  lies is carried. Of one that carries the body: its weight and what pushes against it.
//   low back       About the foot of the lumbar spine. When the trunk lies: the weight of legs that rest nowhere, or of
//                  what is lifted of trunk, head and arms (about the lumbar spine's nearest point to the floor; nothing
//                  when the whole chest lies, or when arms or head prop it), whichever is more. Else the weight of the
//                  part above or below that rests nowhere; where both rest, of the part above with what pushes against
//                  it.
#pragma once

#include "core/base/Words.h"
#include "core/figure/Settle.h"
#include "core/load/WeighedBody.h"

#include <array>

namespace matwright {

enum class LoadedJoint { lowBack, hip, shoulder };
template <> struct Words<LoadedJoint> { static constexpr auto list = wordList("low-back", "hip", "shoulder"); };
inline constexpr std::size_t kLoadedJoints = kWordCount<LoadedJoint>;

constexpr std::size_t index(LoadedJoint joint) { return static_cast<std::size_t>(joint); }

struct JointMoments {
  double lowBack = 0;
  std::array<double, 2> hips{}, shoulders{}; // by Limb
  SegmentSet free;                           // arms and legs that rest nowhere

  // Of hips and shoulders the greater of the two sides.
  double of(LoadedJoint joint) const;
  friend bool operator==(const JointMoments&, const JointMoments&) = default;
};

// `body`: the settled one, weighed.
JointMoments jointMoments(const Settled& settled, const WeighedBody& body);
JointMoments jointMoments(const Settled& settled, BodyTable table);

// What two straight legs weigh about the foot of the lumbar spine when a body that lies on its back holds them level:
// the measure of a long lever.
double straightLegMoment(BodyTable table);

} // namespace matwright
