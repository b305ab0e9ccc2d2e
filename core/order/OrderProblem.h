#pragma once

#include "core/base/Result.h"

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace matwright {

// What an order costs, in whole units of the caller's choice (milliseconds for a class); never negative.
using OrderCost = std::int64_t;
inline constexpr OrderCost kNoWay = -1;                       // in a table of costs: it cannot be done
inline constexpr OrderCost kLargestOrderCost = 1'000'000'000; // of a single way or extra
inline constexpr int kMostOrderItems = 768;                   // more are refused
inline constexpr int kMostOrderStates = 4096;                 // of the soft terms, all automata together

// Something to be put in order: it begins at one place and ends at one. An item that begins where it ends needs nothing
// else of its place. What must stay together without a gap (a movement's two sides) is one item.
struct OrderItem {
  int start = 0, end = 0; // 0 to places - 1
  friend bool operator==(const OrderItem&, const OrderItem&) = default;
};

// Costs that depend on what was done before, as a machine with few states: doing `item` in `state` adds
// extra[state * items + item] and leads to next[state * items + item]. It begins in state `first`.
struct OrderAutomaton {
  int states = 1, first = 0;
  std::vector<int> next;        // states x items; empty: there is no machine
  std::vector<OrderCost> extra; // states x items; kNoWay: not allowed
  friend bool operator==(const OrderAutomaton&, const OrderAutomaton&) = default;
};

// Both at once, on the same number of items: states are pairs, those that cannot be reached left out.
OrderAutomaton combined(const OrderAutomaton& a, const OrderAutomaton& b, int items);

// Costs that depend on how much length was done before an item begins (a wished arc of effort): item i adds
// extra[i * slices + slice], where slice = (sum of the lengths of the items before it) / sliceLength, at most slices
// - 1.
struct OrderArc {
  std::vector<std::int64_t> lengths; // one an item, not negative; empty: there is no arc
  std::int64_t sliceLength = 1;      // at least 1
  int slices = 0;                    // at least 1 where there is an arc
  std::vector<OrderCost> extra;      // items x slices
  friend bool operator==(const OrderArc&, const OrderArc&) = default;
};

// A sequential ordering problem: the cheapest order of all items, each once. What stands between two neighbours costs
// ways[end of the one * places + start of the next].
struct OrderProblem {
  int places = 0;
  std::vector<OrderCost> ways; // places x places
  std::vector<OrderItem> items;
  std::optional<int> origin;               // the place before the first item; without one, the first way is free
  std::optional<int> goal;                 // the place to come to after the last item
  std::vector<std::pair<int, int>> before; // the first item of each pair comes somewhere before the second
  std::optional<int> first, last;          // items
  std::vector<int> sections; // one an item, or empty: all items of a section come before those of the next
  std::vector<std::pair<int, int>> pinned; // item, and its place in the order, counted from 0
  OrderAutomaton automaton;
  OrderArc arc;
  friend bool operator==(const OrderProblem&, const OrderProblem&) = default;
};

// Each item is a place of its own: costs is items x items, from the row to the column, and kNoWay at [i][j] says that
// j comes before i (the convention of the published instances).
OrderProblem problemOfMatrix(int items, const std::vector<OrderCost>& costs);

enum class OrderFault {
  tooManyItems,   // more than kMostOrderItems
  wrongSize,      // a table or list does not have one entry for each
  unknownPlace,   // an item begins or ends nowhere
  unknownItem,    // a pair, a pin, `first` or `last` names no item
  costOutOfRange, // negative (and not kNoWay where that is allowed) or above kLargestOrderCost
  pinnedTwice,    // two pins for one item or for one place in the order
  badAutomaton,   // a state that is none, or too many states
  badArc,         // a negative length or no slices
  cycle,          // the precedences contradict each other (also together with sections, first and last)
};

// What comes before what, with all that follows from it: succ[i] has j where i comes somewhere before j. Sections,
// first and last are in it, pins are not.
class OrderRelation {
public:
  OrderRelation() = default;
  explicit OrderRelation(int items) : items_(items), cells_(static_cast<std::size_t>(items) * items) {}
  int items() const { return items_; }
  bool before(int a, int b) const { return cells_[static_cast<std::size_t>(a) * items_ + b] != 0; }
  // Adds a before b and what follows; the relation stays transitive. Must not close a cycle.
  void add(int a, int b);

private:
  friend Result<OrderRelation, OrderFault> relationOf(const OrderProblem& problem);
  int items_ = 0;
  std::vector<char> cells_;
};

// The relation of a problem, or the first thing that is wrong with it.
Result<OrderRelation, OrderFault> relationOf(const OrderProblem& problem);

} // namespace matwright
