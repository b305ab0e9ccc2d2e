#include "core/order/SolveOrder.h"

#include "core/order/LocalSearch.h"
#include "core/order/PlacePrices.h"
#include "core/order/SuccessionBound.h"
#include "core/order/Sweep.h"

#include <algorithm>
#include <numeric>

namespace matwright {
namespace {

class Search {
public:
  Search(const Groundwork& ground, const OrderLimits& limits)
      : ground_(ground), limits_(limits), effort_(limits.nodes, limits.stop), local_(ground, limits.seed),
        bound_(ground) {}

  OrderAnswer run() {
    if (ground_.items == 0)
      offer({}, ground_.finish[ground_.origin]);
    else
      find();
    OrderAnswer answer;
    answer.order = best_;
    answer.cost = cost_ < kFar ? cost_ : kNoWay;
    proven_ = proven_ || (cost_ < kFar && lower_ >= cost_);
    answer.lower = proven_ && cost_ < kFar ? cost_ : std::min(lower_, cost_);
    answer.nodes = effort_.used();
    answer.seed = limits_.seed;
    if (proven_) {
      answer.status = cost_ < kFar ? OrderStatus::optimal : OrderStatus::infeasible;
      answer.stop = OrderStop::proven;
    } else if (effort_.isStopped()) {
      answer.status = OrderStatus::cancelled;
      answer.stop = OrderStop::stopped;
    } else if (!effort_.isOver())
      answer.stop = OrderStop::memory;
    return answer;
  }

private:
  void find() {
    for (int item = 0; item < ground_.items; ++item)
      if (ground_.earliest[item] > ground_.latest[item]) {
        proven_ = true;
        return;
      }
    firstOrder();
    if (placesAreShared() && findWithLoops())
      return;
    bounds_ = {&bound_, {}};
    std::vector<int> all(ground_.items);
    std::iota(all.begin(), all.end(), 0);
    if (auto pattern = Pattern::of(ground_, all, kWholeWork, effort_);
        pattern && bound_.use(*std::move(pattern), effort_)) {
      readBound();
      for (std::size_t width = 1; !isOver() && width <= kWidest; width *= 8)
        pass(width); // more than one only where an arc leaves room
      return;
    }
    auto nothing = Pattern::of(ground_, {}, kAnyWork, effort_);
    if (!nothing || !bound_.use(*std::move(nothing), effort_))
      return;
    readBound();
    pass(16);
    if (isOver() || !tune(kRounds))
      return;
    pass(16);
    polish();
    prove();
    std::int64_t work = kFirstWork;
    for (std::size_t width = 64; !isOver() && width <= kWidest; width *= 4) {
      if (work <= kMostWork && !widen(work))
        return;
      pass(width);
      polish();
      prove();
      work *= 4;
    }
  }

  // Patterns are for items that meet at few places; where each has its own, prices on items tell more.
  bool placesAreShared() const {
    std::vector<int> starts = ground_.start;
    std::sort(starts.begin(), starts.end());
    const auto distinct = std::unique(starts.begin(), starts.end()) - starts.begin();
    return ground_.closing && ground_.places <= kFewPlaces && 3 * distinct <= 2 * std::ptrdiff_t{ground_.items};
  }

  // With patterns, as long as they can be had. False when the other way is to be tried.
  bool findWithLoops() {
    placePrices_ = placePrices(ground_);
    std::size_t most = 500, width = 16;
    for (; !isOver(); most *= 4, width *= 4) {
      if (most <= kMostMarks && !grow(most))
        return effort_.isOver();
      bounds_.patterns[0] = &*pattern_;
      pass(width);
      if (most < 2000)
        polish();
      if (width > kWidest)
        return true;
    }
    return true;
  }

