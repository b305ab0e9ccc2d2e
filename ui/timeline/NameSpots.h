// The places that a name could take beside its block, each with what it costs. Used by placeNames alone.
#pragma once

#include "ui/timeline/NamePlacement.h"

namespace matwright {

// What of a label can be in the way of another: its bounds, and its leader as an upright line within them.
struct NameOutline {
  qreal left = 0, top = 0, right = 0, bottom = 0;
  qreal pole = 0, poleTop = 0, poleBottom = 0;
};

struct NameSpot {
  NameLabel label;
  double cost = 0; // only compared with others
  NameOutline outline;
};

struct NameSpots {
  static constexpr std::size_t kMost = 63;

  std::vector<NameSpot> candidates; // the cheapest first
  qreal left = 0, right = 0;        // of all of them and of the block
};

inline constexpr qreal kNamesApart = 4; // along

// Whether two labels cannot both be where they are.
bool inTheWayOf(const NameOutline& one, const NameOutline& other);

// At most `most` places, up to NameSpots::kMost; near ones, but from several rows, since further rows are what a crowd
// needs.
NameSpots spotsFor(const NameRequest& request, const NameGround& ground, const TextMeasure& measure, std::size_t most);

} // namespace matwright
