#pragma once

#include "core/base/Date.h"
#include "core/body/Feature.h"
#include "core/people/Condition.h"
#include "core/people/Level.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace matwright {

struct PersonTag;
using PersonId = Id<PersonTag>;

using QualifierValue = std::variant<bool, std::string, Date>; // flag, choice id, date

// What a person's clinician allowed or instructed, and when. It speaks for the features named; with none named, for
// all that belongs to the condition.
struct Clearance {
  Date given{};
  std::optional<Date> until; // the last day on which it holds
  std::string by;            // who gave it, as the teacher notes it
  FeatureSet features;
  std::optional<Level> sets; // a written instruction: what it covers takes this level, whatever a rule says
  std::string note;
  friend bool operator==(const Clearance&, const Clearance&) = default;
};

bool holdsOn(const Clearance& clearance, Date day);

struct PersonCondition {
  ConditionId condition;
  std::map<std::string, QualifierValue> qualifiers; // what is known; the rest is open
  std::vector<Clearance> clearances;
  std::string note;
  friend bool operator==(const PersonCondition&, const PersonCondition&) = default;
};

enum class AgeBand { under18, from18, from40, from65, from80 };
template <> struct Words<AgeBand> {
  static constexpr auto list = wordList("under-18", "18-39", "40-64", "65-79", "80-plus");
};

// Somebody on the mat. The name may be an alias.
struct Person {
  static constexpr double kShortest = 0.8, kTallest = 2.4; // metres
  static constexpr double kLightest = 20, kHeaviest = 300; // kilograms

  PersonId id;
  std::string name;
  std::string initials; // as printed on the card
  std::vector<PersonCondition> conditions;
  std::string note;
  std::optional<AgeBand> ageBand{};
  std::optional<double> stature{}; // metres
  std::optional<double> mass{};    // kilograms
  std::string wishes{};            // what the person comes for
  friend bool operator==(const Person&, const Person&) = default;
};

// Null when there is none; valid as long as what was given.
const Person* findPerson(std::span<const Person> people, const PersonId& id);

// "Rosa Amberley" -> "R.A."; the first letter of each word, at most three.
std::string initialsFrom(const std::string& name);

} // namespace matwright
