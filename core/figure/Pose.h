// One shape of the body in joint angles (degrees). The conventions, with the keys used in files, stand in
// resources/FORMAT.md, section 5. World axes: x right, y up, z towards the viewer of the side view; the
// neutral body stands upright, faces +x, its right side towards the viewer ("near").
#pragma once

#include "core/base/EnumSet.h"

#include <array>
#include <optional>

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
enum class WallContact { back, footNear, footFar, handNear, handFar };

// What else than the floor may carry. How high each is, and what may rest on it, stands in Support.h.
enum class Support {
  chair,        // its seat
  chairTop,     // the upper edge of its back-rest
  chairBack,    // the front of its back-rest: leant on
  rollerAlong,  // along the spine
  rollerAcross, // across the body
  ball,         // soft, under the body
  cushion,      // a few centimetres, or a folded blanket
  bolster,      // a thick cushion
  wedge         // from the seat up to the head: leant on
};

// What is held, and where: drawn, without weight.
enum class Held { ring, ball, band, weights, cushion };
enum class HeldAt { hands, handNear, handFar, knees, ankles, feet, footNear, footFar, handAndKnee, lowBack, lap, seat };

template <> struct Words<Limb> { static constexpr auto list = wordList("near", "far"); };
template <> struct Words<View> { static constexpr auto list = wordList("side", "front", "top"); };
template <> struct Words<Contact> {
  static constexpr auto list =
      wordList("head", "upper-back", "back", "front", "seat", "side", "hands.near", "hands.far", "forearms.near",
               "forearms.far", "knees.near", "knees.far", "shins.near", "shins.far", "feet.near", "feet.far",
               "toes.near", "toes.far", "heels.near", "heels.far");
};
template <> struct Words<WallContact> {
  static constexpr auto list = wordList("back", "feet.near", "feet.far", "hands.near", "hands.far");
};
template <> struct Words<Support> {
  static constexpr auto list = wordList("chair", "chair-top", "chair-back", "roller-along", "roller-across", "ball",
                                        "cushion", "bolster", "wedge");
};
template <> struct Words<Held> { static constexpr auto list = wordList("ring", "ball", "band", "weights", "cushion"); };
template <> struct Words<HeldAt> {
  static constexpr auto list = wordList("hands", "hands.near", "hands.far", "knees", "ankles", "feet", "feet.near",
                                        "feet.far", "hand-and-knee", "low-back", "lap", "seat");
};

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

struct HeldProp {
  Held what{};
  HeldAt at{};
  friend bool operator==(const HeldProp&, const HeldProp&) = default;
};

struct Pose {
  double lean = 0; // of the pelvis: 0 upright, 90 face down, -90 face up
  double roll = 0; // about the long axis, after lean
  SpineAngles lumbar, thorax, neck;
  std::array<ArmAngles, 2> arms; // by Limb
  std::array<LegAngles, 2> legs; // by Limb
  View view = View::side;
  bool flip = false;                                          // the drawing is mirrored left to right
  EnumSet<Contact> on;                                        // the floor
  std::array<EnumSet<Contact>, kWordCount<Support>> supports; // each contact on one thing, or on a cushion on a chair
  EnumSet<WallContact> wall;
  std::optional<HeldProp> holds;

  EnumSet<Contact>& onSupport(Support support) { return supports[static_cast<std::size_t>(support)]; }
  const EnumSet<Contact>& onSupport(Support support) const { return supports[static_cast<std::size_t>(support)]; }
  // All that something below carries: the floor and the supports, those that are leant on too.
  EnumSet<Contact> resting() const {
    EnumSet<Contact> all = on;
    for (const EnumSet<Contact>& each : supports)
      all |= each;
    return all;
  }

  friend bool operator==(const Pose&, const Pose&) = default;
};

} // namespace matwright
