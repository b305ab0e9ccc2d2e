// The angles of a pose as a list: each by its name in files, with how far it may be turned.
#pragma once

#include "core/figure/Pose.h"

namespace matwright {

// Values with two limbs come in pairs.
enum class Joint {
  lean,
  roll,
  lumbarBend,
  lumbarSide,
  lumbarTurn,
  thoraxBend,
  thoraxSide,
  thoraxTurn,
  neckBend,
  neckSide,
  neckTurn,
  shoulderNear,
  shoulderFar,
  armOutNear,
  armOutFar,
  elbowNear,
  elbowFar,
  hipNear,
  hipFar,
  legOutNear,
  legOutFar,
  legTurnNear,
  legTurnFar,
  kneeNear,
  kneeFar,
  ankleNear,
  ankleFar
};
template <> struct Words<Joint> {
  static constexpr auto list =
      wordList("lean", "roll", "lumbar", "lumbar.side", "lumbar.rot", "thorax", "thorax.side", "thorax.rot", "neck",
               "neck.side", "neck.rot", "shoulder.near", "shoulder.far", "shoulder.out.near", "shoulder.out.far",
               "elbow.near", "elbow.far", "hip.near", "hip.far", "hip.out.near", "hip.out.far", "hip.rot.near",
               "hip.rot.far", "knee.near", "knee.far", "ankle.near", "ankle.far");
};

constexpr bool isOfLimb(Joint joint) { return joint >= Joint::shoulderNear; }
// The same joint of the other limb; the joint itself where there is but one.
constexpr Joint otherSide(Joint joint) {
  const int first = static_cast<int>(Joint::shoulderNear), place = static_cast<int>(joint);
  return isOfLimb(joint) ? static_cast<Joint>(first + ((place - first) ^ 1)) : joint;
}

double& angleOf(Pose& pose, Joint joint); // degrees
double angleOf(const Pose& pose, Joint joint);

struct AngleRange {
  double least = 0, most = 0;

  bool contains(double angle) const { return least <= angle && angle <= most; }
};

// How far a joint goes by itself (core/figure/JointLimits.h). All around for lean and roll, which are no joints.
AngleRange rangeOf(Joint joint);

// The joint turned by some degrees, as far as it goes in this pose. An angle that is outside already is not turned
// further.
Pose turned(Pose pose, Joint joint, double degrees);

// The same shape on the other side: near and far limbs exchanged, side bends and turns the other way.
Pose sidesExchanged(const Pose& pose);

} // namespace matwright
