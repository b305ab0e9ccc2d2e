#include "core/screening/Voices.h"

namespace matwright {
namespace {

// Times pass a threshold only by more than the rounding of their terms.
constexpr double kRounding = 1e-6;

bool isMore(double measured, double amount) { return measured > amount + kRounding; }
bool isLess(double measured, double amount) { return measured < amount - kRounding; }

// What of a demand goes on while people rest before a step. Nobody works then.
Asked resting(const StepFacts& facts) { return {facts.restFeatures, facts.restAt, Effort{}, 0}; }

// What goes on from one step to the next: what lasts in the rest between them, and what both ask without owing it to
// the shape they rest in (a head lifted in two movements in a row).
Asked carriedOver(const StepFacts& before, const StepFacts& after) {
  return {after.restFeatures |
              (before.features.without(before.shapeFeatures) & after.features.without(after.shapeFeatures)),
          after.restAt, std::min(before.effort, after.effort), std::min(before.lever, after.lever)};
}

// One sum in the making: of the whole class, or of a stretch.
class Sum {
public:
  Sum(const Demand& demand, MeasureUnit unit) : demand_(demand), unit_(unit) {}

  // Adds a step that comes next, with the gap before it; false when it does not meet the demand.
  bool add(const StepFacts& facts) {
    if (unit_ == MeasureUnit::seconds)
      if (const auto lasting = met(demand_, resting(facts)))
        count(*lasting, facts.gap.value());
    const auto asked =
        unit_ == MeasureUnit::changes ? met(demand_, {facts.wayFeatures, {}, {}, 0}) : met(demand_, askedBy(facts));
    if (asked)
      count(*asked, amountOf(facts));
    return asked.has_value();
  }
  void restart() {
    amount_ = 0;
    because_ = {};
  }
  double amount() const { return amount_; }
  FeatureSet because() const { return because_; }

private:
  double amountOf(const StepFacts& facts) const {
    switch (unit_) {
    case MeasureUnit::seconds:
      return facts.work.value();
    case MeasureUnit::repetitions:
      return facts.repetitions;
    case MeasureUnit::steps:
    case MeasureUnit::changes:
    case MeasureUnit::percent:
      break;
    }
    return 1;
  }
  void count(FeatureSet because, double amount) {
    amount_ += amount;
    because_ |= because;
  }

  const Demand& demand_;
  MeasureUnit unit_;
  double amount_ = 0;
  FeatureSet because_;
};

// Follows the steps of a class and sums each stretch of those that meet a demand without a break.
class StretchSum {
public:
  StretchSum(const Demand& demand, MeasureUnit unit) : demand_(demand), unit_(unit), sum_(demand, unit) {}

  // True when the stretch before, if there was one, did not go on into this step.
  bool breaksAt(std::size_t step, std::span<const StepFacts> steps) const {
    return !met(demand_, askedBy(steps[step])) ||
           (step > 0 && unit_ == MeasureUnit::seconds && !met(demand_, carriedOver(steps[step - 1], steps[step])));
  }
  // False when the step is of no stretch.
  bool add(std::size_t step, std::span<const StepFacts> steps) {
    if (breaksAt(step, steps))
      sum_.restart();
    return met(demand_, askedBy(steps[step])) && sum_.add(steps[step]);
  }
  const Sum& sum() const { return sum_; }

private:
  const Demand& demand_;
  MeasureUnit unit_;
  Sum sum_;
};

std::vector<Voice> onSteps(const Rule& rule, std::span<const StepFacts> steps) {
  std::vector<Voice> voices;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const bool onWay = rule.scope == Scope::way;
    const auto asked = met(rule.asks, onWay ? Asked{steps[i].wayFeatures, {}, {}, 0} : askedBy(steps[i]));
    if (!asked)
      continue;
    const double measured = rule.threshold ? steps[i].oneSide.value() : 0;
    if (!rule.threshold || isMore(measured, rule.threshold->amount))
      voices.push_back({i, *asked, measured, Finding::kNone});
  }
  return voices;
}

std::vector<Voice> onTotal(const Rule& rule, const Threshold& over, std::span<const StepFacts> steps) {
  Sum sum(rule.asks, over.unit);
  std::size_t passedAt = Finding::kNone;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    sum.add(steps[i]);
    if (passedAt == Finding::kNone && isMore(sum.amount(), over.amount))
      passedAt = i;
  }
  if (passedAt == Finding::kNone)
    return {};
  return {{passedAt, sum.because(), sum.amount(), Finding::kNone}};
}

