// What of a body may give way so that it comes to rest, and how far each ball of it moves by that.
#pragma once

#include "core/figure/Laying.h"
#include "core/figure/LeastChange.h"

namespace matwright {

// How readily each freedom gives way, by what the body rests on. `following`: the body is near its place already, as a
// whole it should hardly move.
FreedomRow readiness(const Laying& laying, bool following);

// The distance of a ball from a height, such as that of the floor or a seat, or from the wall.
Gap heightGap(const Laying& laying, const Ball& ball, double height);
Gap wallGap(const Laying& laying, const Ball& ball);
// How far a ball is beyond a place along x (`along` {1, 0, 0}) or z ({0, 0, 1}); counts less than a distance from floor
// or wall.
Gap placeGap(const Laying& laying, const Ball& ball, Vec3 along, Vec3 place);

// Moves the body by the least change that closes the gaps, as far as joints go and not too far at once. `caution` as in
// leastChange().
void closeGaps(Laying& laying, std::span<const Gap> gaps, const FreedomRow& readiness, double caution);

// For limbs that stay below the floor because slopes lead nowhere: bends a little what is straight and points at the
// floor, stretches an arm that is folded as far as it goes.
void unlock(Laying& laying, std::span<const Gap> gaps);

} // namespace matwright
