#pragma once

#include "core/base/Words.h"
#include "core/units/Units.h"

#include <vector>

namespace matwright {

enum class Breath { in, out, free, hold };
template <> struct Words<Breath> { static constexpr auto list = wordList("in", "out", "free", "hold"); };

struct Phase {
  Breath breath = Breath::free;
  int counts = 1; // 1 to 60
  friend bool operator==(const Phase&, const Phase&) = default;
};

// How one repetition runs: its phases in order, and how long a count is. A held shape is a phase.
struct Tempo {
  static constexpr double kFastestCount = 0.2; // seconds
  static constexpr double kSlowestCount = 10.0;
  static constexpr int kMostPhases = 12;
  static constexpr int kMostCounts = 60;

  Seconds secondsPerCount{1.0};
  std::vector<Phase> phases{Phase{}};

  friend bool operator==(const Tempo&, const Tempo&) = default;
};

int countsOf(const Tempo& tempo);

// The length of one repetition: the sum of counts times seconds a count.
Seconds lengthOf(const Tempo& tempo);

// True when phases and counts are within the bounds above.
bool isWellFormed(const Tempo& tempo);

} // namespace matwright
