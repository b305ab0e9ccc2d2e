#include "core/order/LocalSearch.h"

#include <algorithm>

namespace matwright {
namespace {

constexpr int kFew = 64; // items; with more, a round takes long enough to ask each time

} // namespace

// How far the stretch behind `middle` may go, at most to `last`, when `item` is to come behind it.
int LocalSearch::reach(const std::vector<int>& order, int item, int middle, int last) const {
  for (int at = middle + 1; at <= last; ++at)
    if (ground_->relation.before(item, order[at]))
      return at - 1;
  return last;
}

// The cost when order[first..middle] and order[middle+1..last] change places.
OrderCost LocalSearch::exchanged(const std::vector<int>& order, int first, int middle, int last, OrderCost cost) {
  if (ground_->soft) {
    trial_ = order;
    std::rotate(trial_.begin() + first, trial_.begin() + middle + 1, trial_.begin() + last + 1);
    return ground_->costOf(trial_);
  }
  const Groundwork& ground = *ground_;
  const int before = first == 0 ? ground.origin : ground.end[order[first - 1]];
  const int endOfFirst = ground.end[order[middle]], endOfSecond = ground.end[order[last]];
  const int startOfFirst = ground.start[order[first]], startOfSecond = ground.start[order[middle + 1]];
  cost += ground.way(before, startOfSecond) - ground.way(before, startOfFirst);
  cost += ground.way(endOfSecond, startOfFirst) - ground.way(endOfFirst, startOfSecond);
  if (last + 1 < ground.items) {
    const int behind = ground.start[order[last + 1]];
    return cost + ground.way(endOfFirst, behind) - ground.way(endOfSecond, behind);
  }
  return cost + ground.finish[endOfFirst] - ground.finish[endOfSecond];
}

// Tries all stretches of which the first one ends at `middle`. Whether one of them was better.
bool LocalSearch::improveAround(std::vector<int>& order, int middle, OrderCost& cost, SearchEffort& effort) {
  const auto isPinned = [&](int at) { return ground_->pinnedAt[at] >= 0; };
  int last = middle;
  while (last + 1 < ground_->items && !isPinned(last + 1))
    ++last;
  for (int first = middle; first >= 0 && !isPinned(first) && last > middle; --first) {
    last = reach(order, order[first], middle, last);
    for (int at = middle + 1; at <= last; ++at)
      if (const OrderCost found = exchanged(order, first, middle, at, cost); found < cost) {
        std::rotate(order.begin() + first, order.begin() + middle + 1, order.begin() + at + 1);
        cost = found;
        return true;
      }
    if (effort.isStopped() || (ground_->soft && effort.ask()))
      return false;
  }
  return false;
}

OrderCost LocalSearch::improve(std::vector<int>& order, SearchEffort& effort) {
  OrderCost cost = ground_->costOf(order);
  for (bool better = true; better;) {
    better = false;
    for (int middle = 0; middle + 1 < ground_->items; ++middle) {
      while (improveAround(order, middle, cost, effort)) {
        better = true;
        if (effort.spend())
          return cost;
      }
      if (effort.spend() || (ground_->items > kFew && effort.ask()))
        return cost;
    }
  }
  return cost;
}

void LocalSearch::disturb(std::vector<int>& order) {
  const int items = ground_->items;
  const auto drawn = [&](int below) { return static_cast<int>(random_() % static_cast<std::uint64_t>(below)); };
  for (int changes = 0, tries = 0; changes < 3 && tries < 60; ++tries) {
    const int first = drawn(items - 1);
    const int middle = std::min(items - 2, first + drawn(6));
    int last = std::min(items - 1, middle + 1 + drawn(6));
    for (int at = first; at <= middle; ++at)
      last = reach(order, order[at], middle, last);
    bool pinned = false;
    for (int at = first; at <= last; ++at)
      pinned = pinned || ground_->pinnedAt[at] >= 0;
    if (last == middle || pinned)
      continue;
    std::rotate(order.begin() + first, order.begin() + middle + 1, order.begin() + last + 1);
    ++changes;
  }
}

OrderCost LocalSearch::improveAgain(std::vector<int>& order, int times, SearchEffort& effort) {
  OrderCost cost = ground_->costOf(order);
  if (ground_->items < 3)
    return cost;
  std::vector<int> trial;
  for (int at = 0; at < times && !effort.isOver(); ++at) {
    trial = order;
    disturb(trial);
    if (const OrderCost found = improve(trial, effort); found <= cost) {
      cost = found;
      order = trial;
    }
  }
  return cost;
}

} // namespace matwright
