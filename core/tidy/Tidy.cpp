#include "core/tidy/Tidy.h"

#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "core/tidy/NearOrder.h"
#include "core/tidy/TidyCosts.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace matwright {
namespace {

Seconds secondsOf(OrderCost cost) { return Seconds(static_cast<double>(cost) / 1000); }

std::optional<Refusal> refusedBy(const ClassPlan& plan, const TidyRequest& request) {
  if (request.section && *request.section >= plan.sections.size())
    return Refusal::noSuchSection;
  for (const auto* steps : {&request.steps, &request.pinned})
    for (StepId step : *steps)
      if (!findStep(plan, step))
        return Refusal::noSuchStep;
  return std::nullopt;
}

class Tidying {
public:
  Tidying(const Knowledge& knowledge, const ClassPlan& plan, const Group& group, const TidyRequest& request,
          const TidyLimits& limits)
      : knowledge_(knowledge), plan_(plan), group_(group), ways_(group.ways()), limits_(limits),
        schedule_(schedule(plan)), items_(itemsOf(knowledge, plan, schedule_, request)) {
    today_.resize(items_.items.size());
    std::iota(today_.begin(), today_.end(), 0);
    if (!today_.empty())
      parts_ = partsOf(plan, schedule_, ways_, items_, request.wishes);
  }

  TidyResult run() {
    result_.plan = plan_;
    result_.before = result_.after = {schedule_.moving, schedule_.changes, wishedIn(today_)};
    result_.lower = result_.before.total();
    if (items_.movable < 2)
      return std::move(result_);
    const std::vector<int> order = search();
    if (order != today_)
      take(order);
    return std::move(result_);
  }

private:
  Schedule schedule(const ClassPlan& plan) const {
    return scheduleOf(knowledge_.catalogue, knowledge_.transitions, ways_, plan);
  }

  Seconds wishedIn(const std::vector<int>& order) const {
    OrderCost cost = 0;
    for (std::size_t i = 1; i < parts_.size(); ++i)
      cost += parts_[i].costOf(order);
    return secondsOf(cost);
  }
  OrderCost costOf(const std::vector<int>& order) const {
    return std::accumulate(parts_.begin(), parts_.end(), OrderCost{},
                           [&](OrderCost sum, const TidyPart& part) { return sum + part.costOf(order); });
  }

  std::optional<OrderAnswer> solved(const OrderProblem& problem) {
    OrderLimits limits;
    limits.nodes = limits_.nodes;
    limits.stop = limits_.stop;
    if (limits_.progress)
      limits.progress = [this](const OrderProgress& progress, const std::vector<int>&) {
        limits_.progress({progress.cost == kNoWay ? std::nullopt : std::optional(told(progress.cost)),
                          told(progress.lower), progress.nodes});
      };
    auto answer = solveOrder(problem, limits);
    if (!answer || answer->status == OrderStatus::infeasible)
      return std::nullopt;
    return *std::move(answer);
  }
  // What an order of this cost totals over the whole class.
  Seconds told(OrderCost cost) const { return result_.before.total() + secondsOf(cost - costOf(today_)); }

  // The order to have, which is that of today where no better one is found; the result gets status and bound.
  std::vector<int> search() {
    OrderProblem problem = problemOf(parts_, items_, true);
    std::optional<OrderAnswer> answer = solved(problem);
    if (!answer) {
      problem = problemOf(parts_, items_, false); // keeps what is right today, so that today's order is one
      answer = solved(problem);
    }
    if (!answer)
      std::abort();
    const auto asItIs = checkOrder(problem, today_);
    const bool found = !answer->order.empty() && (!asItIs || answer->cost < *asItIs);
    const bool proven = answer->status == OrderStatus::optimal;
    result_.lower = told(answer->lower);
    result_.nodes = answer->nodes;
    if (proven)
      result_.status = found ? TidyStatus::shortest : TidyStatus::nothingToDo;
    else
      result_.status = answer->status == OrderStatus::cancelled ? TidyStatus::cancelled : TidyStatus::bounded;
    if (!found)
      return today_;
    if (checkOrder(problem, answer->order) != Result<OrderCost, OrderBreach>(answer->cost))
      std::abort(); // the search does not do what it says
    return nearer(answer->order, [&](const std::vector<int>& order) {
      return !(limits_.stop && limits_.stop()) &&
             checkOrder(problem, order) == Result<OrderCost, OrderBreach>(answer->cost);
    });
  }

