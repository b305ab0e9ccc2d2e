#pragma once

#include "core/screening/Rule.h"

namespace matwright {

// What the rules of a scope may ask for, and what they measure.
struct ScopeForm {
  enum class Amount { none, maybe, needed };

  Amount amount = Amount::none;
  double least = 0; // of the amount
  EnumSet<MeasureUnit> units{};
  bool asks = true;    // whether they look for features
  bool onSteps = true; // whether they look for heights and effort too, which ways do not have
};

// The most that an amount in a unit may be.
double mostOf(MeasureUnit unit);

// `measured`: the unit of the rule's amount, which decides too: changes are looked for in ways.
ScopeForm formOf(Scope scope, std::optional<MeasureUnit> measured = {});

} // namespace matwright
