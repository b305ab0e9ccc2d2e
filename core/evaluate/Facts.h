#pragma once

#include "core/evaluate/Schedule.h"
#include "core/knowledge/Knowledge.h"
#include "core/screening/Screening.h"

#include <vector>

namespace matwright {

// What each step of a class asks of those who do it, one a step of the schedule, in the order of the class.
//
//   features      = (those of the movement and of all positions it starts or ends a side in) without what its option
//                   takes away, with what the option adds
//   at            = the heights of those positions
//   wayFeatures   = those of the way into it and of the turn between its sides
//   restFeatures  = those that every position from the end of the step before to the start of this one has, without
//                   what the options of the two steps take away. Before the first step people rest where it starts.
//   restAt        = the height that all those positions have, where they have one
//   effort        = of the movement in its option
//   lever         = by Knowledge::loads; since the first time takes a while, worked out only where a rule asks for one
//                   and the step has all else that the rule looks for, and 0 elsewhere
//
// Times are those of the schedule. Of a movement that is not in the catalogue only the position is known.
std::vector<StepFacts> factsOf(const Knowledge& knowledge, const Schedule& schedule);

// What every movement of the catalogue asks, as written and each done once, with its lever; in the order of the
// catalogue.
std::vector<StepFacts> factsOfCatalogue(const Knowledge& knowledge);

} // namespace matwright
