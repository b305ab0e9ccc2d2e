// A class of twenty steps and six people of our own invention, on the program's own knowledge.
#pragma once

#include "core/store/Store.h"
#include "ui/document/ClassCommands.h"
#include "ui/document/PeopleDocument.h"

#include <memory>

namespace matwright::testing {

// The day for which everything is evaluated.
Date today();

std::shared_ptr<const Knowledge> knowledge(); // read once; aborts when it cannot be read
ClassPlan twentySteps();
std::vector<Person> sixPeople();

// The documents behind the panels, joined as the window joins them.
struct Panels {
  Panels();
  // The step that does a movement; the first of them.
  StepId stepOf(const char* movement) const;

  PlanDocument document;
  PeopleDocument people;
  StepSelection selection;
  ClassCommands commands;
};

} // namespace matwright::testing
