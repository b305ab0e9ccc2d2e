#pragma once

#include "core/order/Pattern.h"
#include "core/order/SearchEffort.h"

namespace matwright {

// Never more than what remains to be paid from any point of an order. It is the cheapest relaxed rest: as many items as
// remain, where the members of a pattern come once each and in order, and others may be missing or come again. What
// others ought to cost when they come once each is set by prices (Lagrange multipliers), found by the subgradient
// method. When the pattern has all items, the rest is no longer relaxed and the bound exact.
class PathBound {
public:
  explicit PathBound(const Groundwork& ground);

  // Reads the table anew for this pattern. False when the effort ended; the bound is then unusable until another use().
  bool use(Pattern pattern, SearchEffort& effort);
  // Better prices, by at most so many rounds; `upper` is a cost that can be reached. Ends with a readable table.
  bool tune(OrderCost upper, int rounds, SearchEffort& effort);

  const Pattern& pattern() const { return pattern_; }
  OrderCost atOrigin() const; // at least kFar: there is no order
  // How often the relaxed orders seen by tune() had an item too many or too few times, or before what it needs.
  const std::vector<double>& wrong() const { return wrong_; }
  // The relaxed order itself.
  const std::vector<int>& walk() const { return walk_; }

  int firstIdeal() const { return 0; }
  std::int64_t allPrices() const { return sumOfPrices_; }
  std::int64_t priceOf(int item) const { return prices_[item]; }
  // From a place and state, with so many items done; prices: the sum of priceOf() of those not done. At least kFar when
  // nothing goes on from there.
  OrderCost rest(int ideal, int done, int place, int state, std::int64_t prices) const {
    const Pattern::Ideal& range = pattern_.ideal(ideal);
    if (done < range.fewest || done > range.most)
      return kFar;
    const std::int32_t value =
        table_[rows_[ideal] + static_cast<std::size_t>(done - range.fewest) * nodes_ + nodeOf(place, state)];
    return value >= kNever ? kFar : unscaled(value + prices);
  }

private:
  static constexpr std::int32_t kNever = 1 << 29;
  std::size_t nodeOf(int place, int state) const { return static_cast<std::size_t>(state) * places_ + place; }
  std::int32_t* row(int ideal, int done) {
    return table_.data() + rows_[ideal] + static_cast<std::size_t>(done - pattern_.ideal(ideal).fewest) * nodes_;
  }
  OrderCost unscaled(std::int64_t scaled) const; // rounded up
  std::int32_t scaled(OrderCost cost) const;     // rounded down
  std::int32_t leastArc(int item, std::int64_t shortest, std::int64_t longest) const;
  std::int32_t arcOf(const Pattern::Move* move, int done) const;
  bool compute(SearchEffort& effort);
  void computeRow(int ideal, int done);
  void findWalk();
  void noteWrong();

  const Groundwork* ground_;
  int places_ = 0;
  std::size_t nodes_ = 0;               // places x states
  std::int64_t times_ = 1, per_ = 1;    // scaled = cost * times / per
  std::vector<std::int32_t> waysTo_;    // by place to go to: from each place
  std::vector<std::int32_t> extra_;     // states x items
  std::vector<std::int32_t> arc_;       // items done x items: the least it can be
  std::vector<std::int32_t> arcOfMove_; // the least it can be in the pattern
  std::vector<std::int32_t> prices_;
  std::int64_t sumOfPrices_ = 0;
  Pattern pattern_;
  std::vector<std::size_t> rows_;          // where an ideal's rows begin in table_
  std::vector<std::vector<int>> idealsAt_; // by items done
  std::vector<std::int32_t> table_;
  std::vector<std::int32_t> best_; // of one row, by state and place to go to
  std::vector<int> walk_;
  std::vector<double> wrong_;
};

} // namespace matwright
