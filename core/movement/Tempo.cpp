#include "core/movement/Tempo.h"

#include <algorithm>
#include <numeric>

namespace matwright {

int countsOf(const Tempo& tempo) {
  return std::accumulate(tempo.phases.begin(), tempo.phases.end(), 0,
                         [](int sum, const Phase& phase) { return sum + phase.counts; });
}

Seconds lengthOf(const Tempo& tempo) { return tempo.secondsPerCount * countsOf(tempo); }

bool isWellFormed(const Tempo& tempo) {
  const double count = tempo.secondsPerCount.value();
  return count >= Tempo::kFastestCount && count <= Tempo::kSlowestCount && !tempo.phases.empty() &&
         tempo.phases.size() <= Tempo::kMostPhases &&
         std::all_of(tempo.phases.begin(), tempo.phases.end(),
                     [](const Phase& phase) { return phase.counts >= 1 && phase.counts <= Tempo::kMostCounts; });
}

} // namespace matwright