  void take(const std::vector<int>& order) {
    std::vector<const Step*> steps;
    forEachStep(plan_, [&](const Step& step) { steps.push_back(&step); });
    std::size_t at = items_.items.front().first;
    std::vector<std::size_t> was(steps.size()); // by place now
    std::iota(was.begin(), was.end(), std::size_t{0});
    for (int item : order)
      for (std::size_t step = items_.items[item].first; step < items_.items[item].end; ++step)
        was[at++] = step;
    at = 0;
    for (Section& section : result_.plan.sections)
      for (Step& step : section.steps)
        step = *steps[was[at++]];
    const Outcome before = outcomeOf(knowledge_, group_, plan_), after = outcomeOf(knowledge_, group_, result_.plan);
    result_.after = {after.schedule.moving, after.schedule.changes, wishedIn(order)};
    result_.gone = countLevels(newCautions(after, before));
    result_.come = countLevels(newCautions(before, after));
    tellMoves(order);
  }

  void tellMoves(const std::vector<int>& order) {
    std::vector<char> fixed;
    for (const TidyItem& item : items_.items)
      fixed.push_back(item.fixed);
    const std::vector<char> staying = stayingIn(order, fixed);
    for (int item : order) {
      if (staying[item])
        continue;
      const std::vector<TidyGain> gains = gainsOf(order, item);
      for (std::size_t step = items_.items[item].first; step < items_.items[item].end; ++step) {
        const StepId id = schedule_.steps[step].id;
        result_.moves.push_back({id, *placeOf(plan_, id), *placeOf(result_.plan, id), gains});
      }
    }
  }

  std::vector<TidyGain> gainsOf(const std::vector<int>& order, int item) const {
    const std::vector<int> back = putBack(order, item);
    std::vector<TidyGain> gains;
    for (const TidyPart& part : parts_)
      if (const OrderCost lost = part.costOf(back) - part.costOf(order);
          lost > 0 && part.reason != TidyReason::withOthers)
        gains.push_back({part.reason, secondsOf(lost)});
    std::stable_sort(gains.begin(), gains.end(),
                     [](const TidyGain& a, const TidyGain& b) { return a.seconds > b.seconds; });
    if (breaks(back, items_.prerequisites) || (breaks(back, items_.mended) && !breaks(order, items_.mended)))
      gains.insert(gains.begin(), {TidyReason::prerequisite, {}});
    if (gains.empty())
      gains.push_back({TidyReason::withOthers, {}});
    return gains;
  }

  // Right behind what it follows today, or in front of its section.
  std::vector<int> putBack(std::vector<int> order, int item) const {
    std::erase(order, item);
    const auto sectionOf = [&](int each) { return items_.items[each].section; };
    auto place = std::find_if(order.begin(), order.end(), [&](int each) { return sectionOf(each) >= sectionOf(item); });
    if (item > 0 && sectionOf(item - 1) == sectionOf(item))
      place = std::find(order.begin(), order.end(), item - 1) + 1;
    order.insert(place, item);
    return order;
  }

  static bool breaks(const std::vector<int>& order, const std::vector<TidyPair>& pairs) {
    const auto place = [&](int item) { return std::find(order.begin(), order.end(), item); };
    return std::any_of(pairs.begin(), pairs.end(),
                       [&](const TidyPair& pair) { return place(pair.first) > place(pair.second); });
  }

  const Knowledge& knowledge_;
  const ClassPlan& plan_;
  const Group& group_;
  const Ways& ways_;
  const TidyLimits& limits_;
  Schedule schedule_; // of today
  TidyItems items_;
  std::vector<int> today_;
  std::vector<TidyPart> parts_;
  TidyResult result_;
};

} // namespace

Result<TidyResult, Refusal> tidied(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                   Date day, const TidyRequest& request, const TidyLimits& limits) {
  if (const auto refused = refusedBy(plan, request))
    return failure(*refused);
  const Group group(knowledge, plan.people, roster, day);
  return Tidying(knowledge, plan, group, request, limits).run();
}

} // namespace matwright
