// One rule of the book that comes with the program, with people and classes made to fit it.
#pragma once

#include "core/screening/Screening.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace matwright::test {

inline const Date kDay = day(2026, 6, 1);

inline QualifierValue dateOfWeek(QualifierKind kind, int week) {
  return kind == QualifierKind::weeksSince ? daysAfter(kDay, -7 * week) : daysAfter(kDay, 7 * (40 - week));
}

inline QualifierValue satisfying(const QualifierTest& test, const QualifierSpec& spec) {
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    return dateOfWeek(spec.kind, test.from ? *test.from : *test.below - 1);
  case QualifierKind::choice:
    return test.choices.at(0);
  case QualifierKind::flag:
    break;
  }
  return test.flag.value();
}

// Answers that speak against the test; there may be several, and of a choice whose every value is asked for none.
inline std::vector<QualifierValue> missing(const QualifierTest& test, const QualifierSpec& spec) {
  std::vector<QualifierValue> answers;
  switch (spec.kind) {
  case QualifierKind::weeksSince:
  case QualifierKind::pregnancyWeek:
    if (test.from && *test.from > 0)
      answers.push_back(dateOfWeek(spec.kind, *test.from - 1));
    if (test.below)
      answers.push_back(dateOfWeek(spec.kind, *test.below));
    break;
  case QualifierKind::choice:
    for (const Choice& each : spec.choices)
      if (std::find(test.choices.begin(), test.choices.end(), each.id) == test.choices.end())
        answers.push_back(each.id);
    break;
  case QualifierKind::flag:
    answers.push_back(!test.flag.value());
    break;
  }
  return answers;
}

// Rules of every scope and demand, so that the checks below are known to work for kinds that the book may not have.
inline std::vector<Rule> sampleRules() {
  using enum MeasureUnit;
  std::vector<Rule> rules;
  const auto add = [&](Scope scope, double amount = 0, std::optional<MeasureUnit> unit = {}) -> Rule& {
    Rule made = rule("sample-" + std::to_string(rules.size()), scope, Level::adapt, {Feature::rot, Feature::kneel});
    if (unit)
      made.threshold = Threshold{amount, *unit, ThresholdOrigin::ours, amount};
    rules.push_back(made);
    return rules.back();
  };
  add(Scope::step, 60, seconds);
  add(Scope::step).asks = {{Feature::rot}, {Feature::prone}, {Elevation::standing, Elevation::kneeling}, 6};
  add(Scope::step).asks = {{}, {}, {Elevation::standing}, 0};
  add(Scope::step).asks = {{}, {}, {}, 7};
  add(Scope::step).asks = {{}, {}, {}, 0, 60};
  add(Scope::step).asks = {{Feature::supine}, {}, {}, 2, 45};
  add(Scope::total, 100, seconds).asks = {{}, {}, {}, 0, 80};
  add(Scope::step).ages = {AgeBand::from65, AgeBand::from80};
  Rule& both = add(Scope::step);
  both.ages = {AgeBand::under18};
  both.condition = realKnowledge().rules.conditions.at(0).id;
  add(Scope::way);
  add(Scope::total, 60, repetitions);
  add(Scope::total, 3, steps);
  add(Scope::total, 4, changes);
  add(Scope::total, 100, seconds).asks = {{}, {}, {Elevation::standing}, 0};
  add(Scope::stretch, 2, steps);
  add(Scope::stretch, 90, seconds).asks = {{}, {}, {}, 7};
  add(Scope::early, 300, seconds);
  add(Scope::early, 20, percent).asks = {{}, {}, {}, 7};
  add(Scope::late, 300, seconds).asks = {{}, {}, {}, 7};
  add(Scope::late, 33, percent);
  add(Scope::order, 1, steps).after = Earlier{{{Feature::flexLoad, Feature::flexEnd}, {}, {}, 0}, Seconds{}};
  Rule& rising = add(Scope::order, 60, seconds);
  rising.asks = {{}, {}, {Elevation::standing}, 0};
  rising.after = Earlier{{{Feature::supine}, {Feature::inverted}, {Elevation::faceUp}, 0}, Seconds{}};
  add(Scope::order, 120, seconds).after = Earlier{{{Feature::flexEnd}, {}, {}, 5}, Seconds(120)};
  add(Scope::missing);
  add(Scope::missing).asks = {{Feature::rot}, {Feature::kneel}, {Elevation::standing}, 4};
  add(Scope::wholeClass).asks = {};
  return rules;
}

inline const RuleBook& fullBook() {
  static const RuleBook book = [] {
    RuleBook made = realKnowledge().rules;
    for (Rule& each : sampleRules())
      made.rules.push_back(std::move(each));
    return made;
  }();
  return book;
}

// How far what is measured lies from the threshold, on the side where the rule speaks.
enum class Measured { enough, justNot };

// One rule of the book, with people and steps made to fit it.
class Fitted {
public:
  explicit Fitted(const Rule& rule)
      : rule_(&rule), condition_(rule.condition ? book().findCondition(*rule.condition) : nullptr) {}

  static const RuleBook& book() { return fullBook(); }
  const Rule& rule() const { return *rule_; }
  const Condition* condition() const { return condition_; } // null: whatever the condition

  bool asksNothing() const { return rule_->scope == Scope::wholeClass; }
  bool isMissing() const { return rule_->scope == Scope::missing; }
  bool onWay() const {
    return rule_->scope == Scope::way || (rule_->threshold && rule_->threshold->unit == MeasureUnit::changes);
  }
  const QualifierSpec& spec(const QualifierTest& test) const { return *findQualifier(*condition_, test.qualifier); }

