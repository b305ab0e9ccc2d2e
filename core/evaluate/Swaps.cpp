#include "core/evaluate/Swaps.h"

#include "core/evaluate/Trials.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace matwright {
namespace {

constexpr double kOtherSpine = 0.7;

double weightIn(const Movement& movement, Region region) {
  const auto at = std::find(movement.regions.begin(), movement.regions.end(), region);
  return at == movement.regions.end() ? 0 : at == movement.regions.begin() ? 2 : 1;
}

// The caution as it would still stand at its step, or anywhere when it is about a running sum; null when it is gone.
const Caution* sameIn(const Outcome& outcome, const Caution& caution) {
  const bool runs = isRunning(caution);
  for (const Caution& each : outcome.cautions)
    if (each.kind == caution.kind && each.rule == caution.rule && each.person == caution.person &&
        (runs || each.step == caution.step))
      return &each;
  return nullptr;
}

bool better(const Trials::Attempt& a, const Trials::Attempt& b) {
  const auto key = [](const Trials::Attempt& attempt) {
    const Swap& swap = attempt.swap;
    return std::tuple(!swap.sameMovement, byWeight(attempt.remaining), disturbance(swap), -swap.likeness);
  };
  return key(a) < key(b);
}

} // namespace

double likeness(const Movement& a, const Movement& b) {
  double shared = 0, all = 0;
  for (std::size_t i = 0; i < kWordCount<Region>; ++i) {
    const auto region = static_cast<Region>(i);
    shared += std::min(weightIn(a, region), weightIn(b, region));
    all += std::max(weightIn(a, region), weightIn(b, region));
  }
  if (all == 0)
    return 0;
  const bool sameSpine = !a.spine.empty() && !b.spine.empty() && a.spine.front() == b.spine.front();
  const double efforts = 1 - std::abs(a.effort.value() - b.effort.value()) / 10.0;
  return shared / all * (sameSpine ? 1 : kOtherSpine) * efforts;
}

std::vector<Swap> swapsFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day,
                           const Caution& caution, std::optional<PersonId> person) {
  const Step* step = caution.step ? findStep(plan, *caution.step) : nullptr;
  const Movement* own = step ? knowledge.catalogue.find(step->movement) : nullptr;
  if (!own || (person && caution.person == Finding::kNone))
    return {};
  Trials trials(knowledge, plan, roster, day, step->id, std::move(person),
                [&caution](const Outcome& with, std::span<const Caution> come) {
                  const Caution* still = sameIn(with, caution);
                  return !(still && still->level >= caution.level) && strongestOf(countLevels(come)) < caution.level;
                });
  std::vector<Trials::Attempt> attempts;
  trials.attemptAll(*own, [&](Trials::Attempt&& attempt) { attempts.push_back(std::move(attempt)); });
  for (const Movement& movement : knowledge.catalogue.movements()) {
    if (trials.present(movement) || likeness(*own, movement) < kLike)
      continue;
    if (std::optional<Trials::Attempt> best = trials.best(movement, better))
      attempts.push_back(*std::move(best));
  }
  std::stable_sort(attempts.begin(), attempts.end(), better);
  std::vector<Swap> swaps;
  for (Trials::Attempt& attempt : attempts)
    swaps.push_back(std::move(attempt.swap));
  return swaps;
}

Step swapped(const Step& step, const Swap& swap) {
  Step with = stepOf(step.id, *swap.movement, swap.option ? swap.option->id : OptionId{});
  with.note = step.note;
  if (swap.movement->sides == Sides::each)
    with.onlySide = step.onlySide;
  if (swap.sameMovement) {
    with.variants = step.variants;
    if (!swap.option || !swap.option->dose)
      with.dose = step.dose;
    if (!swap.option || !swap.option->tempo)
      with.tempo = step.tempo;
  }
  return with;
}

Variant variantFor(const PersonId& person, const Swap& swap) {
  return {person, swap.movement->id, swap.option ? swap.option->id : OptionId{}};
}

} // namespace matwright
