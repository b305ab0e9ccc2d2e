// The way of a movement from its start pose to its end pose.
#pragma once

#include "core/figure/Settle.h"

#include <vector>

namespace matwright {

// The angles part of the way from one pose to the other; view, contacts and mirroring are those of `start` for shares
// below one half, then those of `end`.
Pose interpolated(const Pose& start, const Pose& end, double share);

// `end` moved along the floor so that what rests in both `start` and `end` lies as nearly in one place as it can; with
// nothing in common, so that their pelves share a place.
Settled alignedTo(const Settled& start, const Settled& end);

// All shapes between two key poses. The angles go evenly from the one to the other; what rests in both goes on resting,
// gliding evenly to its place in the end pose; nothing sinks; arms whose straight way leads through the floor go round
// by the side. Worked out once, in about the time of fifty poses.
class Passage {
public:
  static constexpr int kLinks = 24; // the shapes at these shares of the way are settled, those between are mixed

  Passage(const Settled& start, const Settled& end);

  // The shape after a share of the way, 0 (start) to 1 (end, aligned to the start).
  Settled at(double share) const;

  const Settled& start() const { return shapes_.front(); }
  const Settled& end() const { return shapes_.back(); }

private:
  std::vector<Settled> shapes_; // evenly spaced, never empty
};

} // namespace matwright
