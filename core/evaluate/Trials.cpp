#include "core/evaluate/Trials.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr Seconds kChanging{10};
constexpr Seconds kFetching{20};

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

std::size_t indexOf(const std::vector<PersonId>& people, const std::optional<PersonId>& person) {
  const auto at = person ? std::find(people.begin(), people.end(), *person) : people.end();
  return at == people.end() ? Finding::kNone : static_cast<std::size_t>(at - people.begin());
}

} // namespace

Trials::Trials(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day, StepId step,
               std::optional<PersonId> person, Fits fits)
    : knowledge_(knowledge), plan_(plan), with_(plan), group_(knowledge, plan.people, roster, day),
      person_(std::move(person)), personIndex_(indexOf(group_.ids(), person_)), fits_(std::move(fits)),
      step_(*findStep(plan, step)), own_(knowledge.catalogue.find(step_.movement)),
      props_(propsIn(knowledge.catalogue, plan, step)), without_(outcomeOf(knowledge, group_, plan)),
      before_(seenBy(plan, without_)), balance_(balanceOf(knowledge.transitions, before_)) {
  const Place place = *placeOf(plan, step);
  tried_ = &with_.sections[place.section].steps[place.index];
}

bool Trials::present(const Movement& movement) const {
  return std::any_of(without_.schedule.steps.begin(), without_.schedule.steps.end(),
                     [&](const TimedStep& each) { return each.movement == &movement; });
}

std::optional<Trials::Attempt> Trials::attempt(const Movement& movement, const Option* option) {
  Attempt attempt;
  Swap& swap = attempt.swap;
  swap.movement = &movement;
  swap.option = option;
  swap.sameMovement = own_ == &movement;
  put(swap);
  const Outcome with = outcomeOf(knowledge_, group_, with_);
  swap.come = newCautions(without_, with);
  if (!fits_(with, swap.come))
    return std::nullopt;
  swap.gone = newCautions(with, without_);
  attempt.remaining = countLevels(with.cautions);
  swap.left = strongestLeft(with);
  swap.likeness = own_ ? likeness(*own_, movement) : 0;
  swap.fetched = propsOf(movement, option).without(props_);
  const Schedule after = seenBy(with_, with);
  swap.added = with.schedule.length - without_.schedule.length;
  swap.addedMoving = after.moving - before_.moving;
  swap.addedChanges = after.changes - before_.changes;
  swap.shifted = shiftBetween(balance_, balanceOf(knowledge_.transitions, after));
  return attempt;
}

void Trials::put(const Swap& swap) {
  *tried_ = step_;
  if (!person_) {
    *tried_ = swapped(step_, swap);
    return;
  }
  std::erase_if(tried_->variants, [&](const Variant& variant) { return variant.person == *person_; });
  tried_->variants.push_back(variantFor(*person_, swap));
}

// The class as those do it whom the swap is for.
Schedule Trials::seenBy(const ClassPlan& plan, const Outcome& outcome) const {
  if (!person_)
    return outcome.schedule;
  return scheduleOf(knowledge_.catalogue, knowledge_.transitions, group_.ways(),
                    asDoneBy(*person_, plan, knowledge_.catalogue));
}

std::optional<Level> Trials::strongestLeft(const Outcome& outcome) const {
  std::optional<Level> strongest;
  for (const Caution& each : outcome.cautions)
    if (each.step == step_.id && (!person_ || each.person == personIndex_))
      strongest = std::max(strongest, std::optional(each.level));
  return strongest;
}

std::array<int, kWordCount<Level>> byWeight(const LevelCounts& counts) {
  std::array<int, kWordCount<Level>> heaviestFirst = counts;
  std::reverse(heaviestFirst.begin(), heaviestFirst.end());
  return heaviestFirst;
}

Seconds disturbance(const Swap& swap) {
  const auto size = [](Seconds seconds) { return seconds < Seconds{} ? -seconds : seconds; };
  return size(swap.added) + swap.addedMoving + kChanging * static_cast<double>(swap.addedChanges) + swap.shifted * 0.5 +
         kFetching * static_cast<double>(swap.fetched.size());
}

} // namespace matwright
