#include "core/evaluate/Facts.h"

#include "core/evaluate/ClassLoad.h"

#include <algorithm>

namespace matwright {
namespace {

int leverOf(const Loads& loads, const Movement& movement, const Option* option) {
  return leverPercent(loadOf(loads, movement, option, tempoOf(movement, option)).lever);
}

// What one resting shape is, or several have together or in common.
struct Shape {
  FeatureSet features;
  EnumSet<Elevation> at;
};

Shape shapeAt(const TransitionGraph& graph, const PositionId& id) {
  const Position* position = graph.find(id);
  return position ? Shape{position->features, {position->elevation}} : Shape{};
}

Shape together(const Shape& a, const Shape& b) { return {a.features | b.features, a.at | b.at}; }
Shape inCommon(const Shape& a, const Shape& b) { return {a.features & b.features, a.at & b.at}; }
Shape without(const Shape& shape, FeatureSet features) { return {shape.features.without(features), shape.at}; }

// Of all positions in which the step starts or ends a side.
Shape shapeOf(const TransitionGraph& graph, const TimedStep& step) {
  Shape shape = shapeAt(graph, step.start);
  if (step.end != step.start)
    shape = together(shape, shapeAt(graph, step.end));
  if (const Movement* movement = step.movement; movement && movement->sides == Sides::each) {
    // The first side ends, and the second starts, where neither `start` nor `end` may be.
    const bool both = step.work.left > Seconds{} && step.work.right > Seconds{};
    if (both)
      shape = together(shape, together(shapeAt(graph, movement->end), shapeAt(graph, graph.mirrored(movement->start))));
  }
  return shape;
}

FeatureSet removed(const TimedStep& step) { return step.option ? step.option->removes : FeatureSet{}; }

Shape restBefore(const TransitionGraph& graph, const TimedStep* before, const TimedStep& step) {
  Shape rest = without(shapeAt(graph, step.start), removed(step));
  if (!before || before->end.empty())
    return rest;
  rest = inCommon(rest, without(shapeAt(graph, before->end), removed(*before)));
  for (const Change* change : step.way.changes)
    rest = inCommon(rest, shapeAt(graph, change->to));
  return rest;
}

Seconds oneSideOf(const TimedStep& step) {
  const bool apart = step.movement && step.movement->sides == Sides::each;
  return apart ? std::max(step.work.left, step.work.right) : step.work.whole;
}

// `needsLever` tells of a step whether its lever is wanted.
template <class NeedsLever>
std::vector<StepFacts> factsOf(const Knowledge& knowledge, const Schedule& schedule, NeedsLever needsLever) {
  const TransitionGraph& graph = knowledge.transitions;
  std::vector<StepFacts> all;
  all.reserve(schedule.steps.size());
  const TimedStep* before = nullptr;
  for (const TimedStep& step : schedule.steps) {
    StepFacts facts;
    const Shape shape = without(shapeOf(graph, step), removed(step));
    facts.shapeFeatures = shape.features;
    facts.features = facts.shapeFeatures;
    facts.at = shape.at;
    if (step.movement) {
      facts.features |= step.movement->features.without(removed(step));
      facts.effort = effortOf(*step.movement, step.option);
    }
    if (step.option)
      facts.features |= step.option->adds;
    if (step.movement && needsLever(facts))
      facts.lever = leverOf(*knowledge.loads, *step.movement, step.option);
    facts.wayFeatures = step.way.features | step.turn.features;
    const Shape rest = restBefore(graph, before, step);
    facts.restFeatures = rest.features;
    facts.restAt = rest.at;
    facts.gap = step.gap;
    facts.workBegin = step.workBegin;
    facts.work = step.work.whole;
    facts.turning = step.turning;
    facts.oneSide = oneSideOf(step);
    facts.repetitions = step.work.repetitions;
    all.push_back(facts);
    before = &step;
  }
  return all;
}

} // namespace

std::vector<StepFacts> factsOf(const Knowledge& knowledge, const Schedule& schedule) {
  const std::vector<const Demand*> demands = leverDemands(knowledge.rules);
  return factsOf(knowledge, schedule, [&](const StepFacts& facts) {
    Asked asked = askedBy(facts);
    asked.lever = Demand::kMostLever;
    return std::any_of(demands.begin(), demands.end(), [&](const Demand* each) { return met(*each, asked); });
  });
}

std::vector<StepFacts> factsOfCatalogue(const Knowledge& knowledge) {
  ClassPlan all;
  Section& section = all.sections.emplace_back();
  for (const Movement& movement : knowledge.catalogue.movements())
    section.steps.push_back(stepOf(StepId{static_cast<std::int64_t>(section.steps.size()) + 1}, movement));
  const Ways ways(knowledge.transitions, {});
  return factsOf(knowledge, scheduleOf(knowledge.catalogue, knowledge.transitions, ways, all),
                 [](const StepFacts&) { return true; });
}

} // namespace matwright
