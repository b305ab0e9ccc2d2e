#pragma once

#include "core/base/Date.h"
#include "core/body/Feature.h"
#include "core/people/Condition.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace matwright {

struct PersonTag;
using PersonId = Id<PersonTag>;

using QualifierValue = std::variant<bool, std::string, Date>; // flag, choice id, date

// What a person's clinician allowed, and when. It speaks for the features named; with none named, for all that
// belongs to the condition.
struct Clearance {
  Date given{};
  std::optional<Date> until; // the last day on which it holds
  std::string by;            // who gave it, as the teacher notes it
  FeatureSet features;
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

// Somebody on the mat. The name may be an alias.
struct Person {
  PersonId id;
  std::string name;
  std::string initials; // as printed on the card
  std::vector<PersonCondition> conditions;
  std::string note;
  friend bool operator==(const Person&, const Person&) = default;
};

// "Rosa Amberley" -> "R.A."; the first letter of each word, at most three.
std::string initialsFrom(const std::string& name);

} // namespace matwright
