// What each rule says along a class, whoever it speaks for.
#pragma once

#include "core/screening/Screening.h"

#include <span>
#include <vector>

namespace matwright {

// One thing that a rule says.
struct Voice {
  std::size_t step = Finding::kNone; // kNone: on the class as a whole
  FeatureSet because;
  double measured = 0;
  std::size_t earlier = Finding::kNone;
};

// In the order of steps, at most one for each of them; what is said on the whole class stands alone.
std::vector<Voice> voicesOf(const Rule& rule, std::span<const StepFacts> steps);

} // namespace matwright
