#pragma once

#include "core/base/Date.h"
#include "core/base/Text.h"
#include "core/movement/Catalogue.h"
#include "core/people/Person.h"
#include "core/units/Units.h"

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

// Identity of a step within one class: positive, never used twice in the life of an open document.
struct StepId {
  std::int64_t value = 0;
  friend bool operator==(StepId, StepId) = default;
  friend auto operator<=>(StepId, StepId) = default;
};

// What one person does in the place of a step, for as long as the others do the step: the same movement in another
// option, or another one. It has no dose of its own.
struct Variant {
  PersonId person;
  MovementId movement;
  OptionId option; // empty: as written
  friend bool operator==(const Variant&, const Variant&) = default;
};

// One movement in its place in a class.
struct Step {
  StepId id;
  MovementId movement;
  OptionId option; // empty: as written
  Dose dose;
  Tempo tempo;
  std::optional<Side> onlySide; // for movements done on each side: one side only
  std::string note;
  std::vector<Variant> variants{}; // one a person at the most
  friend bool operator==(const Step&, const Step&) = default;
};

struct Section {
  std::string name;
  std::vector<Step> steps;
  friend bool operator==(const Section&, const Section&) = default;
};

// How a group moves and is spoken to.
struct Pace {
  static constexpr double kLowestMobility = 0.5, kHighestMobility = 4.0;
  static constexpr double kSlowestSpeech = 60, kFastestSpeech = 240;
  static constexpr double kLongestSettle = 60;

  double mobility = 1.0;       // factor on the seconds of ways: 1 as charted, 2 twice as long
  double wordsPerMinute = 150; // of the set-up cue. Usual speech: see the sources in evaluate/Schedule.h
  Seconds settle{2.0};         // from being there to the first count
  friend bool operator==(const Pace&, const Pace&) = default;
};

bool isWellFormed(const Pace& pace);

// A class as composed: a plain value. Every step id occurs once.
struct ClassPlan {
  static constexpr std::size_t kMostSteps = 400;
  static constexpr std::size_t kMostSections = 20;
  static constexpr std::size_t kMostPeople = 60;
  static constexpr Seconds kShortestTarget = minutes(5);
  static constexpr Seconds kLongestTarget = minutes(240);

  std::string name;
  std::optional<Date> date;
  Seconds target = minutes(50);
  std::string note;
  Pace pace;
  std::vector<PersonId> people;
  std::vector<Section> sections;
  friend bool operator==(const ClassPlan&, const ClassPlan&) = default;
};

// Where a step stands, or would be put: before the step that is at `index` now, or at the end of the section.
struct Place {
  std::size_t section = 0;
  std::size_t index = 0;
  friend bool operator==(const Place&, const Place&) = default;
  friend auto operator<=>(const Place&, const Place&) = default;
};

const Variant* variantOf(const Step& step, const PersonId& person); // null: does the step as it is

// The class as one person does it: each of her variants in the place of its step, with the usual dose of the variant,
// or the step's own where it is the same movement with a dose in the same unit. A variant that is not in the catalogue
// keeps the step's dose and tempo.
ClassPlan asDoneBy(const PersonId& person, const ClassPlan& plan, const Catalogue& catalogue);

std::size_t countSteps(const ClassPlan& plan);
const Step* findStep(const ClassPlan& plan, StepId id);
std::optional<Place> placeOf(const ClassPlan& plan, StepId id);
StepId highestStepId(const ClassPlan& plan); // 0 for an empty class

// Calls visit(const Step&) in order.
template <class Visit> void forEachStep(const ClassPlan& plan, Visit visit) {
  for (const Section& section : plan.sections)
    for (const Step& step : section.steps)
      visit(step);
}

// A step of the movement as written, or in the option, with its usual dose and tempo.
Step stepOf(StepId id, const Movement& movement, const OptionId& option = {});

// A class without steps in the four usual sections.
ClassPlan emptyClass(std::string name);

} // namespace matwright

template <> struct std::hash<matwright::StepId> {
  std::size_t operator()(matwright::StepId id) const noexcept { return std::hash<std::int64_t>{}(id.value); }
};
