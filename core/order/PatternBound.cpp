#include "core/order/PatternBound.h"

#include <algorithm>
#include <bit>

namespace matwright {
namespace {

// Numbers of masks, in the order they were put in.
class MarkIndex {
public:
  explicit MarkIndex(std::vector<std::uint64_t>& masks) : masks_(masks) {} // the first mask is nobody's
  int of(std::uint64_t mask) {
    if (2 * (masks_.size() + 1) > slots_.size())
      grow();
    for (std::size_t at = slotOf(mask);; at = (at + 1) & (slots_.size() - 1)) {
      if (slots_[at] < 0) {
        slots_[at] = static_cast<int>(masks_.size());
        masks_.push_back(mask);
        return slots_[at];
      }
      if (masks_[slots_[at]] == mask)
        return slots_[at];
    }
  }

private:
  std::size_t slotOf(std::uint64_t mask) const {
    mask *= 0x9e3779b97f4a7c15U;
    return static_cast<std::size_t>(mask ^ mask >> 32) & (slots_.size() - 1);
  }
  void grow() {
    slots_.assign(std::max<std::size_t>(256, slots_.size() * 2), -1);
    for (std::size_t i = 1; i < masks_.size(); ++i) {
      std::size_t at = slotOf(masks_[i]);
      while (slots_[at] >= 0)
        at = (at + 1) & (slots_.size() - 1);
      slots_[at] = static_cast<int>(i);
    }
  }
  std::vector<std::uint64_t>& masks_;
  std::vector<int> slots_;
};

constexpr std::uint64_t bit(std::size_t at) { return std::uint64_t{1} << at; }

} // namespace

PatternBound::PatternBound(const Groundwork& ground, std::vector<OrderCost> prices, std::vector<int> members)
    : ground_(&ground), places_(ground.places), prices_(std::move(prices)), members_(std::move(members)),
      moverOf_(ground.items, -1), earlier_(members_.size()), loopsAt_(ground.places) {
  for (int item = 0; item < ground.items; ++item)
    allPrices_ += priceOf(item);
  shift_ = kFar;
  for (int place = 0; place < places_; ++place)
    if (ground.finish[place] < kFar)
      shift_ = std::min(shift_, ground.finish[place] - prices_[place]);
  for (std::size_t i = 0; i < members_.size(); ++i) {
    const int item = members_[i];
    if (ground.loops.has(ground.start[item], item))
      loopsAt_[ground.start[item]] |= bit(i);
    else {
      moverOf_[item] = static_cast<int>(movers_.size());
      movers_.push_back(static_cast<int>(i));
    }
    for (std::size_t j = 0; j < members_.size(); ++j)
      if (ground.relation.before(members_[j], item))
        earlier_[i] |= bit(j);
  }
}

std::optional<PatternBound> PatternBound::of(const Groundwork& ground, const std::vector<OrderCost>& prices,
                                             const std::vector<int>& members, const PatternBound* coarser,
                                             OrderCost upper, std::size_t mostMarks, SearchEffort& effort) {
  if (members.size() > 64)
    return std::nullopt;
  PatternBound bound(ground, prices, members);
  if (!bound.costsFit())
    return std::nullopt;
  bound.readWays();
  if (!bound.enumerate(coarser, upper, mostMarks, effort) || !bound.compute(effort))
    return std::nullopt;
  return bound;
}

bool PatternBound::costsFit() const {
  OrderCost dearest = 0;
  for (OrderCost cost : ground_->ways)
    dearest = std::max(dearest, cost < kFar ? cost : 0);
  return dearest * (2 * ground_->items + 4) < kNever / 2;
}

void PatternBound::readWays() {
  const auto at = [&](int from, int to) { return static_cast<std::size_t>(to) * places_ + from; };
  ways_.assign(static_cast<std::size_t>(places_) * places_, kNever);
  for (int from = 0; from < places_; ++from)
    for (int to = 0; to < places_; ++to)
      if (ground_->walked[static_cast<std::size_t>(from) * places_ + to] && ground_->way(from, to) < kFar)
        ways_[at(from, to)] = static_cast<std::int32_t>(ground_->way(from, to) - prices_[from] + prices_[to]);
  const auto goThrough = [&](int start, int end) {
    for (int from = 0; from < places_; ++from)
      for (int to = 0; to < places_; ++to)
        ways_[at(from, to)] = std::min({ways_[at(from, to)], ways_[at(from, start)] + ways_[at(end, to)], kNever});
  };
  std::vector<char> isMember(ground_->items);
  for (int item : members_)
    isMember[item] = 1;
  for (int place = 0; place < places_; ++place) {
    ways_[at(place, place)] = ground_->closes[place] ? 0 : ways_[at(place, place)];
    if (ground_->closes[place])
      goThrough(place, place);
  }
  for (int item = 0; item < ground_->items; ++item)
    if (!isMember[item])
      goThrough(ground_->start[item], ground_->end[item]);
}

std::uint64_t PatternBound::closedMask(std::uint64_t mask, int place) const {
  for (bool more = true; more;) {
    more = false;
    for (std::uint64_t left = loopsAt_[place] & ~mask; left; left &= left - 1) {
      const int member = std::countr_zero(left);
      if ((earlier_[member] & ~mask) == 0) {
        mask |= bit(member);
        more = true;
      }
    }
  }
  return mask;
}

// Goes forward from the origin, always from marks with fewer members done to such with more, and knows of each mark and
// place what it costs at least to come there.
bool PatternBound::enumerate(const PatternBound* coarser, OrderCost upper, std::size_t mostMarks,
                             SearchEffort& effort) {
  MarkIndex index(masks_);
  const std::size_t most = mostMarks + places_ + movers_.size() + 2; // one mark adds at most so many before it is asked
  masks_.reserve(most);
  closed_.reserve(most * places_);
  next_.reserve(most * movers_.size());
  masks_.push_back(~std::uint64_t{0}); // kLeftOut; no mask of true members is the same, and it is not looked up
  closed_.assign(places_, kLeftOut);
  next_.assign(movers_.size(), kLeftOut);
  std::vector<std::int32_t> reached(places_, kNever); // marks x places
  std::vector<int> coarse{0};                         // the coarser bound's mark, by mark
  reached.reserve(most * places_);                    // to copy as much when it grows would take too long at a stretch
  coarse.reserve(most);
  std::vector<std::vector<int>> waiting(members_.size() + 1);
  std::vector<std::int32_t> from(places_);
  // The mark of a mask that was come to at a place, where that is worth while.
  const auto come = [&](std::uint64_t mask, int place, std::int32_t cost, int coarseMark) {
    // What is reached costs so much beyond the prices' differences, which add up to the same along all orders.
    if (coarser &&
        prices_[ground_->origin] - prices_[place] + cost + coarser->rest(coarseMark, place, coarser->allPrices()) >=
            upper)
      return kLeftOut;
    const std::size_t known = masks_.size();
    const int mark = index.of(mask);
    if (masks_.size() > known) {
      reached.resize(reached.size() + places_, kNever);
      closed_.resize(closed_.size() + places_, kLeftOut);
      next_.resize(next_.size() + movers_.size(), kLeftOut);
      coarse.push_back(coarseMark);
      waiting[std::popcount(mask)].push_back(mark);
    }
    std::int32_t& least = reached[static_cast<std::size_t>(mark) * places_ + place];
    least = std::min(least, cost);
    return mark;
  };
  come(0, ground_->origin, 0, coarser ? coarser->first() : 0);
  if (masks_.size() < 2) { // nothing is below `upper`
    masks_.push_back(0);
    closed_.resize(2 * static_cast<std::size_t>(places_), kLeftOut);
    next_.resize(2 * movers_.size(), kLeftOut);
    return true;
  }
  for (auto& level : waiting)
    for (std::size_t i = 0; i < level.size(); ++i) {
      const int mark = level[i];
      if (masks_.size() > mostMarks || effort.spend())
        return false;
      const std::uint64_t mask = masks_[mark];
      const std::size_t row = static_cast<std::size_t>(mark) * places_;
      const int coarseMark = coarse[mark];
      for (int to = 0; to < places_; ++to) {
        from[to] = kNever;
        for (int place = 0; place < places_; ++place)
          from[to] = std::min(from[to], reached[row + place] + ways_[static_cast<std::size_t>(to) * places_ + place]);
      }
      for (int place = 0; place < places_; ++place) {
        const std::uint64_t closed = (loopsAt_[place] & ~mask) ? closedMask(mask, place) : mask;
        const int there = closed == mask ? mark
                          : from[place] >= kNever
                              ? kLeftOut
                              : come(closed, place, from[place], coarser ? coarser->arrived(coarseMark, place) : 0);
        closed_[row + place] = there;
      }
      for (std::size_t mover = 0; mover < movers_.size(); ++mover) {
        const int member = movers_[mover];
        const int item = members_[member];
        const int start = ground_->start[item];
        int to = -1;
        if (!(mask & bit(member)) && (earlier_[member] & ~mask) == 0 && closed_[row + start] == mark) {
          int coarseAfter = 0;
          if (coarser)
            coarseAfter =
                coarser->arrived(coarser->after(coarser->arrived(coarseMark, start), item), ground_->end[item]);
          to =
              from[start] >= kNever ? kLeftOut : come(mask | bit(member), ground_->end[item], from[start], coarseAfter);
        }
        next_[static_cast<std::size_t>(mark) * movers_.size() + mover] = to;
      }
    }
  return true;
}

void PatternBound::leastFrom(int mark, std::vector<std::int32_t>& begin) const {
  std::fill(begin.begin(), begin.end(), kNever);
  for (int place = 0; place < places_; ++place)
    if (const int to = closed_[static_cast<std::size_t>(mark) * places_ + place]; to != mark)
      begin[place] = rest_[static_cast<std::size_t>(to) * places_ + place];
  for (std::size_t mover = 0; mover < movers_.size(); ++mover)
    if (const int to = next_[static_cast<std::size_t>(mark) * movers_.size() + mover]; to >= 0) {
      const int item = members_[movers_[mover]];
      std::int32_t& least = begin[ground_->start[item]];
      least = std::min(least, rest_[static_cast<std::size_t>(to) * places_ + ground_->end[item]]);
    }
}

bool PatternBound::compute(SearchEffort& effort) {
  std::vector<std::vector<int>> bySize(members_.size() + 1); // marks
  for (std::size_t mark = 1; mark < masks_.size(); ++mark)
    bySize[std::popcount(masks_[mark])].push_back(static_cast<int>(mark));
  rest_.clear();
  rest_.reserve(masks_.size() * places_);
  while (rest_.size() < masks_.size() * places_) {
    rest_.resize(std::min(masks_.size() * places_, rest_.size() + kCellsAtOnce), kNever);
    if (effort.ask())
      return false;
  }
  std::vector<std::int32_t> begin(places_);
  for (std::size_t size = bySize.size(); size-- > 0;) // what a mark leads to comes before it
    for (int mark : bySize[size]) {
      std::int32_t* rest = rest_.data() + static_cast<std::size_t>(mark) * places_;
      if (size == members_.size())
        for (int place = 0; place < places_; ++place)
          rest[place] = begin[place] = ground_->finish[place] < kFar
                                           ? static_cast<std::int32_t>(ground_->finish[place] - prices_[place] - shift_)
                                           : kNever;
      else
        leastFrom(mark, begin);
      for (int to = 0; to < places_; ++to) {
        if (begin[to] >= kNever)
          continue;
        const std::int32_t* ways = ways_.data() + static_cast<std::size_t>(to) * places_;
        for (int from = 0; from < places_; ++from)
          rest[from] = std::min(rest[from], ways[from] + begin[to]);
      }
      if (effort.spend())
        return false;
    }
  return true;
}

std::vector<int> PatternBound::missedByPlan() const {
  std::vector<char> done(ground_->items);
  const auto isFree = [&](int item) {
    for (int other = 0; other < ground_->items; ++other)
      if (!done[other] && ground_->relation.before(other, item))
        return false;
    return true;
  };
  const auto doAllAt = [&](int place) { // what is no member
    for (bool more = true; more;) {
      more = false;
      for (int item = 0; item < ground_->items; ++item)
        if (!done[item] && ground_->start[item] == place && ground_->end[item] == place && isFree(item))
          done[item] = more = true;
    }
  };
  int place = ground_->origin;
  int mark = arrived(first(), place);
  std::vector<std::int32_t> begin(places_);
  doAllAt(place);
  for (std::size_t steps = 0;
       std::popcount(masks_[mark]) < static_cast<int>(members_.size()) && steps < 2 * members_.size() + 2; ++steps) {
    leastFrom(mark, begin);
    int chosen = -1;
    std::int64_t least = kNever;
    for (int to = 0; to < places_; ++to)
      if (const std::int64_t value = std::int64_t{begin[to]} + ways_[static_cast<std::size_t>(to) * places_ + place];
          value < least) {
        least = value;
        chosen = to;
      }
    if (chosen < 0)
      break;
    for (int item = 0; item < ground_->items; ++item) // may be what the body was moved by
      if (!done[item] && moverOf_[item] < 0 && ground_->start[item] != ground_->end[item] &&
          ground_->start[item] == place && ground_->end[item] == chosen && isFree(item)) {
        done[item] = 1;
        break;
      }
    place = chosen;
    doAllAt(place);
    if (const int to = arrived(mark, place); to != mark) {
      mark = to;
      continue;
    }
    for (std::size_t mover = 0; mover < movers_.size(); ++mover) {
      const int to = next_[static_cast<std::size_t>(mark) * movers_.size() + mover];
      const int item = members_[movers_[mover]];
      if (to >= 0 && ground_->start[item] == place &&
          rest_[static_cast<std::size_t>(to) * places_ + ground_->end[item]] == begin[place]) {
        done[item] = isFree(item) || done[item];
        mark = arrived(to, ground_->end[item]);
        place = ground_->end[item];
        doAllAt(place);
        break;
      }
    }
  }
  std::vector<int> missed;
  for (int item = 0; item < ground_->items; ++item)
    if (!done[item] && isFree(item))
      missed.push_back(item);
  return missed;
}

} // namespace matwright
