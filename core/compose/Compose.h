// Fills a class from wishes: chooses movements, their options and doses, and puts them in order.
//
// What a composed class keeps, whatever it costs:
//
//   length         it takes what is wished, give or take 15 s
//   sections       in their order; each with a length takes that, give or take 30 s, counted from where it begins to
//                  where the next one does
//   wishes         every movement to include is in it, none to leave out, nothing harder than the challenge allows, and
//                  no prop and no wall that is not at hand
//   prerequisites  those of every movement chosen are in the class and come before it, but for what the group knows
//   sides          every movement chosen does both its sides
//   no repeats     a movement is chosen once, and not where it is kept already
//   screening      no chosen step and no way to one or on from one brings a `leave out` caution for those who come
//   ways           there is a charted way into every chosen step, and on from it
//   kept steps     stay as they are, in their order in their section. None of the above is asked of what is kept
//
// Of all such classes one that costs little is looked for; what a class costs is in seconds (ComposeCost). The amounts
// are the program's own, common practice, no source:
//
//   moving           on ways and between sides, as scheduleOf() counts it
//   counterMovement, otherRegion   as for tidying (core/tidy/Tidy.h)
//   fewerRises       as for tidying, where it is wished for
//   effortArc        a second for every 20 that a movement is one step of effort off the wished arc, held against the
//                    challenge, at the middle of its time
//   warmFirst        30 s for each movement without end range right after one with it in the first of several sections
//   focus            a second for every 2 that a region of the focus is short of two fifths of the length shared among
//                    those regions, what the spine does of three tenths, a skill of three twentieths
//   roundness        the same for 3 % of the length for each of the seven large regions, and for each of flexion,
//                    extension, side bend and rotation, as far as anything that may be chosen works it
//   variety          40 s for a movement that the last class had, half for the one before, a third for the one before
//                    that, and so on; once a movement
//   screening        for each caution that a step or way brings: 90 s to ask first, 30 s to adapt, 5 s to watch
//   asWritten        6 s for an option that the challenge does not ask for, 4 s for a dose that is not the usual one
//   fetching         20 s for each prop that the class needs
//
// "No caution raised" is not "safe": composing goes by what is on file and what rules know.
#pragma once

#include "core/base/Result.h"
#include "core/compose/ComposeCost.h"
#include "core/edit/Edit.h"
#include "core/evaluate/Outcome.h"
#include "core/knowledge/Knowledge.h"
#include "core/plan/ClassWishes.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace matwright {

inline constexpr Seconds kLengthTolerance{15};  // of the class
inline constexpr Seconds kSectionTolerance{30}; // of a section

// Which wish something is about.
enum class Wish { length, sectionLengths, challenge, include, leaveOut, props, wall, people, prerequisites, kept };
template <> struct Words<Wish> {
  static constexpr auto list = wordList("length", "section-lengths", "challenge", "include", "leave-out", "props",
                                        "wall", "people", "prerequisites", "kept");
};

enum class ObstacleKind {
  unknownMovement, // `movement` is to be included and not in the catalogue
  bothWays,        // is to be included and to be left out
  leftOut,         // is needed for another and to be left out
  tooHard,         // in every option
  propMissing,     // cannot be done in any option with what is at hand: `prop`, or the wall where that is empty
  cautioned,       // `person` (none: everybody) is to leave it out by `rule`, in every option that is left
  noWayTo,         // it cannot be reached, or only by a way that somebody is to leave out
  circular,        // is needed for itself
  personKeptOut,   // `person` is to leave out the whole class by `rule`
  tooMuch,         // what has to be in it takes `least` at the least, and `wished` is less
  tooLittle,       // all that may be chosen takes `most` together, and `wished` is more
  keptTooLong,     // what is kept in `section` takes `least` at the least, and `wished` is less
  onlyWithout,     // nothing was found with it and something without: `wish`, and `movement` where it is about one
};

// Something that stands in the way of the wishes. A movement that is only needed says for which one that is wished for.
struct Obstacle {
  ObstacleKind kind{};
  MovementId movement;
  MovementId neededFor; // empty: `movement` itself is wished for
  std::optional<Prop> prop;
  std::optional<PersonId> person;
  const Rule* rule = nullptr; // owned by the knowledge
  std::optional<std::size_t> section;
  Seconds least, most, wished;
  Wish wish{};
  friend bool operator==(const Obstacle&, const Obstacle&) = default;
};

// A part of the focus that the class gives less time than wished.
struct Shortfall {
  std::optional<Region> region;
  std::optional<SpineAction> spine;
  std::optional<Feature> skill;
  Seconds wished, given;
  friend bool operator==(const Shortfall&, const Shortfall&) = default;
};

enum class ComposeStatus {
  composed,   // a class that keeps all of it
  impossible, // proven: no class does of what may be chosen (core/compose/Offer.h); `obstacles` says why
  notFound,   // none was found and it is not proven that there is none; `obstacles` says without what one was, and
              // what is to be left out by cautions that only whole classes show
  cancelled,  // `stop` said so, and there was no class yet
};

struct ComposeResult {
  ComposeStatus status = ComposeStatus::notFound;
  ClassPlan plan;             // of status composed; else the class as given
  std::vector<StepId> chosen; // in the order of the class: all that were not kept
  ComposeCost cost;
  std::vector<Shortfall> shortfalls;
  std::vector<Obstacle> obstacles;
  bool stopped = false;         // `stop` ended the search for a better one
  std::int64_t evaluations = 0; // classes looked at
  friend bool operator==(const ComposeResult&, const ComposeResult&) = default;
};

struct ComposeProgress {
  std::optional<Seconds> best; // total of the best class so far
  std::int64_t evaluations = 0, of = 0;
};

struct ComposeLimits {
  std::int64_t evaluations = 600'000;                   // the same number and seed give the same class on every machine
  std::function<bool()> stop;                           // true ends the search; asked often. May be empty
  std::function<void(const ComposeProgress&)> progress; // may be empty
};

// The class of `plan` filled up by wishes: what it has is kept. It gets the length, people and pace of the wishes and
// must have their sections, as many as there are. New steps get ids above those of `plan`. What is in `unlike` counts
// for variety as if the last class had had it: that is how to get another class than the one before. Runs on the
// calling thread. Wishes that faultIn() finds fault with are refused.
Result<ComposeResult, WishesFault> composed(const Knowledge& knowledge, const ClassWishes& wishes,
                                            std::span<const Person> roster, Date day, const ClassPlan& plan,
                                            const ComposeLimits& limits = {}, std::span<const MovementId> unlike = {});

// Puts into a class what fills it up: `before` is the class that was given, and the result is composed.
Edit editOf(const ClassPlan& before, const ComposeResult& result);

} // namespace matwright
