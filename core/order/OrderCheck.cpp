#include "core/order/OrderCheck.h"

#include <algorithm>

namespace matwright {
namespace {

bool keepsPrecedence(const OrderProblem& problem, const std::vector<int>& order, const std::vector<int>& slots) {
  for (const auto& [a, b] : problem.before)
    if (slots[a] >= slots[b])
      return false;
  if (problem.first && order.front() != *problem.first)
    return false;
  if (problem.last && order.back() != *problem.last)
    return false;
  if (!problem.sections.empty())
    for (std::size_t slot = 1; slot < order.size(); ++slot)
      if (problem.sections[order[slot - 1]] > problem.sections[order[slot]])
        return false;
  return true;
}

} // namespace

Result<OrderCost, OrderBreach> checkOrder(const OrderProblem& problem, const std::vector<int>& order) {
  const int items = static_cast<int>(problem.items.size());
  std::vector<int> slots(problem.items.size(), -1);
  if (order.size() != problem.items.size())
    return failure(OrderBreach::notEachItemOnce);
  for (int slot = 0; slot < items; ++slot) {
    const int item = order[slot];
    if (item < 0 || item >= items || slots[item] != -1)
      return failure(OrderBreach::notEachItemOnce);
    slots[item] = slot;
  }
  if (items > 0 && !keepsPrecedence(problem, order, slots))
    return failure(OrderBreach::precedence);
  for (const auto& [item, slot] : problem.pinned)
    if (slots[item] != slot)
      return failure(OrderBreach::pin);

  OrderCost cost = 0;
  bool possible = true;
  const auto pay = [&](OrderCost part) {
    possible = possible && part != kNoWay;
    cost += part;
  };
  std::optional<int> place = problem.origin;
  int state = problem.automaton.first;
  std::int64_t length = 0;
  for (int item : order) {
    if (place)
      pay(problem.ways[static_cast<std::size_t>(*place) * problem.places + problem.items[item].start]);
    if (!problem.automaton.next.empty()) {
      const std::size_t cell = static_cast<std::size_t>(state) * items + item;
      pay(problem.automaton.extra[cell]);
      state = problem.automaton.next[cell];
    }
    if (!problem.arc.lengths.empty()) {
      const std::int64_t slice = std::min<std::int64_t>(length / problem.arc.sliceLength, problem.arc.slices - 1);
      pay(problem.arc.extra[static_cast<std::size_t>(item) * problem.arc.slices + slice]);
      length += problem.arc.lengths[item];
    }
    place = problem.items[item].end;
  }
  if (problem.goal && place)
    pay(problem.ways[static_cast<std::size_t>(*place) * problem.places + *problem.goal]);
  if (!possible)
    return failure(OrderBreach::noWay);
  return cost;
}

} // namespace matwright
