#pragma once

#include "core/order/Groundwork.h"
#include "core/order/SearchEffort.h"

#include <random>

namespace matwright {

// Exchanges two neighbouring stretches of an order as long as that makes it cheaper and breaks no precedence and no pin
// (the path-preserving exchange of three ways; moving one item or a stretch is the case of a short neighbour).
class LocalSearch {
public:
  LocalSearch(const Groundwork& ground, std::uint64_t seed) : ground_(&ground), random_(seed) {}

  // The order must keep precedences and pins. What it costs afterwards.
  OrderCost improve(std::vector<int>& order, SearchEffort& effort);
  // Improves so many times more, each time after a disturbance at random; never ends dearer than it began.
  OrderCost improveAgain(std::vector<int>& order, int times, SearchEffort& effort);

private:
  bool improveAround(std::vector<int>& order, int last, OrderCost& cost, SearchEffort& effort);
  OrderCost exchanged(const std::vector<int>& order, int first, int middle, int last, OrderCost cost);
  void disturb(std::vector<int>& order);
  int reach(const std::vector<int>& order, int item, int middle, int last) const;

  const Groundwork* ground_;
  std::mt19937_64 random_;
  std::vector<int> trial_;
};

} // namespace matwright
