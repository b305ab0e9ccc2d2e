// Whether a composed class keeps what it must. Goes by the class as it is and by evaluate(), and shares nothing with
// the search; takes time in proportion to the class.
#pragma once

#include "core/compose/Compose.h"

namespace matwright {

enum class ComposeBreach {
  length,
  sections,    // a length, or not as many as wished
  notIncluded, // a movement to include is not there
  leftOut,     // a movement to leave out is
  tooHard,
  propMissing,  // or the wall
  prerequisite, // is not there and not known, or comes later
  oneSide,      // a chosen step does one side only
  repeated,     // a movement was chosen twice, or is kept too
  caution,      // a `leave out` caution at a chosen step or the way from one that what was kept did not have
  noWay,        // into a chosen step, or on from one
  keptChanged,  // a kept step is not there as it was, or elsewhere among the kept ones of its section
  unknown,      // a movement, option or dose that the catalogue does not have
};

struct ComposeBreachAt {
  ComposeBreach breach{};
  std::optional<StepId> step; // none: the class or a section
  friend bool operator==(const ComposeBreachAt&, const ComposeBreachAt&) = default;
};

// `kept` is the class that was to be filled up: all other steps of `plan` count as chosen.
std::vector<ComposeBreachAt> breachesOf(const Knowledge& knowledge, const ClassWishes& wishes,
                                        std::span<const Person> roster, Date day, const ClassPlan& kept,
                                        const ClassPlan& plan);

} // namespace matwright
