// Poses as they are written: the changes that they make to another pose. See FORMAT.md, section 5.
#pragma once

#include "core/body/Body.h"
#include "core/movement/Movement.h"
#include "core/store/JsonReader.h"

#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace matwright {

inline constexpr std::string_view kUprightBase = "upright";

struct PoseSpec {
  PositionId base;                                 // empty: the upright body
  std::vector<std::pair<std::string, double>> set; // keys of the format, those for both limbs before those for one
  std::optional<View> view;
  std::optional<bool> flip;
  std::optional<EnumSet<Contact>> on;
  std::optional<std::array<EnumSet<Contact>, kWordCount<Support>>> supports;
  std::optional<EnumSet<WallContact>> wall;
  std::optional<HeldProp> holds;
  std::string path; // where it stands in its file
};

struct KeyPoseSpecs {
  PoseSpec start, end;
};

PoseSpec readPose(const std::optional<Spot>& spot);
KeyPoseSpecs readKeyPoses(const std::optional<Spot>& spot);

// As changes to the upright body.
Json poseJson(const Pose& pose);
Json keyPosesJson(const KeyPoses& poses);

// What the changes make of `base`. What a pose does not say stays as in its base; what it puts
// on the floor or on something else is no longer where the base has it.
Pose poseOn(Pose base, const PoseSpec& spec);

} // namespace matwright
