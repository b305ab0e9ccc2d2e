// Puts the steps of a class into the order that takes the least moving about, and keeps what a teacher means by its
// order:
//
//   sections       each step stays in its section, and sections stay where they are
//   prerequisites  the first step of a prerequisite comes before what needs it in the same section. Where it does not
//                  today it is mended, unless pins and scope do not allow it; what is right stays right in any case
//   warm first     in the first of several sections a step that goes to end range (end of flexion, of extension or of a
//                  stretch, or rotation) does not come before a step without that it comes after today (common
//                  practice, no source)
//   series         neighbouring steps of one movement in one section stay together in their order. So does a movement
//                  that is not in the catalogue with the step before it, since it is done where people are
//   pins           pinned steps and those outside the scope keep their places in the section, a series counting as one
//
// What an order costs are the seconds of moving as scheduleOf() counts them, to the millisecond a way, and 10 minutes
// for each way that is not charted. Wishes add seconds to them; the amounts are the program's own, common practice, no
// source:
//
//   counterMovement  30 s where a block of two or more movements with flexion first among what the spine does is
//                    followed by two movements of which none counters it: extends the spine, or is named as a
//                    counter-movement of a flexion in the class. The second is the one that costs
//   otherRegion      5 s where a movement has the main region of the one before it
//   wishedArc        a second for every 20 that a movement is one step of effort off wishedEffort(). The moment is that
//                    in the middle of the movement, to a 32nd of what is put in order, if all take as long as today
//   fewerRises       10 s for each change of position that asks to get up from the floor
//
// Where several orders cost the same, one near to that of today is taken; an order that is as good as any stays.
#pragma once

#include "core/edit/Edit.h"
#include "core/evaluate/Outcome.h"
#include "core/knowledge/Knowledge.h"
#include "core/plan/ClassPlan.h"

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace matwright {

struct TidyWishes {
  bool counterMovement = false, otherRegion = false, wishedArc = false, fewerRises = false;
  friend bool operator==(const TidyWishes&, const TidyWishes&) = default;
};

struct TidyRequest {
  std::optional<std::size_t> section; // none: the whole class
  std::vector<StepId> steps;          // those of them that may move; empty: all
  std::vector<StepId> pinned;
  TidyWishes wishes;
};

// `total` is what is made as small as can be.
struct TidyCost {
  Seconds moving; // of the schedule of the whole class
  int changes = 0;
  Seconds wished; // what the wishes add, and ways that are not charted
  Seconds total() const { return moving + wished; }
  friend bool operator==(const TidyCost&, const TidyCost&) = default;
};

struct TidyProgress {
  std::optional<Seconds> best; // total of the best order so far
  Seconds lower;
  std::int64_t nodes = 0;
};

struct TidyLimits {
  std::int64_t nodes = 5'000'000;                    // the same number gives the same order on every machine
  std::function<bool()> stop;                        // true ends the search; asked often. May be empty
  std::function<void(const TidyProgress&)> progress; // may be empty
};

enum class TidyStatus {
  shortest,    // proven: no order that keeps all this costs less
  nothingToDo, // proven of the order as it is
  bounded,     // the limit was reached: the best found, perhaps the order as it is
  cancelled,   // the same, because `stop` said so
};

enum class TidyReason { shorterWay, prerequisite, counterMovement, otherRegion, wishedArc, fewerRises, withOthers };

struct TidyGain {
  TidyReason reason{};
  Seconds seconds; // 0 for a prerequisite, and for a step that only goes along
  friend bool operator==(const TidyGain&, const TidyGain&) = default;
};

// A step that comes elsewhere among the others: as few as can be are said to move, and never one that is pinned.
struct TidyMove {
  StepId step;
  Place from, to;
  // What would be lost if it alone went back behind what it came after: the prerequisite first, then what is most
  // seconds. Never empty.
  std::vector<TidyGain> gains;
  friend bool operator==(const TidyMove&, const TidyMove&) = default;
};

struct TidyResult {
  ClassPlan plan; // the same steps, under the same ids
  TidyCost before, after;
  Seconds lower; // no order that keeps all this has a lower total
  TidyStatus status = TidyStatus::nothingToDo;
  std::vector<TidyMove> moves; // in the order of `plan`; empty when it is the class as it was
  // Cautions on the class that the order takes away and that it brings, as newCautions() tells them apart. They are no
  // part of what is made small: whoever offers an order says first what it brings.
  LevelCounts gone{}, come{};
  std::int64_t nodes = 0;
  friend bool operator==(const TidyResult&, const TidyResult&) = default;
};

// `roster` and `day` as for evaluate(): ways avoid what the rules of those who come ask to avoid. Refuses a section or
// a step that the class does not have. Runs on the calling thread.
Result<TidyResult, Refusal> tidied(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                   Date day, const TidyRequest& request = {}, const TidyLimits& limits = {});

// What makes the tidied class of the class it was made from: one edit, and one step of undo.
Edit editOf(const ClassPlan& before, const TidyResult& result);

} // namespace matwright
