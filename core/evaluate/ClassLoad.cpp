#include "core/evaluate/ClassLoad.h"

#include <algorithm>
#include <cmath>

namespace matwright {

int leverPercent(double share) { return static_cast<int>(std::lround(100 * share)); }

StepLoad loadOf(const Loads& loads, const Movement& movement, const Option* option, const Tempo& tempo) {
  const std::shared_ptr<const MovementLoad> load = loads.of(posesOf(movement, option), tempo);
  constexpr std::size_t kLowBack = index(LoadedJoint::lowBack);
  return {.peak = load->peak, .mean = load->mean, .lever = loads.lever(load->peak[kLowBack])};
}

std::optional<std::size_t> heaviestStep(const ClassLoad& load, LoadedJoint joint) {
  const auto at = static_cast<std::size_t>(joint);
  const auto heaviest =
      std::max_element(load.steps.begin(), load.steps.end(),
                       [at](const StepLoad& one, const StepLoad& other) { return one.peak[at] < other.peak[at]; });
  if (heaviest == load.steps.end() || heaviest->peak[at] <= 0)
    return std::nullopt;
  return static_cast<std::size_t>(heaviest - load.steps.begin());
}

ClassLoad loadOf(const Loads& loads, const Schedule& schedule, const ClassPlan& plan) {
  ClassLoad whole;
  whole.steps.resize(schedule.steps.size());
  std::size_t next = 0; // the schedule has the steps of the plan in their order
  for (const Section& section : plan.sections)
    for (const Step& step : section.steps) {
      const TimedStep& timed = schedule.steps[next];
      StepLoad& load = whole.steps[next++];
      if (!timed.movement)
        continue;
      load = loadOf(loads, *timed.movement, timed.option, step.tempo);
      for (std::size_t i = 0; i < kLoadedJoints; ++i) {
        whole.peak[i] = std::max(whole.peak[i], load.peak[i]);
        whole.momentSeconds[i] += load.mean[i] * timed.work.whole.value();
      }
    }
  return whole;
}

} // namespace matwright
