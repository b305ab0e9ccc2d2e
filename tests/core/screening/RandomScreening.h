// Rules, people and steps drawn at random, the same for the same seed.
#pragma once

#include "core/screening/Screening.h"
#include "tests/support/RandomClass.h"
#include "tests/support/SmallKnowledge.h"

#include <string>
#include <vector>

namespace matwright::test {

inline const Date kDay = day(2026, 6, 1);
inline const std::vector<Feature> kFeatures{Feature::supine, Feature::neckLift, Feature::flexLoad, Feature::wristLoad,
                                            Feature::rise};

inline FeatureSet randomFeatures(Draw& draw, double chance) {
  FeatureSet features;
  for (Feature feature : kFeatures)
    if (draw.chance(chance))
      features.insert(feature);
  return features;
}

inline EnumSet<Elevation> randomHeights(Draw& draw, double chance) {
  EnumSet<Elevation> heights;
  for (std::size_t i = 0; i < kWordCount<Elevation>; ++i)
    if (draw.chance(chance))
      heights.insert(static_cast<Elevation>(i));
  return heights;
}

inline bool looksAtSteps(const Rule& rule) { return rule.scope != Scope::way && rule.scope != Scope::wholeClass; }

inline Demand randomDemand(Draw& draw, const Rule& rule) {
  Demand demand;
  if (rule.scope == Scope::wholeClass)
    return demand;
  demand.any = randomFeatures(draw, 0.3);
  if (draw.chance(0.2))
    demand.all = {draw.oneOf(kFeatures)};
  if (looksAtSteps(rule) && draw.chance(0.2))
    demand.at = randomHeights(draw, 0.3);
  if (looksAtSteps(rule) && draw.chance(0.2))
    demand.effortFrom = draw.from(1, 8);
  if (looksAtSteps(rule) && draw.chance(0.2))
    demand.leverFrom = draw.from(1, 120);
  return demand;
}

inline std::optional<Threshold> randomThreshold(Draw& draw, Scope scope) {
  using enum MeasureUnit;
  const auto of = [&](std::vector<MeasureUnit> units, int most) {
    const double amount = draw.from(0, most);
    return Threshold{amount, draw.oneOf(units), ThresholdOrigin::ours, amount};
  };
  switch (scope) {
  case Scope::total:
    return of({seconds, repetitions, steps, changes}, draw.chance(0.5) ? 5 : 120);
  case Scope::stretch:
    return of({seconds, repetitions, steps}, draw.chance(0.5) ? 5 : 120);
  case Scope::early:
  case Scope::late:
    return of({seconds, percent}, 100);
  case Scope::order:
    return of({seconds, steps}, draw.chance(0.5) ? 5 : 120);
  case Scope::step:
    return draw.chance(0.3) ? std::optional(of({seconds}, 60)) : std::nullopt;
  case Scope::way:
  case Scope::missing:
  case Scope::wholeClass:
    break;
  }
  return std::nullopt;
}

inline EnumSet<AgeBand> randomAges(Draw& draw) {
  EnumSet<AgeBand> ages;
  while (ages.empty() || draw.chance(0.5))
    ages.insert(static_cast<AgeBand>(draw.below(kWordCount<AgeBand>)));
  return ages;
}

inline RuleBook randomBook(Draw& draw) {
  RuleBook book;
  book.conditions = {condition("one", {{"flag", "", QualifierKind::flag, {}}}),
                     condition("two", {{"weeks", "", QualifierKind::weeksSince, {}}}), condition("three")};
  for (int i = draw.from(3, 20); i > 0; --i) {
    Rule made = rule("rule-" + std::to_string(i), static_cast<Scope>(draw.below(kWordCount<Scope>)),
                     static_cast<Level>(draw.below(kWordCount<Level>)));
    if (draw.chance(0.8))
      made.condition = draw.oneOf(book.conditions).id;
    if (draw.chance(0.2))
      made.ages = randomAges(draw);
    made.asks = randomDemand(draw, made);
    made.threshold = randomThreshold(draw, made.scope);
    if (made.threshold && made.threshold->unit == MeasureUnit::changes) {
      made.asks.at = {};
      made.asks.effortFrom = 0;
      made.asks.leverFrom = 0;
    }
    if (made.scope == Scope::order)
      made.after = Earlier{randomDemand(draw, made), Seconds(draw.chance(0.5) ? 0 : draw.from(1, 90))};
    if (made.condition && made.condition->value == "one" && draw.chance(0.5))
      made.when = {{"flag", {}, {}, {}, draw.chance(0.5)}};
    if (made.condition && made.condition->value == "two" && draw.chance(0.5))
      made.when = {{"weeks", 6, 12, {}, {}}};
    book.rules.push_back(std::move(made));
  }
  return book;
}

inline std::vector<StepFacts> randomSteps(Draw& draw) {
  std::vector<StepFacts> steps;
  for (int i = draw.from(0, 12); i > 0; --i) {
    StepFacts facts;
    facts.features = randomFeatures(draw, 0.4);
    facts.shapeFeatures = facts.features & randomFeatures(draw, 0.4);
    facts.wayFeatures = randomFeatures(draw, 0.2);
    facts.restFeatures = facts.shapeFeatures & randomFeatures(draw, 0.7);
    facts.gap = Seconds(draw.from(0, 20));
    facts.work = Seconds(draw.from(5, 60));
    facts.repetitions = draw.from(1, 20);
    facts.oneSide = draw.chance(0.3) ? facts.work / 2 : facts.work;
    facts.turning = facts.oneSide == facts.work ? Seconds{} : Seconds(draw.from(0, 8));
    facts.effort = Effort(draw.from(0, 9));
    facts.lever = draw.chance(0.3) ? 0 : draw.from(0, 140);
    facts.at = randomHeights(draw, 0.2);
    if (draw.chance(0.5) && !facts.at.empty())
      facts.restAt = facts.at & randomHeights(draw, 0.5);
    facts.workBegin = (steps.empty() ? Seconds{} : workEnd(steps.back())) + facts.gap;
    steps.push_back(facts);
  }
  return steps;
}

// With an age band for most.
inline std::vector<Person> withAges(Draw& draw, std::vector<Person> people) {
  for (Person& each : people)
    if (draw.chance(0.8))
      each.ageBand = static_cast<AgeBand>(draw.below(kWordCount<AgeBand>));
  return people;
}

struct RandomScreening {
  explicit RandomScreening(unsigned seed) : draw(seed) {}
  std::vector<Finding> found(const std::vector<Person>& whom, const std::vector<StepFacts>& what) const {
    return screen(book, whom, activeRules(book, whom, kDay), what, kDay);
  }
  std::vector<Finding> found() const { return found(people, steps); }

  Draw draw;
  RuleBook book = randomBook(draw);
  std::vector<Person> people = withAges(draw, randomPeople(draw, book, kDay, draw.from(0, 5), 2));
  std::vector<StepFacts> steps = randomSteps(draw);
};

} // namespace matwright::test
