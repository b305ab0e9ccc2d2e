#include "core/evaluate/Facts.h"

namespace matwright {
namespace {

FeatureSet featuresAt(const TransitionGraph& graph, const PositionId& id) {
  const Position* position = graph.find(id);
  return position ? position->features : FeatureSet{};
}

// Of all positions in which the step starts or ends a side.
FeatureSet shapeOf(const TransitionGraph& graph, const TimedStep& step) {
  FeatureSet shape = featuresAt(graph, step.start);
  if (step.end != step.start)
    shape |= featuresAt(graph, step.end);
  if (const Movement* movement = step.movement; movement && movement->sides == Sides::each) {
    // The first side ends, and the second starts, where neither `start` nor `end` may be.
    const bool both = step.work.left > Seconds{} && step.work.right > Seconds{};
    if (both)
      shape |= featuresAt(graph, movement->end) | featuresAt(graph, graph.mirrored(movement->start));
  }
  return shape;
}

FeatureSet removed(const TimedStep& step) { return step.option ? step.option->removes : FeatureSet{}; }

FeatureSet restBefore(const TransitionGraph& graph, const TimedStep* before, const TimedStep& step) {
  FeatureSet rest = featuresAt(graph, step.start).without(removed(step));
  if (!before || before->end.empty())
    return rest;
  rest = rest & featuresAt(graph, before->end).without(removed(*before));
  for (const Change* change : step.way.changes)
    rest = rest & featuresAt(graph, change->to);
  return rest;
}

} // namespace

std::vector<StepFacts> factsOf(const TransitionGraph& graph, const Schedule& schedule) {
  std::vector<StepFacts> all;
  all.reserve(schedule.steps.size());
  const TimedStep* before = nullptr;
  for (const TimedStep& step : schedule.steps) {
    StepFacts facts;
    facts.shapeFeatures = shapeOf(graph, step).without(removed(step));
    facts.features = facts.shapeFeatures;
    if (step.movement)
      facts.features |= step.movement->features.without(removed(step));
    if (step.option)
      facts.features |= step.option->adds;
    facts.wayFeatures = step.way.features | step.turn.features;
    facts.restFeatures = restBefore(graph, before, step);
    facts.gap = step.gap;
    facts.work = step.work.whole;
    facts.repetitions = step.work.repetitions;
    all.push_back(facts);
    before = &step;
  }
  return all;
}

} // namespace matwright
