// Cards of random classes over the real knowledge.
#pragma once

#include "core/handout/Card.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"

namespace matwright {

inline Date cardDay() { return Date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{26}}; }

inline Card cardOfSteps(unsigned seed, int steps, std::vector<Person> people = {}) {
  test::Draw draw(seed);
  const Knowledge& knowledge = test::realKnowledge();
  ClassPlan plan = emptyClass("Class of " + std::to_string(steps));
  for (int i = 0; i < steps; ++i)
    plan.sections[static_cast<std::size_t>(i * 4 / std::max(1, steps))].steps.push_back(
        test::randomStep(draw, knowledge.catalogue, StepId{i + 1}));
  for (const Person& person : people)
    plan.people.push_back(person.id);
  const Evaluation evaluation = evaluate(knowledge, plan, people, cardDay());
  return cardOf(knowledge, plan, evaluation, people, NameStyle::initials);
}

// One person for each condition there is, with nothing filled in: the most cautions that can be.
inline std::vector<Person> everyCondition() {
  std::vector<Person> people;
  for (const Condition& condition : test::realKnowledge().rules.conditions) {
    Person person;
    person.id.value = condition.id.value;
    person.name = condition.name;
    person.initials = initialsFrom(person.name);
    person.conditions.push_back({condition.id, {}, {}, {}});
    people.push_back(std::move(person));
  }
  return people;
}

} // namespace matwright
