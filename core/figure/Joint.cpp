#include "core/figure/JointLimits.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace matwright {

namespace {

constexpr Contact otherSide(Contact contact) {
  const int first = static_cast<int>(Contact::handNear), place = static_cast<int>(contact);
  return place < first ? contact : static_cast<Contact>(first + ((place - first) ^ 1));
}

AngleRange between(Motion back, Motion forth) { return {-limitOf(back), limitOf(forth)}; }

constexpr WallContact otherSide(WallContact contact) {
  const int first = static_cast<int>(WallContact::footNear), place = static_cast<int>(contact);
  return place < first ? contact : static_cast<WallContact>(first + ((place - first) ^ 1));
}

constexpr HeldAt otherSide(HeldAt at) {
  switch (at) {
  case HeldAt::handNear:
    return HeldAt::handFar;
  case HeldAt::handFar:
    return HeldAt::handNear;
  case HeldAt::footNear:
    return HeldAt::footFar;
  case HeldAt::footFar:
    return HeldAt::footNear;
  default:
    return at;
  }
}

} // namespace

double& angleOf(Pose& pose, Joint joint) {
  const std::size_t limb =
      isOfLimb(joint) ? (static_cast<std::size_t>(joint) - static_cast<std::size_t>(Joint::shoulderNear)) % 2 : 0;
  switch (joint) {
  case Joint::lean:
    return pose.lean;
  case Joint::roll:
    return pose.roll;
  case Joint::lumbarBend:
    return pose.lumbar.bend;
  case Joint::lumbarSide:
    return pose.lumbar.side;
  case Joint::lumbarTurn:
    return pose.lumbar.turn;
  case Joint::thoraxBend:
    return pose.thorax.bend;
  case Joint::thoraxSide:
    return pose.thorax.side;
  case Joint::thoraxTurn:
    return pose.thorax.turn;
  case Joint::neckBend:
    return pose.neck.bend;
  case Joint::neckSide:
    return pose.neck.side;
  case Joint::neckTurn:
    return pose.neck.turn;
  case Joint::shoulderNear:
  case Joint::shoulderFar:
    return pose.arms[limb].shoulder;
  case Joint::armOutNear:
  case Joint::armOutFar:
    return pose.arms[limb].out;
  case Joint::elbowNear:
  case Joint::elbowFar:
    return pose.arms[limb].elbow;
  case Joint::hipNear:
  case Joint::hipFar:
    return pose.legs[limb].hip;
  case Joint::legOutNear:
  case Joint::legOutFar:
    return pose.legs[limb].out;
  case Joint::legTurnNear:
  case Joint::legTurnFar:
    return pose.legs[limb].turn;
  case Joint::kneeNear:
  case Joint::kneeFar:
    return pose.legs[limb].knee;
  case Joint::ankleNear:
  case Joint::ankleFar:
    break;
  }
  return pose.legs[limb].ankle;
}

double angleOf(const Pose& pose, Joint joint) { return angleOf(const_cast<Pose&>(pose), joint); }

AngleRange rangeOf(Joint joint) {
  using enum Motion;
  switch (joint) {
  case Joint::lean:
  case Joint::roll:
    return {-180, 180};
  case Joint::lumbarBend:
    return between(lumbarBack, lumbarForward);
  case Joint::lumbarSide:
    return between(lumbarSide, lumbarSide);
  case Joint::lumbarTurn:
    return between(lumbarTurn, lumbarTurn);
  case Joint::thoraxBend:
    return between(thoraxBack, thoraxForward);
  case Joint::thoraxSide:
    return between(thoraxSide, thoraxSide);
  case Joint::thoraxTurn:
    return between(thoraxTurn, thoraxTurn);
  case Joint::neckBend:
    return between(neckBack, neckForward);
  case Joint::neckSide:
    return between(neckSide, neckSide);
  case Joint::neckTurn:
    return between(neckTurn, neckTurn);
  case Joint::shoulderNear:
  case Joint::shoulderFar:
    return between(armBehind, armForward);
  case Joint::armOutNear:
  case Joint::armOutFar:
    return between(armAcross, armOut);
  case Joint::elbowNear:
  case Joint::elbowFar:
    return {0, limitOf(elbowBend)};
  case Joint::hipNear:
  case Joint::hipFar:
    return between(hipBehind, hipForward);
  case Joint::legOutNear:
  case Joint::legOutFar:
    return between(hipAcross, hipOut);
  case Joint::legTurnNear:
  case Joint::legTurnFar:
    return between(hipTurnIn, hipTurnOut);
  case Joint::kneeNear:
  case Joint::kneeFar:
    return {0, limitOf(kneeBend)};
  case Joint::ankleNear:
  case Joint::ankleFar:
    break;
  }
  return between(footDown, footUpBearing);
}

Pose turned(Pose pose, Joint joint, double degrees) {
  const AngleRange range = rangeIn(pose, joint);
  double& angle = angleOf(pose, joint);
  if (degrees > 0)
    angle = std::max(angle, std::min(angle + degrees, range.most));
  else
    angle = std::min(angle, std::max(angle + degrees, range.least));
  return pose;
}

Pose sidesExchanged(const Pose& pose) {
  Pose other = pose;
  other.roll = -pose.roll;
  for (SpineAngles* part : {&other.lumbar, &other.thorax, &other.neck}) {
    part->side = -part->side;
    part->turn = -part->turn;
  }
  std::swap(other.arms[0], other.arms[1]);
  std::swap(other.legs[0], other.legs[1]);
  const auto exchanged = [](EnumSet<Contact> contacts) {
    EnumSet<Contact> others;
    contacts.forEach([&](Contact contact) { others.insert(otherSide(contact)); });
    return others;
  };
  other.on = exchanged(pose.on);
  for (EnumSet<Contact>& each : other.supports)
    each = exchanged(each);
  other.wall = {};
  pose.wall.forEach([&](WallContact contact) { other.wall.insert(otherSide(contact)); });
  if (other.holds)
    other.holds->at = otherSide(other.holds->at);
  return other;
}

} // namespace matwright
