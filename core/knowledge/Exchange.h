// What teachers give each other of their own knowledge: what goes along with a thing, and how what is given becomes
// part of one's own.
#pragma once

#include "core/knowledge/OwnKnowledge.h"

namespace matwright {

// A thing of one's own with all of one's own that it needs to be read elsewhere: the movements that a movement names,
// and theirs; the condition that a rule is for and the sources that it cites; the rules for a condition, and what they
// need. Empty for an unknown id.
OwnKnowledge withWhatItNames(const OwnKnowledge& own, const MovementId& movement);
OwnKnowledge withWhatItNames(const OwnKnowledge& own, const ConditionId& condition);
OwnKnowledge withWhatItNames(const OwnKnowledge& own, const RuleId& rule);

// One's own conditions, sources, rules and thresholds: all but the movements.
OwnKnowledge screeningOf(const OwnKnowledge& own);

struct Merged {
  OwnKnowledge own;                   // with what was taken
  OwnKnowledge taken;                 // what was not there, by the ids that it has now
  int alreadyHere = 0;                // things that are there, the same in every letter and in all that they name
  int renamed = 0;                    // of those taken, whose id was something else's
  std::vector<RuleId> keptThresholds; // for which one's own amount is another, and stays
  std::vector<RuleId> idleThresholds; // for rules that have no threshold to set, and are not taken
};

// One's own knowledge with what came. Nothing of one's own is changed or lost: what came under an id that something
// else has here is taken under a new one, also where it is named, unless the very same was taken so before. What came
// is a whole: what it names stands in it or comes with the program.
Merged merged(const Knowledge& builtIn, const OwnKnowledge& own, const OwnKnowledge& incoming);

} // namespace matwright
