#include "core/compose/Reasons.h"

#include "core/compose/Offer.h"

#include <algorithm>
#include <unordered_set>

namespace matwright {
namespace {

class Reasoning {
public:
  Reasoning(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group, const ClassPlan& plan,
            std::span<const StepId> chosen, StepId step, std::span<const MovementId> unlike)
      : knowledge_(knowledge), wishes_(wishes), plan_(plan), step_(step), chosen_(chosen.begin(), chosen.end()) {
    ClassPlan kept = plan;
    for (Section& section : kept.sections)
      std::erase_if(section.steps, [&](const Step& each) { return isChosen(each); });
    offer_ = offerFor(knowledge, wishes, group, kept, unlike, {});
  }

  std::optional<Reasons> run() {
    const Step* step = findStep(plan_, step_);
    if (!step)
      return std::nullopt;
    Reasons reasons;
    lay();
    if (!at_) {
      reasons.kept = true;
      return reasons;
    }
    const MovementId& own = step->movement;
    reasons.included = std::find(wishes_.include.begin(), wishes_.include.end(), own) != wishes_.include.end();
    forEachStep(plan_, [&](const Step& each) {
      const Movement* movement = isChosen(each) ? knowledge_.catalogue.find(each.movement) : nullptr;
      if (movement && std::find(movement->prerequisites.begin(), movement->prerequisites.end(), own) !=
                          movement->prerequisites.end())
        reasons.neededBy.push_back(each.movement);
    });
    compare(reasons);
    return reasons;
  }

private:
  bool isChosen(const Step& step) const { return chosen_.contains(step.id); }

  // The class as items of the offer. Where one is not offered as it is, there is nothing to compare.
  void lay() {
    auto kept = offer_.problem.kept.begin();
    for (const Section& section : plan_.sections) {
      auto nextKept = (kept++)->begin();
      for (const Step& step : section.steps) {
        const int item = isChosen(step) ? itemOf(step) : *nextKept++;
        if (item < 0)
          continue;
        if (step.id == step_ && isChosen(step))
          at_ = filling_.items.size();
        filling_.items.push_back(item);
        filling_.kept.push_back(!isChosen(step));
      }
      filling_.ends.push_back(filling_.items.size());
    }
  }

  int itemOf(const Step& step) const {
    const auto& offered = offer_.problem.offered;
    const auto at = std::find_if(offered.begin(), offered.end(), [&](int item) {
      const Offered& choice = offer_.choices[item];
      return choice.movement->id == step.movement && choice.dose == step.dose &&
             (choice.option ? choice.option->id : OptionId{}) == step.option;
    });
    return at == offered.end() ? -1 : *at;
  }

  void compare(Reasons& reasons) {
    const FillProblem& problem = offer_.problem;
    FillScale scale(problem);
    const FillWeight now = scale.weigh(filling_);
    std::optional<FillWeight> best;
    std::unordered_set<int> families, able;
    for (int item : filling_.items)
      families.insert(problem.items[item].family);
    for (int item : problem.offered) {
      if (families.contains(problem.items[item].family))
        continue;
      Filling trial = filling_;
      trial.items[*at_] = item;
      const FillWeight& weight = scale.weigh(trial);
      if (!weight.breach.none())
        continue;
      able.insert(problem.items[item].family);
      if (best && best->cost() <= weight.cost())
        continue;
      best = weight;
      reasons.instead = offer_.choices[item].movement;
      reasons.option = offer_.choices[item].option;
    }
    reasons.others = static_cast<int>(able.size());
    if (!best)
      return;
    const ComposeCost own = costOf(now), other = costOf(*best);
    for (std::size_t i = 0; i < own.parts.size(); ++i)
      if (const Seconds gain = other.parts[i] - own.parts[i]; gain != Seconds{})
        reasons.shares.push_back({static_cast<ComposePart>(i), gain});
    std::stable_sort(reasons.shares.begin(), reasons.shares.end(),
                     [](const ReasonShare& a, const ReasonShare& b) { return a.seconds > b.seconds; });
    reasons.worse = other.total() - own.total();
  }

  const Knowledge& knowledge_;
  const ClassWishes& wishes_;
  const ClassPlan& plan_;
  StepId step_;
  std::unordered_set<StepId> chosen_;
  Offer offer_;
  Filling filling_;
  std::optional<std::size_t> at_; // of the step in the filling
};

} // namespace

std::optional<Reasons> reasonsFor(const Knowledge& knowledge, const ClassWishes& wishes, std::span<const Person> roster,
                                  Date day, const ClassPlan& plan, std::span<const StepId> chosen, StepId step,
                                  std::span<const MovementId> unlike) {
  const Group group(knowledge, wishes.people, roster, day);
  return Reasoning(knowledge, wishes, group, plan, chosen, step, unlike).run();
}

} // namespace matwright
