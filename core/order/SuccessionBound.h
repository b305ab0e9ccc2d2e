#pragma once

#include "core/order/Assignment.h"
#include "core/order/SearchEffort.h"
#include "core/order/Successions.h"

namespace matwright {

// Never more than an order costs, and which successions are in no order below a cost that was reached. It is the
// cheapest choice of a successor for each item, which may fall into circles and break precedences. What these do is
// told by cuts: on the way from an item to the end, past all that must be before it (to an item from the beginning,
// past all that must be behind it; between two that have an order, past both), each order steps out of a set of items
// into the rest at least once. Cuts have prices (Lagrange multipliers), found by the subgradient method. Then each pair
// without an order is tried one way round.
class SuccessionBound {
public:
  // Without soft terms; at most kMostSuccessors items. Pins are disregarded.
  explicit SuccessionBound(const Groundwork& ground);

  // Goes on until nothing gets better, or there is no order below `upper`, or the effort ended. `upper` never rises
  // from call to call.
  void raise(OrderCost upper, SearchEffort& effort);
  OrderCost lower() const { return lower_; } // no order costs less; at least `upper`: there is none below it
  const Successions& successions() const { return left_; }

private:
  // Each order steps at least once from one of `from` to one of `to`.
  struct Cut {
    ItemSet from, to;
    std::vector<int> rows, columns; // the same
    std::int64_t price = 0, bestPrice = 0;
    double direction = 0;
    int idle = 0; // rounds in a row that it was kept without a price
  };
  static constexpr std::int64_t kTimes = 1024; // scaled costs are so many times the costs
  static constexpr int kRounds = 50;
  static constexpr int kNewCuts = 40; // in a round

  bool isBelow(std::int64_t value) const { return value <= (upper_ - 1) * kTimes; }
  bool isOver(SearchEffort& effort);
  std::int64_t value(SearchEffort& effort); // scaled
  void tune(SearchEffort& effort);
  void useBestPrices();
  void excludeDear(std::int64_t found);
  void findCuts();
  void findCut(int from, int to, const ItemSet& outside);
  void addCut(const ItemSet& from, const ItemSet& to);
  void move(std::int64_t found);
  void probe(SearchEffort& effort);
  bool canPrecede(int a, int b, SearchEffort& effort) const;
  std::size_t cell(int at, int next) const { return static_cast<std::size_t>(at) * size_ + next; }

  int size_; // items and the turn
  Successions left_;
  std::vector<std::int64_t> costs_, priced_; // size x size, scaled; less the prices of cuts
  Assignment chosen_;
  int firstCount_; // of left_
  std::int64_t dearest_ = 0;
  std::vector<Cut> cuts_;
  std::int64_t prices_ = 0; // of all cuts
  std::int64_t best_ = 0;   // value()
  OrderCost upper_ = kFar, lower_ = 0;
  double pace_ = 1;
  int newCuts_ = 0, firstItem_ = 0;
};

} // namespace matwright
