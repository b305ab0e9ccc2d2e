#include "core/evaluate/Schedule.h"

#include "core/base/Text.h"
#include "core/evaluate/Spread.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr double kRepetitionVariation = 0.208;
constexpr double kWayVariation = 0.25;
constexpr double kCueVariation = 0.15;
constexpr double kDayVariation = 0.04;
constexpr double kLikely = 1.2815515655446004; // standard deviations either way that hold the middle 80 %

// Lays the steps of a class one after another.
class Layout {
public:
  Layout(const Catalogue& catalogue, const TransitionGraph& graph, const Ways& ways, const Pace& pace)
      : catalogue_(catalogue), graph_(graph), ways_(ways), pace_(pace) {}

  TimedStep next(const Step& step, std::size_t section) {
    TimedStep timed;
    timed.id = step.id;
    timed.section = section;
    timed.begin = at_;
    timed.movement = catalogue_.find(step.movement);
    if (timed.movement)
      settle(timed, step);
    else
      timed.start = timed.end = position_;
    const Sides sides = timed.movement ? timed.movement->sides : Sides::together;
    timed.work = workOf(step.dose, step.tempo, sides, step.onlySide);
    timed.changes = (timed.way.changes.empty() ? 0 : 1) + (timed.turn.changes.empty() ? 0 : 1);
    timed.moving = timed.way.seconds * pace_.mobility;
    timed.turning = timed.turn.seconds * pace_.mobility;
    timed.gap = std::max(timed.moving, timed.cue) + pace_.settle;
    timed.workBegin = timed.begin + timed.gap;
    timed.finish = timed.workBegin + timed.work.whole + timed.turning;
    at_ = timed.finish;
    position_ = timed.end;
    before_ = &step.movement;
    return timed;
  }

private:
  // Positions, ways and cue of a movement that is in the catalogue.
  void settle(TimedStep& timed, const Step& step) {
    const Movement& movement = *timed.movement;
    timed.option = findOption(movement, step.option);
    const bool sided = movement.sides == Sides::each;
    const bool rightFirst = sided && step.onlySide == Side::right;
    const bool rightLast = sided && step.onlySide != Side::left;
    timed.start = rightFirst ? graph_.mirrored(movement.start) : movement.start;
    timed.end = rightLast ? graph_.mirrored(movement.end) : movement.end;
    if (!position_.empty())
      take(timed.way, position_, timed.start, timed);
    if (sided && !step.onlySide)
      take(timed.turn, movement.end, graph_.mirrored(movement.start), timed);
    timed.cue = cueOf(movement, pace_);
    if (before_ && *before_ == movement.id)
      timed.cue = timed.cue / 2;
  }
  void take(Way& way, const PositionId& from, const PositionId& to, TimedStep& timed) const {
    if (auto found = ways_.between(from, to))
      way = *std::move(found);
    else
      timed.reachable = false;
  }

  const Catalogue& catalogue_;
  const TransitionGraph& graph_;
  const Ways& ways_;
  const Pace& pace_;
  Seconds at_;
  PositionId position_;                // where people are; empty before anything says so
  const MovementId* before_ = nullptr; // of the step before
};

Spread spreadOf(const TimedStep& step, Seconds settle) {
  Spread whole = greaterOf(spreadOf(step.moving, kWayVariation), spreadOf(step.cue, kCueVariation));
  whole.mean += settle.value();
  if (step.work.repetitions > 0)
    whole = whole + spreadOf(step.work.whole, kRepetitionVariation / std::sqrt(step.work.repetitions));
  return whole + spreadOf(step.turning, kWayVariation);
}

} // namespace

Seconds cueOf(const Movement& movement, const Pace& pace) {
  return minutes(countWords(movement.setUp) / pace.wordsPerMinute);
}

Schedule scheduleOf(const Catalogue& catalogue, const TransitionGraph& graph, const Ways& ways, const ClassPlan& plan) {
  Schedule schedule;
  schedule.steps.reserve(countSteps(plan));
  schedule.sectionBegin.reserve(plan.sections.size());
  Layout layout(catalogue, graph, ways, plan.pace);
  Spread total;
  for (std::size_t section = 0; section < plan.sections.size(); ++section) {
    schedule.sectionBegin.push_back(schedule.length);
    for (const Step& step : plan.sections[section].steps) {
      const TimedStep& timed = schedule.steps.emplace_back(layout.next(step, section));
      schedule.length = timed.finish;
      schedule.changes += timed.changes;
      schedule.moving += timed.moving + timed.turning;
      schedule.working += timed.work.whole;
      total = total + spreadOf(timed, plan.pace.settle);
    }
  }
  total = scaled(total, kDayVariation);
  schedule.deviation = std::sqrt(total.variance);
  schedule.likelyFrom = Seconds(total.mean - kLikely * schedule.deviation);
  schedule.likelyTo = Seconds(total.mean + kLikely * schedule.deviation);
  const double spare = plan.target.value() - total.mean;
  if (schedule.deviation > 0)
    schedule.chanceInTime = normalChance(spare / schedule.deviation);
  else
    schedule.chanceInTime = spare >= 0 ? 1 : 0;
  return schedule;
}

} // namespace matwright
