#pragma once

#include "core/figure/Joint.h"
#include "core/figure/Picture.h"
#include "core/figure/Settle.h"

#include <span>

namespace matwright {

// The places where a body can be taken hold of. Each hangs on the joint above it: dragging the knee turns the hip.
// `seat` is the pelvis as a whole: it moves over what rests on the floor. Values with two limbs come in pairs.
enum class Handle {
  seat,
  pelvis,
  waist,
  chest,
  head,
  shoulderNear,
  shoulderFar,
  elbowNear,
  elbowFar,
  handNear,
  handFar,
  hipNear,
  hipFar,
  kneeNear,
  kneeFar,
  footNear,
  footFar,
  toesNear,
  toesFar
};
template <> struct Words<Handle> {
  static constexpr auto list = wordList("seat", "pelvis", "waist", "chest", "head", "shoulder.near", "shoulder.far",
                                        "elbow.near", "elbow.far", "hand.near", "hand.far", "hip.near", "hip.far",
                                        "knee.near", "knee.far", "foot.near", "foot.far", "toes.near", "toes.far");
};

// What a handle turns: the joint right above it first, then those that help. Empty for the seat.
std::span<const Joint> jointsOf(Handle handle);

// Where the handle is on the body, in the world.
Vec3 placeOf(const PosedBody& body, Handle handle);
// The same in the picture: statures, as in Picture.
Point2 seenPlaceOf(const Settled& shape, Handle handle);

} // namespace matwright
