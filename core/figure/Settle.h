// Puts a posed body down: what its pose says rests on floor, wall, chair, roller or cushion does, and nothing sinks
// below the floor.
//
// The trunk goes first: what it lies or sits on gives the height of the whole. Where the body rests on its limbs alone,
// and on both ends of itself (hands and knees, hands and toes, upper back and feet), the whole body tilts until both
// ends touch. Then each resting limb is bent at hip and knee, or shoulder and elbow, by as little as brings it to the
// floor. Feet and hands that rest are laid flat, a resting head nods. A limb that would sink is lifted.
// No joint is turned further than joints go (JointLimits.h): what cannot rest then is told as a gap.
#pragma once

#include "core/figure/PosedBody.h"
#include "core/figure/Support.h"

#include <optional>
#include <span>

namespace matwright {

struct Settled {
  Articulation articulation; // with the angles as they became
  PosedBody body;
  std::optional<Wall> wall;
  Furniture furniture;
  double largestGap = 0;  // the widest distance between floor, wall or support and what should rest there, in statures
  double deepestSink = 0; // how far the lowest part lies below the floor, in statures
};

Settled settled(const Pose& pose);

// Where along the floor a contact should rest: the middle of what rests.
struct Hold {
  Contact contact{};
  Vec3 place; // its height does not count
};

// The same from a place near where it will rest, for shapes that follow one another: it rests where `holds` say as far
// as it can. `wall` is where the wall is thought to stand, if known.
Settled settledFrom(const Articulation& near, std::span<const Hold> holds, std::optional<Wall> wall = {});

// The middle of what rests by a contact of a limb; for the trunk, the part of it that says where the body is.
Vec3 placeOf(const PosedBody& body, Contact contact);

// How far above what it rests on (+), or the floor when it rests nowhere, or below it (-) the surface of one contact's
// lowest place is, in statures.
double clearance(const Settled& shape, Contact contact);
// The same above the floor, whatever the contact rests on.
double clearance(const PosedBody& body, Contact contact);

// The same for the lowest place of the whole body.
double clearance(const PosedBody& body);

} // namespace matwright
