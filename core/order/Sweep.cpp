#include "core/order/Sweep.h"

#include "core/order/Blocks.h"

#include <algorithm>
#include <array>
#include <bit>

namespace matwright {
namespace {

template <int W> using Set = std::array<std::uint64_t, W>;

template <int W> bool has(const Set<W>& set, int item) { return (set[item / 64] >> (item % 64) & 1) != 0; }

template <int W> bool holds(const Set<W>& set, const Set<W>& part) {
  std::uint64_t missing = 0;
  for (int word = 0; word < W; ++word)
    missing |= part[word] & ~set[word];
  return missing == 0;
}

// A partial order, but for how it was reached.
template <int W> struct Point {
  Set<W> done{};
  int place = 0, state = 0;
  int ideal = 0;                 // of the path bound; -1: there is no way on
  std::array<int, 2> marks{};    // of the patterns
  int from = -1;                 // in the trail
  int item = -1;                 // done to come here, before and after all loops
  OrderCost cost = 0, total = 0; // so far; with the bound
  std::int64_t prices = 0;       // of the items that are left, by the path bound
  OrderCost placePrices = 0;     // and by the patterns
  std::int64_t length = 0;       // of those that are done

  bool samePlaceAs(const Point& other) const {
    return place == other.place && state == other.state && done == other.done;
  }
  std::size_t hash() const {
    std::uint64_t hash = static_cast<std::uint64_t>(place) * 0x2545f4914f6cdd1dU + static_cast<std::uint64_t>(state);
    for (std::uint64_t word : done) {
      hash = (hash ^ word) * 0x9e3779b97f4a7c15U;
      hash ^= hash >> 31;
    }
    return static_cast<std::size_t>(hash);
  }
};

constexpr std::size_t kPointsAtOnce = 1 << 15; // that are gone through between two questions

// The points with the same number of items done.
template <int W> class Level {
public:
  // Where a point like this is, or the slot where it belongs and -1. Once the effort has ended, it may be told as new
  // though it is there.
  std::pair<std::size_t, int> find(const Point<W>& point, SearchEffort& effort) {
    if (2 * (points_.size() + 1) > slots_.size())
      grow(effort);
    std::size_t at = point.hash() & (slots_.size() - 1);
    while (slots_[at] >= 0 && !points_[slots_[at]].samePlaceAs(point))
      at = (at + 1) & (slots_.size() - 1);
    return {at, slots_[at]};
  }
  void put(std::size_t slot, const Point<W>& point) {
    slots_[slot] = static_cast<int>(points_.size());
    points_.push_back(point);
    least_ = std::min(least_, point.total);
  }
  // The same place for less.
  void replace(int at, const Point<W>& point) {
    Point<W>& there = points_[at];
    there.total += point.cost - there.cost;
    there.cost = point.cost;
    there.from = point.from;
    there.item = point.item;
    least_ = std::min(least_, there.total);
  }
  Blocks<Point<W>>& points() { return points_; }
  OrderCost least() const { return least_; } // total of all that were put here
  void clear() { *this = {}; }

private:
  void grow(SearchEffort& effort) {
    slots_.assign(std::max<std::size_t>(16, slots_.size() * 2), -1);
    for (std::size_t i = 0; i < points_.size(); ++i) {
      if (i % kPointsAtOnce == kPointsAtOnce - 1 && effort.ask())
        return;
      std::size_t at = points_[i].hash() & (slots_.size() - 1);
      while (slots_[at] >= 0)
        at = (at + 1) & (slots_.size() - 1);
      slots_[at] = static_cast<int>(i);
    }
  }
  Blocks<Point<W>> points_;
  std::vector<int> slots_;
  OrderCost least_ = kFar;
};

template <int W> class Pass {
public:
  Pass(const Groundwork& ground, const Bounds& bounds, std::size_t width, OrderCost upper, SearchEffort& effort)
      : ground_(ground), bounds_(bounds), width_(width), upper_(upper), effort_(effort), levels_(ground.items + 1),
        waiting_(ground.places) {
    const auto setsOf = [](const BitRows& rows, int count) {
      std::vector<Set<W>> sets(count);
      for (int at = 0; at < count; ++at)
        std::copy_n(rows.row(at), rows.words(), sets[at].begin());
      return sets;
    };
    pred_ = setsOf(ground.pred, ground.items);
    loops_ = setsOf(ground.loops, ground.places);
  }

  SweepOutcome run() {
    Point<W> first;
    first.state = ground_.firstState;
    first.prices = bounds_.path ? bounds_.path->allPrices() : 0;
    std::vector<int> none;
    first.placePrices = bounds_.patterns[0] ? bounds_.patterns[0]->allPrices() : 0;
    for (std::size_t i = 0; i < bounds_.patterns.size(); ++i)
      first.marks[i] = bounds_.patterns[i] ? bounds_.patterns[i]->first() : 0;
    const int done = arrive(first, ground_.origin, 0, none);
    first.total = rest(first, done);
    OrderCost dropped = kFar;
    if (first.total < upper_)
      levels_[done].put(levels_[done].find(first, effort_).first, first);
    bool over = false;
    for (int at = 0; at < ground_.items && !over; ++at) {
      auto& points = levels_[at].points();
      if (points.size() > width_)
        over = !narrow(points, dropped);
      for (std::size_t i = 0; i < points.size() && !over; ++i) {
        over = effort_.spend();
        if (!over)
          expand(points[i], at);
      }
      if (over)
        for (const auto& level : levels_)
          dropped = std::min(dropped, level.least());
      levels_[at].clear();
    }
    SweepOutcome outcome;
    outcome.complete = !over && dropped == kFar;
    auto& whole = levels_[ground_.items].points();
    for (std::size_t i = 0; i < whole.size(); ++i)
      if (whole[i].total < outcome.cost) {
        outcome.cost = whole[i].total;
        outcome.order = orderOf(whole[i]);
      }
    outcome.lower = std::min({dropped, outcome.cost, upper_});
    return outcome;
  }

private:
  struct Step {
    int from = -1, item = -1;
  };

  static bool isBetter(const Point<W>& a, const Point<W>& b) {
    if (a.total != b.total)
      return a.total < b.total;
    if (a.cost != b.cost)
      return a.cost > b.cost;
    return a.place != b.place ? a.place < b.place : a.done < b.done;
  }

  // Leaves the best. `dropped` becomes the least that one of the others can come to, where that is less. False when the
  // effort ended; the points are then as they were, in another order.
  bool narrow(Blocks<Point<W>>& points, OrderCost& dropped) {
    std::size_t passed = 0;
    const auto isOver = [&] { return ++passed % kPointsAtOnce == 0 && effort_.ask(); };
    // What is in front of `first` is better than what is behind `last`, and those between are not sorted out yet.
    std::size_t first = 0, last = points.size();
    while (first < width_ && width_ < last && last - first > 1) {
      const Point<W> middle = middleOf(points[first], points[first + (last - first - 1) / 2], points[last - 1]);
      std::size_t low = first, high = last - 1;
      for (;; ++low, --high) {
        for (; isBetter(points[low], middle); ++low)
          if (isOver())
            return false;
        for (; isBetter(middle, points[high]); --high)
          if (isOver())
            return false;
        if (low >= high)
          break;
        std::swap(points[low], points[high]);
        if (isOver())
          return false;
      }
      if (high + 1 > width_)
        last = high + 1;
      else
        first = high + 1;
    }
    OrderCost least = kFar;
    for (std::size_t i = width_; i < points.size(); ++i) {
      least = std::min(least, points[i].total);
      if (isOver())
        return false;
    }
    dropped = std::min(dropped, least);
    points.shrink(width_);
    return true;
  }

  static const Point<W>& middleOf(const Point<W>& a, const Point<W>& b, const Point<W>& c) {
    const auto& [low, high] = std::minmax(a, b, isBetter);
    return std::max(low, std::min(high, c, isBetter), isBetter);
  }

  void take(Point<W>& point, int item) const {
    point.done[item / 64] |= std::uint64_t{1} << (item % 64);
    if (bounds_.patterns[0])
      point.placePrices -= bounds_.patterns[0]->priceOf(item);
    if (bounds_.path) {
      point.prices -= bounds_.path->priceOf(item);
      if (point.ideal >= 0)
        point.ideal = bounds_.path->pattern().after(point.ideal, item);
    }
    point.length += ground_.lengthOf(item);
  }

  OrderCost rest(const Point<W>& point, int done) const {
    if (done == ground_.items)
      return ground_.finish[point.place];
    OrderCost most = bounds_.path ? bounds_.path->rest(point.ideal, done, point.place, point.state, point.prices) : 0;
    for (std::size_t i = 0; i < bounds_.patterns.size(); ++i)
      if (bounds_.patterns[i])
        most = std::max(most, bounds_.patterns[i]->rest(point.marks[i], point.place, point.placePrices));
    return most;
  }

  // Comes to a place and does all loops that can be done there; how many items are done then.
  int arrive(Point<W>& point, int place, int count, std::vector<int>& taken) const {
    point.place = place;
    for (std::size_t i = 0; i < bounds_.patterns.size(); ++i)
      if (bounds_.patterns[i])
        point.marks[i] = bounds_.patterns[i]->arrived(point.marks[i], place);
    if (!ground_.closes[point.place])
      return count;
    const Set<W>& loops = loops_[point.place];
    for (bool more = true; more;) {
      more = false;
      for (int word = 0; word < W; ++word)
        for (std::uint64_t left = loops[word] & ~point.done[word]; left; left &= left - 1) {
          const int item = word * 64 + std::countr_zero(left);
          if (!holds<W>(point.done, pred_[item]))
            continue;
          take(point, item);
          taken.push_back(item);
          ++count;
          more = true;
        }
    }
    return count;
  }

  // All that follows a point by one item, with the loops before and after it.
  int step(Point<W>& point, int item, int count, std::vector<int>& taken) const {
    point.cost += ground_.way(point.place, ground_.start[item]) + ground_.extraOf(point.state, item) +
                  ground_.arcOf(point.length, item);
    point.state = ground_.nextState(point.state, item);
    count = arrive(point, ground_.start[item], count, taken);
    if (!has<W>(point.done, item)) { // unless it was a loop there
      take(point, item);
      taken.push_back(item);
      ++count;
      for (std::size_t i = 0; i < bounds_.patterns.size(); ++i)
        if (bounds_.patterns[i])
          point.marks[i] = bounds_.patterns[i]->after(point.marks[i], item);
      count = arrive(point, ground_.end[item], count, taken);
    }
    return count;
  }

  void expand(const Point<W>& point, int count) {
    const int trail = static_cast<int>(trail_.size());
    trail_.push_back({point.from, point.item});
    std::fill(waiting_.begin(), waiting_.end(), 0);
    const int pinned = ground_.pinnedAt[count];
    for (int item = 0; item < ground_.items; ++item) {
      if (has<W>(point.done, item) || !holds<W>(point.done, pred_[item]) || count > ground_.latest[item] ||
          count < ground_.earliest[item] || (pinned >= 0 && pinned != item))
        continue;
      const int start = ground_.start[item];
      if (ground_.way(point.place, start) >= kFar || ground_.extraOf(point.state, item) >= kFar)
        continue;
      if (ground_.closes[start] && ground_.end[item] == start) { // all loops of a place are done together
        if (waiting_[start])
          continue;
        waiting_[start] = 1;
      }
      Point<W> after = point;
      after.from = trail;
      after.item = item;
      scratch_.clear();
      const int done = step(after, item, count, scratch_);
      if (after.ideal < 0)
        continue;
      insert(after, done);
    }
  }

  void insert(Point<W>& point, int done) {
    auto& level = levels_[done];
    const auto [slot, at] = level.find(point, effort_);
    if (at >= 0) {
      if (point.cost < level.points()[at].cost)
        level.replace(at, point);
      return;
    }
    point.total = point.cost + rest(point, done);
    if (point.total < upper_)
      level.put(slot, point);
  }

  std::vector<int> orderOf(const Point<W>& last) const {
    std::vector<int> items{last.item};
    for (int at = last.from; at >= 0; at = trail_[at].from)
      items.push_back(trail_[at].item);
    std::vector<int> order;
    Point<W> point;
    point.state = ground_.firstState;
    for (std::size_t i = 0; i < bounds_.patterns.size(); ++i)
      point.marks[i] = bounds_.patterns[i] ? bounds_.patterns[i]->first() : 0;
    int count = arrive(point, ground_.origin, 0, order);
    for (auto item = items.rbegin(); item != items.rend(); ++item)
      if (*item >= 0)
        count = step(point, *item, count, order);
    return order;
  }

  const Groundwork& ground_;
  const Bounds& bounds_;
  std::size_t width_;
  OrderCost upper_;
  SearchEffort& effort_;
  std::vector<Set<W>> pred_, loops_;
  std::vector<Level<W>> levels_;
  Blocks<Step> trail_; // points that were gone on from
  std::vector<char> waiting_;
  std::vector<int> scratch_;
};

} // namespace

SweepOutcome sweep(const Groundwork& ground, const Bounds& bounds, std::size_t width, OrderCost upper,
                   SearchEffort& effort) {
  const int words = std::max(1, ground.pred.words());
  if (words == 1)
    return Pass<1>(ground, bounds, width, upper, effort).run();
  if (words == 2)
    return Pass<2>(ground, bounds, width, upper, effort).run();
  if (words <= 5)
    return Pass<5>(ground, bounds, width, upper, effort).run();
  return Pass<kMostOrderItems / 64>(ground, bounds, width, upper, effort).run();
}

} // namespace matwright
