#pragma once

#include "core/knowledge/MeasuredLoads.h"
#include "core/load/MovementLoad.h"
#include "core/movement/Catalogue.h"
#include "core/screening/RedFlags.h"
#include "core/transition/TransitionGraph.h"

namespace matwright {

// All that does not change while classes are composed. Shared, read-only; `loads` only remembers what it worked out.
struct Knowledge {
  Catalogue catalogue;
  TransitionGraph transitions;
  RuleBook rules;
  RedFlags redFlags;
  std::shared_ptr<const Loads> loads = std::make_shared<const Loads>(); // never null
  MeasuredLoads measured;
};

} // namespace matwright
