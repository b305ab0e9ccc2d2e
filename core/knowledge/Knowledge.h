#pragma once

#include "core/movement/Catalogue.h"
#include "core/screening/RedFlags.h"
#include "core/transition/TransitionGraph.h"

namespace matwright {

// All that does not change while classes are composed. Shared, read-only.
struct Knowledge {
  Catalogue catalogue;
  TransitionGraph transitions;
  RuleBook rules;
  RedFlags redFlags;
};

} // namespace matwright
