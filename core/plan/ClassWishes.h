// What a teacher wishes of a class before it is composed: a plain value.
#pragma once

#include "core/base/EnumSet.h"
#include "core/body/Body.h"
#include "core/body/Feature.h"
#include "core/plan/ClassPlan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

// How hard a class may be at its hardest.
enum class Challenge { gentle, middle, strong };
template <> struct Words<Challenge> { static constexpr auto list = wordList("gentle", "middle", "strong"); };

// No step has more: 4 for a gentle class, 7 for a middle one, 10 for a strong one (common practice, no source).
Effort hardestOf(Challenge challenge);

// A stretch of the class and how long it should be. Either every section has a length, or none has.
struct WishedSection {
  std::string name;
  Seconds length; // 0: as long as it comes out
  friend bool operator==(const WishedSection&, const WishedSection&) = default;
};

// What the class should give much time to: what is worked, what the spine does, and what is practised.
struct ClassFocus {
  EnumSet<Region> regions;
  EnumSet<SpineAction> spine;
  FeatureSet skills;
  bool empty() const { return regions.empty() && spine.empty() && skills.empty(); }
  friend bool operator==(const ClassFocus&, const ClassFocus&) = default;
};

// The effort wished for when a part of the class is over, from 0 at its beginning to 1 at its end.
struct ArcPoint {
  double at = 0;
  double effort = 0; // 0 to 10
  friend bool operator==(const ArcPoint&, const ArcPoint&) = default;
};

// Straight from point to point; before the first and after the last as there. By `at`, at least one point.
using EffortArc = std::vector<ArcPoint>;

// Up from 2 to 6 over the first third, there until three quarters, down to 1 at the end (common practice, no source).
const EffortArc& usualArc();
double effortAt(const EffortArc& arc, double part);

// A class that was taught or composed before: what it had in it.
struct RecentClass {
  std::string name;
  std::vector<MovementId> movements; // each once
  friend bool operator==(const RecentClass&, const RecentClass&) = default;
};

struct ClassWishes {
  static constexpr std::size_t kMostRecent = 12;
  static constexpr std::size_t kMostNamed = 200; // movements in one list
  static constexpr std::size_t kMostArcPoints = 12;

  std::string name;
  std::optional<Date> date;
  Seconds length = minutes(50);
  Challenge challenge = Challenge::middle;
  ClassFocus focus;
  std::vector<WishedSection> sections{{"", {}}}; // never empty
  PropSet props;                                 // at hand for everybody
  bool wall = true;                              // whether there is a free wall to work at
  std::vector<PersonId> people;
  Pace pace;
  std::vector<MovementId> include, leaveOut;
  std::vector<RecentClass> recent; // to vary from; the last one first
  std::vector<MovementId> known;   // the group can do them: as prerequisites they need not be in the class
  bool recentIsKnown = true;       // so can it what recent classes had
  EffortArc arc = usualArc();
  bool fewerRises = false; // as few ways up from the floor as can be
  std::uint64_t seed = 1;  // another one may give another class
  friend bool operator==(const ClassWishes&, const ClassWishes&) = default;
};

enum class WishesFault {
  lengthOutOfRange, // of the class, as for ClassPlan::target
  noSection,        // or too many
  sectionLengths,   // some have one and some have none, one is less than nothing, or they do not add up to the length
  nameTooLong,
  paceOutOfRange,
  arcMisshapen,  // no point, too many, not in order, or outside their ranges
  tooManyNamed,  // people, movements or recent classes
  otherSections, // found only beside a class that is to be filled up: it has not as many sections
};

// The first thing that makes them no wishes at all. Sections may miss the length by a second.
std::optional<WishesFault> faultIn(const ClassWishes& wishes);

// The four usual sections as parts of a class of this length, in whole minutes but for the longest.
std::vector<WishedSection> usualSections(Seconds length);

RecentClass recentClass(const ClassPlan& plan);

// The class that is to be filled: sections, people, pace, length, and no step.
ClassPlan blankClass(const ClassWishes& wishes);
// What fills up a class that has steps: its own length, people, pace and sections, which may be as long as they come
// out, and all props.
ClassWishes wishesFor(const ClassPlan& plan);

} // namespace matwright
