#include "core/figure/Resting.h"

#include "core/figure/Skeleton.h"

#include <algorithm>

namespace matwright {

namespace sk = skeleton;

namespace {

Limb limbOf(Contact contact, Contact near) { return contact == near ? Limb::near : Limb::far; }

} // namespace

Ball lowestTrunkBall(const PosedBody& body, std::size_t from, std::size_t to) {
  Ball lowest{.centre = {0, 1e9, 0}};
  for (std::size_t i = from; i <= to; ++i) {
    const Vec3 right = body.turns[i].right;
    const double lower = right.y > 0 ? -1.0 : 1.0;
    const Ball ball{.centre = body.spine[i] + right * (lower * trunkHalfWidth(i)), .radius = trunkRadius(i)};
    if (ball.height() < lowest.height())
      lowest = ball;
  }
  return lowest;
}

ContactBalls contactBalls(const PosedBody& body, Contact contact) {
  ContactBalls result;
  const auto add = [&](Vec3 centre, double radius, BodyPart part, int place) {
    result.add({centre, radius, part, place});
  };
  const auto addTrunk = [&](std::size_t from, std::size_t to) { result.add(lowestTrunkBall(body, from, to)); };
  switch (contact) {
  case Contact::head:
    add(body.head, sk::kHeadRadius, BodyPart::head, 1);
    break;
  case Contact::upperBack:
    addTrunk(PosedBody::kThorax + 1, PosedBody::kNeck);
    break;
  case Contact::back:
  case Contact::front:
  case Contact::side:
    addTrunk(PosedBody::kPelvis, PosedBody::kNeck);
    break;
  case Contact::seat:
    addTrunk(PosedBody::kPelvis, PosedBody::kLumbar);
    break;
  case Contact::handNear:
  case Contact::handFar: {
    const Limb limb = limbOf(contact, Contact::handNear);
    add(body.arms[index(limb)].wrist, sk::kWristRadius, armOf(limb), 2);
    break;
  }
  case Contact::forearmNear:
  case Contact::forearmFar: {
    const Limb limb = limbOf(contact, Contact::forearmNear);
    add(body.arms[index(limb)].elbow, sk::kElbowRadius, armOf(limb), 1);
    add(body.arms[index(limb)].wrist, sk::kWristRadius, armOf(limb), 2);
    break;
  }
  case Contact::kneeNear:
  case Contact::kneeFar: {
    const Limb limb = limbOf(contact, Contact::kneeNear);
    add(body.legs[index(limb)].knee, sk::kKneeRadius, legOf(limb), 1);
    break;
  }
  case Contact::shinNear:
  case Contact::shinFar: {
    const Limb limb = limbOf(contact, Contact::shinNear);
    add(body.legs[index(limb)].knee, sk::kKneeRadius, legOf(limb), 1);
    add(body.legs[index(limb)].ankle, sk::kAnkleRadius, legOf(limb), 2);
    break;
  }
  case Contact::footNear:
  case Contact::footFar: {
    const Limb limb = limbOf(contact, Contact::footNear);
    add(body.legs[index(limb)].ankle, sk::kAnkleHeight, legOf(limb), 2);
    break;
  }
  case Contact::toesNear:
  case Contact::toesFar: {
    const Limb limb = limbOf(contact, Contact::toesNear);
    add(body.legs[index(limb)].toes, sk::kToeRadius, legOf(limb), 3);
    break;
  }
  case Contact::heelNear:
  case Contact::heelFar: {
    const Limb limb = limbOf(contact, Contact::heelNear);
    add(body.legs[index(limb)].heel, sk::kHeelRadius, legOf(limb), 3);
    break;
  }
  }
  return result;
}

std::array<Ball, kOuterBalls> outerBalls(const PosedBody& body) {
  std::array<Ball, kOuterBalls> balls;
  std::size_t i = 0;
  balls[i++] = {body.head, sk::kHeadRadius, BodyPart::head, 1};
  for (const Limb limb : kBothLimbs) {
    const PosedArm& arm = body.arms[index(limb)];
    balls[i++] = {arm.shoulder, sk::kShoulderRadius, armOf(limb), 0};
    balls[i++] = {arm.elbow, sk::kElbowRadius, armOf(limb), 1};
    balls[i++] = {arm.wrist, sk::kWristRadius, armOf(limb), 2};
    balls[i++] = {arm.fingertips, sk::kFingerRadius, armOf(limb), 3};
    const PosedLeg& leg = body.legs[index(limb)];
    balls[i++] = {leg.knee, sk::kKneeRadius, legOf(limb), 1};
    balls[i++] = {leg.ankle, sk::kAnkleRadius, legOf(limb), 2};
    balls[i++] = {leg.heel, sk::kHeelRadius, legOf(limb), 3};
    balls[i++] = {leg.toes, sk::kToeRadius, legOf(limb), 3};
  }
  return balls;
}

EnumSet<Contact> withParts(EnumSet<Contact> contacts) {
  if (contacts.contains(Contact::back))
    contacts |= {Contact::upperBack, Contact::seat};
  for (const Limb limb : kBothLimbs) {
    if (contacts.contains(contactOf(Contact::footNear, limb)))
      contacts |= {contactOf(Contact::toesNear, limb), contactOf(Contact::heelNear, limb)};
    if (contacts.contains(contactOf(Contact::shinNear, limb)))
      contacts.insert(contactOf(Contact::kneeNear, limb));
  }
  return contacts;
}

} // namespace matwright