  // A wider pattern, of at most so many marks: first what moves the body, then what the relaxed order misses.
  bool grow(std::size_t most) {
    std::vector<int> members = pattern_ ? pattern_->members() : movers();
    while (!pattern_ && !effort_.isOver()) {
      pattern_ = PatternBound::of(ground_, placePrices_, members, nullptr, cost_, most, effort_);
      if (members.empty())
        break;
      members.resize(members.size() * 3 / 4);
    }
    if (!pattern_)
      return false;
    members = pattern_->members();
    raise(std::min(pattern_->atOrigin(), cost_));
    while (!pattern_->hasAll() && !isOver()) {
      std::vector<int> missed = pattern_->missedByPlan();
      std::erase_if(missed, [&](int item) { return std::find(members.begin(), members.end(), item) != members.end(); });
      if (missed.empty())
        break;
      std::stable_sort(missed.begin(), missed.end(), [&](int a, int b) { return degreeOf(a) > degreeOf(b); });
      std::optional<PatternBound> wider;
      while (!wider && !missed.empty() && !effort_.isOver()) {
        std::vector<int> more = members;
        more.insert(more.end(), missed.begin(), missed.end());
        wider = PatternBound::of(ground_, placePrices_, more, &*pattern_, cost_, most, effort_);
        if (wider)
          members = std::move(more);
        else
          missed.resize(missed.size() / 2);
      }
      if (!wider)
        break;
      pattern_ = std::move(wider);
      raise(std::min(pattern_->atOrigin(), cost_));
    }
    return true;
  }

  int degreeOf(int item) const { return ground_.pred.count(item) + ground_.succ.count(item); }

  std::vector<int> movers() const {
    std::vector<int> items;
    for (int item = 0; item < ground_.items; ++item)
      if (ground_.start[item] != ground_.end[item])
        items.push_back(item);
    std::stable_sort(items.begin(), items.end(), [&](int a, int b) { return degreeOf(a) > degreeOf(b); });
    if (items.size() > 64)
      items.resize(64);
    return items;
  }

  bool isOver() const { return proven_ || lower_ >= cost_ || effort_.isOver(); }

  void offer(std::vector<int> order, OrderCost cost) {
    if (cost >= cost_)
      return;
    best_ = std::move(order);
    cost_ = cost;
    tell();
  }

  void raise(OrderCost lower) {
    if (lower <= lower_)
      return;
    lower_ = lower;
    proven_ = proven_ || lower >= kFar; // there is no order at all
    tell();
  }

  void tell() const {
    if (limits_.progress)
      limits_.progress({cost_ < kFar ? cost_ : kNoWay, std::min(lower_, cost_), effort_.used()}, best_);
  }

  void readBound() {
    const OrderCost lower = bound_.atOrigin();
    if (lower >= kFar)
      proven_ = true;
    else
      raise(lower);
  }

  // Always the nearest of what may come next. Pins and missing ways may defeat it.
  void firstOrder() {
    std::vector<int> order;
    std::vector<char> done(ground_.items);
    int place = ground_.origin, state = ground_.firstState;
    std::int64_t length = 0;
    for (int slot = 0; slot < ground_.items; ++slot) {
      int nearest = -1;
      OrderCost least = 0;
      for (int item = 0; item < ground_.items; ++item) {
        if (done[item] || slot < ground_.earliest[item] ||
            (ground_.pinnedAt[slot] >= 0 && ground_.pinnedAt[slot] != item))
          continue;
        bool free = true;
        for (int other = 0; other < ground_.items && free; ++other)
          free = done[other] || !ground_.relation.before(other, item);
        const OrderCost cost =
            ground_.way(place, ground_.start[item]) + ground_.extraOf(state, item) + ground_.arcOf(length, item);
        if (free && (nearest < 0 || cost < least)) {
          nearest = item;
          least = cost;
        }
      }
      if (nearest < 0)
        return;
      order.push_back(nearest);
      done[nearest] = 1;
      place = ground_.end[nearest];
      state = ground_.nextState(state, nearest);
      length += ground_.lengthOf(nearest);
    }
    const OrderCost cost = local_.improve(order, effort_);
    offer(std::move(order), cost);
  }

