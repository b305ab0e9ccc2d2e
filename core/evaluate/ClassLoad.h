// The moments of weight over a class: an estimate of weight alone, see core/load/JointMoments.h.
#pragma once

#include "core/evaluate/Schedule.h"
#include "core/load/MovementLoad.h"

#include <vector>

namespace matwright {

struct StepLoad {
  ByLoadedJoint peak{}, mean{}; // of a repetition
  double lever = 0;             // the low back's peak as a share of the straight-leg value
  friend bool operator==(const StepLoad&, const StepLoad&) = default;
};

// Only work counts, not the gaps, and each side of a step like the other. A movement that is not in the catalogue
// counts for nothing.
struct ClassLoad {
  std::vector<StepLoad> steps;   // one a step of the schedule
  ByLoadedJoint peak{};          // of all steps
  ByLoadedJoint momentSeconds{}; // mean moment x seconds of work, over all steps
  friend bool operator==(const ClassLoad&, const ClassLoad&) = default;
};

// A share in whole percent, as it is shown and as rules compare it.
int leverPercent(double share);

StepLoad loadOf(const Loads& loads, const Movement& movement, const Option* option);
ClassLoad loadOf(const Loads& loads, const Schedule& schedule);

} // namespace matwright
