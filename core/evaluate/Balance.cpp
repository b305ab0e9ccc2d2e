#include "core/evaluate/Balance.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

void give(Share& share, Seconds time, Effort effort) {
  share.time += time;
  share.effortSeconds += time.value() * effort.value();
}

// The whole to the first named, half to each further one.
template <class Name, class Shares>
void shareOut(const std::vector<Name>& names, Shares& shares, Seconds time, Effort effort) {
  for (std::size_t i = 0; i < names.size(); ++i)
    give(shares[static_cast<std::size_t>(names[i])], i == 0 ? time : time / 2, effort);
}

void addElevations(const TransitionGraph& graph, const TimedStep& step, Effort effort, Balance& balance) {
  const Position* start = graph.find(step.start);
  const Position* end = graph.find(step.end);
  if (!start || !end)
    return;
  for (const Position* position : {start, end})
    give(balance.elevations[static_cast<std::size_t>(position->elevation)], step.work.whole / 2, effort);
}

void addSpans(const TimedStep& step, std::size_t index, Effort effort, Balance& balance) {
  if (step.turning > Seconds{}) {
    const Seconds firstEnds = step.workBegin + step.work.left;
    balance.effort.push_back({step.workBegin, firstEnds, effort, index});
    balance.effort.push_back({firstEnds + step.turning, step.finish, effort, index});
  } else {
    balance.effort.push_back({step.workBegin, step.finish, effort, index});
  }
}

} // namespace

bool sidesMatch(const Balance& balance) { return std::abs((balance.left - balance.right).value()) < 1; }

Balance balanceOf(const TransitionGraph& graph, const Schedule& schedule) {
  Balance balance;
  balance.effort.reserve(schedule.steps.size());
  double effortSeconds = 0;
  for (std::size_t i = 0; i < schedule.steps.size(); ++i) {
    const TimedStep& step = schedule.steps[i];
    const Effort effort = step.movement ? effortOf(*step.movement, step.option) : Effort{};
    addElevations(graph, step, effort, balance);
    if (!step.movement)
      continue;
    shareOut(step.movement->regions, balance.regions, step.work.whole, effort);
    shareOut(step.movement->spine, balance.spine, step.work.whole, effort);
    if (step.movement->sides != Sides::together) {
      balance.left += step.work.left;
      balance.right += step.work.right;
    }
    addSpans(step, i, effort, balance);
    effortSeconds += step.work.whole.value() * effort.value();
  }
  if (schedule.length > Seconds{})
    balance.meanEffort = effortSeconds / schedule.length.value();
  return balance;
}

double wishedEffort(Seconds at, Seconds length, const EffortArc& arc) {
  return effortAt(arc, length > Seconds{} ? std::clamp(at / length, 0.0, 1.0) : 0);
}

} // namespace matwright
