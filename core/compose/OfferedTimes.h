// What of a problem follows from wishes once the items are there.
#pragma once

#include "core/compose/Offer.h"

namespace matwright {

// What movements need, what counters which flexion, what is known and what is to be included.
void relateFamilies(const ClassWishes& wishes, Offer& offer);

// How long the whole and its sections may be, and the effort wished for at every second.
void boundTimes(const ClassWishes& wishes, FillProblem& problem);

// What should get much time, and what each item gives to it: focus first (regions, what the spine does, skills), then
// what a round class has. `schedule` and `facts` are of the items.
void wishForTime(const ClassWishes& wishes, const Schedule& schedule, std::span<const StepFacts> facts,
                 FillProblem& problem);

} // namespace matwright
