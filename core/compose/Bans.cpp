#include "core/compose/Bans.h"

#include "core/evaluate/Facts.h"

#include <algorithm>
#include <unordered_set>

namespace matwright {
namespace {

class Suspicion {
public:
  Suspicion(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group, const ClassPlan& kept,
            const ClassPlan& plan)
      : knowledge_(knowledge), kept_(kept), plan_(plan), people_(group.ids()),
        outcome_(outcomeOf(knowledge, group, plan)), facts_(factsOf(knowledge, outcome_.schedule)) {
    for (const MovementId& id : wishes.include)
      require(id);
    for (const Caution& caution : newCautions(outcomeOf(knowledge, group, kept), outcome_))
      if (caution.level == Level::leaveOut && caution.rule)
        ban(caution);
  }

  std::vector<Ban> bans() && { return std::move(bans_); }

private:
  void require(const MovementId& id) {
    const Movement* movement = knowledge_.catalogue.find(id);
    if (movement && required_.insert(id).second)
      for (const MovementId& needed : movement->prerequisites)
        require(needed);
  }

  void ban(const Caution& caution) {
    const Step* most = nullptr;
    for (const Step* step : suspectsOf(caution))
      if (!most || !outweighs(*most, *step))
        most = step;
    if (!most)
      return;
    const Movement* movement = knowledge_.catalogue.find(most->movement);
    const Option* option = findOption(*movement, most->option);
    for (const Dose& dose : dosesNear(doseOf(*movement, option)))
      if (dose.amount >= most->dose.amount)
        bans_.push_back({{movement, option, dose},
                         caution.rule,
                         caution.person == Finding::kNone ? std::nullopt : std::optional(people_[caution.person])});
  }

  // Whether the one is rather to be banned; of equals the later one is.
  bool outweighs(const Step& one, const Step& other) const {
    const bool free = !required_.contains(one.movement), otherFree = !required_.contains(other.movement);
    const auto ways = [&](const Step& step) { return knowledge_.catalogue.find(step.movement)->options.size(); };
    return free != otherFree ? free : !free && ways(one) > ways(other);
  }

  // Chosen steps that have a part in it, in their order.
  std::vector<const Step*> suspectsOf(const Caution& caution) const {
    std::vector<const Step*> suspects;
    const auto suspect = [&](StepId id) {
      if (!findStep(kept_, id))
        suspects.push_back(findStep(plan_, id));
    };
    if (!caution.step)
      return suspects;
    if (caution.earlier)
      suspect(*caution.earlier);
    if (!isRunning(caution)) {
      suspect(*caution.step);
      return suspects;
    }
    const bool changes = caution.rule->threshold && caution.rule->threshold->unit == MeasureUnit::changes;
    for (std::size_t i = 0; i < outcome_.schedule.steps.size(); ++i) {
      const Asked asked = changes ? Asked{facts_[i].wayFeatures, {}, {}, 0} : askedBy(facts_[i]);
      if (met(caution.rule->asks, asked))
        suspect(outcome_.schedule.steps[i].id);
      else if (caution.rule->scope == Scope::stretch)
        suspects.clear();
      if (outcome_.schedule.steps[i].id == *caution.step)
        break;
    }
    return suspects;
  }

  const Knowledge& knowledge_;
  const ClassPlan& kept_;
  const ClassPlan& plan_;
  std::vector<PersonId> people_;
  Outcome outcome_;
  std::vector<StepFacts> facts_; // by step of the schedule
  std::unordered_set<MovementId> required_;
  std::vector<Ban> bans_;
};

} // namespace

std::vector<Ban> bansAfter(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group,
                           const ClassPlan& kept, const ClassPlan& plan) {
  return Suspicion(knowledge, wishes, group, kept, plan).bans();
}

} // namespace matwright
