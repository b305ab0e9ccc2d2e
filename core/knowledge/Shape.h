// What a drawn pose shows of the features that a movement is said to have. The limits are this project's own: common
// practice, no source. They are judged on the angles as written, before the body is put down.
#pragma once

#include "core/body/Feature.h"
#include "core/figure/PosedBody.h"

#include <array>
#include <span>

namespace matwright {

// One pose in the quantities by which features are judged. Degrees; lengths in statures.
struct Shape {
  explicit Shape(const Pose& pose);

  struct Arm {
    double elevation = 0;     // against the trunk: 0 along it, 180 overhead
    bool hangs = false;       // straight down
    bool hand = false;        // rests on something
    bool forearm = false;     // rests on something
    bool propsBehind = false; // bent and far behind the body: the hands hold up the pelvis
    ArmAngles angles;
  };
  struct Leg {
    EnumSet<Contact> on; // what of it rests on something, by the values of the near limb
    bool held = false;   // by a hand
    bool free = false;   // carried by nothing but its own muscles
    LegAngles angles;
  };

  EnumSet<Contact> on; // the floor, or what else carries it
  EnumSet<WallContact> wall;
  double bend = 0, turn = 0, side = 0; // of lumbar spine and thorax together; turn and side without their direction
  double lumbar = 0;
  SpineAngles neck;
  double tilt = 0;                                     // of the pelvis: 1 upright, 0 level, below 0 upside down
  double sideOn = 0;                                   // of the pelvis: 1 when one hip is above the other
  double faces = 0;                                    // of the pelvis: 1 face up, -1 face down
  double headBelow = 0, chestBelow = 0, hipsAbove = 0; // the chest, the shoulders, the shoulders
  bool trunk = false;                                  // some part of it rests on something
  bool lying = false;                                  // on back or front
  bool handAtHead = false;
  std::array<Arm, 2> arms; // by Limb
  std::array<Leg, 2> legs; // by Limb

  bool has(Contact contact) const { return on.contains(contact); }
};

// Those of `features` that none of the shapes shows, although a drawing could tell.
FeatureSet unshown(FeatureSet features, std::span<const Shape> shapes);
// The same, where a drawing only often tells.
FeatureSet hardlyShown(FeatureSet features, std::span<const Shape> shapes);

// The features that one of the shapes shows beyond doubt.
FeatureSet shownBy(std::span<const Shape> shapes);
// The features that one of them shows, though there are good reasons not to call them so.
FeatureSet faintlyShownBy(std::span<const Shape> shapes);

} // namespace matwright
