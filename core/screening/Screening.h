// Which rules speak for which people at which steps. Pure arithmetic over plain values: it knows nothing of plans
// or catalogues, only of what each step asks.
#pragma once

#include "core/base/Date.h"
#include "core/people/Person.h"
#include "core/screening/Rule.h"
#include "core/units/Units.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace matwright {

// What one step of a class asks of those who do it.
struct StepFacts {
  FeatureSet features;     // of the movement in its option, with those of its positions
  FeatureSet wayFeatures;  // of getting into it, and of changing sides within it
  FeatureSet restFeatures; // that last through the gap before it, because the body rests in a shape with them
  Seconds gap;             // before the work
  Seconds work;
  int repetitions = 0;       // passes of the tempo, on all sides together
  FeatureSet shapeFeatures;  // those of `features` that come from the positions the step rests in
  Seconds workBegin;         // from the start of the class
  Seconds turning;           // between its sides, within the work
  Seconds oneSide;           // work in one go: of the longer side, or the whole where sides are not done one by one
  Effort effort;             // 0 when it is not known
  EnumSet<Elevation> at;     // of the positions in which the step starts or ends a side
  EnumSet<Elevation> restAt; // that last through the gap before it
  // The moment of weight about the low back at its peak, in whole percent of what two straight legs held level have
  // there. 0 when it is not known, not asked for, or nothing is held.
  int lever = 0;
  friend bool operator==(const StepFacts&, const StepFacts&) = default;
};

inline Asked askedBy(const StepFacts& facts) { return {facts.features, facts.at, facts.effort, facts.lever}; }
inline Seconds workEnd(const StepFacts& facts) { return facts.workBegin + facts.work + facts.turning; }

// One thing found. Indices refer to the lists that were given.
struct Finding {
  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);

  std::size_t rule = 0;
  std::size_t person = kNone;    // kNone: the rule is for everybody
  std::size_t condition = kNone; // which of the person's conditions; kNone: the rule asks for none
  std::size_t step = kNone;      // kNone: the class as a whole. For total and stretch: where the sum passes
  Level level{};                 // after clearances and instructions
  FeatureSet because;            // the features that made the rule speak
  bool cleared = false;          // a clearance lowered `ask first` to `watch`
  bool assumed = false;          // an open qualifier was taken as holding
  double measured = 0;           // for rules with a threshold, in its unit; see screen()
  bool instructed = false;       // the level comes from a written instruction, and not from the rule
  std::size_t clearance = kNone; // which of the condition's clearances lowered the level or set it
  std::size_t earlier = kNone;   // for order: the step before, that this one comes too soon after
  Asked asked{};                 // of the step, by which the rule judged it; empty for the class as a whole
  friend bool operator==(const Finding&, const Finding&) = default;
};

// What a person's papers on one condition make of the level of a rule that speaks because of some features; see
// screen().
struct Heeded {
  Level level{};
  bool cleared = false;
  bool instructed = false;
  std::size_t clearance = Finding::kNone; // which of the papers; kNone: none covers it, or it changes nothing
  friend bool operator==(const Heeded&, const Heeded&) = default;
};

Heeded heeded(std::span<const Clearance> clearances, Level level, FeatureSet because, Date day);

// A rule that holds for a person on a day whatever the class: the person is of its ages, its condition is there and no
// qualifier speaks against it. The day decides weeks and clearances.
struct ActiveRule {
  std::size_t rule = 0;
  std::size_t person = Finding::kNone;
  std::size_t condition = Finding::kNone;
  bool assumed = false; // a qualifier that nobody filled in was taken as holding
  friend bool operator==(const ActiveRule&, const ActiveRule&) = default;
};

// Ordered by person (rules for everybody first), then rule, then condition. A value of the wrong kind, or a choice that
// the condition does not have, is as good as none: it is taken as open. The week of an event still to come counts as
// week 0. The week of pregnancy goes on counting after the due date. A rule with ages says nothing of somebody whose
// age band nobody has noted.
std::vector<ActiveRule> activeRules(const RuleBook& book, std::span<const Person> people, Date day);
// The same for people who do not lie in a row; the result refers to places in the list of pointers.
std::vector<ActiveRule> activeRules(const RuleBook& book, std::span<const Person* const> people, Date day);

// The features that the way-scope rules among `active` ask to avoid for at least one person, from level `adapt`
// up. A clearance does not remove one: a gentler way costs nobody anything.
FeatureSet featuresToAvoidOnWays(const RuleBook& book, std::span<const ActiveRule> active);

// All findings, ordered by step (whole class first), then level (strongest first), then person (everybody first), then
// rule. A rule speaks once for a person and step, though the person has its condition twice: by what weighs most.
// The class ends with its last step.
//
//   step     where the step meets the demand; with a threshold, only when one side of it takes longer. Measured: that.
//   total    sums over the class and speaks once, at the step where the sum passes the threshold: seconds of work (and
//            of gaps in which what is demanded lasts), repetitions, steps, or ways in that ask it (`changes`; one for
//            each step at most). Measured: the sum over the class.
//   stretch  the same over neighbouring steps without a break; speaks once a stretch. A break is a step that does not
//            meet the demand, or a gap in which it does not last when the unit is seconds and it comes from resting
//            positions. Measured: the sum over the stretch.
//   early    where work begins before that much of the class has passed. Measured: from the start of the class to the
//            beginning of the step's work.
//   late     where work goes on when no more than that much of the class is left: it ends less than that before the
//            end. Measured: from the end of the step's work to the end of the class.
//   order    where less than that lies between the step and the last step before it that meets `after` and has gone on
//            for longer than `lasting`, in a row as for `stretch`, by then. Measured in seconds: from the end of the
//            earlier work to the beginning of the later. In steps: how many stand between; 0 when it comes next.
//   missing  on the class as a whole, when it has steps and none of them meets the demand.
//
// A written instruction that holds on `day` and covers the features sets the level, up or down: the latest given, and
// of two on one day the stronger. Where there is none, a clearance that holds and covers lowers `ask first` to `watch`,
// nothing else. One that names features does not cover a rule that speaks without any. Neither takes a finding away.
std::vector<Finding> screen(const RuleBook& book, std::span<const Person> people, std::span<const ActiveRule> active,
                            std::span<const StepFacts> steps, Date day);
std::vector<Finding> screen(const RuleBook& book, std::span<const Person* const> people,
                            std::span<const ActiveRule> active, std::span<const StepFacts> steps, Date day);

} // namespace matwright
