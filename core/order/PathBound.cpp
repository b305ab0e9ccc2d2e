#include "core/order/PathBound.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace matwright {
namespace {

constexpr int kIdealsAtOnce = 1024;           // whose arcs are read between two questions
constexpr std::int64_t kLargestSum = 1 << 26; // of what a whole order may cost, scaled

} // namespace

PathBound::PathBound(const Groundwork& ground)
    : ground_(&ground), places_(ground.places), nodes_(static_cast<std::size_t>(ground.places) * ground.states),
      prices_(ground.items), wrong_(ground.items) {
  OrderCost dearest = 1;
  for (std::size_t at = 0; at < ground.ways.size(); ++at)
    if (ground.walked[at] && ground.ways[at] < kFar)
      dearest = std::max(dearest, ground.ways[at]);
  OrderCost dearestExtra = 0, dearestArc = 0;
  for (OrderCost cost : ground.extra)
    dearestExtra = std::max(dearestExtra, cost < kFar ? cost : 0);
  for (OrderCost cost : ground.arc.extra)
    dearestArc = std::max(dearestArc, cost);
  const std::int64_t most = (dearest + dearestExtra + dearestArc) * (ground.items + 2);
  while (times_ < 64 && most * times_ * 2 <= kLargestSum)
    times_ *= 2;
  while (most / per_ > kLargestSum)
    per_ *= 2;

  waysTo_.resize(static_cast<std::size_t>(places_) * places_);
  for (int q = 0; q < places_; ++q)
    for (int p = 0; p < places_; ++p)
      waysTo_[static_cast<std::size_t>(q) * places_ + p] =
          ground.walked[static_cast<std::size_t>(p) * places_ + q] ? scaled(ground.way(p, q)) : kNever;
  for (OrderCost cost : ground.extra)
    extra_.push_back(scaled(cost));
  if (!ground.arc.lengths.empty()) {
    std::vector<std::int64_t> sorted = ground.arc.lengths;
    std::sort(sorted.begin(), sorted.end());
    std::int64_t least = 0, largest = 0;
    for (int done = 0; done < ground.items; ++done) {
      for (int item = 0; item < ground.items; ++item)
        arc_.push_back(leastArc(item, least, largest));
      least += sorted[done];
      largest += sorted[sorted.size() - 1 - done];
    }
  }
  best_.resize(nodes_);
}

OrderCost PathBound::unscaled(std::int64_t value) const {
  const std::int64_t whole = value * per_;
  return whole >= 0 ? (whole + times_ - 1) / times_ : -(-whole / times_);
}

std::int32_t PathBound::scaled(OrderCost cost) const {
  return cost >= kFar ? kNever : static_cast<std::int32_t>(cost * times_ / per_);
}

std::int32_t PathBound::leastArc(int item, std::int64_t shortest, std::int64_t longest) const {
  const OrderArc& arc = ground_->arc;
  const auto slice = [&](std::int64_t length) {
    return static_cast<std::ptrdiff_t>(std::min<std::int64_t>(length / arc.sliceLength, arc.slices - 1));
  };
  const auto costs = arc.extra.begin() + static_cast<std::ptrdiff_t>(item) * arc.slices;
  return scaled(*std::min_element(costs + slice(shortest), costs + slice(longest) + 1));
}

std::int32_t PathBound::arcOf(const Pattern::Move* move, int done) const {
  if (arc_.empty())
    return 0;
  return std::max(arc_[static_cast<std::size_t>(done) * ground_->items + move->item],
                  arcOfMove_[static_cast<std::size_t>(move - pattern_.movesBegin(0))]);
}