std::vector<Voice> onStretches(const Rule& rule, const Threshold& over, std::span<const StepFacts> steps) {
  std::vector<Voice> voices;
  StretchSum stretch(rule.asks, over.unit);
  bool speaking = false; // in this stretch
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (stretch.breaksAt(i, steps))
      speaking = false;
    if (!stretch.add(i, steps))
      continue;
    const Sum& sum = stretch.sum();
    if (!speaking && isMore(sum.amount(), over.amount)) {
      voices.push_back({i, {}, 0, Finding::kNone});
      speaking = true;
    }
    if (speaking) {
      voices.back().because = sum.because();
      voices.back().measured = sum.amount();
    }
  }
  return voices;
}

// Early and late: how far a step is from the start or the end of the class.
std::vector<Voice> nearTheEdge(const Rule& rule, const Threshold& within, std::span<const StepFacts> steps) {
  std::vector<Voice> voices;
  const Seconds length = steps.empty() ? Seconds{} : workEnd(steps.back());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto asked = met(rule.asks, askedBy(steps[i]));
    if (!asked)
      continue;
    const Seconds away = rule.scope == Scope::early ? steps[i].workBegin : length - workEnd(steps[i]);
    const double measured = within.unit != MeasureUnit::percent ? away.value()
                            : length > Seconds{}                ? away / length * 100
                                                                : 0;
    if (isLess(measured, within.amount))
      voices.push_back({i, *asked, measured, Finding::kNone});
  }
  return voices;
}

std::vector<Voice> onOrder(const Rule& rule, const Threshold& between, const Earlier& after,
                           std::span<const StepFacts> steps) {
  std::vector<Voice> voices;
  StretchSum before(after.demand, MeasureUnit::seconds);
  std::size_t last = Finding::kNone; // the last step that meets `after`
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (const auto asked = last == Finding::kNone ? std::nullopt : met(rule.asks, askedBy(steps[i]))) {
      const double measured = between.unit == MeasureUnit::steps ? static_cast<double>(i - last - 1)
                                                                 : (steps[i].workBegin - workEnd(steps[last])).value();
      if (isLess(measured, between.amount))
        voices.push_back({i, *asked, measured, last});
    }
    if (before.add(i, steps) && isMore(before.sum().amount(), after.lasting.value()))
      last = i;
  }
  return voices;
}

std::vector<Voice> onWhatIsMissing(const Rule& rule, std::span<const StepFacts> steps) {
  if (steps.empty())
    return {};
  for (const StepFacts& facts : steps)
    if (met(rule.asks, askedBy(facts)))
      return {};
  return {Voice{}};
}

} // namespace

std::vector<Voice> voicesOf(const Rule& rule, std::span<const StepFacts> steps) {
  const Threshold threshold = rule.threshold.value_or(Threshold{});
  switch (rule.scope) {
  case Scope::step:
  case Scope::way:
    return onSteps(rule, steps);
  case Scope::total:
    return onTotal(rule, threshold, steps);
  case Scope::stretch:
    return onStretches(rule, threshold, steps);
  case Scope::early:
  case Scope::late:
    return nearTheEdge(rule, threshold, steps);
  case Scope::order:
    return onOrder(rule, threshold, rule.after.value_or(Earlier{}), steps);
  case Scope::missing:
    return onWhatIsMissing(rule, steps);
  case Scope::wholeClass:
    break;
  }
  return {Voice{}};
}

} // namespace matwright
