#pragma once

#include "core/order/OrderProblem.h"

namespace matwright {

enum class OrderBreach {
  notEachItemOnce, // an item is missing, there twice, or none of the problem's
  precedence,      // of `before`, `sections`, `first` or `last`
  pin,             // a pinned item stands elsewhere
  noWay,           // a way or a state of the automaton that cannot be
};

// What an order costs, counted anew from the problem as it was stated: it shares nothing with the search. The problem
// must be one that relationOf() accepts. Takes time in proportion to the items and to what the problem lists.
Result<OrderCost, OrderBreach> checkOrder(const OrderProblem& problem, const std::vector<int>& order);

} // namespace matwright
