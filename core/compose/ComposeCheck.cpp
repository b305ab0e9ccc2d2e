#include "core/compose/ComposeCheck.h"

#include "core/compose/Offer.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>
#include <unordered_set>

namespace matwright {
namespace {

bool differs(Seconds a, Seconds b, Seconds by) { return std::abs((a - b).value()) > by.value(); }

class Checking {
public:
  Checking(const Knowledge& knowledge, const ClassWishes& wishes, const ClassPlan& kept, const ClassPlan& plan)
      : knowledge_(knowledge), wishes_(wishes), kept_(kept), plan_(plan) {
    forEachStep(kept, [&](const Step& step) { isKept_.insert(step.id); });
  }

  std::vector<ComposeBreachAt> run(std::span<const Person> roster, Date day) {
    if (plan_.sections.size() != wishes_.sections.size() || kept_.sections.size() != wishes_.sections.size()) {
      found(ComposeBreach::sections);
      return std::move(breaches_);
    }
    const Evaluation evaluation = evaluate(knowledge_, plan_, roster, day);
    ClassPlan before = kept_;
    before.people = plan_.people;
    before.pace = plan_.pace;
    checkTimes(evaluation.schedule);
    checkKept();
    checkMovements();
    checkOrder();
    checkWays(evaluation.schedule);
    checkCautions(evaluation, evaluate(knowledge_, before, roster, day));
    return std::move(breaches_);
  }

private:
  void found(ComposeBreach breach, std::optional<StepId> step = {}) { breaches_.push_back({breach, step}); }
  bool isChosen(StepId id) const { return !isKept_.contains(id); }
  template <class Visit> void forEachChosen(Visit visit) const {
    forEachStep(plan_, [&](const Step& step) {
      if (isChosen(step.id))
        visit(step);
    });
  }

  void checkTimes(const Schedule& schedule) {
    if (differs(schedule.length, wishes_.length, kLengthTolerance))
      found(ComposeBreach::length);
    for (std::size_t i = 0; i < wishes_.sections.size(); ++i) {
      const Seconds end = i + 1 < wishes_.sections.size() ? schedule.sectionBegin[i + 1] : schedule.length;
      const Seconds wished = wishes_.sections[i].length;
      if (wished > Seconds{} && differs(end - schedule.sectionBegin[i], wished, kSectionTolerance))
        found(ComposeBreach::sections);
    }
  }

  void checkKept() {
    for (std::size_t i = 0; i < kept_.sections.size(); ++i) {
      std::vector<Step> steps = plan_.sections[i].steps;
      std::erase_if(steps, [&](const Step& step) { return isChosen(step.id); });
      if (steps != kept_.sections[i].steps)
        found(ComposeBreach::keptChanged);
    }
  }

  void checkMovements() {
    std::unordered_map<MovementId, int> times;
    forEachStep(plan_, [&](const Step& step) { ++times[step.movement]; });
    for (const MovementId& id : wishes_.include)
      if (!times.contains(id))
        found(ComposeBreach::notIncluded);
    forEachChosen([&](const Step& step) {
      if (times[step.movement] > 1)
        found(ComposeBreach::repeated, step.id);
      if (std::find(wishes_.leaveOut.begin(), wishes_.leaveOut.end(), step.movement) != wishes_.leaveOut.end())
        found(ComposeBreach::leftOut, step.id);
      if (step.onlySide)
        found(ComposeBreach::oneSide, step.id);
      checkChoice(step);
    });
  }

  void checkChoice(const Step& step) {
    const Movement* movement = knowledge_.catalogue.find(step.movement);
    const Option* option = movement ? findOption(*movement, step.option) : nullptr;
    if (!movement || (!option && !step.option.empty()) || !isWellFormed(step.dose) ||
        step.dose.unit != doseOf(*movement, option).unit || step.tempo != tempoOf(*movement, option)) {
      found(ComposeBreach::unknown, step.id);
      return;
    }
    if (effortOf(*movement, option) > hardestOf(wishes_.challenge))
      found(ComposeBreach::tooHard, step.id);
    if (!wishes_.props.containsAll(propsOf(*movement, option)) || (!wishes_.wall && needsWall(*movement, option)))
      found(ComposeBreach::propMissing, step.id);
  }

  // Of a chosen movement all that it needs comes before it; what is chosen comes before what is kept and needs it.
  void checkOrder() {
    std::unordered_set<MovementId> known(wishes_.known.begin(), wishes_.known.end());
    if (wishes_.recentIsKnown)
      for (const RecentClass& recent : wishes_.recent)
        known.insert(recent.movements.begin(), recent.movements.end());
    std::unordered_map<MovementId, std::pair<int, StepId>> first;
    int at = 0;
    forEachStep(plan_, [&](const Step& step) { first.try_emplace(step.movement, at++, step.id); });
    for (const auto& [id, place] : first) {
      const Movement* movement = knowledge_.catalogue.find(id);
      if (!movement)
        continue;
      for (const MovementId& needed : movement->prerequisites) {
        const auto there = first.find(needed);
        if (there == first.end()
                ? isChosen(place.second) && !known.contains(needed)
                : there->second.first > place.first && (isChosen(place.second) || isChosen(there->second.second)))
          found(ComposeBreach::prerequisite, place.second);
      }
    }
  }

  void checkWays(const Schedule& schedule) {
    for (std::size_t i = 0; i < schedule.steps.size(); ++i) {
      const bool into = isChosen(schedule.steps[i].id), from = i > 0 && isChosen(schedule.steps[i - 1].id);
      if (!schedule.steps[i].reachable && (into || from))
        found(ComposeBreach::noWay, schedule.steps[i].id);
    }
  }

  void checkCautions(const Evaluation& evaluation, const Evaluation& before) {
    const auto wasThere = [&](const Caution& caution) {
      return std::any_of(before.cautions.begin(), before.cautions.end(), [&](const Caution& each) {
        return each.level == Level::leaveOut && each.rule == caution.rule && each.person == caution.person &&
               (isRunning(caution) || each.step == caution.step);
      });
    };
    for (const Caution& caution : evaluation.cautions)
      if (caution.level == Level::leaveOut && !wasThere(caution))
        found(ComposeBreach::caution, caution.step);
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  const ClassPlan& kept_;
  const ClassPlan& plan_;
  std::unordered_set<StepId> isKept_;
  std::vector<ComposeBreachAt> breaches_;
};

} // namespace

std::vector<ComposeBreachAt> breachesOf(const Knowledge& knowledge, const ClassWishes& wishes,
                                        std::span<const Person> roster, Date day, const ClassPlan& kept,
                                        const ClassPlan& plan) {
  return Checking(knowledge, wishes, kept, plan).run(roster, day);
}

} // namespace matwright
