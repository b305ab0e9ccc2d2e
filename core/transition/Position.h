#pragma once

#include "core/body/Body.h"
#include "core/body/Feature.h"
#include "core/figure/Pose.h"
#include "core/units/Units.h"

#include <string>

namespace matwright {

// A shape that the body rests in.
struct Position {
  PositionId id;
  std::string name;
  Elevation elevation{};
  FeatureSet features; // hold for every movement that starts or ends here
  PositionId mirror;   // the same shape on the other side; empty for a symmetrical position
  Pose pose;
  friend bool operator==(const Position&, const Position&) = default;
};

// A directed step from one position to another by one means. Several may join the same two positions.
struct Change {
  PositionId from, to;
  Seconds seconds; // a healthy adult, unhurried
  FeatureSet features;
  std::string cue;
  std::string by; // the means, where there are two; else empty
  friend bool operator==(const Change&, const Change&) = default;
};

} // namespace matwright
