#pragma once

#include "core/base/Date.h"
#include "core/base/Id.h"
#include "core/body/Body.h"
#include "core/body/Feature.h"
#include "core/people/Condition.h"
#include "core/people/Level.h"
#include "core/people/Person.h"
#include "core/units/Units.h"

#include <optional>
#include <string>
#include <vector>

namespace matwright {

struct RuleTag;
using RuleId = Id<RuleTag>;
struct SourceTag;
using SourceId = Id<SourceTag>;

// What a rule looks at:
//
//   step        what a step asks
//   way         what getting there asks
//   total       a running total over the class
//   stretch     a stretch in a row, without a break
//   early       a step of which a part lies in the first part of the class
//   late        a step of which a part lies in the last part of the class
//   order       a step too soon after one of another kind
//   missing     a class in which no step asks something that it should
//   wholeClass  the class as a whole, whatever is in it
enum class Scope { step, way, total, stretch, early, late, order, missing, wholeClass };
template <> struct Words<Scope> {
  static constexpr auto list =
      wordList("step", "way", "total", "stretch", "early", "late", "order", "missing", "class");
};

enum class Strength { guideline, consensus, evidence, practice };
template <> struct Words<Strength> {
  static constexpr auto list = wordList("guideline", "consensus", "evidence", "practice");
};

// How far the project verified what a rule says of its sources.
enum class Verification { seen, secondary, cited, memory };
template <> struct Words<Verification> {
  static constexpr auto list = wordList("seen", "secondary", "cited", "memory");
};

enum class SourceKind { guideline, consensus, study, review, publicBody, practice };
template <> struct Words<SourceKind> {
  static constexpr auto list = wordList("guideline", "consensus", "study", "review", "public-body", "practice");
};

enum class ThresholdOrigin { published, ours };
template <> struct Words<ThresholdOrigin> { static constexpr auto list = wordList("published", "ours"); };

// `changes`: ways into steps. `percent`: of the length of the class.
enum class MeasureUnit { seconds, repetitions, steps, changes, percent };
template <> struct Words<MeasureUnit> {
  static constexpr auto list = wordList("seconds", "repetitions", "steps", "changes", "percent");
};

struct Source {
  SourceId id;
  std::string cite;
  SourceKind kind{};
  friend bool operator==(const Source&, const Source&) = default;
};

// A test on one qualifier of the condition. For weeks: from <= week < below, either bound may be open. For
// choices: one of `choices`. For flags: equal to `flag`.
struct QualifierTest {
  std::string qualifier;
  std::optional<int> from, below;
  std::vector<std::string> choices;
  std::optional<bool> flag;
  bool openHolds = true; // whether it holds while nobody has filled the qualifier in
  friend bool operator==(const QualifierTest&, const QualifierTest&) = default;
};

// The amount by which a rule is raised; its scope says what is measured and to which side of the amount it speaks.
//
//   total, stretch, step   raised when there is more
//   early, late, order     raised when there is less
struct Threshold {
  static constexpr double kMost = 24 * 3600; // whatever the unit

  double amount = 0;
  MeasureUnit unit{};
  ThresholdOrigin origin{};
  double usual = 0; // as it came with the program; `amount` differs from it where the teacher set her own
  friend bool operator==(const Threshold&, const Threshold&) = default;
};

// What is asked of the body at one place of a class, as far as a rule can look for it.
struct Asked {
  FeatureSet features;
  EnumSet<Elevation> at;
  Effort effort;
  int lever = 0; // whole percent of the straight-leg value, as in StepFacts
  friend bool operator==(const Asked&, const Asked&) = default;
};

// What a rule looks for. All that it names must hold together; a demand that names nothing is never met.
struct Demand {
  static constexpr int kMostLever = 200;

  FeatureSet any;        // one of them is enough; empty: no such demand
  FeatureSet all;        // all together
  EnumSet<Elevation> at; // one of these heights; empty: whatever the height
  int effortFrom = 0;    // this effort or more; 0: whatever the effort
  int leverFrom = 0;     // this percentage of the straight-leg value or more, up to kMostLever; 0: whatever the lever
  friend bool operator==(const Demand&, const Demand&) = default;
};

bool namesNothing(const Demand& demand);

// The features by which a demand is met, which may be none; nothing when it is not met.
std::optional<FeatureSet> met(const Demand& demand, const Asked& asked);

// What came before, in a rule on the order of steps.
struct Earlier {
  Demand demand;
  Seconds lasting; // counts only when it took longer than this without a break; 0: however short it was
  friend bool operator==(const Earlier&, const Earlier&) = default;
};

struct Rule {
  static constexpr int kLongestInstead = 8; // words

  RuleId id;
  std::optional<ConditionId> condition; // none: whatever the condition
  EnumSet<AgeBand> ages;                // empty: whatever the age
  std::vector<QualifierTest> when;      // all must hold
  Demand asks;                          // empty for wholeClass, and only there
  Scope scope{};
  std::optional<Threshold> threshold; // none for way, missing and wholeClass; a step may have one; the others have one
  std::optional<Earlier> after;       // for order, and only there
  Level level{};
  std::string why;
  std::string instead;
  Strength strength{};
  Verification check{};
  std::string contested; // empty when undisputed
  std::vector<SourceId> sources;
  Date reviewed{};
  friend bool operator==(const Rule&, const Rule&) = default;
};

// Whether a rule is for people of its kind and not for everybody.
inline bool isForSome(const Rule& rule) { return rule.condition || !rule.ages.empty(); }

// Conditions, rules and their sources. Ids are unique within each list and every reference resolves.
struct RuleBook {
  std::vector<Condition> conditions;
  std::vector<Source> sources;
  std::vector<Rule> rules;

  const Condition* findCondition(const ConditionId& id) const;
  const Source* findSource(const SourceId& id) const;
  const Rule* findRule(const RuleId& id) const;
};

// The demands of rules that look for a long lever; they point into the book.
std::vector<const Demand*> leverDemands(const RuleBook& book);

} // namespace matwright
