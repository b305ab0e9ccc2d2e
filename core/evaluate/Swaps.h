// What could be done in the place of a step that raises a caution, best first.
#pragma once

#include "core/evaluate/Outcome.h"

namespace matwright {

// How like two movements are in purpose, 0 to 1: the regions they share (the main one counts twice) of all that either
// works, times 0.7 where the main action of the spine is another, times what their efforts have in common (1 less a
// tenth of the difference). Common practice, no source.
double likeness(const Movement& a, const Movement& b);
inline constexpr double kLike = 0.35; // from here on a movement counts as one of like purpose

struct Swap {
  const Movement* movement = nullptr;
  const Option* option = nullptr; // null: as written
  bool sameMovement = false;
  double likeness = 0;        // to the movement of the step
  LevelCounts gone{}, come{}; // cautions on the class that it takes away, and that it brings
  std::optional<Level> left;  // the strongest that still stands at the step, for those whom it is for
  Seconds added;              // to the length of the class
  Seconds addedMoving;        // on ways, of those whom it is for
  int addedChanges = 0;       // of position, of those whom it is for
  Seconds shifted;            // work that goes from some regions of the body to others
  PropSet fetched;            // props that nothing else in the class needs
  friend bool operator==(const Swap&, const Swap&) = default;
};

// Swaps after which the caution at its step is gone or weaker and no other as strong has come: first the options of the
// same movement (and the movement as written), then other movements of like purpose that the class does not have yet,
// each in its best option. Both in the order of what stays of the cautions (leave out before ask first before adapt
// before watch; fewer first), then of what it disturbs: seconds added or saved, seconds of moving, half the seconds
// shifted, and 20 s for each prop to be fetched (common practice, no source); then the more alike. For everybody, or as
// the variant of `person`, whom the caution must then be about. None for a caution on the class as a whole, and on a
// movement that is not in the catalogue. The caution is one of evaluate() for the same class.
std::vector<Swap> swapsFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day,
                           const Caution& caution, std::optional<PersonId> person);

// The step with the swap in its place: under the same id, with its note and side. Where it stays the same movement its
// dose, tempo and variants stay too, but for what the option brings of its own.
Step swapped(const Step& step, const Swap& swap);
Variant variantFor(const PersonId& person, const Swap& swap);

} // namespace matwright
