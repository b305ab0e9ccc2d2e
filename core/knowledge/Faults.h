// What is wrong with a thing of one's own, or with one that comes with the program, as data: for whoever writes it. A
// hint is no fault: what is unusual, and may have its reason.
#pragma once

#include "core/figure/Joint.h"
#include "core/knowledge/Knowledge.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

enum class FaultKind {
  empty,       // a text that must be there, or a list that must name something
  tooLong,     // a text of more bytes than fit, or a list of more entries
  tooFewWords, // for a cue
  tooManyWords,
  outOfRange,    // a dose, a length of a count, a number of counts, phases or weeks, an amount
  unknown,       // what is named is not there
  itself,        // names itself, or what needs it first
  twice,         // an id or a name that may be there once is there before
  removesAbsent, // an option takes away what is not there
  addsPresent,   // an option adds what is there
  ofThePosition, // a feature that start or end position have already
  againstKind,   // the effort of an option, or what it adds or takes away, does not go with its kind
  doesNotRest,   // a pose says that something rests which does not, or sinks below the floor
  jointTooFar,   // an angle that no joint has, or that two do not have together
  notShown,      // a feature that no pose shows
  shownOnly,     // a feature that a pose shows, and that is not named
  needsHold,     // a held breath without a phase that holds it
  holdUnnamed,   // a phase that holds the breath, and no held breath among the features
  needsFeature,  // `features` ask for one of `also`
  tooShortFor,   // a feature that counts only when the work lasts longer
  sameStrain,    // a counter-movement bends the spine as the movement does, as hard or harder
  harderCounter, // a counter-movement is harder than the movement
  propUnnamed,   // a cue speaks of a prop that is not needed
  doesNotFit,    // not for this kind of qualifier, scope or measure
  notAsked,      // no rule asks for the condition
  withoutSource, // a strength that needs a source
  noDay          // a date that the calendar does not have
};
template <> struct Words<FaultKind> {
  static constexpr auto list =
      wordList("empty", "too-long", "too-few-words", "too-many-words", "out-of-range", "unknown", "itself", "twice",
               "removes-absent", "adds-present", "of-the-position", "against-kind", "does-not-rest", "joint-too-far",
               "not-shown", "shown-only", "needs-hold", "hold-unnamed", "needs-feature", "too-short-for", "same-strain",
               "harder-counter", "prop-unnamed", "does-not-fit", "not-asked", "without-source", "no-day");
};

// The part of a thing that a fault is about, by its key in files.
enum class Field {
  name,
  about,
  start,
  end,
  dose,
  tempo,
  setUp,
  action,
  regions,
  spine,
  features,
  effort,
  prerequisites,
  counters,
  options,
  how,
  removes,
  adds,
  startPose,
  endPose,
  icd10,
  qualifiers,
  choices,
  condition,
  when,
  asks,
  threshold,
  after,
  why,
  instead,
  contested,
  sources,
  reviewed,
  cite
};
template <> struct Words<Field> {
  static constexpr auto list =
      wordList("name", "about", "start", "end", "dose", "tempo", "setUp", "action", "regions", "spine", "features",
               "effort", "prerequisites", "counters", "options", "how", "removes", "adds", "poses/start", "poses/end",
               "icd10", "qualifiers", "choices", "condition", "when", "asks", "threshold", "after", "why", "instead",
               "contested", "sources", "reviewed", "cite");
};

struct Fault {
  FaultKind kind{};
  Field field{};
  std::optional<std::size_t> option; // which of the movement's options; none: the movement itself
  std::optional<std::size_t> place;  // which phase, entry of a list, qualifier or test
  std::optional<std::size_t> within; // which choice of the qualifier
  FeatureSet features;               // that it is about
  FeatureSet also;                   // for needsFeature
  std::optional<Joint> joint;        // for jointTooFar
  std::optional<Joint> with;         // for jointTooFar: the joint whose angle is added
  std::string what;                  // the id or word that it is about
  double found = 0, bound = 0;       // words, bytes, entries, degrees, seconds or amounts, where the kind compares
  bool hint = false;
  friend bool operator==(const Fault&, const Fault&) = default;
};

// What is wrong with a movement, in the order of its fields, then of its options. `knowledge` is all that there is,
// with the movement, an older one with its id, or neither.
std::vector<Fault> faultsIn(const Movement& movement, const Knowledge& knowledge);
std::vector<Fault> faultsIn(const Condition& condition, const Knowledge& knowledge);
std::vector<Fault> faultsIn(const Source& source, const Knowledge& knowledge);
std::vector<Fault> faultsIn(const Rule& rule, const Knowledge& knowledge);

// Without the hints.
std::vector<Fault> withoutHints(std::vector<Fault> faults);

} // namespace matwright
