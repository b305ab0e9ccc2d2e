#pragma once

#include "core/evaluate/Swaps.h"

#include <functional>

namespace matwright {

// Tries one thing after the other in the place of a step, for everybody or as the variant of one person, and tells what
// it would do to the class.
class Trials {
public:
  // Whether something is worth offering, by the class with it and the cautions that come.
  using Fits = std::function<bool(const Outcome& with, std::span<const Caution> come)>;

  // All but `person` and `fits` must outlive the trials; the class must have the step.
  Trials(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day, StepId step,
         std::optional<PersonId> person, Fits fits);
  Trials(const Trials&) = delete;
  Trials& operator=(const Trials&) = delete;

  struct Attempt {
    Swap swap;
    LevelCounts remaining{}; // of all cautions on the class
  };

  const Movement* own() const { return own_; } // of the step; null: not in the catalogue
  const Outcome& without() const { return without_; }
  bool present(const Movement& movement) const; // anywhere in the class

  std::optional<Attempt> attempt(const Movement& movement, const Option* option);

  // The movement as written and in each option, as far as they fit.
  template <class Take> void attemptAll(const Movement& movement, Take&& take) {
    const auto takeOne = [&](const Option* option) {
      if (std::optional<Attempt> one = attempt(movement, option))
        take(*std::move(one));
    };
    takeOne(nullptr);
    for (const Option& option : movement.options)
      takeOne(&option);
  }
  // Of all these the best; of equal ones the first.
  template <class Better> std::optional<Attempt> best(const Movement& movement, Better&& better) {
    std::optional<Attempt> best;
    attemptAll(movement, [&](Attempt&& one) {
      if (!best || better(one, *best))
        best = std::move(one);
    });
    return best;
  }

private:
  void put(const Swap& swap);
  Schedule seenBy(const ClassPlan& plan, const Outcome& outcome) const;
  std::optional<Level> strongestLeft(const Outcome& outcome) const;

  const Knowledge& knowledge_;
  const ClassPlan& plan_;
  ClassPlan with_;
  Group group_;
  std::optional<PersonId> person_;
  std::size_t personIndex_; // Finding::kNone: everybody
  Fits fits_;
  const Step& step_;
  const Movement* own_;
  PropSet props_; // of the class without the step
  Outcome without_;
  Schedule before_;
  Balance balance_;
  Step* tried_ = nullptr; // in with_
};

// What stays of the cautions, to be compared: leave out before ask first before adapt before watch, fewer first.
std::array<int, kWordCount<Level>> byWeight(const LevelCounts& counts);

// The seconds that say what a swap disturbs; see Swaps.h.
Seconds disturbance(const Swap& swap);

} // namespace matwright
