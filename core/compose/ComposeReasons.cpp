#include "core/compose/ComposeReasons.h"

#include "core/compose/Offer.h"
#include "core/evaluate/Facts.h"
#include "core/evaluate/Group.h"
#include "core/tidy/OrderWishes.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace matwright {
namespace {

template <class Value> bool contains(const std::vector<Value>& values, const Value& value) {
  return std::find(values.begin(), values.end(), value) != values.end();
}

class Telling {
public:
  Telling(const Knowledge& knowledge, const ClassWishes& wishes, std::span<const Person> roster, Date day,
          const ClassPlan& plan)
      : knowledge_(knowledge), wishes_(wishes), plan_(plan), group_(knowledge, plan.people, roster, day),
        people_(group_.ids()), outcome_(outcomeOf(knowledge, group_, plan)),
        facts_(factsOf(knowledge, outcome_.schedule)) {
    findAnswers();
  }

  ComposeReasons of(StepId id) {
    const std::vector<TimedStep>& steps = outcome_.schedule.steps;
    const auto found = std::find_if(steps.begin(), steps.end(), [&](const TimedStep& each) { return each.id == id; });
    if (found == steps.end() || !found->movement)
      std::abort();
    reasons_ = {id, {}};
    tellWishes(*found);
    tellPlace(static_cast<std::size_t>(found - steps.begin()));
    tellOption(*findStep(plan_, id), *found);
    if (reasons_.reasons.empty())
      tell(ComposeReasonKind::nothingElse);
    return std::move(reasons_);
  }

private:
  ComposeReason& tell(ComposeReasonKind kind) {
    ComposeReason& reason = reasons_.reasons.emplace_back();
    reason.kind = kind;
    return reason;
  }

  bool isKnown(const MovementId& id) const {
    return contains(wishes_.known, id) || (wishes_.recentIsKnown && isRecent(id));
  }
  bool isRecent(const MovementId& id) const {
    return std::any_of(wishes_.recent.begin(), wishes_.recent.end(),
                       [&](const RecentClass& recent) { return contains(recent.movements, id); });
  }

  // For each step that answers flexion, the last movement of that; the same way as it is counted.
  void findAnswers() {
    const std::vector<TimedStep>& steps = outcome_.schedule.steps;
    answered_.assign(steps.size(), nullptr);
    std::vector<MovementId> named;
    for (const TimedStep& each : steps)
      if (each.movement && spineTurnOf(*each.movement) == SpineTurn::flexion)
        named.insert(named.end(), each.movement->counters.begin(), each.movement->counters.end());
    int state = 0;
    const Movement* last = nullptr;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      const Movement* movement = steps[i].movement;
      if (!movement)
        continue;
      SpineTurn turn = spineTurnOf(*movement);
      if (turn == SpineTurn::other && contains(named, movement->id))
        turn = SpineTurn::counter;
      if (turn == SpineTurn::counter && state > 0)
        answered_[i] = last;
      state = afterFlexion(state, turn).first;
      if (turn == SpineTurn::flexion)
        last = movement;
    }
  }

  void tellWishes(const TimedStep& timed) {
    const Movement& movement = *timed.movement;
    if (contains(wishes_.include, movement.id))
      tell(ComposeReasonKind::included);
    if (const Movement* needing = isKnown(movement.id) ? nullptr : firstThatNeeds(timed))
      tell(ComposeReasonKind::neededFor).movement = needing->id;
    wishes_.focus.regions.forEach([&](Region region) {
      if (contains(movement.regions, region))
        tell(ComposeReasonKind::focus).region = region;
    });
    wishes_.focus.spine.forEach([&](SpineAction action) {
      if (contains(movement.spine, action))
        tell(ComposeReasonKind::focus).spine = action;
    });
    const auto at = static_cast<std::size_t>(&timed - outcome_.schedule.steps.data());
    wishes_.focus.skills.forEach([&](Feature skill) {
      if (facts_[at].features.contains(skill))
        tell(ComposeReasonKind::focus).skill = skill;
    });
  }

