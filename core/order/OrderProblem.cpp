#include "core/order/OrderProblem.h"

#include <algorithm>
#include <map>

namespace matwright {
namespace {

bool allWithin(const std::vector<OrderCost>& costs, bool noWayAllowed) {
  return std::all_of(costs.begin(), costs.end(), [&](OrderCost cost) {
    return (cost >= 0 && cost <= kLargestOrderCost) || (noWayAllowed && cost == kNoWay);
  });
}

std::optional<OrderFault> faultInPlaces(const OrderProblem& problem) {
  const std::size_t places = static_cast<std::size_t>(std::max(problem.places, 0));
  const auto known = [&](int place) { return place >= 0 && place < problem.places; };
  if (problem.ways.size() != places * places)
    return OrderFault::wrongSize;
  for (const OrderItem& item : problem.items)
    if (!known(item.start) || !known(item.end))
      return OrderFault::unknownPlace;
  if ((problem.origin && !known(*problem.origin)) || (problem.goal && !known(*problem.goal)))
    return OrderFault::unknownPlace;
  return allWithin(problem.ways, true) ? std::nullopt : std::optional(OrderFault::costOutOfRange);
}

std::optional<OrderFault> faultInItems(const OrderProblem& problem) {
  const int items = static_cast<int>(problem.items.size());
  const auto known = [&](int item) { return item >= 0 && item < items; };
  for (const auto& [a, b] : problem.before)
    if (!known(a) || !known(b))
      return OrderFault::unknownItem;
  if ((problem.first && !known(*problem.first)) || (problem.last && !known(*problem.last)))
    return OrderFault::unknownItem;
  if (!problem.sections.empty() && problem.sections.size() != problem.items.size())
    return OrderFault::wrongSize;
  std::vector<char> pinned(problem.items.size()), taken(problem.items.size());
  for (const auto& [item, slot] : problem.pinned) {
    if (!known(item) || !known(slot))
      return OrderFault::unknownItem;
    if (pinned[item] || taken[slot])
      return OrderFault::pinnedTwice;
    pinned[item] = taken[slot] = 1;
  }
  return std::nullopt;
}

std::optional<OrderFault> faultInSoftTerms(const OrderProblem& problem) {
  const std::size_t items = problem.items.size();
  const OrderAutomaton& machine = problem.automaton;
  if (!machine.next.empty() || !machine.extra.empty()) {
    if (machine.states < 1 || machine.states > kMostOrderStates || machine.first < 0 || machine.first >= machine.states)
      return OrderFault::badAutomaton;
    const std::size_t cells = static_cast<std::size_t>(machine.states) * items;
    if (machine.next.size() != cells || machine.extra.size() != cells)
      return OrderFault::wrongSize;
    for (int state : machine.next)
      if (state < 0 || state >= machine.states)
        return OrderFault::badAutomaton;
    if (!allWithin(machine.extra, true))
      return OrderFault::costOutOfRange;
  }
  const OrderArc& arc = problem.arc;
  if (!arc.lengths.empty()) {
    if (arc.slices < 1 || arc.sliceLength < 1)
      return OrderFault::badArc;
    if (arc.lengths.size() != items || arc.extra.size() != items * static_cast<std::size_t>(arc.slices))
      return OrderFault::wrongSize;
    for (std::int64_t length : arc.lengths)
      if (length < 0 || length > kLargestOrderCost)
        return OrderFault::badArc;
    if (!allWithin(arc.extra, false))
      return OrderFault::costOutOfRange;
  }
  return std::nullopt;
}

} // namespace

OrderAutomaton combined(const OrderAutomaton& a, const OrderAutomaton& b, int items) {
  if (a.next.empty() || b.next.empty())
    return a.next.empty() ? b : a;
  OrderAutomaton both;
  std::map<std::pair<int, int>, int> known{{{a.first, b.first}, 0}};
  std::vector<std::pair<int, int>> states{{a.first, b.first}};
  for (std::size_t at = 0; at < states.size(); ++at) {
    const auto [inA, inB] = states[at];
    for (int item = 0; item < items; ++item) {
      const std::size_t cellA = static_cast<std::size_t>(inA) * items + item;
      const std::size_t cellB = static_cast<std::size_t>(inB) * items + item;
      const bool allowed = a.extra[cellA] != kNoWay && b.extra[cellB] != kNoWay;
      const std::pair<int, int> to = allowed ? std::pair(a.next[cellA], b.next[cellB]) : states[at];
      const auto [found, isNew] = known.try_emplace(to, static_cast<int>(states.size()));
      if (isNew)
        states.push_back(to);
      both.next.push_back(found->second);
      both.extra.push_back(allowed ? a.extra[cellA] + b.extra[cellB] : kNoWay);
    }
  }
  both.states = static_cast<int>(states.size());
  return both;
}

OrderProblem problemOfMatrix(int items, const std::vector<OrderCost>& costs) {
  OrderProblem problem;
  problem.places = items;
  problem.ways = costs;
  for (int i = 0; i < items; ++i) {
    problem.items.push_back({i, i});
    for (int j = 0; j < items; ++j)
      if (costs[static_cast<std::size_t>(i) * items + j] == kNoWay && i != j)
        problem.before.emplace_back(j, i);
  }
  return problem;
}

void OrderRelation::add(int a, int b) {
  if (before(a, b))
    return;
  std::vector<int> ends{b};
  for (int j = 0; j < items_; ++j)
    if (before(b, j))
      ends.push_back(j);
  for (int i = 0; i < items_; ++i)
    if (i == a || before(i, a))
      for (int j : ends)
        cells_[static_cast<std::size_t>(i) * items_ + j] = 1;
}

Result<OrderRelation, OrderFault> relationOf(const OrderProblem& problem) {
  if (problem.items.size() > static_cast<std::size_t>(kMostOrderItems))
    return failure(OrderFault::tooManyItems);
  for (const auto& fault : {faultInPlaces(problem), faultInItems(problem), faultInSoftTerms(problem)})
    if (fault)
      return failure(*fault);
  const int items = static_cast<int>(problem.items.size());
  OrderRelation relation(items);
  auto& cells = relation.cells_;
  for (const auto& [a, b] : problem.before)
    cells[static_cast<std::size_t>(a) * items + b] = 1;
  for (int i = 0; i < items; ++i) {
    if (problem.first && i != *problem.first)
      cells[static_cast<std::size_t>(*problem.first) * items + i] = 1;
    if (problem.last && i != *problem.last)
      cells[static_cast<std::size_t>(i) * items + *problem.last] = 1;
    for (int j = 0; j < items && !problem.sections.empty(); ++j)
      if (problem.sections[i] < problem.sections[j])
        cells[static_cast<std::size_t>(i) * items + j] = 1;
  }
  for (int k = 0; k < items; ++k)
    for (int i = 0; i < items; ++i)
      if (relation.before(i, k))
        for (int j = 0; j < items; ++j)
          cells[static_cast<std::size_t>(i) * items + j] |= cells[static_cast<std::size_t>(k) * items + j];
  for (int i = 0; i < items; ++i)
    if (relation.before(i, i))
      return failure(OrderFault::cycle);
  return relation;
}

} // namespace matwright
