#pragma once

#include "core/order/Groundwork.h"
#include "core/order/SearchEffort.h"

namespace matwright {

// Never more than what remains to be paid, where loops are done at once: the exact cost of the members of a pattern,
// while everything else need not be done and those that move the body may be used at no cost, as often as one likes.
// Its marks stand for members that are done; a search carries one along as it arrives at places and does movers.
class PatternBound {
public:
  // At most 64 members. What a coarser bound (null: none) shows to cost `upper` or more is left out: the bound is then
  // right for what costs less, and kFar for the rest. Nothing when there were more than `mostMarks` marks, costs are
  // too large, or the effort ended.
  // `prices` as of placePrices(), the same for a coarser one.
  static std::optional<PatternBound> of(const Groundwork& ground, const std::vector<OrderCost>& prices,
                                        const std::vector<int>& members, const PatternBound* coarser, OrderCost upper,
                                        std::size_t mostMarks, SearchEffort& effort);

  int first() const { return 1; }
  int arrived(int mark, int place) const { return closed_[static_cast<std::size_t>(mark) * places_ + place]; }
  // After an item that ends elsewhere than it starts, or is no loop; the mark has arrived where it starts.
  int after(int mark, int item) const {
    const int mover = moverOf_[item];
    if (mover < 0)
      return mark;
    const int to = next_[static_cast<std::size_t>(mark) * movers_.size() + mover];
    return to < 0 ? mark : to; // done already
  }
  // Of an item, and of all of them.
  OrderCost priceOf(int item) const { return prices_[ground_->end[item]] - prices_[ground_->start[item]]; }
  OrderCost allPrices() const { return allPrices_; }
  // prices: the sum of priceOf() of the items that are not done. At least kFar when there is no way on.
  OrderCost rest(int mark, int place, OrderCost prices) const {
    const std::int32_t value = rest_[static_cast<std::size_t>(mark) * places_ + place];
    return value >= kNever ? kFar : value + prices_[place] + prices + shift_;
  }
  OrderCost atOrigin() const { return rest(arrived(first(), ground_->origin), ground_->origin, allPrices_); }
  std::size_t marks() const { return masks_.size(); }
  const std::vector<int>& members() const { return members_; }
  bool hasAll() const { return members_.size() == static_cast<std::size_t>(ground_->items); }
  // Items that cannot be done along the cheapest relaxed order though all that they need can.
  std::vector<int> missedByPlan() const;

private:
  static constexpr std::int32_t kNever = 1 << 29;
  static constexpr int kLeftOut = 0; // the mark of what costs too much
  PatternBound(const Groundwork& ground, std::vector<OrderCost> prices, std::vector<int> members);
  bool costsFit() const;
  void readWays();
  bool enumerate(const PatternBound* coarser, OrderCost upper, std::size_t mostMarks, SearchEffort& effort);
  bool compute(SearchEffort& effort);
  void leastFrom(int mark, std::vector<std::int32_t>& begin) const; // by place to go to
  std::uint64_t closedMask(std::uint64_t mask, int place) const;

  const Groundwork* ground_;
  int places_;
  std::vector<OrderCost> prices_; // by place
  OrderCost allPrices_ = 0;
  OrderCost shift_ = 0; // what the order's end adds at least
  std::vector<int> members_;
  std::vector<int> movers_;            // members, by number, that are no loops
  std::vector<int> moverOf_;           // by item: number in movers_, -1 where it is none
  std::vector<std::uint64_t> earlier_; // by member: the members before it
  std::vector<std::uint64_t> loopsAt_; // by place: members
  std::vector<std::int32_t> ways_;     // by place to go to: from each place, beyond the prices' difference
  std::vector<std::uint64_t> masks_;   // by mark
  std::vector<int> closed_, next_;     // marks x places, marks x movers
  std::vector<std::int32_t> rest_;     // marks x places
};

} // namespace matwright
