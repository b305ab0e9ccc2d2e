#pragma once

#include "core/order/OrderProblem.h"

#include <functional>

namespace matwright {

struct OrderProgress {
  OrderCost cost = kNoWay; // of the best order so far; kNoWay: none yet
  OrderCost lower = 0;     // no order costs less
  std::int64_t nodes = 0;
};

struct OrderLimits {
  std::int64_t nodes = 5'000'000; // points looked at; the same number gives the same answer on every machine
  std::uint64_t seed = 1;
  // Asked every few milliseconds: true ends the search, and the best so far is the answer. For a deadline the caller
  // looks at a clock here. May be empty.
  std::function<bool()> stop;
  // Told of each better order and each higher bound, from within solveOrder(). May be empty.
  std::function<void(const OrderProgress&, const std::vector<int>& order)> progress;
};

enum class OrderStatus {
  optimal,    // no order is cheaper
  bounded,    // an order, and a bound that is below its cost (or no order yet, and not proven that there is none)
  infeasible, // proven: no order keeps precedences, pins and missing ways
  cancelled,  // `stop` said so; order and bound are the best so far, the order perhaps empty
};

enum class OrderStop { proven, nodes, stopped, memory };

struct OrderAnswer {
  std::vector<int> order;  // items; empty when none was found
  OrderCost cost = kNoWay; // of it
  OrderCost lower = 0;     // no order costs less
  OrderStatus status = OrderStatus::bounded;
  OrderStop stop = OrderStop::nodes;
  std::int64_t nodes = 0;
  std::uint64_t seed = 0;
  friend bool operator==(const OrderAnswer&, const OrderAnswer&) = default;
};

// The cheapest order, or the best that the limits allow together with how much cheaper another could be. Runs on the
// calling thread; the same problem, nodes and seed give the same answer unless `stop` ended it.
Result<OrderAnswer, OrderFault> solveOrder(const OrderProblem& problem, const OrderLimits& limits = {});

} // namespace matwright
