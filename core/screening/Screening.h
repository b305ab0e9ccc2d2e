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
  int repetitions = 0;      // passes of the tempo, on all sides together
  FeatureSet shapeFeatures; // those of `features` that come from the positions the step rests in
  friend bool operator==(const StepFacts&, const StepFacts&) = default;
};

// One thing found. Indices refer to the lists that were given.
struct Finding {
  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);

  std::size_t rule = 0;
  std::size_t person = kNone;    // kNone: the rule is for everybody
  std::size_t condition = kNone; // which of the person's conditions
  std::size_t step = kNone;      // kNone: the class as a whole. For total and stretch: where the sum passes
  Level level{};                 // after clearances
  FeatureSet because;            // the features that made the rule speak
  bool cleared = false;          // a clearance lowered `ask first` to `watch`
  bool assumed = false;          // an open qualifier was taken as holding
  double measured = 0;           // total and stretch: the sum reached at the end of it, in the threshold's unit
  friend bool operator==(const Finding&, const Finding&) = default;
};

// A rule that holds for a person on a day whatever the class: its condition is there and no qualifier speaks
// against it. The day decides weeks and clearances.
struct ActiveRule {
  std::size_t rule = 0;
  std::size_t person = Finding::kNone;
  std::size_t condition = Finding::kNone;
  bool assumed = false; // a qualifier that nobody filled in was taken as holding
  friend bool operator==(const ActiveRule&, const ActiveRule&) = default;
};

// Ordered by person (rules for everybody first), then rule, then condition. A value of the wrong kind, or a choice that
// the condition does not have, is as good as none: it is taken as open. The week of an event still to come counts as
// week 0. The week of pregnancy goes on counting after the due date.
std::vector<ActiveRule> activeRules(const RuleBook& book, std::span<const Person> people, Date day);
// The same for people who do not lie in a row; the result refers to places in the list of pointers.
std::vector<ActiveRule> activeRules(const RuleBook& book, std::span<const Person* const> people, Date day);

// The features that the way-scope rules among `active` ask to avoid for at least one person, from level `adapt`
// up. A clearance does not remove one: a gentler way costs nobody anything.
FeatureSet featuresToAvoidOnWays(const RuleBook& book, std::span<const ActiveRule> active);

// All findings, ordered by step (whole class first), then level (strongest first), then person (everybody first), then
// rule. A rule speaks once for a person and step, though the person has its condition twice: by what weighs most.
// `total`: sums work (and the gaps in which the feature lasts, when the unit is seconds) over the class and speaks
// once, at the step where the sum passes the threshold. `stretch`: the same over neighbouring steps without a break;
// speaks once a stretch. A break is a step without the feature, or a gap in which it does not last when the unit is
// seconds and the feature comes from resting positions. A clearance that holds on `day` and covers the features lowers
// `ask first` to `watch`, nothing else; one that names features does not cover a rule that speaks without any.
std::vector<Finding> screen(const RuleBook& book, std::span<const Person> people, std::span<const ActiveRule> active,
                            std::span<const StepFacts> steps, Date day);
std::vector<Finding> screen(const RuleBook& book, std::span<const Person* const> people,
                            std::span<const ActiveRule> active, std::span<const StepFacts> steps, Date day);

} // namespace matwright
