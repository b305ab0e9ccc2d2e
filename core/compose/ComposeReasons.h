// What speaks for the steps that were chosen for a class: facts of the class and its wishes, which anybody can look up
// in it. They do not say what spoke against other steps.
#pragma once

#include "core/compose/Compose.h"

namespace matwright {

enum class ComposeReasonKind {
  included,    // it is to be included
  neededFor,   // `movement`, chosen and later, needs it before, and the group does not know it
  focus,       // it gives time to a part of the focus: `region`, `spine` or `skill`
  counters,    // it answers the flexion right before it, of which `movement` was the last
  onlyOne,     // nothing else in the class works its main `region`
  noChange,    // it begins where the step before ended
  asHard,      // its effort is the one wished for at the middle of its time, give or take 1
  notRecent,   // no recent class had it
  propMissing, // its option: as written it needs `prop`, or the wall where that is empty
  tooHard,     // its option: as written it is too hard
  cautioned,   // its option: as written it brings a caution by `rule`, for `person` (none: everybody)
  challenge,   // its option is the way to do it that the challenge asks for
  timeLeft,    // its dose is not the usual one
  nothingElse, // none of these
};
template <> struct Words<ComposeReasonKind> {
  static constexpr auto list =
      wordList("included", "needed-for", "focus", "counters", "only-one", "no-change", "as-hard", "not-recent",
               "prop-missing", "too-hard", "cautioned", "challenge", "time-left", "nothing-else");
};

struct ComposeReason {
  ComposeReasonKind kind{};
  MovementId movement;
  std::optional<Region> region;
  std::optional<SpineAction> spine;
  std::optional<Feature> skill;
  std::optional<Prop> prop;
  std::optional<PersonId> person;
  const Rule* rule = nullptr; // owned by the knowledge
  friend bool operator==(const ComposeReason&, const ComposeReason&) = default;
};

struct ComposeReasons {
  StepId step;
  std::vector<ComposeReason> reasons; // in the order of their kinds; never empty
  friend bool operator==(const ComposeReasons&, const ComposeReasons&) = default;
};

// One for each of `chosen`, in that order; all of them are steps of `plan` with movements of the catalogue.
std::vector<ComposeReasons> reasonsFor(const Knowledge& knowledge, const ClassWishes& wishes,
                                       std::span<const Person> roster, Date day, const ClassPlan& plan,
                                       std::span<const StepId> chosen);

} // namespace matwright
