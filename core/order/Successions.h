#pragma once

#include "core/order/Groundwork.h"

#include <bitset>

namespace matwright {

inline constexpr int kMostSuccessors = 127; // items
using ItemSet = std::bitset<kMostSuccessors + 1>;

// Which item may come directly behind which, and which somewhere before which, in the orders that are still looked for.
// What is taken away is taken away with all that follows from it. The turn, a number behind those of the items, stands
// before the first item and behind the last.
class Successions {
public:
  // At most kMostSuccessors items; looked for are all orders.
  explicit Successions(const Groundwork& ground);

  int items() const { return items_; }
  int turn() const { return items_; }
  const ItemSet& behind(int at) const { return behind_[at]; }       // directly
  const ItemSet& earlier(int item) const { return earlier_[item]; } // somewhere
  const ItemSet& later(int item) const { return later_[item]; }
  bool areOrdered(int a, int b) const { return later_[a][b] || later_[b][a]; }
  int count() const;
  // No order is left. Not every such case is seen.
  bool areNone() const { return none_; }

  void exclude(int at, int next) { behind_[at].reset(next); }
  // Before, and what follows from the precedences alone.
  void precede(int a, int b);
  // All that follows.
  void close();

private:
  void addBefore(int a, int b);
  void excludeByPrecedence();
  bool canCome(int from, int to) const;

  int items_;
  bool none_ = false;
  std::vector<ItemSet> behind_, earlier_, later_;
};

} // namespace matwright
