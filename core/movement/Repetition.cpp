#include "core/movement/Repetition.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

// Sets off and arrives gently.
double eased(double part) { return part * part * (3 - 2 * part); }

bool moves(Breath breath) { return breath == Breath::in || breath == Breath::out; }

// The share of the way after `done` of `all` carrying phases, and a part of the next.
double shareAfter(int done, int all, double part) {
  if (all == 1)
    return part < 0.5 ? eased(2 * part) : eased(2 - 2 * part);
  const int there = (all + 1) / 2;
  if (done < there)
    return (done + eased(part)) / there;
  return 1 - (done - there + eased(part)) / (all - there);
}

} // namespace

RepetitionMoment momentAt(const Tempo& tempo, Seconds since) {
  const double whole = lengthOf(tempo).value();
  const double counts = std::fmod(std::max(since.value(), 0.0), whole) / tempo.secondsPerCount.value();
  const auto carrying =
      std::count_if(tempo.phases.begin(), tempo.phases.end(), [](const Phase& phase) { return moves(phase.breath); });
  const int all = static_cast<int>(carrying > 0 ? carrying : static_cast<std::ptrdiff_t>(tempo.phases.size()));
  int done = 0;
  double before = 0;
  RepetitionMoment moment;
  for (std::size_t i = 0; i < tempo.phases.size(); ++i) {
    const Phase& phase = tempo.phases[i];
    const bool carries = carrying == 0 || moves(phase.breath);
    moment.phase = i;
    moment.breath = phase.breath;
    const double into = std::clamp(counts - before, 0.0, static_cast<double>(phase.counts));
    moment.count = std::min(static_cast<int>(into) + 1, phase.counts);
    if (carries)
      moment.share = shareAfter(done, all, into / phase.counts);
    else
      moment.share = done == all || done == 0 ? 0 : shareAfter(done - 1, all, 1);
    before += phase.counts;
    if (counts < before)
      break;
    done += carries ? 1 : 0;
  }
  return moment;
}

} // namespace matwright
