// Everything that is computed about a class, in one value that views never go round.
#pragma once

#include "core/evaluate/Balance.h"
#include "core/evaluate/ClassLoad.h"
#include "core/evaluate/Schedule.h"
#include "core/knowledge/Knowledge.h"
#include "core/screening/Screening.h"

#include <array>
#include <span>
#include <string>
#include <vector>

namespace matwright {

enum class CautionKind {
  rule,             // a rule spoke
  unknownMovement,  // not in the catalogue: it keeps its place and cannot be screened. Ask first
  unknownOption,    // the option is not there: taken as written, and said. Watch
  unknownCondition, // a person has a condition that no rule knows. Watch, for the class as a whole
  unknownPerson,    // the class names somebody who is not on file. Watch, for the class as a whole
  noWay,            // no change of position leads here, or from the first side to the second. Ask first
};

// Something found by screening: who, which step, why, what instead, how well supported.
struct Caution {
  CautionKind kind{};
  Level level{};
  std::optional<StepId> step;             // none: the class as a whole
  const Rule* rule = nullptr;             // for kind rule; owned by the knowledge
  std::size_t person = Finding::kNone;    // index in Evaluation::people; kNone: everybody
  std::size_t condition = Finding::kNone; // index in that person's conditions
  FeatureSet because;
  bool cleared = false;
  bool assumed = false;
  double measured = 0;
  std::string name;                       // the unknown id, for the unknown kinds; of a person's: in her variant
  bool instructed = false;                // the level comes from a written instruction
  std::size_t clearance = Finding::kNone; // which of the condition's clearances lowered the level or set it
  std::optional<StepId> earlier;          // for rules on order: the step that this one comes too soon after
  Asked asked{};                          // for kind rule: of the step, as those it is about do it
  friend bool operator==(const Caution&, const Caution&) = default;
};

enum class RemarkKind {
  beforePrerequisite, // a prerequisite stands later in the class, and not before the movement's first step
  sidesUneven,        // over all steps of one movement its sides differ by a second or more
  overTarget,         // by more than 15 seconds
  underTarget,        // shorter than 90 % of the target
  bendWithoutArch,    // spinal flexion takes more than 3 minutes and more than 4 times as long as extension
                      // (common practice, no source)
  emptySection,
};

// Worth a look, but not about anybody's safety. Those on the whole class come first, then empty sections, then steps.
struct Remark {
  RemarkKind kind{};
  std::optional<StepId> step;
  std::size_t section = 0;
  MovementId other;      // the prerequisite, or the movement that is uneven
  Seconds first, second; // left/right, length/target, flexion/extension
  friend bool operator==(const Remark&, const Remark&) = default;
};

struct Evaluation {
  std::vector<PersonId> people; // those found, in the order of the class
  Schedule schedule;
  Balance balance;
  ClassLoad load;
  std::vector<StepFacts> facts;  // one a step
  std::vector<Caution> cautions; // whole class first, then by step, strongest first
  std::vector<Remark> remarks;
  std::array<int, kWordCount<Level>> cautionCounts{};

  // The strongest caution at a step; nothing when none was raised, which does not mean that it is safe.
  std::optional<Level> strongestAt(StepId step) const;
  const TimedStep* timed(StepId step) const;
  // Whom one of the cautions concerns; nobody in particular: everybody.
  std::optional<PersonId> whom(const Caution& caution) const;
  friend bool operator==(const Evaluation&, const Evaluation&) = default;
};

// `roster` holds everybody on file; those whom the class names are screened, each once. `day` is the day the class is
// taught, which decides weeks, clearances and their ends. The result points into `knowledge`, which must outlive it.
Evaluation evaluate(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster, Date day);

// The same class seen for some of its people: their cautions and those that are for everybody. Nothing else differs, so
// that the class still moves as one group. Those who are not among Evaluation::people count for nothing; nobody: all.
Evaluation seenFor(Evaluation whole, std::span<const PersonId> people);

// What putting a movement at a place, as written, would do.
struct Candidate {
  const Movement* movement = nullptr;
  Seconds added;       // to the length
  Seconds addedMoving; // of that, on ways; less than nothing where it shortens them
  int addedChanges = 0;
  // Cautions that are not there without it. One that moves along with a running total is not new.
  std::array<int, kWordCount<Level>> addedCautions{};
  std::optional<Level> strongest; // of the cautions it adds
};

// One candidate for each movement of the catalogue, what fits best first: weaker strongest caution (none, watch, adapt,
// ask first, leave out), then fewer added changes, then fewer seconds of moving, then the catalogue's order. None for a
// place that the class does not have. Of cautions those count that seenFor() would leave for `seen`.
std::vector<Candidate> candidatesFor(const Knowledge& knowledge, const ClassPlan& plan, std::span<const Person> roster,
                                     Date day, Place place, std::span<const PersonId> seen = {});

} // namespace matwright
