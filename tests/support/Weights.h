// What weighed bodies are checked by.
#pragma once

#include "core/load/WeighedBody.h"

namespace matwright::test {

// The set must not be empty.
inline Vec3 centreOfMass(const WeighedBody& body, SegmentSet segments) {
  Vec3 sum;
  double weight = 0;
  segments.forEach([&](Segment segment) {
    sum = sum + body[segment].centre * body[segment].weight;
    weight += body[segment].weight;
  });
  return sum * (1 / weight);
}

// The energy of lifting the segments from the height 0, in body weights times statures.
inline double potentialEnergy(const WeighedBody& body, SegmentSet segments) {
  double energy = 0;
  segments.forEach([&](Segment segment) { energy += body[segment].weight * body[segment].centre.y; });
  return energy;
}

} // namespace matwright::test
