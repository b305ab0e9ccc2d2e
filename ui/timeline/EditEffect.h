#pragma once

#include "core/evaluate/Evaluation.h"

#include <QString>

namespace matwright {

// What an edit does to the totals of a class, by its evaluations before and after.
struct EditEffect {
  Seconds added;
  int addedChanges = 0;
  int newCautions = 0;            // raised after and not before
  std::optional<Level> strongest; // of the new ones
  int goneCautions = 0;           // raised before and no longer
  friend bool operator==(const EditEffect&, const EditEffect&) = default;
};

EditEffect effectBetween(const Evaluation& before, const Evaluation& after);

// "+1:16 · 2 more changes · 1 new caution (ask first)". Without new ones it says so and no more than that.
QString effectText(const EditEffect& effect);

} // namespace matwright
