// The poses of knowledge files, read as far as they can be read: drafts with faults are drawn too.
#pragma once

#include "core/base/Result.h"
#include "core/body/Body.h"
#include "core/figure/Pose.h"

#include <string>
#include <vector>

namespace matwright {

struct LabelledPose {
  std::string label;
  Pose pose;
  EnumSet<Region> regions = {}; // the main one of its movement; none for a position
};

struct PoseList {
  std::vector<LabelledPose> poses;
  std::vector<Error> errors;
};

PoseList readPositionPoses(const std::string& file);

// Start, end and option poses of the movements in the order of the file; only those named when `ids` is not empty.
// `positions` is the file of the positions that poses are written over.
PoseList readCataloguePoses(const std::string& file, const std::string& positions, const std::vector<std::string>& ids);

} // namespace matwright
