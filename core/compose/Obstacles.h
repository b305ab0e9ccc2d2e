#pragma once

#include "core/compose/Offer.h"

namespace matwright {

// What makes it impossible, by the wishes alone and before anything is searched for: every obstacle found is a proof.
std::vector<Obstacle> proofsAgainst(const ClassWishes& wishes, const Offer& offer);

// Who is to leave out the whole class.
std::vector<Obstacle> keptOut(const Knowledge& knowledge, const Group& group, const ClassPlan& blank);

// The same wishes without one of them; what is left out is told by the obstacle.
struct Relaxed {
  Obstacle obstacle; // of kind onlyWithout
  ClassWishes wishes;
};
std::vector<Relaxed> relaxations(const Knowledge& knowledge, const ClassWishes& wishes);

} // namespace matwright
