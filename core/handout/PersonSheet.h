// What somebody and her teacher bring to a talk with her clinician, as data: no fonts, no sentences that would be
// translated.
#pragma once

#include "core/handout/Card.h"

namespace matwright {

struct SheetQualifier {
  QualifierSpec spec;
  std::optional<QualifierValue> answer; // a choice by its name; none: open
  int week = 0;                         // what a date stands for on the day
  friend bool operator==(const SheetQualifier&, const SheetQualifier&) = default;
};

enum class PaperState { holds, expired, toCome };

// A clearance or a written instruction, on the day of the sheet.
struct SheetPaper {
  Clearance clearance;
  PaperState state{};
  friend bool operator==(const SheetPaper&, const SheetPaper&) = default;
};

struct SheetCondition {
  std::string name;     // the id of one that is not on the list
  bool screened = true; // false: no rule asks for it
  std::vector<std::string> icd10;
  std::vector<SheetQualifier> qualifiers; // in the order of the condition
  std::vector<SheetPaper> papers;
  std::string note;
  friend bool operator==(const SheetCondition&, const SheetCondition&) = default;
};

// A step of the class as she does it.
struct SheetStep {
  std::size_t number = 0; // from 1
  std::string name;
  std::string option; // empty as written
  friend bool operator==(const SheetStep&, const SheetStep&) = default;
};

// A rule that speaks for her, or the part of it that one level holds for: a paper may cover some of its features. One
// on what a class has nowhere is there only where a class is given of which that is true.
struct SheetRule {
  Rule rule;
  Demand asks;         // of the rule, or the part of it
  bool partly = false; // where the rest comes with it, the rule speaks as it stands
  bool assumed = false;
  std::optional<int> movements; // of the catalogue, as written; none where the rule does not look at movements
  std::vector<SheetStep> steps; // that raise it
  bool onClass = false;         // raised by the class as a whole
  friend bool operator==(const SheetRule&, const SheetRule&) = default;
};

// Rules that say the same.
struct SheetRow {
  Level level{};
  std::string instead, why;
  std::vector<std::string> conditions; // names; none where her age is the reason
  std::optional<Clearance> paper;      // that lowered the level, or set it where it is an instruction
  std::vector<SheetRule> rules;
  friend bool operator==(const SheetRow&, const SheetRow&) = default;
};

// What the sheet asks. Nothing is asked that does not follow from what is on it.
//
//   permission  a row at `ask first`: whether she may
//   renewal     a paper that has expired, and that no other one on the condition stands in for
//   qualifier   something about a condition that is open
//   unscreened  what no rule says about a condition
//   age         her age band, which is open, and by which some rules speak
enum class QuestionKind { permission, renewal, qualifier, unscreened, age };

// Rules that hang on an answer.
struct Hanging {
  int count = 0;
  Level strongest{};
  friend bool operator==(const Hanging&, const Hanging&) = default;
};

struct SheetQuestion {
  QuestionKind kind{};
  std::string condition;               // its name
  std::size_t row = 0;                 // for permission: place in the rows
  std::optional<SheetPaper> paper;     // for renewal
  std::optional<SheetQualifier> asked; // for qualifier
  Hanging speaking;                    // rules that speak because it is open
  Hanging silent;                      // rules that are silent because it is open
  friend bool operator==(const SheetQuestion&, const SheetQuestion&) = default;
};

struct PersonSheet {
  std::string who; // initials, or the name when the teacher says so
  std::optional<AgeBand> ageBand;
  std::optional<double> stature, mass;
  std::string wishes;
  Date day{};
  std::optional<std::string> className; // none: without a class
  std::vector<SheetCondition> conditions;
  std::vector<SheetRow> rows; // strongest first, then in the order of her conditions and of the rules
  int movements = 0;          // in the catalogue
  int forEverybody = 0;       // rules that speak for everybody and are not among the rows
  std::vector<SheetQuestion> questions;
  std::vector<Source> sources; // that the rows cite, in the order in which they do
  friend bool operator==(const PersonSheet&, const PersonSheet&) = default;
};

PersonSheet personSheetOf(const Knowledge& knowledge, const Person& person, Date day, NameStyle style);

// With the steps of a class that raise the rules, for those whom the class names; for others it is as without it. The
// class was evaluated for that day.
PersonSheet personSheetOf(const Knowledge& knowledge, const Person& person, Date day, NameStyle style,
                          const ClassPlan& plan, const Evaluation& evaluation);

} // namespace matwright
