#pragma once

#include "core/compose/FillProblem.h"

#include <functional>

namespace matwright {

struct BeamLimits {
  std::size_t width = 1;                       // how many go on
  std::uint64_t seed = 1;                      // another one prefers other items by a little
  const std::function<bool()>* stop = nullptr; // asked often; may be null
};

// Fillings built from the beginning, item by item: of those that end at about the same time the few that cost least go
// on. Those that reach the end are given, what seems cheapest first; they may still not keep all.
std::vector<Filling> builtFillings(const FillProblem& problem, const BeamLimits& limits);

} // namespace matwright