bool PathBound::use(Pattern pattern, SearchEffort& effort) {
  pattern_ = std::move(pattern);
  const int items = ground_->items;
  rows_.clear();
  idealsAt_.assign(items + 1, {});
  std::size_t cells = 0;
  for (int ideal = 0; ideal < pattern_.ideals(); ++ideal) {
    const auto& range = pattern_.ideal(ideal);
    rows_.push_back(cells);
    cells += static_cast<std::size_t>(std::max(0, range.most - range.fewest + 1)) * nodes_;
    for (int done = range.fewest; done <= range.most; ++done)
      idealsAt_[done].push_back(ideal);
  }
  arcOfMove_.clear();
  for (int ideal = 0; ideal < pattern_.ideals() && !arc_.empty(); ++ideal) {
    if (ideal % kIdealsAtOnce == 0 && effort.ask())
      return false;
    const Pattern::Ideal& range = pattern_.ideal(ideal);
    for (const auto* move = pattern_.movesBegin(ideal); move != pattern_.movesEnd(ideal); ++move)
      arcOfMove_.push_back(leastArc(move->item, range.shortest,
                                    range.longest - (pattern_.hasAll() ? 0 : ground_->lengthOf(move->item))));
  }
  table_.clear();
  table_.reserve(cells);
  while (table_.size() < cells) {
    table_.resize(std::min(cells, table_.size() + kCellsAtOnce), kNever);
    if (effort.ask())
      return false;
  }
  return compute(effort);
}

bool PathBound::compute(SearchEffort& effort) {
  const int items = ground_->items;
  for (int done = items; done >= 0; --done)
    for (int ideal : idealsAt_[done]) {
      if (done == items) {
        std::int32_t* values = row(ideal, done);
        for (int state = 0; state < ground_->states; ++state)
          for (int place = 0; place < places_; ++place)
            values[nodeOf(place, state)] = scaled(ground_->finish[place]);
      } else
        computeRow(ideal, done);
      if (effort.spend())
        return false;
    }
  return true;
}

void PathBound::computeRow(int ideal, int done) {
  const int states = ground_->states;
  std::fill(best_.begin(), best_.end(), kNever);
  const int pinned = ground_->pinnedAt[done];
  for (const auto* move = pattern_.movesBegin(ideal); move != pattern_.movesEnd(ideal); ++move) {
    const int item = move->item;
    if (done < ground_->earliest[item] || done > ground_->latest[item] || (pinned >= 0 && pinned != item))
      continue;
    const Pattern::Ideal& range = pattern_.ideal(move->to);
    if (done + 1 < range.fewest || done + 1 > range.most)
      continue;
    const std::int32_t* after = row(move->to, done + 1);
    const std::int32_t own = arcOf(move, done) - prices_[item];
    std::int32_t* best = best_.data() + ground_->start[item];
    if (extra_.empty()) {
      const std::int32_t value = after[ground_->end[item]];
      if (value < kNever)
        *best = std::min(*best, value + own);
      continue;
    }
    for (int state = 0; state < states; ++state) {
      const std::size_t cell = ground_->cell(state, item);
      const std::int32_t value = after[nodeOf(ground_->end[item], ground_->next[cell])];
      if (value < kNever && extra_[cell] < kNever)
        best[nodeOf(0, state)] = std::min(best[nodeOf(0, state)], value + extra_[cell] + own);
    }
  }
  std::int32_t* values = row(ideal, done);
  for (int state = 0; state < states; ++state) {
    std::int32_t* mine = values + nodeOf(0, state);
    std::fill(mine, mine + places_, kNever);
    for (int to = 0; to < places_; ++to) {
      const std::int32_t best = best_[nodeOf(to, state)];
      if (best == kNever)
        continue;
      const std::int32_t* ways = waysTo_.data() + static_cast<std::size_t>(to) * places_;
      for (int from = 0; from < places_; ++from)
        mine[from] = std::min(mine[from], ways[from] + best);
    }
    for (int from = 0; from < places_; ++from) // a missing way plus a price is still missing
      mine[from] = mine[from] >= kNever / 2 ? kNever : mine[from];
  }
}

OrderCost PathBound::atOrigin() const { return rest(0, 0, ground_->origin, ground_->firstState, sumOfPrices_); }

