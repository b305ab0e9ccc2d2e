#pragma once

#include "ui/document/PlanDocument.h"

#include <QString>

namespace matwright {

// Where a step stands and what it takes, in words.
struct StepFactsText {
  QString place; // "Step 11 · Main · face up, knees bent"
  QString work;  // "0:50", with the time between the sides where there is one
  QString wayIn; // seconds and number of changes, or why there are none
  QString cues;  // what is said on the way; empty without changes
  QString gap;   // all that passes before the first count, and of what it is made
};

StepFactsText factsOf(const Snapshot& snapshot, const Knowledge& knowledge, StepId step);

} // namespace matwright
