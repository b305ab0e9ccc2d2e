#include "core/tidy/TidyCosts.h"

#include "core/evaluate/Balance.h"
#include "core/order/OrderCheck.h"
#include "core/tidy/OrderWishes.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <unordered_map>
#include <unordered_set>

namespace matwright {
namespace {

constexpr OrderCost kUncharted = 600'000;
constexpr int kSlices = 32;

OrderCost milliseconds(Seconds seconds) { return std::llround(seconds.value() * 1000); }

// What stands between any two positions of the class.
struct WayCosts {
  std::vector<OrderCost> moving, uncharted, rises;
};

class Parts {
public:
  Parts(const ClassPlan& plan, const Schedule& schedule, const TidyItems& items)
      : plan_(plan), schedule_(schedule), items_(items), count_(static_cast<int>(items.items.size())) {
    for (const TidyItem& item : items.items)
      bare_.items.push_back({placeOf(schedule.steps[item.first].start), placeOf(schedule.steps[item.end - 1].end)});
    if (const std::size_t first = items.items.front().first; first > 0)
      if (const PositionId& from = schedule.steps[first - 1].end; !from.empty())
        bare_.origin = placeOf(from);
    bare_.places = static_cast<int>(positions_.size());
    bare_.ways.assign(positions_.size() * positions_.size(), 0);
  }

  WayCosts waysBy(const Ways& ways) const {
    WayCosts costs;
    for (const PositionId* from : positions_)
      for (const PositionId* to : positions_) {
        const auto way = ways.between(*from, *to);
        costs.moving.push_back(way ? milliseconds(way->seconds * plan_.pace.mobility) : 0);
        costs.uncharted.push_back(way ? 0 : kUncharted);
        costs.rises.push_back(way ? kRiseCost * risesOn(*way) : 0);
      }
    return costs;
  }
  OrderProblem withWays(std::vector<OrderCost> costs) const {
    OrderProblem problem = bare_;
    problem.ways = std::move(costs);
    return problem;
  }

  // States: those of afterFlexion().
  OrderProblem counterMovements() const {
    std::unordered_set<MovementId> counters;
    for (const TimedStep& step : schedule_.steps)
      if (step.movement && spineTurnOf(*step.movement) == SpineTurn::flexion)
        counters.insert(step.movement->counters.begin(), step.movement->counters.end());
    return withMachine(kFlexionStates, 0, [&](int state, const Movement* movement) -> std::pair<int, OrderCost> {
      SpineTurn turn = movement ? spineTurnOf(*movement) : SpineTurn::other;
      if (turn == SpineTurn::other && movement && counters.contains(movement->id))
        turn = SpineTurn::counter;
      const auto [next, unanswered] = afterFlexion(state, turn);
      return {next, unanswered ? kNoCounterCost : 0};
    });
  }

  // States: the main region of the movement before; one more where there is none.
  OrderProblem regions() const {
    constexpr int none = static_cast<int>(kWordCount<Region>);
    return withMachine(none + 1, none, [](int state, const Movement* movement) -> std::pair<int, OrderCost> {
      const int region = movement ? static_cast<int>(movement->regions.front()) : none;
      return {region, region == state && region != none ? kSameRegionCost : 0};
    });
  }

  OrderProblem arc() const {
    OrderProblem problem = bare_;
    OrderArc& arc = problem.arc;
    std::int64_t sum = 0;
    for (const TidyItem& item : items_.items) {
      const Seconds taken = schedule_.steps[item.end - 1].finish - schedule_.steps[item.first].begin;
      arc.lengths.push_back(milliseconds(taken));
      sum += arc.lengths.back();
    }
    arc.slices = kSlices;
    arc.sliceLength = std::max<std::int64_t>(1, (sum + kSlices - 1) / kSlices);
    const Seconds begin = schedule_.steps[items_.items.front().first].begin;
    for (int item = 0; item < count_; ++item)
      for (int slice = 0; slice < kSlices; ++slice) {
        const double middle = (slice + 0.5) * static_cast<double>(arc.sliceLength) + arc.lengths[item] / 2.0;
        arc.extra.push_back(offArc(items_.items[item], begin + Seconds(middle / 1000)));
      }
    return problem;
  }

private:
  int placeOf(const PositionId& position) {
    const auto [at, isNew] = place_.try_emplace(position, static_cast<int>(positions_.size()));
    if (isNew)
      positions_.push_back(&at->first);
    return at->second;
  }

