// One shape of the body in joint angles (degrees). The conventions, with the keys used in files, stand in
// resources/FORMAT.md, section 5. World axes: x right, y up, z towards the viewer of the side view; the
// neutral body stands upright, faces +x, its right side towards the viewer ("near").
#pragma once

#include "core/base/EnumSet.h"

#include <array>

namespace matwright {

enum class Limb { near, far };
enum class View { side, front, top };

// What may rest on the floor. Values with two limbs come in pairs.
enum class Contact {
  head,
  upperBack,
  back,
  front,
  seat,
  side,
  handNear,
  handFar,
  forearmNear,
  forearmFar,
  kneeNear,
  kneeFar,
  shinNear,
  shinFar,
  footNear,
  footFar,
  toesNear,
  toesFar,
  heelNear,
  heelFar
};
enum class WallContact { back, feet, hands };

template <> struct Words<Limb> { static constexpr auto list = wordList("near", "far"); };
template <> struct Words<View> { static constexpr auto list = wordList("side", "front", "top"); };
template <> struct Words<Contact> {
  static constexpr auto list =
      wordList("head", "upper-back", "back", "front", "seat", "side", "hands.near", "hands.far", "forearms.near",
               "forearms.far", "knees.near", "knees.far", "shins.near", "shins.far", "feet.near", "feet.far",
               "toes.near", "toes.far", "heels.near", "heels.far");
};
template <> struct Words<WallContact> { static constexpr auto list = wordList("back", "feet", "hands"); };

struct SpineAngles {
  double bend = 0; // + forward
  double side = 0; // + towards the near side
  double turn = 0; // + turns the front towards the near side
  friend bool operator==(const SpineAngles&, const SpineAngles&) = default;
};

struct ArmAngles {
  double shoulder = 0; // 0 beside the trunk, 90 forward, 180 overhead, negative behind
  double out = 0;      // abduction
  double elbow = 0;    // 0 straight
  friend bool operator==(const ArmAngles&, const ArmAngles&) = default;
};

struct LegAngles {
  double hip = 0;   // 0 in line with the trunk, + forward
  double out = 0;   // abduction; negative crosses the midline
  double turn = 0;  // + turned out
  double knee = 0;  // 0 straight
  double ankle = 0; // 0 foot at a right angle to the shin, + towards the shin
  friend bool operator==(const LegAngles&, const LegAngles&) = default;
};

struct Pose {
  double lean = 0; // of the pelvis: 0 upright, 90 face down, -90 face up
  double roll = 0; // about the long axis, after lean
  SpineAngles lumbar, thorax, neck;
  std::array<ArmAngles, 2> arms; // by Limb
  std::array<LegAngles, 2> legs; // by Limb
  View view = View::side;
  bool flip = false; // the drawing is mirrored left to right
  EnumSet<Contact> on;
  EnumSet<WallContact> wall;

  friend bool operator==(const Pose&, const Pose&) = default;
};

} // namespace matwright
