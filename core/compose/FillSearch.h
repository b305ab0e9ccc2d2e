#pragma once

#include "core/compose/FillProblem.h"

#include <functional>
#include <optional>

namespace matwright {

struct FillLimits {
  std::int64_t evaluations = 0; // fillings weighed
  std::uint64_t seed = 1;
  bool firstOnly = false;                      // the first that keeps all is enough
  const std::function<bool()>* stop = nullptr; // asked often; may be null
  std::function<void(std::optional<std::int64_t> cost, std::int64_t evaluations)> progress; // may be empty
};

struct FillAnswer {
  std::optional<Filling> filling; // keeps all that must be kept; none was found otherwise
  FillWeight weight;              // of it
  std::int64_t evaluations = 0;
  bool stopped = false;
};

// A filling that costs little: built from the beginning by a few lines at once, annealed from there, and at last
// bettered by every single change that makes it cheaper. The same problem, seed and number of evaluations give the same
// answer.
FillAnswer solveFill(const FillProblem& problem, const FillLimits& limits);

} // namespace matwright
