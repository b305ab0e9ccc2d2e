// Classes and people drawn at random from given knowledge, the same for the same seed.
#pragma once

#include "core/knowledge/Knowledge.h"
#include "core/plan/ClassPlan.h"

#include <random>
#include <string>
#include <vector>

namespace matwright::test {

class Draw {
public:
  explicit Draw(unsigned seed) : engine_(seed) {}

  // From 0 to below `count`.
  std::size_t below(std::size_t count) { return count == 0 ? 0 : engine_() % count; }
  int from(int low, int high) { return low + static_cast<int>(below(static_cast<std::size_t>(high - low + 1))); }
  bool chance(double probability) { return engine_() < probability * 4294967296.0; }
  template <class List> const auto& oneOf(const List& list) { return list[below(list.size())]; }

private:
  std::mt19937 engine_;
};

// The usual dose and tempo, now and then an option or a single side.
inline Step randomStep(Draw& draw, const Catalogue& catalogue, StepId id) {
  const Movement& movement = draw.oneOf(catalogue.movements());
  OptionId option;
  if (!movement.options.empty() && draw.chance(0.3))
    option = draw.oneOf(movement.options).id;
  Step step = stepOf(id, movement, option);
  if (movement.sides == Sides::each && draw.chance(0.2))
    step.onlySide = draw.chance(0.5) ? Side::left : Side::right;
  return step;
}

inline ClassPlan randomClass(Draw& draw, const Catalogue& catalogue, int steps) {
  ClassPlan plan = emptyClass("Drawn");
  for (int i = 0; i < steps; ++i)
    plan.sections[static_cast<std::size_t>(i) * plan.sections.size() / static_cast<std::size_t>(steps)].steps.push_back(
        randomStep(draw, catalogue, StepId{i + 1}));
  return plan;
}

inline QualifierValue randomAnswer(Draw& draw, const QualifierSpec& spec, Date day) {
  const auto daysFrom = [&](int days) { return Date{std::chrono::sys_days{day} + std::chrono::days{days}}; };
  switch (spec.kind) {
  case QualifierKind::weeksSince:
    return daysFrom(-draw.from(0, 200));
  case QualifierKind::pregnancyWeek:
    return daysFrom(draw.from(-7, 250));
  case QualifierKind::choice:
    return draw.oneOf(spec.choices).id;
  case QualifierKind::flag:
    break;
  }
  return draw.chance(0.5);
}

// Somebody with so many conditions of the book, most of their qualifiers answered, now and then with a clearance.
inline Person randomPerson(Draw& draw, const RuleBook& book, Date day, int conditions, std::string id) {
  Person person;
  person.name = id;
  person.id = PersonId{std::move(id)};
  for (int i = 0; i < conditions; ++i) {
    const Condition& condition = draw.oneOf(book.conditions);
    PersonCondition held;
    held.condition = condition.id;
    for (const QualifierSpec& spec : condition.qualifiers)
      if (draw.chance(0.8))
        held.qualifiers[spec.id] = randomAnswer(draw, spec, day);
    if (draw.chance(0.2))
      held.clearances.push_back({day, std::nullopt, "clinician", {}, {}, ""});
    person.conditions.push_back(std::move(held));
  }
  return person;
}

inline std::vector<Person> randomPeople(Draw& draw, const RuleBook& book, Date day, int count, int conditions) {
  std::vector<Person> people;
  for (int i = 0; i < count; ++i)
    people.push_back(randomPerson(draw, book, day, conditions, "person-" + std::to_string(i)));
  return people;
}

inline std::vector<PersonId> idsOf(const std::vector<Person>& people) {
  std::vector<PersonId> ids;
  for (const Person& person : people)
    ids.push_back(person.id);
  return ids;
}

} // namespace matwright::test
