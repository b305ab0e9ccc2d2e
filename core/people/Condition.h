#pragma once

#include "core/base/Date.h"
#include "core/base/Id.h"
#include "core/base/Words.h"

#include <string>
#include <vector>

namespace matwright {

struct ConditionTag;
using ConditionId = Id<ConditionTag>;

// What kind of answer a qualifier takes. `weeksSince`: the date of an event; `pregnancyWeek`: the due date, the
// week being 40 less the whole weeks to go; `choice`: one of a list; `flag`: yes or no.
enum class QualifierKind { weeksSince, pregnancyWeek, choice, flag };
template <> struct Words<QualifierKind> {
  static constexpr auto list = wordList("weeksSince", "pregnancyWeek", "choice", "flag");
};

// The week that a date stands for on a day: whole weeks since an event, or the week of a pregnancy by its due date, a
// part of a week before it counting as no week to go. Negative before the event. For the two kinds that hold dates.
int weekOn(QualifierKind kind, Date date, Date day);

struct Choice {
  std::string id;
  std::string name;
  friend bool operator==(const Choice&, const Choice&) = default;
};

struct QualifierSpec {
  std::string id;
  std::string name;
  QualifierKind kind{};
  std::vector<Choice> choices; // for `choice` only
  friend bool operator==(const QualifierSpec&, const QualifierSpec&) = default;
};

// Something that may be known about a person and that rules may ask for.
struct Condition {
  ConditionId id;
  std::string name;
  std::vector<std::string> icd10;
  std::string about;
  std::vector<QualifierSpec> qualifiers;
  friend bool operator==(const Condition&, const Condition&) = default;
};

const QualifierSpec* findQualifier(const Condition& condition, const std::string& qualifier);

} // namespace matwright
