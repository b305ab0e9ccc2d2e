// What must be true of rules on order, beginning and end, whatever the class.
#include "tests/core/screening/RandomScreening.h"
#include "tests/support/Seeds.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace matwright::test {
namespace {

using Places = std::set<std::size_t>;

Places placesOf(const Rule& rule, const std::vector<StepFacts>& steps) {
  RuleBook book;
  book.rules = {rule};
  Places places;
  for (const Finding& each :
       screen(book, std::span<const Person>{}, activeRules(book, std::span<const Person>{}, kDay), steps, kDay))
    places.insert(each.step);
  return places;
}

struct RandomSequence {
  explicit RandomSequence(unsigned seed) : draw(seed) {}

  Rule ruleOn(Scope scope) {
    Rule made = rule("r", scope, Level::adapt);
    while (namesNothing(made.asks))
      made.asks = randomDemand(draw, made);
    made.threshold = randomThreshold(draw, scope);
    made.after = Earlier{randomDemand(draw, made), Seconds(draw.chance(0.5) ? 0 : draw.from(1, 90))};
    return made;
  }

  Draw draw;
  std::vector<StepFacts> steps = randomSteps(draw);
};

bool includes(const Places& more, const Places& fewer) {
  return std::includes(more.begin(), more.end(), fewer.begin(), fewer.end());
}

TEST(RandomSequence, AWiderThresholdOfOrderEarlyAndLateSilencesNoStep) {
  forEachSeed<RandomSequence>(1, 300, [](RandomSequence& scene) {
    for (Scope scope : {Scope::order, Scope::early, Scope::late}) {
      const Rule narrow = scene.ruleOn(scope);
      Rule wide = narrow;
      wide.threshold->amount += scene.draw.from(1, 60);
      EXPECT_TRUE(includes(placesOf(wide, scene.steps), placesOf(narrow, scene.steps))) << word(scope);
    }
  });
}

TEST(RandomSequence, WhatMustHaveLastedLongerLetsNoFurtherStepSpeak) {
  forEachSeed<RandomSequence>(1, 300, [](RandomSequence& scene) {
    const Rule shorter = scene.ruleOn(Scope::order);
    Rule longer = shorter;
    longer.after->lasting += Seconds(scene.draw.from(1, 60));
    EXPECT_TRUE(includes(placesOf(shorter, scene.steps), placesOf(longer, scene.steps)));
  });
}

// How long the earlier kind had gone on by the end of a step, counted backwards from it; nothing when it has not.
std::optional<double> lastedUntil(std::size_t step, const Demand& demand, const std::vector<StepFacts>& steps) {
  if (!met(demand, askedBy(steps[step])))
    return std::nullopt;
  double sum = steps[step].work.value();
  const StepFacts& facts = steps[step];
  if (met(demand, {facts.restFeatures, facts.restAt, Effort{}}))
    sum += facts.gap.value();
  if (step == 0 || !met(demand, askedBy(steps[step - 1])))
    return sum;
  const StepFacts& before = steps[step - 1];
  const FeatureSet own = facts.features.without(facts.shapeFeatures) & before.features.without(before.shapeFeatures);
  const Effort effort(std::min(facts.effort.value(), before.effort.value()));
  if (!met(demand, {facts.restFeatures | own, facts.restAt, effort, std::min(facts.lever, before.lever)}))
    return sum;
  return sum + *lastedUntil(step - 1, demand, steps);
}

TEST(RandomSequence, AnOrderRuleSpeaksExactlyWhereAnyEarlierStepThatCountsIsTooNear) {
  std::size_t spoken = 0, silent = 0;
  forEachSeed<RandomSequence>(1, 400, [&](RandomSequence& scene) {
    const Rule rule = scene.ruleOn(Scope::order);
    Places expected;
    for (std::size_t later = 0; later < scene.steps.size(); ++later)
      for (std::size_t before = 0; before < later; ++before) {
        const auto lasted = lastedUntil(before, rule.after->demand, scene.steps);
        const double between = rule.threshold->unit == MeasureUnit::steps
                                   ? static_cast<double>(later - before - 1)
                                   : (scene.steps[later].workBegin - workEnd(scene.steps[before])).value();
        if (met(rule.asks, askedBy(scene.steps[later])) && lasted &&
            (rule.after->lasting == Seconds{} || *lasted > rule.after->lasting.value() + 1e-6) &&
            between < rule.threshold->amount - 1e-6)
          expected.insert(later);
      }
    EXPECT_EQ(placesOf(rule, scene.steps), expected);
    ++(expected.empty() ? silent : spoken);
  });
  EXPECT_GT(spoken, 50u);
  EXPECT_GT(silent, 50u);
}

TEST(RandomSequence, AClassReadBackwardsTurnsEarlyIntoLate) {
  forEachSeed<RandomSequence>(1, 300, [](RandomSequence& scene) {
    Rule early = scene.ruleOn(Scope::early);
    Rule late = early;
    late.scope = Scope::late;
    if (scene.steps.empty())
      return;
    // People begin with the first step's work and end with the last one's: a gap before it would stand at one end only.
    for (StepFacts& each : scene.steps)
      each.workBegin = each.workBegin - scene.steps[0].gap;
    const Seconds length = workEnd(scene.steps.back());
    std::vector<StepFacts> turned(scene.steps.rbegin(), scene.steps.rend());
    for (StepFacts& each : turned)
      each.workBegin = length - workEnd(each);
    Places mirrored;
    for (std::size_t place : placesOf(late, turned))
      mirrored.insert(scene.steps.size() - 1 - place);
    EXPECT_EQ(placesOf(early, scene.steps), mirrored);
  });
}

TEST(RandomSequence, SomethingIsMissingExactlyWhenNoStepHasIt) {
  forEachSeed<RandomSequence>(1, 300, [](RandomSequence& scene) {
    const Rule rule = scene.ruleOn(Scope::missing);
    const bool there = std::any_of(scene.steps.begin(), scene.steps.end(),
                                   [&](const StepFacts& facts) { return met(rule.asks, askedBy(facts)).has_value(); });
    EXPECT_EQ(!placesOf(rule, scene.steps).empty(), !there && !scene.steps.empty());
  });
}

} // namespace
} // namespace matwright::test