void PathBound::findWalk() {
  walk_.clear();
  int ideal = 0, place = ground_->origin, state = ground_->firstState;
  for (int done = 0; done < ground_->items; ++done) {
    const Pattern::Move* chosen = nullptr;
    std::int64_t least = kNever;
    const int pinned = ground_->pinnedAt[done];
    for (const auto* move = pattern_.movesBegin(ideal); move != pattern_.movesEnd(ideal); ++move) {
      const int item = move->item;
      const Pattern::Ideal& range = pattern_.ideal(move->to);
      if (done < ground_->earliest[item] || done > ground_->latest[item] || (pinned >= 0 && pinned != item) ||
          done + 1 < range.fewest || done + 1 > range.most)
        continue;
      const std::size_t cell = extra_.empty() ? 0 : ground_->cell(state, item);
      const std::int64_t value =
          std::int64_t{waysTo_[static_cast<std::size_t>(ground_->start[item]) * places_ + place]} +
          (extra_.empty() ? 0 : extra_[cell]) + arcOf(move, done) - prices_[item] +
          row(move->to, done + 1)[nodeOf(ground_->end[item], ground_->nextState(state, item))];
      if (value < least) {
        least = value;
        chosen = move;
      }
    }
    if (!chosen)
      return;
    walk_.push_back(chosen->item);
    ideal = chosen->to;
    place = ground_->end[chosen->item];
    state = ground_->nextState(state, chosen->item);
  }
}

void PathBound::noteWrong() {
  std::vector<int> times(ground_->items), seen(ground_->items, -1);
  for (double& score : wrong_)
    score *= 0.9;
  for (std::size_t slot = 0; slot < walk_.size(); ++slot) {
    const int item = walk_[slot];
    ++times[item];
    if (seen[item] < 0)
      seen[item] = static_cast<int>(slot);
    for (std::size_t earlier = 0; earlier < slot; ++earlier)
      if (ground_->relation.before(item, walk_[earlier])) {
        wrong_[item] += 0.5;
        wrong_[walk_[earlier]] += 0.5;
      }
  }
  for (int item = 0; item < ground_->items; ++item)
    wrong_[item] += std::abs(times[item] - 1);
}

bool PathBound::tune(OrderCost upper, int rounds, SearchEffort& effort) {
  const int items = ground_->items;
  std::vector<std::int32_t> bestPrices = prices_;
  std::int64_t bestSum = sumOfPrices_;
  OrderCost highest = atOrigin();
  if (highest >= kFar)
    return true;
  double pace = 1;
  int idle = 0;
  bool current = true; // whether the table is that of the best prices
  std::vector<double> direction(items);
  const std::int32_t mostPrice = static_cast<std::int32_t>(2 * kLargestSum / std::max(items, 1));
  for (int round = 0; round < rounds && highest < upper; ++round) {
    findWalk();
    if (static_cast<int>(walk_.size()) < items)
      break;
    noteWrong();
    std::vector<int> times(items);
    for (int item : walk_)
      ++times[item];
    double square = 0;
    for (int item = 0; item < items; ++item) {
      direction[item] = 0.6 * direction[item] + (1 - times[item]);
      square += direction[item] * direction[item];
    }
    if (std::all_of(times.begin(), times.end(), [](int seen) { return seen == 1; }))
      break;
    const OrderCost reached = atOrigin();
    const double aim = static_cast<double>(std::max<OrderCost>(upper - reached, 1)) *
                       (static_cast<double>(times_) / static_cast<double>(per_));
    const double step = pace * aim / std::max(square, 1e-9);
    sumOfPrices_ = 0;
    for (int item = 0; item < items; ++item) {
      const double wanted = prices_[item] + step * direction[item];
      prices_[item] = static_cast<std::int32_t>(
          std::lround(std::clamp(wanted, -static_cast<double>(mostPrice), static_cast<double>(mostPrice))));
      sumOfPrices_ += prices_[item];
    }
    if (!compute(effort))
      return false;
    current = false;
    if (const OrderCost found = atOrigin(); found > highest) {
      highest = found;
      bestPrices = prices_;
      bestSum = sumOfPrices_;
      idle = 0;
      current = true;
    } else if (++idle >= 5) {
      idle = 0;
      pace *= 0.6;
      prices_ = bestPrices;
      sumOfPrices_ = bestSum;
      std::fill(direction.begin(), direction.end(), 0);
      if (pace < 0.02)
        break;
    }
  }
  prices_ = std::move(bestPrices);
  sumOfPrices_ = bestSum;
  return current || compute(effort);
}

} // namespace matwright