  void polish() {
    if (best_.empty() || isOver())
      return;
    std::vector<int> order = best_;
    const OrderCost cost = local_.improveAgain(order, kDisturbances, effort_);
    offer(std::move(order), cost);
  }

  void pass(std::size_t width) {
    if (isOver())
      return;
    SweepOutcome found = sweep(ground_, bounds_, width, cost_, effort_);
    const bool complete = found.complete;
    if (!complete)
      raise(std::min(found.lower, cost_));
    if (!found.order.empty()) {
      OrderCost cost = found.cost;
      if (!complete)
        cost = local_.improve(found.order, effort_);
      offer(std::move(found.order), cost);
    }
    proven_ = proven_ || complete;
  }

  // By what may directly follow what, once for each better order.
  void prove() {
    if (isOver() || ground_.soft || ground_.items > kMostSuccessors || cost_ >= asked_)
      return;
    if (!successions_)
      successions_.emplace(ground_);
    asked_ = cost_;
    successions_->raise(cost_, effort_);
    raise(successions_->lower());
  }

  bool tune(int rounds) {
    const OrderCost upper = cost_ < kFar ? cost_ : bound_.atOrigin() + bound_.atOrigin() / 10 + 1;
    if (!bound_.tune(upper, rounds, effort_))
      return false;
    readBound();
    return true;
  }

  // Takes into the pattern what the relaxed orders get wrong, as much as the work allows.
  bool widen(std::int64_t work) {
    std::vector<int> ranked(ground_.items);
    std::iota(ranked.begin(), ranked.end(), 0);
    const auto& wrong = bound_.wrong();
    std::stable_sort(ranked.begin(), ranked.end(), [&](int a, int b) { return wrong[a] > wrong[b]; });
    std::optional<Pattern> widest;
    int fits = 0, fails = std::min<int>(ground_.items, 128) + 1;
    for (int members = std::min(8, fails - 1); fits + 1 < fails;) {
      if (effort_.ask())
        return false;
      auto pattern = Pattern::of(ground_, {ranked.begin(), ranked.begin() + members}, work, effort_);
      if (pattern) {
        widest = std::move(pattern);
        fits = members;
        members = fails > ground_.items ? std::min(fails - 1, 2 * members) : (fits + fails) / 2;
        members = std::max(members, fits + 1);
      } else {
        fails = members;
        members = (fits + fails) / 2;
      }
      if (members >= fails)
        break;
    }
    if (!widest)
      return true;
    if (!bound_.use(*std::move(widest), effort_))
      return false;
    readBound();
    return isOver() || tune(kRoundsWidened);
  }

  static constexpr std::int64_t kWholeWork = 3'000'000;
  static constexpr std::int64_t kAnyWork = std::int64_t{1} << 60;
  static constexpr std::int64_t kFirstWork = 2'000'000;
  static constexpr std::int64_t kMostWork = 400'000'000; // about 200 MB
  static constexpr std::size_t kWidest = std::size_t{1} << 20;
  static constexpr int kFewPlaces = 64; // with more, a mark costs too much
  static constexpr std::size_t kMostMarks = 600'000;
  static constexpr int kRounds = 80;
  static constexpr int kRoundsWidened = 15;
  static constexpr int kDisturbances = 100;

  const Groundwork& ground_;
  const OrderLimits& limits_;
  SearchEffort effort_;
  LocalSearch local_;
  PathBound bound_;
  std::vector<OrderCost> placePrices_;
  std::optional<PatternBound> pattern_;
  std::optional<SuccessionBound> successions_;
  OrderCost asked_ = kFar; // the cost that successions_ was last asked of
  Bounds bounds_;
  std::vector<int> best_;
  OrderCost cost_ = kFar, lower_ = 0;
  bool proven_ = false;
};

} // namespace

Result<OrderAnswer, OrderFault> solveOrder(const OrderProblem& problem, const OrderLimits& limits) {
  auto relation = relationOf(problem);
  if (!relation)
    return failure(relation.error());
  const Groundwork ground(problem, *std::move(relation));
  return Search(ground, limits).run();
}

} // namespace matwright
