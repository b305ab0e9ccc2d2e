#include "core/plan/ClassPlan.h"

#include <algorithm>

namespace matwright {

bool isWellFormed(const Pace& pace) {
  return pace.mobility >= Pace::kLowestMobility && pace.mobility <= Pace::kHighestMobility &&
         pace.wordsPerMinute >= Pace::kSlowestSpeech && pace.wordsPerMinute <= Pace::kFastestSpeech &&
         pace.settle >= Seconds{} && pace.settle.value() <= Pace::kLongestSettle;
}

const Variant* variantOf(const Step& step, const PersonId& person) {
  const auto at = std::find_if(step.variants.begin(), step.variants.end(),
                               [&](const Variant& variant) { return variant.person == person; });
  return at == step.variants.end() ? nullptr : &*at;
}

ClassPlan asDoneBy(const PersonId& person, const ClassPlan& plan, const Catalogue& catalogue) {
  ClassPlan own = plan;
  for (Section& section : own.sections)
    for (Step& step : section.steps) {
      const Variant* variant = variantOf(step, person);
      if (!variant)
        continue;
      Step instead = step;
      if (const Movement* movement = catalogue.find(variant->movement)) {
        instead = stepOf(step.id, *movement, variant->option);
        if (variant->movement == step.movement && instead.dose.unit == step.dose.unit)
          instead.dose = step.dose;
        if (movement->sides == Sides::each)
          instead.onlySide = step.onlySide;
      }
      instead.movement = variant->movement;
      instead.option = variant->option;
      instead.variants.clear();
      step = std::move(instead);
    }
  return own;
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
