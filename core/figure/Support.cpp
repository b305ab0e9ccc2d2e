#include "core/figure/Support.h"

#include "core/figure/Resting.h"

#include <algorithm>

namespace matwright {

namespace {

using enum Contact;

constexpr EnumSet<Contact> kHands{handNear, handFar};
constexpr EnumSet<Contact> kForearms{forearmNear, forearmFar};
constexpr EnumSet<Contact> kKnees{kneeNear, kneeFar, shinNear, shinFar};
constexpr EnumSet<Contact> kFeet{footNear, footFar, toesNear, toesFar, heelNear, heelFar};
constexpr EnumSet<Contact> kTrunk{upperBack, back, front, seat, side};

struct Rests {
  Vec3 middle;
  int count = 0;
};

Rests middleOf(const PosedBody& body, EnumSet<Contact> contacts) {
  Rests rests;
  contacts.forEach([&](Contact contact) {
    const ContactBalls balls = contactBalls(body, contact);
    Vec3 place;
    for (const Ball& ball : balls)
      place = place + ball.centre * (1.0 / static_cast<double>(balls.size()));
    rests.middle = rests.middle + place;
    ++rests.count;
  });
  if (rests.count > 0)
    rests.middle = rests.middle * (1.0 / rests.count);
  return rests;
}

double signOf(double value) { return value < 0 ? -1 : 1; }

// How far the trunk reaches back along x, against `facing`.
double backOf(const PosedBody& body, double facing) {
  double reach = 1e9;
  for (std::size_t i = 0; i < PosedBody::kNeck; ++i)
    reach = std::min(reach, facing * body.spine[i].x - trunkRadius(i));
  return facing * reach;
}

std::optional<Standing> chairOf(const PosedBody& body, const Pose& pose) {
  constexpr double kBehindSitter = 0.11, kBeyondHands = 0.04, kBesideReach = 0.1;
  const double faces = signOf(body.turns[PosedBody::kPelvis].forward.x);
  if (const EnumSet<Contact> leaning = pose.onSupport(Support::chairBack); !leaning.empty())
    return Standing{{backOf(body, faces), 0, body.pelvis().z}, faces};
  const EnumSet<Contact> onSeat = pose.onSupport(Support::chair), onTop = pose.onSupport(Support::chairTop);
  if (onSeat.intersects(kTrunk))
    return Standing{{body.pelvis().x - faces * kBehindSitter, 0, body.pelvis().z}, faces};
  if (const Rests top = middleOf(body, onTop); top.count > 0) { // whoever holds it stands behind it
    const double towards = top.middle.x - body.pelvis().x;
    const double facing = std::abs(towards) > kBesideReach ? signOf(towards) : faces;
    return Standing{{top.middle.x, 0, top.middle.z}, facing};
  }
  const Rests rests = middleOf(body, onSeat);
  if (rests.count == 0)
    return std::nullopt;
  // the back-rest stands on the far side of what lies on the seat
  const double towards = rests.middle.x - body.pelvis().x;
  const double away = std::abs(towards) > kBesideReach ? signOf(towards) : faces;
  const double within = onSeat.intersects(kFeet) ? kBeyondHands : kSeatDepth - 2 * kBeyondHands;
  return Standing{{rests.middle.x + away * within, 0, rests.middle.z}, -away};
}

std::optional<Standing> rollerOf(const PosedBody& body, const Pose& pose) {
  if (!pose.onSupport(Support::rollerAlong).empty()) { // it begins beyond the tailbone
    const double headward = signOf(body.head.x - body.pelvis().x);
    return Standing{{body.pelvis().x + headward * (kRollerLength / 2 - 0.06), 0, body.pelvis().z}, headward};
  }
  const Rests rests = middleOf(body, pose.onSupport(Support::rollerAcross));
  if (rests.count == 0)
    return std::nullopt;
  return Standing{
      {rests.middle.x, 0, pose.onSupport(Support::rollerAcross).intersects(kTrunk) ? body.pelvis().z : rests.middle.z},
      1};
}

} // namespace

double heightOf(Support support) {
  switch (support) {
  case Support::chair:
    return kSeatHeight;
  case Support::chairTop:
    return kChairTopHeight;
  case Support::rollerAlong:
  case Support::rollerAcross:
    return 2 * kRollerRadius;
  case Support::ball:
    return kBallUnderBody;
  case Support::cushion:
    return kCushionHeight;
  case Support::bolster:
    return kBolsterHeight;
  case Support::chairBack:
  case Support::wedge:
    break;
  }
  return 0;
}

double surfaceUnder(const Pose& pose, Contact contact) {
  double height = 0;
  for (std::size_t i = 0; i < pose.supports.size(); ++i)
    if (pose.supports[i].contains(contact))
      height += heightOf(static_cast<Support>(i));
  return height;
}

EnumSet<Contact> bearable(Support support) {
  switch (support) {
  case Support::chair:
    return EnumSet<Contact>{head, seat} | kHands | kForearms | kKnees | kFeet;
  case Support::chairTop:
    return kHands | kForearms;
  case Support::chairBack:
    return {back, upperBack, front};
  case Support::rollerAlong:
    return {head, back, upperBack, front, seat};
  case Support::rollerAcross:
    return EnumSet<Contact>{upperBack, seat} | kHands | kForearms | kKnees | kFeet;
  case Support::ball:
    return EnumSet<Contact>{head, upperBack, seat} | kHands | kForearms | kKnees | kFeet;
  case Support::wedge:
    return {back, upperBack, head};
  case Support::cushion:
  case Support::bolster:
    break;
  }
  return EnumSet<Contact>{head} | kTrunk | kHands | kForearms | kKnees | kFeet;
}

bool canHold(Held what, HeldAt at) {
  using Places = EnumSet<HeldAt>;
  constexpr Places kInHands{HeldAt::hands, HeldAt::handNear, HeldAt::handFar};
  switch (what) {
  case Held::ring:
    return Places{HeldAt::hands, HeldAt::knees, HeldAt::ankles}.contains(at);
  case Held::ball:
    return (kInHands | Places{HeldAt::knees, HeldAt::ankles, HeldAt::handAndKnee, HeldAt::lowBack}).contains(at);
  case Held::band:
    return Places{HeldAt::hands, HeldAt::knees, HeldAt::ankles, HeldAt::feet, HeldAt::footNear, HeldAt::footFar}
        .contains(at);
  case Held::weights:
    return kInHands.contains(at);
  case Held::cushion:
    return Places{HeldAt::knees, HeldAt::ankles, HeldAt::lowBack, HeldAt::lap, HeldAt::seat}.contains(at);
  }
  return false;
}

Furniture furnitureOf(const PosedBody& body, const Pose& pose) { return {chairOf(body, pose), rollerOf(body, pose)}; }

} // namespace matwright
