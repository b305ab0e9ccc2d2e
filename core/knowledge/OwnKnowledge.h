// What a studio knows of its own, beside what comes with the program: movements, conditions, sources and rules that its
// teacher wrote, and her own thresholds for rules of the program.
#pragma once

#include "core/knowledge/Knowledge.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace matwright {

// Ids of things of one's own begin with this; no id that comes with the program does.
inline constexpr std::string_view kOwnPrefix = "own-";

template <class Tag> bool isOwn(const Id<Tag>& id) { return id.value.starts_with(kOwnPrefix); }

// Ids are unique within each list and begin with kOwnPrefix; references go to what stands here or comes with the
// program. Both are held by the files and by the document of it, not here.
struct OwnKnowledge {
  std::vector<Movement> movements;
  std::vector<Condition> conditions;
  std::vector<Source> sources;
  std::vector<Rule> rules;
  std::map<RuleId, double> thresholds; // in the unit of the rule; for rules of the program whose threshold is `ours`
  friend bool operator==(const OwnKnowledge&, const OwnKnowledge&) = default;

  bool empty() const { return *this == OwnKnowledge{}; }
};

// Both together: in each list what comes with the program first, then one's own. A threshold of one's own is taken
// where the rule exists and its threshold is `ours`, else left out of account. No id may stand in both.
Knowledge layered(const Knowledge& builtIn, const OwnKnowledge& own);

// Whether a teacher may set her own threshold for the rule: it has one, and it is `ours`.
bool thresholdIsOpen(const Rule& rule);

// What of one's own refers to a thing.
struct Uses {
  std::vector<MovementId> movements; // that name it as prerequisite or counter-movement
  std::vector<RuleId> rules;         // that are for it or cite it
  friend bool operator==(const Uses&, const Uses&) = default;

  bool empty() const { return movements.empty() && rules.empty(); }
};

Uses usesOf(const OwnKnowledge& own, const MovementId& movement);
Uses usesOf(const OwnKnowledge& own, const ConditionId& condition);
Uses usesOf(const OwnKnowledge& own, const SourceId& source);

// All but one thing, with nothing left that refers to it: a movement is no longer named by others, the rules for a
// condition go with it, a source is no longer cited, and a rule that cited nothing else stands on practice.
OwnKnowledge without(OwnKnowledge own, const MovementId& movement);
OwnKnowledge without(OwnKnowledge own, const ConditionId& condition);
OwnKnowledge without(OwnKnowledge own, const SourceId& source);
OwnKnowledge without(OwnKnowledge own, const RuleId& rule);

// Ids for new things, made from a name and unlike all that `all` holds.
MovementId mintMovementId(const Knowledge& all, std::string_view name);
ConditionId mintConditionId(const Knowledge& all, std::string_view name);
SourceId mintSourceId(const Knowledge& all, std::string_view name);
RuleId mintRuleId(const Knowledge& all, std::string_view name);
// A condition with all the rules for it, as things of one's own with ids that `all` does not hold: to be changed
// without touching what the program says. Empty for an unknown id.
OwnKnowledge copyWithRules(const Knowledge& all, const ConditionId& condition, std::string name);

OptionId mintOptionId(const Movement& movement, std::string_view name); // without the prefix

} // namespace matwright
