#pragma once

#include "core/base/Words.h"
#include "core/body/Body.h"
#include "core/movement/Tempo.h"

#include <optional>

namespace matwright {

enum class DoseUnit { repetitions, breaths, seconds };
template <> struct Words<DoseUnit> { static constexpr auto list = wordList("repetitions", "breaths", "seconds"); };

// How sides share a dose. `alternating` changes sides every repetition and the dose counts all of them;
// `each` does the whole dose on one side, then the whole dose on the other.
enum class Sides { together, alternating, each };
template <> struct Words<Sides> { static constexpr auto list = wordList("together", "alternating", "each"); };

struct Dose {
  static constexpr int kMost = 600;

  int amount = 1; // 1 to kMost
  DoseUnit unit = DoseUnit::repetitions;
  friend bool operator==(const Dose&, const Dose&) = default;
};

bool isWellFormed(const Dose& dose);

// The work one side does. `left + right` is the whole for `alternating` and `each`; for `together` the two are
// equal and each is the whole.
struct Work {
  Seconds whole;
  Seconds left, right;
  int repetitions = 0; // passes of the tempo in all, for a dose in seconds the passes that begin
  friend bool operator==(const Work&, const Work&) = default;
};

// work = sides x amount x length of a repetition; a dose in seconds is its own length a side. `only` limits a
// movement with sides `each` to one side and is ignored for the others. An alternating dose starts on the left.
Work workOf(const Dose& dose, const Tempo& tempo, Sides sides, std::optional<Side> only);

} // namespace matwright
