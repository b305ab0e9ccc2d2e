// The closed vocabulary of the body: sides, heights, regions and what the spine does.
#pragma once

#include "core/base/EnumSet.h"
#include "core/base/Id.h"

namespace matwright {

struct PositionTag;
using PositionId = Id<PositionTag>;

enum class Side { left, right };
constexpr Side opposite(Side side) { return side == Side::left ? Side::right : Side::left; }

// How far a resting body is from the floor, low to high: the lanes of the terrain.
enum class Elevation { faceDown, faceUp, sideLying, sitting, handsAndKnees, kneeling, standing };

enum class Region {
  neck,
  shoulders,
  arms,
  wrists,
  upperBack,
  lowerBack,
  abdominals,
  waist,
  pelvicFloor,
  hips,
  frontThigh,
  backThigh,
  innerThigh,
  lowerLeg,
  breathing
};

enum class SpineAction { neutral, flexion, extension, sideBend, rotation };

template <> struct Words<Side> { static constexpr auto list = wordList("left", "right"); };
template <> struct Words<Elevation> {
  static constexpr auto list =
      wordList("face-down", "face-up", "side-lying", "sitting", "hands-and-knees", "kneeling", "standing");
};
template <> struct Words<Region> {
  static constexpr auto list =
      wordList("neck", "shoulders", "arms", "wrists", "upper-back", "lower-back", "abdominals", "waist", "pelvic-floor",
               "hips", "front-thigh", "back-thigh", "inner-thigh", "lower-leg", "breathing");
};
template <> struct Words<SpineAction> {
  static constexpr auto list = wordList("neutral", "flexion", "extension", "side-bend", "rotation");
};

} // namespace matwright
