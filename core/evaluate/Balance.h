#pragma once

#include "core/evaluate/Schedule.h"
#include "core/plan/ClassWishes.h"

#include <array>
#include <vector>

namespace matwright {

struct Share {
  Seconds time;
  double effortSeconds = 0; // effort (0 to 10) x seconds
  friend bool operator==(const Share&, const Share&) = default;
};

// A stretch of work at one effort. A step done on each side gives two when there is a turn between them.
struct EffortSpan {
  Seconds from, to;
  Effort effort;
  std::size_t step = 0; // index in the schedule
  friend bool operator==(const EffortSpan&, const EffortSpan&) = default;
};

// Only work counts, not the gaps. A movement gives its whole time to its main region and spine action, and half of it
// to each further one. Its time goes to the elevation of its position, half to each when it starts and ends in two. A
// movement that is not in the catalogue counts for its elevation alone, with no effort.
struct Balance {
  std::array<Share, kWordCount<Region>> regions{};
  std::array<Share, kWordCount<SpineAction>> spine{};
  std::array<Share, kWordCount<Elevation>> elevations{};
  Seconds left, right;            // of movements that have sides
  std::vector<EffortSpan> effort; // work only, in order
  double meanEffort = 0;          // over the length of the class
  friend bool operator==(const Balance&, const Balance&) = default;
};

// Sides match when they differ by less than a second.
bool sidesMatch(const Balance& balance);

Balance balanceOf(const TransitionGraph& graph, const Schedule& schedule);

// The effort wished for at a moment of a class of this length, 0 to 10.
double wishedEffort(Seconds at, Seconds length, const EffortArc& arc = usualArc());

} // namespace matwright
