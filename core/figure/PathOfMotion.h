// The ways of the parts that travel most in a movement, as its picture shows them.
#pragma once

#include "core/figure/Passage.h"
#include "core/figure/Picture.h"

#include <vector>

namespace matwright {

// The places of the body whose way is told: each limb by its end and its middle joint, the trunk by both of its ends.
enum class Traveller { head, pelvis, handNear, handFar, elbowNear, elbowFar, footNear, footFar, kneeNear, kneeFar };

Point2 placeOf(const Settled& shape, Traveller traveller);

struct PathOfMotion {
  Traveller traveller{};
  // In statures, in the plane of the picture: in order from outside the flesh of the limb as it starts to outside its
  // flesh as it ends; at least two points. Every one lies on the true way.
  std::vector<Point2> points;

  double length() const;
  friend bool operator==(const PathOfMotion&, const PathOfMotion&) = default;
};

// The way of what travels farthest, and where another part goes a clearly different way, that one too. Empty when
// nothing travels far enough to be read in a picture, or when the two ends are seen from different sides.
std::vector<PathOfMotion> pathsOfMotion(const Passage& passage);

} // namespace matwright