  const Movement* firstThatNeeds(const TimedStep& timed) const {
    const std::vector<TimedStep>& steps = outcome_.schedule.steps;
    for (std::size_t i = static_cast<std::size_t>(&timed - steps.data()) + 1; i < steps.size(); ++i)
      if (steps[i].movement && contains(steps[i].movement->prerequisites, timed.movement->id))
        return steps[i].movement;
    return nullptr;
  }

  void tellPlace(std::size_t at) {
    const std::vector<TimedStep>& steps = outcome_.schedule.steps;
    const TimedStep& timed = steps[at];
    const Movement& movement = *timed.movement;
    if (answered_[at])
      tell(ComposeReasonKind::counters).movement = answered_[at]->id;
    const Region main = movement.regions.front();
    if (std::none_of(steps.begin(), steps.end(), [&](const TimedStep& other) {
          return other.movement && other.movement != &movement && contains(other.movement->regions, main);
        }))
      tell(ComposeReasonKind::onlyOne).region = main;
    if (at > 0 && timed.reachable && timed.way.changes.empty())
      tell(ComposeReasonKind::noChange);
    const Seconds middle = timed.workBegin + timed.work.whole / 2;
    const double wished =
        std::min<double>(hardestOf(wishes_.challenge).value(), wishedEffort(middle, wishes_.length, wishes_.arc));
    if (std::abs(effortOf(movement, timed.option).value() - wished) <= 1)
      tell(ComposeReasonKind::asHard);
    if (!wishes_.recent.empty() && !isRecent(movement.id))
      tell(ComposeReasonKind::notRecent);
  }

  void tellOption(const Step& step, const TimedStep& timed) {
    const Movement& movement = *timed.movement;
    if (timed.option)
      tellWhyNotAsWritten(step, movement, *timed.option);
    if (step.dose != doseOf(movement, timed.option))
      tell(ComposeReasonKind::timeLeft);
  }

  void tellWhyNotAsWritten(const Step& step, const Movement& movement, const Option& option) {
    const PropSet lacking = movement.props.without(wishes_.props);
    lacking.forEach([&](Prop prop) { tell(ComposeReasonKind::propMissing).prop = prop; });
    if (!wishes_.wall && needsWall(movement, nullptr))
      tell(ComposeReasonKind::propMissing);
    if (movement.effort > hardestOf(wishes_.challenge))
      tell(ComposeReasonKind::tooHard);
    ClassPlan asWritten = plan_;
    for (Section& section : asWritten.sections)
      for (Step& each : section.steps)
        if (each.id == step.id)
          each = stepOf(step.id, movement);
    std::optional<Caution> strongest;
    for (const Caution& caution : newCautions(outcome_, outcomeOf(knowledge_, group_, asWritten)))
      if (caution.rule && (!strongest || caution.level > strongest->level))
        strongest = caution;
    if (strongest) {
      ComposeReason& reason = tell(ComposeReasonKind::cautioned);
      reason.rule = strongest->rule;
      if (strongest->person != Finding::kNone)
        reason.person = people_[strongest->person];
    }
    if ((option.kind == OptionKind::easier && wishes_.challenge == Challenge::gentle) ||
        (option.kind == OptionKind::harder && wishes_.challenge == Challenge::strong))
      tell(ComposeReasonKind::challenge);
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  const ClassPlan& plan_;
  Group group_;
  std::vector<PersonId> people_;
  Outcome outcome_;
  std::vector<StepFacts> facts_;
  std::vector<const Movement*> answered_; // by step
  ComposeReasons reasons_;
};

} // namespace

std::vector<ComposeReasons> reasonsFor(const Knowledge& knowledge, const ClassWishes& wishes,
                                       std::span<const Person> roster, Date day, const ClassPlan& plan,
                                       std::span<const StepId> chosen) {
  Telling telling(knowledge, wishes, roster, day, plan);
  std::vector<ComposeReasons> all;
  for (const StepId id : chosen)
    all.push_back(telling.of(id));
  return all;
}

} // namespace matwright
