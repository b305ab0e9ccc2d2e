// Where a moving figure is within the repetitions of its movement.
#pragma once

#include "core/movement/Tempo.h"

#include <cstddef>

namespace matwright {

struct RepetitionMoment {
  std::size_t phase = 0; // of the tempo
  Breath breath = Breath::free;
  int count = 1;    // within the phase, from 1
  double share = 0; // of the way from the start pose (0) to the end pose (1)
  friend bool operator==(const RepetitionMoment&, const RepetitionMoment&) = default;
};

// The moment after a time from the start of the first repetition; repetitions follow one another. The phases with a
// breath carry the body, the first half of them to the end pose and the others back; a free phase or a held breath
// between them holds the shape. When all phases are free they carry. A lone carrying phase goes there and back. The
// tempo must be well formed; times before the start count as the start.
RepetitionMoment momentAt(const Tempo& tempo, Seconds since);

} // namespace matwright
