// The moments of weight over a class: an estimate of weight alone, see core/load/JointMoments.h.
#pragma once

#include "core/evaluate/Schedule.h"
#include "core/load/MovementLoad.h"

#include <optional>
#include <vector>

namespace matwright {

struct StepLoad {
  ByLoadedJoint peak{}, mean{}; // of a repetition at the tempo of the step
  double lever = 0;             // the low back's peak as a share of the straight-leg value
  friend bool operator==(const StepLoad&, const StepLoad&) = default;
};

// Of the plan that the schedule is of. Only work counts, not the gaps, and each side of a step like the other. A
// movement that is not in the catalogue counts for nothing.
struct ClassLoad {
  std::vector<StepLoad> steps;   // one a step of the schedule
  ByLoadedJoint peak{};          // of all steps
  ByLoadedJoint momentSeconds{}; // mean moment x seconds of work, over all steps
  friend bool operator==(const ClassLoad&, const ClassLoad&) = default;
};

// A share in whole percent, as it is shown and as rules compare it.
int leverPercent(double share);

// The first step with the greatest peak, as an index; nothing when no step asks anything of the joint.
std::optional<std::size_t> heaviestStep(const ClassLoad& load, LoadedJoint joint);

StepLoad loadOf(const Loads& loads, const Movement& movement, const Option* option, const Tempo& tempo);
ClassLoad loadOf(const Loads& loads, const Schedule& schedule, const ClassPlan& plan);

} // namespace matwright
