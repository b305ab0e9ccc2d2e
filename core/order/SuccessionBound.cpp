#include "core/order/SuccessionBound.h"

#include <algorithm>

namespace matwright {

SuccessionBound::SuccessionBound(const Groundwork& ground)
    : size_(ground.items + 1), left_(ground), costs_(static_cast<std::size_t>(size_) * size_, Assignment::kForbidden),
      priced_(costs_), chosen_(size_), firstCount_(left_.count()) {
  const int turn = left_.turn();
  for (int at = 0; at < size_; ++at)
    for (int next = 0; next < size_; ++next)
      if (left_.behind(at)[next]) {
        const int place = at == turn ? ground.origin : ground.end[at];
        const OrderCost cost = next == turn ? ground.finish[place] : ground.way(place, ground.start[next]);
        costs_[cell(at, next)] = cost * kTimes;
        dearest_ = std::max(dearest_, cost * kTimes);
      }
}

void SuccessionBound::raise(OrderCost upper, SearchEffort& effort) {
  upper_ = upper;
  while (!isOver(effort)) {
    const int before = left_.count();
    const std::int64_t valueBefore = best_;
    tune(effort);
    if (isOver(effort) || left_.count() > firstCount_ * 3 / 4)
      return; // too far from `upper` to tell much
    probe(effort);
    const bool isLess = left_.count() < before * 9 / 10;
    const bool isHigher = 10 * (best_ - valueBefore) > upper_ * kTimes - valueBefore;
    if (!isLess && !isHigher)
      return;
  }
}

bool SuccessionBound::isOver(SearchEffort& effort) {
  if (left_.areNone())
    lower_ = upper_;
  return lower_ >= upper_ || effort.isOver();
}

// Of the present prices, with the choice that has it.
std::int64_t SuccessionBound::value(SearchEffort& effort) {
  effort.spend(size_ * size_ / 32);
  std::int64_t sum = 0;
  for (int at = 0; at < size_; ++at)
    for (int next = 0; next < size_; ++next)
      priced_[cell(at, next)] = left_.behind(at)[next] ? costs_[cell(at, next)] : Assignment::kForbidden;
  for (const Cut& cut : cuts_) {
    if (cut.price == 0)
      continue;
    sum += cut.price;
    for (int at : cut.rows)
      for (int next : cut.columns)
        priced_[cell(at, next)] -= cut.price;
  }
  prices_ = sum;
  sum += chosen_.solve(priced_);
  if (isBelow(sum))
    lower_ = std::max(lower_, sum <= 0 ? 0 : (sum + kTimes - 1) / kTimes);
  else
    lower_ = upper_;
  return sum;
}

void SuccessionBound::tune(SearchEffort& effort) {
  int idle = 0;
  for (int round = 0; round < kRounds && pace_ > 0.02; ++round) {
    const std::int64_t found = value(effort);
    if (isOver(effort))
      return;
    if (found > best_) {
      best_ = found;
      idle = 0;
      for (Cut& cut : cuts_)
        cut.bestPrice = cut.price;
      excludeDear(found);
    } else if (++idle >= 20) {
      idle = 0;
      pace_ *= 0.7;
      useBestPrices();
    }
    findCuts();
    move(found);
  }
}

void SuccessionBound::useBestPrices() {
  for (Cut& cut : cuts_) {
    cut.price = cut.bestPrice;
    cut.direction = 0;
  }
}

// What makes the choice cost `upper` or more. The prices of `found` are the present ones.
void SuccessionBound::excludeDear(std::int64_t found) {
  bool any = false;
  for (int at = 0; at < size_; ++at)
    for (int next = 0; next < size_; ++next)
      if (left_.behind(at)[next] && !isBelow(found + chosen_.excess(at, next, priced_[cell(at, next)]))) {
        left_.exclude(at, next);
        any = true;
      }
  if (any)
    left_.close();
}

void SuccessionBound::findCuts() {
  std::erase_if(cuts_, [](const Cut& cut) { return cut.idle > 10 && cut.bestPrice == 0; });
  newCuts_ = 0;
  const int items = left_.items(), turn = left_.turn();
  for (int i = 0; i < items; ++i) {
    const int item = (firstItem_ + i) % items;
    findCut(item, turn, left_.earlier(item));
    findCut(turn, item, left_.later(item));
    for (int other = 0; other < items; ++other)
      if (left_.later(item)[other]) {
        ItemSet outside = left_.earlier(item) | left_.later(other);
        outside.set(turn);
        findCut(item, other, outside);
      }
    if (newCuts_ >= kNewCuts) {
      firstItem_ = (item + 1) % items;
      return;
    }
  }
}

// The choice must lead from one to the other and meet nothing that is outside.
void SuccessionBound::findCut(int from, int to, const ItemSet& outside) {
  const auto walk = [&](int begin, int end, auto&& step) {
    ItemSet met;
    int at = begin;
    do {
      met.set(at);
      at = step(at);
    } while (at != end && !met[at] && !outside[at]);
    return at == end ? ItemSet{} : met;
  };
  ItemSet rest;
  for (int at = 0; at < size_; ++at)
    rest.set(at, !outside[at]);
  if (const ItemSet met = walk(from, to, [&](int at) { return chosen_.columnOf(at); }); met.any()) {
    addCut(met, rest & ~met);
    const ItemSet behind = walk(to, from, [&](int at) { return chosen_.rowOf(at); });
    addCut(rest & ~behind, behind);
  }
}

void SuccessionBound::addCut(const ItemSet& from, const ItemSet& to) {
  for (const Cut& cut : cuts_)
    if (cut.from == from && cut.to == to)
      return;
  Cut cut;
  cut.from = from;
  cut.to = to;
  for (int at = 0; at < size_; ++at) {
    if (from[at])
      cut.rows.push_back(at);
    if (to[at])
      cut.columns.push_back(at);
  }
  cuts_.push_back(std::move(cut));
  ++newCuts_;
}

// The prices, along what the choice does to the cuts.
void SuccessionBound::move(std::int64_t found) {
  double square = 0;
  for (Cut& cut : cuts_) {
    int crossed = 0;
    for (int at : cut.rows)
      crossed += cut.to[chosen_.columnOf(at)];
    cut.direction = 0.6 * cut.direction + 1 - crossed;
    if (cut.price == 0)
      cut.direction = std::max(cut.direction, 0.0);
    cut.idle = cut.price == 0 && crossed > 0 ? cut.idle + 1 : 0;
    square += cut.direction * cut.direction;
  }
  if (square < 1e-9)
    return;
  const double step = pace_ * static_cast<double>(std::max(upper_ * kTimes - found, kTimes)) / square;
  for (Cut& cut : cuts_)
    cut.price = static_cast<std::int64_t>(
        std::clamp(static_cast<double>(cut.price) + step * cut.direction, 0.0, static_cast<double>(dearest_)));
}

// Of each pair without an order, whether one way round costs too much.
void SuccessionBound::probe(SearchEffort& effort) {
  useBestPrices();
  excludeDear(value(effort));
  for (int a = 0; a < left_.items(); ++a)
    for (int b = 0; b < left_.items(); ++b) {
      if (isOver(effort))
        return;
      if (a == b || left_.areOrdered(a, b) || canPrecede(b, a, effort))
        continue;
      left_.precede(a, b);
      left_.close();
      if (!isOver(effort))
        excludeDear(value(effort));
    }
}

bool SuccessionBound::canPrecede(int a, int b, SearchEffort& effort) const {
  effort.spend(size_ * size_ / 512);
  Successions supposed = left_;
  supposed.precede(a, b);
  bool chosenIsLeft = true;
  for (int at = 0; at < size_ && chosenIsLeft; ++at)
    chosenIsLeft = supposed.behind(at)[chosen_.columnOf(at)];
  if (chosenIsLeft)
    return true;
  std::vector<std::int64_t> priced = priced_;
  for (int at = 0; at < size_; ++at)
    for (int next = 0; next < size_; ++next)
      if (!supposed.behind(at)[next])
        priced[cell(at, next)] = Assignment::kForbidden;
  Assignment chosen = chosen_;
  return isBelow(prices_ + chosen.solve(priced));
}

} // namespace matwright
