#include "core/plan/ClassPlan.h"

#include <algorithm>

namespace matwright {

bool isWellFormed(const Pace& pace) {
  return pace.mobility >= Pace::kLowestMobility && pace.mobility <= Pace::kHighestMobility &&
         pace.wordsPerMinute >= Pace::kSlowestSpeech && pace.wordsPerMinute <= Pace::kFastestSpeech &&
         pace.settle >= Seconds{} && pace.settle.value() <= Pace::kLongestSettle;
}

std::size_t countSteps(const ClassPlan& plan) {
  std::size_t count = 0;
  for (const Section& section : plan.sections)
    count += section.steps.size();
  return count;
}

const Step* findStep(const ClassPlan& plan, StepId id) {
  const auto place = placeOf(plan, id);
  return place ? &plan.sections[place->section].steps[place->index] : nullptr;
}

std::optional<Place> placeOf(const ClassPlan& plan, StepId id) {
  for (std::size_t section = 0; section < plan.sections.size(); ++section) {
    const auto& steps = plan.sections[section].steps;
    const auto at = std::find_if(steps.begin(), steps.end(), [&](const Step& step) { return step.id == id; });
    if (at != steps.end())
      return Place{section, static_cast<std::size_t>(at - steps.begin())};
  }
  return std::nullopt;
}

StepId highestStepId(const ClassPlan& plan) {
  StepId highest;
  forEachStep(plan, [&](const Step& step) { highest = std::max(highest, step.id); });
  return highest;
}

Step stepOf(StepId id, const Movement& movement, const OptionId& option) {
  const Option* chosen = findOption(movement, option);
  Step step;
  step.id = id;
  step.movement = movement.id;
  step.option = chosen ? chosen->id : OptionId{};
  step.dose = doseOf(movement, chosen);
  step.tempo = tempoOf(movement, chosen);
  return step;
}

ClassPlan emptyClass(std::string name) {
  ClassPlan plan;
  plan.name = std::move(name);
  plan.sections = {{"Arrive", {}}, {"Warm", {}}, {"Main", {}}, {"Settle", {}}};
  return plan;
}

} // namespace matwright
