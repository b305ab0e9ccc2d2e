// Everything that can be done to a class, as data, and the one function that does it.
#pragma once

#include "core/base/Result.h"
#include "core/plan/ClassPlan.h"

#include <variant>

namespace matwright {

struct InsertSteps { // ids must be positive and new to the class
  Place place;
  std::vector<Step> steps;
};
struct RemoveSteps {
  std::vector<StepId> steps;
};
// In the order they have now, brought together at `place`, which is read before they are taken out.
struct MoveSteps {
  std::vector<StepId> steps;
  Place place;
};
struct SetDose {
  StepId step;
  Dose dose;
};
struct SetTempo {
  StepId step;
  Tempo tempo;
};
// The option and the dose and tempo that go with it.
struct SetOption {
  StepId step;
  OptionId option;
  Dose dose;
  Tempo tempo;
};
struct SetOnlySide {
  StepId step;
  std::optional<Side> side;
};
struct SetStepNote {
  StepId step;
  std::string note;
};
struct ReplaceStep { // another movement in the same place, under the same id: that of `with` is not looked at
  StepId step;
  Step with;
};
struct SetVariant { // in the place of the one that the person has at this step
  StepId step;
  Variant variant;
};
struct RemoveVariant { // none there: nothing changes
  StepId step;
  PersonId person;
};
struct InsertSection {
  std::size_t index;
  std::string name;
};
struct RemoveSection { // its steps go to the section before, or after when it is the first
  std::size_t index;
};
struct MoveSection {
  std::size_t from, to; // `to` counted after it is taken out
};
struct RenameSection {
  std::size_t index;
  std::string name;
};
// Cuts a section in two: the steps from `place` on begin a new section.
struct SplitSection {
  Place place;
  std::string name;
};
struct RenameClass {
  std::string name;
};
struct SetDate {
  std::optional<Date> date;
};
struct SetTarget {
  Seconds target;
};
struct SetClassNote {
  std::string note;
};
struct SetPace {
  Pace pace;
};
struct SetPeople {
  std::vector<PersonId> people;
};
struct EditGroup;

using Edit =
    std::variant<InsertSteps, RemoveSteps, MoveSteps, SetDose, SetTempo, SetOption, SetOnlySide, SetStepNote,
                 ReplaceStep, SetVariant, RemoveVariant, InsertSection, RemoveSection, MoveSection, RenameSection,
                 SplitSection, RenameClass, SetDate, SetTarget, SetClassNote, SetPace, SetPeople, EditGroup>;

// Several edits as one: all of them, in order, or none.
struct EditGroup {
  std::vector<Edit> edits;
};

enum class Refusal {
  noSuchStep,
  noSuchSection,
  noSuchPlace,
  stepIdTaken, // or not positive, and so nobody's to take
  stepNamedTwice,
  doseOutOfRange,
  tempoOutOfRange,
  targetOutOfRange,
  paceOutOfRange,
  nameEmpty, // or nothing but white space
  nameTooLong,
  noteTooLong,
  lastSection,
  tooManySections,
  tooManySteps,
  tooManyPeople,
  personNamedTwice,
  tooManyVariants, // at one step
};

// The class after the edit, or why it cannot be done; never a part of it, never a clamped value. An edit that
// changes nothing gives the same class.
Result<ClassPlan, Refusal> applyEdit(const ClassPlan& plan, const Edit& edit);

} // namespace matwright
