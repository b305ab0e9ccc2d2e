#pragma once

#include "core/order/OrderProblem.h"

namespace matwright {

// Sets of items as rows of machine words.
class BitRows {
public:
  BitRows() = default;
  BitRows(int rows, int bits) : words_((bits + 63) / 64), data_(static_cast<std::size_t>(rows) * words_) {}
  int words() const { return words_; }
  const std::uint64_t* row(int at) const { return data_.data() + static_cast<std::size_t>(at) * words_; }
  bool has(int at, int bit) const { return (row(at)[bit / 64] >> (bit % 64) & 1) != 0; }
  void set(int at, int bit) {
    data_[static_cast<std::size_t>(at) * words_ + bit / 64] |= std::uint64_t{1} << (bit % 64);
  }
  int count(int at) const;
  bool meet(int at, const BitRows& other, int otherAt) const; // whether both rows have a bit in common

private:
  int words_ = 0;
  std::vector<std::uint64_t> data_;
};

inline constexpr OrderCost kFar = OrderCost{1} << 50; // stands for "no way" in sums: far above any order that can be

// A problem with all that follows from it written out, as search and bounds read it. Orders of it are orders of the
// problem, and the cheapest cost is the same; precedences may be added and places made one where nothing is lost by it.
struct Groundwork {
  int items = 0;
  int places = 0;                // the last one may be added: before everything, at no cost
  int origin = 0;                // a place
  std::vector<OrderCost> ways;   // places x places; kFar where there is none
  std::vector<char> walked;      // places x places: whether some order uses the way
  std::vector<OrderCost> finish; // one a place: to the goal
  std::vector<int> start, end;   // of items
  OrderRelation relation;
  BitRows pred, succ;
  std::vector<int> earliest, latest; // places in the order, from 0; earliest > latest: there is no order
  std::vector<int> pinnedAt;         // items by place in the order, -1 where none
  int states = 1, firstState = 0;
  std::vector<int> next;        // states x items; empty when there is one state and nothing extra
  std::vector<OrderCost> extra; // states x items, kFar where not allowed
  OrderArc arc;
  bool soft = false;
  BitRows loops;            // by place: items that begin and end there and are done at once, at no loss
  std::vector<char> closes; // by place: has such items
  bool closing = false;     // any place closes

  explicit Groundwork(const OrderProblem& problem, OrderRelation relationOfIt);
  OrderCost way(int from, int to) const { return ways[static_cast<std::size_t>(from) * places + to]; }
  std::size_t cell(int state, int item) const { return static_cast<std::size_t>(state) * items + item; }
  int nextState(int state, int item) const { return next.empty() ? state : next[cell(state, item)]; }
  OrderCost extraOf(int state, int item) const { return next.empty() ? 0 : extra[cell(state, item)]; }
  OrderCost arcOf(std::int64_t length, int item) const;
  std::int64_t lengthOf(int item) const { return arc.lengths.empty() ? 0 : arc.lengths[item]; }

  // The cost of an order that keeps all precedences and pins; at least kFar where a way is missing.
  OrderCost costOf(const std::vector<int>& order) const;

private:
  void readWays(const OrderProblem& problem);
  void readSoftTerms(const OrderProblem& problem);
  void orderTwins(const OrderProblem& problem);
  void findWalked(const OrderProblem& problem);
  void mergePlaces();
  void findWindows(const OrderProblem& problem);
  void findLoops();
  bool loopsLoseNothing(int place) const;
};

} // namespace matwright
