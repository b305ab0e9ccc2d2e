#include "core/evaluate/Trials.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>

namespace matwright {
namespace {

constexpr Seconds kUnlike{100}; // for what is not alike at all

// What would stand unprepared with one movement in the place of another: only what is prepared today, or not there.
class Preparing {
public:
  Preparing(const Catalogue& catalogue, const std::vector<TimedStep>& steps, std::size_t place)
      : catalogue_(catalogue), place_(place) {
    for (std::size_t i = 0; i < steps.size(); ++i)
      if (const Movement* movement = steps[i].movement; movement && i != place)
        firstElsewhere_.try_emplace(movement, i);
    for (const auto& [movement, first] : firstElsewhere_)
      inOrder_.emplace(first, movement);
    if (const Movement* own = steps[place].movement)
      addLost(*own);
  }

  std::vector<Unprepared> with(const Movement& movement) const {
    std::vector<Unprepared> all = lost_;
    for (const auto& [first, other] : inOrder_)
      if (first < place_ && needs(*other, movement))
        all.push_back({other, &movement});
    for (const MovementId& id : movement.prerequisites) {
      const Movement* prerequisite = catalogue_.find(id);
      const auto at = firstElsewhere_.find(prerequisite);
      if (at != firstElsewhere_.end() && at->second > place_)
        all.push_back({&movement, prerequisite});
    }
    return all;
  }

private:
  static bool needs(const Movement& movement, const Movement& prerequisite) {
    return std::find(movement.prerequisites.begin(), movement.prerequisites.end(), prerequisite.id) !=
           movement.prerequisites.end();
  }
  // What is prepared today by the step alone.
  void addLost(const Movement& own) {
    const auto next = firstElsewhere_.find(&own);
    for (const auto& [first, other] : inOrder_)
      if (first > place_ && needs(*other, own) && (next == firstElsewhere_.end() || next->second > first))
        lost_.push_back({other, &own});
  }

  const Catalogue& catalogue_;
  std::size_t place_;
  std::unordered_map<const Movement*, std::size_t> firstElsewhere_;
  std::map<std::size_t, const Movement*> inOrder_; // those elsewhere, by where they come first
  std::vector<Unprepared> lost_;
};

// 0 for like purpose, then more the less alike.
int unlikeness(double likeness) { return likeness >= kLike ? 0 : 10 - static_cast<int>(likeness * 10); }

bool better(const Trials::Attempt& a, const Trials::Attempt& b) {
  const auto key = [](const Trials::Attempt& attempt) {
    return std::tuple(byWeight(attempt.remaining), disturbance(attempt.swap) + kUnlike * (1 - attempt.swap.likeness));
  };
  return key(a) < key(b);
}

bool maySayAskFirst(const Outcome& outcome, StepId step) {
  return std::any_of(outcome.cautions.begin(), outcome.cautions.end(),
                     [&](const Caution& each) { return each.step == step && each.level >= Level::askFirst; });
}

} // namespace

std::vector<Swap> replacementsFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                  Date day, StepId step, std::size_t most) {
  if (!findStep(plan, step))
    return {};
  Level tooStrong = Level::askFirst;
  Trials trials(knowledge, plan, roster, day, step, std::nullopt,
                [&tooStrong](const Outcome&, std::span<const Caution> come) {
                  return strongestOf(countLevels(come)) < tooStrong;
                });
  if (maySayAskFirst(trials.without(), step))
    tooStrong = Level::leaveOut;

  const std::vector<TimedStep>& steps = trials.without().schedule.steps;
  const auto at = std::find_if(steps.begin(), steps.end(), [&](const TimedStep& each) { return each.id == step; });
  const Preparing preparing(knowledge.catalogue, steps, static_cast<std::size_t>(at - steps.begin()));

  // What is known of a movement without trying it comes first, so that no more are tried than are needed.
  struct Waiting {
    const Movement* movement;
    std::vector<Unprepared> unprepared;
  };
  std::map<std::pair<std::size_t, int>, std::vector<Waiting>> ranks;
  for (const Movement& movement : knowledge.catalogue.movements())
    if (!trials.present(movement)) {
      std::vector<Unprepared> unprepared = preparing.with(movement);
      const int unlike = unlikeness(trials.own() ? likeness(*trials.own(), movement) : 0);
      ranks[{unprepared.size(), unlike}].push_back({&movement, std::move(unprepared)});
    }
  std::vector<Swap> swaps;
  for (auto& [rank, waiting] : ranks) {
    std::vector<Trials::Attempt> attempts;
    for (Waiting& each : waiting)
      if (std::optional<Trials::Attempt> best = trials.best(*each.movement, better)) {
        best->swap.unprepared = std::move(each.unprepared);
        attempts.push_back(*std::move(best));
      }
    std::stable_sort(attempts.begin(), attempts.end(), better);
    for (Trials::Attempt& attempt : attempts) {
      if (swaps.size() == most)
        return swaps;
      swaps.push_back(std::move(attempt.swap));
    }
  }
  return swaps;
}

} // namespace matwright