  // A series counts as its first step. The machine begins as what comes before leaves it.
  template <class Machine> OrderProblem withMachine(int states, int first, Machine machine) const {
    OrderProblem problem = bare_;
    const std::size_t begin = items_.items.front().first;
    for (std::size_t step = 0; step < begin; ++step)
      if (step == 0 || schedule_.steps[step].movement != schedule_.steps[step - 1].movement)
        first = machine(first, schedule_.steps[step].movement).first;
    problem.automaton.states = states;
    problem.automaton.first = first;
    for (int state = 0; state < states; ++state)
      for (const TidyItem& item : items_.items) {
        const auto [next, extra] = machine(state, schedule_.steps[item.first].movement);
        problem.automaton.next.push_back(next);
        problem.automaton.extra.push_back(extra);
      }
    return problem;
  }

  OrderCost offArc(const TidyItem& item, Seconds middle) const {
    const OrderCost wished = std::llround(100 * wishedEffort(std::min(middle, schedule_.length), schedule_.length));
    OrderCost off = 0;
    for (std::size_t i = item.first; i < item.end; ++i)
      if (const TimedStep& step = schedule_.steps[i]; step.movement)
        off += offArcCost(effortOf(*step.movement, step.option).value() * 100, wished, milliseconds(step.work.whole));
    return off;
  }

  const ClassPlan& plan_;
  const Schedule& schedule_;
  const TidyItems& items_;
  int count_;
  OrderProblem bare_; // items and places, and no cost
  std::unordered_map<PositionId, int> place_;
  std::vector<const PositionId*> positions_; // by place
};

void add(std::vector<OrderCost>& to, const std::vector<OrderCost>& costs) {
  for (std::size_t i = 0; i < to.size(); ++i)
    to[i] += costs[i];
}

} // namespace

OrderCost TidyPart::costOf(const std::vector<int>& order) const {
  const auto cost = checkOrder(problem, order);
  if (!cost)
    std::abort(); // it keeps nothing that an order could break
  return *cost;
}

std::vector<TidyPart> partsOf(const ClassPlan& plan, const Schedule& schedule, const Ways& ways, const TidyItems& items,
                              const TidyWishes& wishes) {
  const Parts all(plan, schedule, items);
  WayCosts costs = all.waysBy(ways);
  std::vector<TidyPart> parts;
  parts.push_back({TidyReason::shorterWay, all.withWays(std::move(costs.moving))});
  parts.push_back({TidyReason::withOthers, all.withWays(std::move(costs.uncharted))});
  if (wishes.fewerRises)
    parts.push_back({TidyReason::fewerRises, all.withWays(std::move(costs.rises))});
  if (wishes.counterMovement)
    parts.push_back({TidyReason::counterMovement, all.counterMovements()});
  if (wishes.otherRegion)
    parts.push_back({TidyReason::otherRegion, all.regions()});
  if (wishes.wishedArc)
    parts.push_back({TidyReason::wishedArc, all.arc()});
  return parts;
}

OrderProblem problemOf(const std::vector<TidyPart>& parts, const TidyItems& items, bool mending) {
  OrderProblem problem = parts.front().problem;
  const int count = static_cast<int>(items.items.size());
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const OrderProblem& part = parts[i].problem;
    add(problem.ways, part.ways);
    if (!part.automaton.next.empty())
      problem.automaton =
          problem.automaton.next.empty() ? part.automaton : combined(problem.automaton, part.automaton, count);
    if (!part.arc.lengths.empty())
      problem.arc = part.arc;
  }
  for (int item = 0; item < count; ++item) {
    problem.sections.push_back(static_cast<int>(items.items[item].section));
    if (items.items[item].fixed && !(items.closed && item == count - 1))
      problem.pinned.emplace_back(item, item);
  }
  if (items.closed)
    problem.last = count - 1;
  for (const auto* pairs : {&items.prerequisites, &items.warmFirst})
    problem.before.insert(problem.before.end(), pairs->begin(), pairs->end());
  if (mending)
    problem.before.insert(problem.before.end(), items.mended.begin(), items.mended.end());
  return problem;
}

} // namespace matwright
