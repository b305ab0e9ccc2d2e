// What carries a body, and with what force.
//
// The floor pushes straight up. A wall pushes level, away from itself, and the floor then holds with friction as much
// as that needs. Where a body could rest in several ways, as on hands and knees, it rests so that its joints have least
// to hold: the sum of the squares of their moments is least among all that keep it in balance. On its legs alone it may
// shift its weight from one to the other, more than the figure shows. A figure that would fall forward or back is
// carried as far ahead or behind as its weight is.
#pragma once

#include "core/figure/Settle.h"
#include "core/load/WeighedBody.h"

#include <vector>

namespace matwright {

// A place where something pushes.
struct Bearing {
  Segment segment{};
  Vec3 at;
  Vec3 push; // the direction of its force, of length 1
};

// Which points of PosedBody::spine lie on the floor or on what else carries the trunk, by the pose's contacts; where it
// has none of the trunk, wherever the flesh is as low as the floor.
struct Touching {
  std::array<bool, PosedBody::kSpinePoints> points{};
  std::size_t first = 1, last = 0; // of these; none: first > last

  bool any() const { return first <= last; }
};
Touching touchingBelow(const Settled& settled);

// Of a settled body, in the lengths of `body`: trunk, head, hands, forearms and legs where they rest, and where they
// are as low as the floor.
std::vector<Bearing> bearingsOf(const Settled& settled, const WeighedBody& body, const Touching& touching);
inline std::vector<Bearing> bearingsOf(const Settled& settled, const WeighedBody& body) {
  return bearingsOf(settled, body, touchingBelow(settled));
}

// One force for each bearing that carries something. Empty when there is none.
std::vector<Force> reactions(const WeighedBody& body, const std::vector<Bearing>& bearings);

} // namespace matwright
