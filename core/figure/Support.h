// What a body rests on besides floor and wall: how high it is, what may lie on it, and where it stands. Lengths in
// statures.
#pragma once

#include "core/figure/PosedBody.h"
#include "core/figure/Skeleton.h"

#include <optional>

namespace matwright {

// As high as the hollow of the knee above the sole, so that the thighs lie level on it.
inline constexpr double kSeatHeight = skeleton::kShank + skeleton::kAnkleHeight - skeleton::kKneeRadius;
// Sizes of usual things (common practice, no source), for a stature of 1.75 m.
inline constexpr double kOneMetre = 1 / 1.75;
inline constexpr double kSeatDepth = 0.42 * kOneMetre, kSeatWidth = 0.42 * kOneMetre;
inline constexpr double kChairTopHeight = 0.92 * kOneMetre;
inline constexpr double kRollerRadius = 0.075 * kOneMetre, kRollerLength = 1.0 * kOneMetre;
inline constexpr double kBallUnderBody = 0.14 * kOneMetre; // a soft ball gives way
inline constexpr double kCushionHeight = 0.05 * kOneMetre, kBolsterHeight = 0.18 * kOneMetre;

// True for what takes its place from a body that leans on it: nothing is put on it by height.
constexpr bool isLeantOn(Support support) { return support == Support::chairBack || support == Support::wedge; }

// What may lie on the seat of a chair, and then adds to its height.
constexpr bool goesOnChairs(Support support) { return support == Support::cushion || support == Support::bolster; }

// How high what rests on it is above the floor; 0 for what is leant on.
double heightOf(Support support);

// How high the surface is that `contact` of the pose rests on; 0 on the floor or when it rests nowhere.
double surfaceUnder(const Pose& pose, Contact contact);

// What may rest there at all.
EnumSet<Contact> bearable(Support support);
bool canHold(Held what, HeldAt at);

// A wall stands across the x axis, or beside the body along it.
struct Wall {
  double at = 0; // along x; beside: along z
  bool beside = false;
  friend bool operator==(const Wall&, const Wall&) = default;
};

// Where the one chair or roller of a pose stands.
struct Standing {
  Vec3 place;        // chair: below the middle of its back edge; roller: below its middle. On the floor
  double facing = 1; // chair: the seat lies on this side of the back-rest, along x
  friend bool operator==(const Standing&, const Standing&) = default;
};
struct Furniture {
  std::optional<Standing> chair, roller;
  friend bool operator==(const Furniture&, const Furniture&) = default;
};

// From what rests on them.
Furniture furnitureOf(const PosedBody& body, const Pose& pose);

} // namespace matwright
