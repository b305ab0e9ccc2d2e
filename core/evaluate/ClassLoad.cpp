#include "core/evaluate/ClassLoad.h"

#include <algorithm>
#include <cmath>

namespace matwright {

int leverPercent(double share) { return static_cast<int>(std::lround(100 * share)); }

StepLoad loadOf(const Loads& loads, const Movement& movement, const Option* option) {
  const std::shared_ptr<const MovementLoad> load = loads.of(movement, option);
  constexpr auto kLowBack = static_cast<std::size_t>(LoadedJoint::lowBack);
  return {.peak = load->peak, .mean = load->mean, .lever = loads.lever(load->peak[kLowBack])};
}

ClassLoad loadOf(const Loads& loads, const Schedule& schedule) {
  ClassLoad whole;
  whole.steps.reserve(schedule.steps.size());
  for (const TimedStep& step : schedule.steps) {
    StepLoad& load = whole.steps.emplace_back();
    if (!step.movement)
      continue;
    load = loadOf(loads, *step.movement, step.option);
    for (std::size_t i = 0; i < kLoadedJoints; ++i) {
      whole.peak[i] = std::max(whole.peak[i], load.peak[i]);
      whole.momentSeconds[i] += load.mean[i] * step.work.whole.value();
    }
  }
  return whole;
}

} // namespace matwright
