#pragma once

#include "core/knowledge/Knowledge.h"

#include <QString>
#include <optional>
#include <set>
#include <span>
#include <vector>

namespace matwright {

// Which rules are listed. Of several values in one set one is enough; all else that is asked for must hold together.
struct RuleFilter {
  QString words; // all of them must be found: in the name of the condition, what is asked, why, instead or a source
  EnumSet<Level> levels;
  EnumSet<Scope> scopes;
  EnumSet<Strength> strengths;
  bool contested = false;
  bool own = false;
  bool open = false;    // a threshold of the program that may be changed
  bool changed = false; // one that was
  bool onFile = false;  // it concerns somebody on file
  friend bool operator==(const RuleFilter&, const RuleFilter&) = default;

  bool asksForMoreThanWords() const;
  bool asks() const { return asksForMoreThanWords() || !words.trimmed().isEmpty(); }
};

struct RuleRow {
  RuleId rule;
  Level level{};
  QString title, body;
  QString mark;   // "your own", "not kept yet", "your threshold"; empty for none
  QString spoken; // all of it
};

// The rules for one condition, or, without one, those for everybody and by age.
struct RuleGroup {
  std::optional<ConditionId> condition;
  QString title, body;
  QString mark; // "your own", "not kept yet"; empty for none
  std::vector<RuleRow> rows;
};

// What of one's own is written, but cannot be kept yet. It is listed whatever is asked for.
struct Unkept {
  std::set<RuleId> rules;
  std::set<ConditionId> conditions;
};

// Those for everybody first, then by the names of the conditions; in each group the strongest first. A group without
// rows is left out, except that a condition for which there is no rule yet is there when no more is asked than words
// that it has and whose it is.
std::vector<RuleGroup> ruleGroups(const RuleBook& book, const RuleFilter& filter, const std::set<RuleId>& onFile,
                                  const Unkept& unkept = {});

// The rules that hold for somebody of these on a day whatever the class, without those for everybody.
std::set<RuleId> rulesConcerning(const RuleBook& book, std::span<const Person> people, Date day);

// Whether the teacher set another threshold for a rule of the program.
bool thresholdIsChanged(const Rule& rule);

} // namespace matwright
