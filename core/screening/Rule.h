#pragma once

#include "core/base/Date.h"
#include "core/base/Id.h"
#include "core/body/Feature.h"
#include "core/people/Condition.h"
#include "core/people/Level.h"

#include <optional>
#include <string>
#include <vector>

namespace matwright {

struct RuleTag;
using RuleId = Id<RuleTag>;
struct SourceTag;
using SourceId = Id<SourceTag>;

// What a rule looks at: what a step asks, what getting there asks, a running total over the class, a stretch in a
// row without a break, or the class as a whole.
enum class Scope { step, way, total, stretch, wholeClass };
template <> struct Words<Scope> { static constexpr auto list = wordList("step", "way", "total", "stretch", "class"); };

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

enum class MeasureUnit { seconds, repetitions };
template <> struct Words<MeasureUnit> { static constexpr auto list = wordList("seconds", "repetitions"); };

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

struct Threshold {
  double amount = 0; // raised when the sum is greater
  MeasureUnit unit{};
  ThresholdOrigin origin{};
  friend bool operator==(const Threshold&, const Threshold&) = default;
};

struct Rule {
  RuleId id;
  std::optional<ConditionId> condition; // none: for everybody
  std::vector<QualifierTest> when;      // all must hold
  FeatureSet any;                       // one of them is enough; empty: no such demand
  FeatureSet all;                       // all together
  Scope scope{};
  std::optional<Threshold> over; // for total and stretch, and only there
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

// The features of `asked` that make the rule speak; empty when it stays silent.
FeatureSet matched(const Rule& rule, FeatureSet asked);

// Conditions, rules and their sources. Ids are unique within each list and every reference resolves.
struct RuleBook {
  std::vector<Condition> conditions;
  std::vector<Source> sources;
  std::vector<Rule> rules;

  const Condition* findCondition(const ConditionId& id) const;
  const Source* findSource(const SourceId& id) const;
};

} // namespace matwright
