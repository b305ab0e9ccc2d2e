// A settled body as seen from one side: flat shapes in drawing order, in statures, y up, the floor at y = 0 where the
// view shows one.
#pragma once

#include "core/figure/Resting.h"
#include "core/figure/Settle.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace matwright {

struct Point2 {
  double x = 0, y = 0;
  friend constexpr bool operator==(Point2, Point2) = default;
};

// A box in the picture. Empty until something is taken in.
struct Extent {
  Point2 lowest{1e9, 1e9}, highest{-1e9, -1e9};

  void takeIn(Point2 point, double radius = 0) {
    lowest = {std::min(lowest.x, point.x - radius), std::min(lowest.y, point.y - radius)};
    highest = {std::max(highest.x, point.x + radius), std::max(highest.y, point.y + radius)};
  }
  void unite(const Extent& other) {
    takeIn(other.lowest);
    takeIn(other.highest);
  }
  double width() const { return highest.x - lowest.x; }
  double height() const { return highest.y - lowest.y; }
  friend bool operator==(const Extent&, const Extent&) = default;
};

// A round piece of flesh in the picture. The shape of a part is what its beads sweep, each to the next.
struct Bead {
  Point2 at;
  double radius = 0;
  Point2 front; // towards the front of the body, as long as it is seen (0 when it points at the viewer or away)
};

struct PicturePart {
  static constexpr std::size_t kMostBeads = PosedBody::kSpinePoints;

  BodyPart part = BodyPart::trunk;
  // The trunk has a row of beads on either side of the spine, the limbs and the head have one row (`right` is as
  // `left`). A leg: hip, knee, ankle, heel, toes; an arm: shoulder, elbow, wrist, fingertips; the head: base of the
  // skull, middle, nose.
  std::array<Bead, kMostBeads> left, right;
  std::size_t count = 0;
  double depth = 0; // of its middle, greater is nearer to the viewer
  // 0 on the near side of the body or in its middle, 1 on the side away from the viewer, or far behind other parts when
  // the body points at the viewer.
  double farness = 0;
};

// A piece of what carries the body or is held by it.
struct PicturePiece {
  enum class Kind {
    area,  // filled
    frame, // only its edge: what stands before the body
    line,  // as wide as twice the radius
    loop,  // the same, closed
    disc   // of that radius
  };
  Kind kind = Kind::area;
  bool held = false;
  std::vector<Point2> points;
  double radius = 0;
  double depth = 0; // as of a part
};

struct Picture {
  static constexpr std::size_t kParts = 6;

  std::array<PicturePart, kParts> parts; // the farthest first
  std::vector<PicturePiece> pieces;      // the farthest first
  Extent extent;        // of the body, what it rests on and holds, its floor, its wall, and seen from above its mat
  bool hasFloor = true; // false seen from above
  std::optional<double> wall; // x of the wall's line
  double wallSide = 1;        // +1 when the body is to the left of it
  bool wallBehind = false;    // a wall that is seen flat, behind the body
  std::optional<Extent> mat;  // what the body lies on, seen from above
};

Picture pictureOf(const Settled& settled);

// Where a place of the world is in the picture.
Point2 seenFrom(View view, bool flip, Vec3 place);
// How near to the viewer it is.
double depthFrom(View view, Vec3 place);

} // namespace matwright
