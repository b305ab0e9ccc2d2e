// What could be done in the place of a step: because of a caution on it, or of any step at all; best first.
#pragma once

#include "core/evaluate/Outcome.h"

namespace matwright {

// How like two movements are in purpose, 0 to 1: the regions they share (the main one counts twice) of all that either
// works, times 0.7 where the main action of the spine is another, times what their efforts have in common (1 less a
// tenth of the difference). Common practice, no source.
double likeness(const Movement& a, const Movement& b);
inline constexpr double kLike = 0.35; // from here on a movement counts as one of like purpose
inline constexpr std::size_t kMostReplacements = 10;

// A movement of the class that would come before a prerequisite of its own, or lose it.
struct Unprepared {
  const Movement* movement = nullptr;
  const Movement* prerequisite = nullptr;
  friend bool operator==(const Unprepared&, const Unprepared&) = default;
};

struct Swap {
  const Movement* movement = nullptr;
  const Option* option = nullptr; // null: as written
  bool sameMovement = false;
  double likeness = 0;                // to the movement of the step; 0 to one that is not in the catalogue
  std::vector<Caution> gone, come;    // on the class, that it takes away and that it brings, as newCautions() has them
  std::optional<Level> left;          // the strongest that still stands at the step, for those whom it is for
  Seconds added;                      // to the length of the class
  Seconds addedMoving;                // on ways, of those whom it is for
  int addedChanges = 0;               // of position, of those whom it is for
  Seconds shifted;                    // work that goes from some regions of the body to others
  PropSet fetched;                    // props that nothing else in the class needs
  std::vector<Unprepared> unprepared; // of replacementsFor() alone: what is prepared today and would not be
  friend bool operator==(const Swap&, const Swap&) = default;
};

// Swaps after which the caution at its step is gone or weaker and no other as strong has come: first the options of the
// same movement (and the movement as written), then other movements of like purpose that the class does not have yet,
// each in its best option. Both in the order of what stays of the cautions (leave out before ask first before adapt
// before watch; fewer first), then of what it disturbs: seconds added or saved, seconds of moving, 10 s for each change
// of position, half the seconds shifted, and 20 s for each prop to be fetched (common practice, no source); then the
// more alike. For everybody, or as the variant of `person`, whom the caution must then be about. None for a caution on
// the class as a whole, and on a movement that is not in the catalogue. The caution is one of evaluate() for the same
// class.
std::vector<Swap> swapsFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day,
                           const Caution& caution, std::optional<PersonId> person);

// What else could stand in the place of any step, for everybody: at the most so many movements of the catalogue that
// the class does not have yet, each in its best option. None brings a caution that says leave out, nor one that says
// ask first unless the step has one as strong today. Before anything else fewer movements are left unprepared: the new
// one or another of the class, which would come before its prerequisite or lose it, and does not today (a prerequisite
// that the class never had is not missed). Then comes purpose: what is like first (kLike), the rest by whole tenths of
// likeness. Then what stays of the cautions, as above; then seconds: what it disturbs, as above, and a second for each
// hundredth that it is less than wholly alike, 100 s at the most (common practice, no source); then the order of the
// catalogue. A movement comes with the usual dose of its option: `added` tells what that does to the length. Variants
// were for the step's own movement and go; what that brings upon somebody is among the cautions that come. None for a
// step that the class does not have. A step whose movement is not in the catalogue is like nothing.
std::vector<Swap> replacementsFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                  Date day, StepId step, std::size_t most = kMostReplacements);

// The step with the swap in its place: under the same id, with its note and side. Where it stays the same movement its
// dose, tempo and variants stay too, but for what the option brings of its own.
Step swapped(const Step& step, const Swap& swap);
Variant variantFor(const PersonId& person, const Swap& swap);

} // namespace matwright