  // Somebody for whom the rule holds.
  std::vector<Person> concerned() const {
    std::vector<Person> people{person("ida")};
    people[0].ageBand = fittingAge();
    if (!condition_)
      return people;
    PersonCondition held;
    held.condition = condition_->id;
    for (const QualifierTest& each : rule_->when)
      held.qualifiers[each.qualifier] = satisfying(each, spec(each));
    people[0].conditions = {held};
    return people;
  }
  std::optional<AgeBand> fittingAge() const {
    std::optional<AgeBand> age;
    rule_->ages.forEach([&](AgeBand band) { age = band; });
    return age;
  }

  // What meets the demand of the rule, with one feature of `any`.
  Asked enough() const { return enoughFor(rule_->asks); }
  Asked enoughBefore() const { return enoughFor(rule_->after->demand); }

  // A class in which this is asked where the rule looks for it.
  std::vector<StepFacts> asking(const Asked& asked, Measured measured = Measured::enough) const {
    return asking(asked, rule_->after ? enoughBefore() : Asked{}, measured);
  }
  std::vector<StepFacts> asking(const Asked& asked, const Asked& before, Measured measured = Measured::enough) const {
    const double amount = rule_->threshold ? rule_->threshold->amount : 0;
    const double more = measured == Measured::enough ? amount + 1 : amount;
    const double less = measured == Measured::enough ? std::max(0.0, amount - 1) : amount;
    StepFacts facts = stepOf(asked);
    facts.work = facts.oneSide = Seconds(std::max(more, 1.0));
    facts.repetitions = static_cast<int>(more);
    switch (rule_->scope) {
    case Scope::total:
    case Scope::stretch:
      if (rule_->threshold->unit == MeasureUnit::steps || rule_->threshold->unit == MeasureUnit::changes)
        return std::vector<StepFacts>(static_cast<std::size_t>(more), facts);
      return {facts};
    case Scope::early:
      return atTheEdge(facts, less);
    case Scope::late: {
      std::vector<StepFacts> steps = atTheEdge(facts, less);
      const Seconds length = workEnd(steps.back());
      std::reverse(steps.begin(), steps.end());
      for (StepFacts& each : steps)
        each.workBegin = length - workEnd(each);
      return steps;
    }
    case Scope::order: {
      StepFacts earlier = stepOf(before);
      earlier.work = Seconds(rule_->after->lasting.value() + 1);
      std::vector<StepFacts> steps{earlier};
      if (rule_->threshold->unit == MeasureUnit::steps)
        steps.resize(static_cast<std::size_t>(less) + 1);
      facts.workBegin = Seconds(earlier.work.value() + less);
      steps.push_back(facts);
      return steps;
    }
    case Scope::step:
    case Scope::way:
    case Scope::missing:
    case Scope::wholeClass:
      break;
    }
    return {facts};
  }
  // The step at which the rule speaks in such a class.
  std::size_t place(const std::vector<StepFacts>& steps) const {
    if (asksNothing() || isMissing())
      return Finding::kNone;
    return rule_->scope == Scope::early || rule_->scope == Scope::late ? 1 : steps.size() - 1;
  }

  std::vector<Finding> spoken(const std::vector<Person>& people, const std::vector<StepFacts>& steps) const {
    std::vector<Finding> own;
    for (const Finding& each : screen(book(), people, activeRules(book(), people, kDay), steps, kDay))
      if (&book().rules[each.rule] == rule_)
        own.push_back(each);
    return own;
  }
  bool speaks(const std::vector<Person>& people, const std::vector<StepFacts>& steps) const {
    return !spoken(people, steps).empty();
  }
  // A rule on what is missing speaks where all others are silent.
  bool speaksOf(const Asked& asked) const { return speaks(concerned(), asking(asked)) != isMissing(); }
  // A class in which the rule speaks.
  std::vector<StepFacts> raising() const { return asking(isMissing() ? Asked{} : enough()); }

private:
  static Asked enoughFor(const Demand& demand) {
    Asked asked{demand.all, {}, Effort(demand.effortFrom), demand.leverFrom};
    bool taken = false;
    demand.any.forEach([&](Feature each) {
      if (!std::exchange(taken, true))
        asked.features.insert(each);
    });
    demand.at.forEach([&](Elevation each) { asked.at = {each}; });
    return asked;
  }
  StepFacts stepOf(const Asked& asked) const {
    StepFacts facts;
    (onWay() ? facts.wayFeatures : facts.features) = asked.features;
    facts.at = asked.at;
    facts.effort = asked.effort;
    facts.lever = asked.lever;
    return facts;
  }
  // A step whose work begins so much after the start, between two that ask nothing: 4000 s in all.
  std::vector<StepFacts> atTheEdge(StepFacts facts, double amount) const {
    constexpr double length = 4000;
    const double begin = rule_->threshold->unit == MeasureUnit::percent ? length * amount / 100 : amount;
    StepFacts first, last;
    first.work = facts.workBegin = Seconds(begin);
    facts.work = Seconds(1);
    last.workBegin = workEnd(facts);
    last.work = Seconds(length) - last.workBegin;
    return {first, facts, last};
  }

  const Rule* rule_;
  const Condition* condition_;
};

} // namespace matwright::test
