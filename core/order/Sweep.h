#pragma once

#include "core/order/PathBound.h"
#include "core/order/PatternBound.h"

#include <array>

namespace matwright {

// Bounds to use together: the greatest counts. Those that are null are left out; the patterns are for problems whose
// loops are done at once. What is there must be readable and outlive its use.
struct Bounds {
  const PathBound* path = nullptr;
  std::array<const PatternBound*, 2> patterns{};
};

// What one pass through all numbers of items done has brought.
struct SweepOutcome {
  std::vector<int> order; // cheaper than `upper`; empty when none was found
  OrderCost cost = kFar;  // of it
  OrderCost lower = 0;    // no order costs less, where this is at most `cost` and `upper`
  bool complete = false;  // nothing was left out: `order` is the cheapest, or none costs less than `upper`
};

// Goes through all partial orders by the number of items done, and keeps at most `width` of each number, those whose
// cost so far and bound are least. Two that have done the same items and stand at the same place in the same state are
// one. Everything that cannot come below `upper` is left out.
SweepOutcome sweep(const Groundwork& ground, const Bounds& bounds, std::size_t width, OrderCost upper,
                   SearchEffort& effort);

} // namespace matwright
