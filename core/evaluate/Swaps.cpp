#include "core/evaluate/Swaps.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <tuple>
#include <unordered_set>

namespace matwright {
namespace {

constexpr double kOtherSpine = 0.7;
constexpr Seconds kFetching{20};

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

Seconds distance(const Share& a, const Share& b) { return Seconds(std::abs((a.time - b.time).value())); }

Seconds shiftBetween(const Balance& a, const Balance& b) {
  Seconds sum;
  for (std::size_t i = 0; i < a.regions.size(); ++i)
    sum += distance(a.regions[i], b.regions[i]);
  return sum * 0.5;
}

PropSet propsIn(const Catalogue& catalogue, const ClassPlan& plan, StepId without) {
  PropSet props;
  forEachStep(plan, [&](const Step& step) {
    if (const Movement* movement = step.id == without ? nullptr : catalogue.find(step.movement))
      props |= propsOf(*movement, findOption(*movement, step.option));
  });
  return props;
}

// Tries one thing after the other in the place of the step that a caution is on.
class Trials {
public:
  Trials(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day,
         const Caution& caution, std::optional<PersonId> person)
      : knowledge_(knowledge), plan_(plan), with_(plan), group_(knowledge, plan.people, roster, day), caution_(caution),
        person_(std::move(person)), step_(*findStep(plan, *caution.step)),
        props_(propsIn(knowledge.catalogue, plan, step_.id)), without_(outcomeOf(knowledge, group_, plan)),
        before_(seenBy(plan, without_)), balance_(balanceOf(knowledge.transitions, before_)) {
    const Place place = *placeOf(plan, step_.id);
    tried_ = &with_.sections[place.section].steps[place.index];
  }
  Trials(const Trials&) = delete;
  Trials& operator=(const Trials&) = delete;

  struct Attempt {
    Swap swap;
    LevelCounts remaining{}; // of all cautions on the class
  };

  // Nothing when the caution still stands as it did, or another as strong comes in its place.
  std::optional<Attempt> attempt(const Movement& own, const Movement& movement, const Option* option) {
    Attempt attempt;
    Swap& swap = attempt.swap;
    swap.movement = &movement;
    swap.option = option;
    swap.sameMovement = &own == &movement;
    swap.likeness = likeness(own, movement);
    put(swap);
    const Outcome with = outcomeOf(knowledge_, group_, with_);
    if (const Caution* still = sameIn(with, caution_); still && still->level >= caution_.level)
      return std::nullopt;
    attempt.remaining = countLevels(with.cautions);
    swap.gone = countLevels(newCautions(with, without_));
    swap.come = countLevels(newCautions(without_, with));
    if (strongestOf(swap.come) >= caution_.level)
      return std::nullopt;
    swap.left = strongestLeft(with);
    swap.fetched = propsOf(movement, option).without(props_);
    const Schedule after = seenBy(with_, with);
    swap.added = with.schedule.length - without_.schedule.length;
    swap.addedMoving = after.moving - before_.moving;
    swap.addedChanges = after.changes - before_.changes;
    swap.shifted = shiftBetween(balance_, balanceOf(knowledge_.transitions, after));
    return attempt;
  }

private:
  void put(const Swap& swap) {
    *tried_ = step_;
    if (!person_) {
      *tried_ = swapped(step_, swap);
      return;
    }
    std::erase_if(tried_->variants, [&](const Variant& variant) { return variant.person == *person_; });
    tried_->variants.push_back(variantFor(*person_, swap));
  }
  // The class as those do it whom the swap is for.
  Schedule seenBy(const ClassPlan& plan, const Outcome& outcome) const {
    if (!person_)
      return outcome.schedule;
    return scheduleOf(knowledge_.catalogue, knowledge_.transitions, group_.ways(),
                      asDoneBy(*person_, plan, knowledge_.catalogue));
  }
  std::optional<Level> strongestLeft(const Outcome& outcome) const {
    std::optional<Level> strongest;
    for (const Caution& each : outcome.cautions)
      if (each.step == caution_.step && (!person_ || each.person == caution_.person))
        strongest = std::max(strongest, std::optional(each.level));
    return strongest;
  }

  const Knowledge& knowledge_;
  const ClassPlan& plan_;
  ClassPlan with_;
  Group group_;
  const Caution& caution_;
  std::optional<PersonId> person_;
  const Step& step_;
  PropSet props_;
  Outcome without_;
  Schedule before_;
  Balance balance_;
  Step* tried_ = nullptr; // in with_
};

Seconds disturbance(const Swap& swap) {
  const auto size = [](Seconds seconds) { return seconds < Seconds{} ? -seconds : seconds; };
  return size(swap.added) + swap.addedMoving + swap.shifted * 0.5 +
         kFetching * static_cast<double>(swap.fetched.size());
}

bool better(const Trials::Attempt& a, const Trials::Attempt& b) {
  const auto key = [](const Trials::Attempt& attempt) {
    const auto& [watch, adapt, askFirst, leaveOut] = attempt.remaining;
    const Swap& swap = attempt.swap;
    return std::tuple(!swap.sameMovement, leaveOut, askFirst, adapt, watch, disturbance(swap), -swap.likeness);
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
  Trials trials(knowledge, plan, roster, day, caution, std::move(person));
  std::vector<Trials::Attempt> attempts;
  const auto attemptAll = [&](const Movement& movement, auto&& take) {
    take(trials.attempt(*own, movement, nullptr));
    for (const Option& option : movement.options)
      take(trials.attempt(*own, movement, &option));
  };
  attemptAll(*own, [&](std::optional<Trials::Attempt> attempt) {
    if (attempt)
      attempts.push_back(*std::move(attempt));
  });
  std::unordered_set<MovementId> present;
  forEachStep(plan, [&](const Step& each) { present.insert(each.movement); });
  for (const Movement& movement : knowledge.catalogue.movements()) {
    if (present.contains(movement.id) || likeness(*own, movement) < kLike)
      continue;
    std::optional<Trials::Attempt> best;
    attemptAll(movement, [&](std::optional<Trials::Attempt> attempt) {
      if (attempt && (!best || better(*attempt, *best)))
        best = std::move(attempt);
    });
    if (best)
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
