#include "core/figure/Laying.h"

#include "core/figure/JointLimits.h"
#include "core/figure/Skeleton.h"

#include <algorithm>

namespace matwright {

namespace sk = skeleton;

namespace {

constexpr double kMostLevelling = 70; // degrees; more is another shape than the one asked for
constexpr double kLevellingStep = 25;

constexpr Vec3 kUp{0, 1, 0};

Vec3 level(Vec3 v, Vec3 otherwise) {
  return direction({v.x, 0, v.z}, direction({otherwise.x, 0, otherwise.z}, {1, 0, 0}));
}

// On the floor the whole trunk stays above it; on something narrower a part may hang lower.
Ball bearingBallOf(const PosedBody& body, Contact contact, double surface) {
  if (surface > 0)
    return contactBalls(body, contact)[0];
  return lowestTrunkBall(body, PosedBody::kPelvis, PosedBody::kNeck);
}

} // namespace

Laying::Laying(const Articulation& articulation, std::optional<Wall> wall) : a_(articulation), on_(a_.pose.on) {
  for (std::size_t i = 0; i < a_.pose.supports.size(); ++i) {
    const auto support = static_cast<Support>(i);
    if (isLeantOn(support) || a_.pose.supports[i].empty())
      continue;
    on_ |= a_.pose.supports[i];
    a_.pose.supports[i].forEach(
        [&](Contact contact) { surfaces_[static_cast<std::size_t>(contact)] += heightOf(support); });
  }
  if (wall) {
    wall_ = *wall;
    wallSide_ = wall_.at > acrossWall(a_.pelvis) ? 1 : -1;
    wallKnown_ = true;
  }
}

void Laying::refresh() {
  body_ = posed(a_);
  if (restsOnTrunk())
    restTrunk();
  if (on().contains(Contact::side))
    drawInShoulders();
  placeWall();
  for (const Limb limb : kBothLimbs)
    layFlat(limb);
  poseEnds(body_, a_);
}

void Laying::restTrunk() {
  const double asked = a_.pose.lean;
  for (int round = 0; round < 8; ++round) {
    const double turn = std::clamp(levelling(), -kLevellingStep, kLevellingStep);
    if (turn == 0)
      break;
    a_.pose.lean += turn;
    if (std::abs(a_.pose.lean - asked) > kMostLevelling) {
      a_.pose.lean = asked;
      body_ = posed(a_);
      break;
    }
    body_ = posed(a_);
  }
  double height = 1e9;
  (on() & kTrunkContacts).forEach([&](Contact contact) {
    height = std::min(height, over(bearingBallOf(body_, contact, surface(contact)), contact));
  });
  a_.pelvis.y -= height;
  move(body_, {0, -height, 0});
}

Ball Laying::bearingBall() const {
  Ball bearing;
  double height = 1e9;
  (on() & kTrunkContacts).forEach([&](Contact contact) {
    const Ball ball = bearingBallOf(body_, contact, surface(contact));
    if (over(ball, contact) < height) {
      height = over(ball, contact);
      bearing = ball;
    }
  });
  return bearing;
}

// By how much the whole should turn so that the trunk rests as it is said to: with pelvis and ribs when it lies and
// the back between them is hollow; with the seat or the upper back when these alone carry it. In degrees; 0 when it
// does already, or cannot.
double Laying::levelling() const {
  Ball one, other;
  double step = 0; // of the surface under `other` over that under `one`
  const double underSeat = surface(Contact::seat), underBack = surface(Contact::upperBack);
  if (on().containsAll({Contact::upperBack, Contact::seat}) && underSeat + underBack > 0) {
    one = contactBalls(body_, Contact::seat)[0];
    other = contactBalls(body_, Contact::upperBack)[0];
    step = underBack - underSeat;
  } else if (restsOnlyOn(Contact::seat) && underSeat > 0) {
    return 0;
  } else if (restsOnlyOn(Contact::upperBack) && underBack > 0) {
    return 0;
  } else if (on().contains(Contact::upperBack) || restsOnlyOn(Contact::seat)) {
    one = lowestTrunkBall(body_, PosedBody::kPelvis, PosedBody::kNeck);
    other = contactBalls(body_, on().contains(Contact::upperBack) ? Contact::upperBack : Contact::seat)[0];
  } else if (on().contains(Contact::back) || on().contains(Contact::front)) {
    one = lowestTrunkBall(body_, PosedBody::kPelvis, PosedBody::kLumbar);
    other = lowestTrunkBall(body_, PosedBody::kThorax, PosedBody::kNeck);
    const Ball waist = lowestTrunkBall(body_, PosedBody::kLumbar + 1, PosedBody::kThorax - 1);
    if (waist.height() < std::min(one.height(), other.height()) - kCloseEnough)
      return 0;
  } else {
    return 0;
  }
  const double difference = other.height() - one.height() - step, apart = other.centre.x - one.centre.x;
  if (std::abs(difference) < kCloseEnough || std::abs(apart) < 0.01)
    return 0;
  return std::atan(difference / apart) / kRadiansPerDegree;
}

void Laying::placeWall() {
  if (walls().empty())
    return;
  if (walls().contains(WallContact::back)) { // and the head does not go through it
    const Vec3 faces = body_.turns[PosedBody::kPelvis].forward;
    wall_.beside = std::abs(faces.z) > std::abs(faces.x) + 0.3; // as it is for who lies on a side
    wallSide_ = acrossWall(faces) > 0 ? -1 : 1;
    double reach = wallSide_ * acrossWall(body_.head) + sk::kHeadRadius;
    for (std::size_t i = 0; i <= PosedBody::kNeck; ++i)
      reach = std::max(reach, wallSide_ * acrossWall(body_.spine[i]) + trunkRadius(i));
    wall_.at = wallSide_ * reach;
    wallKnown_ = true;
    return;
  }
  if (wallKnown_)
    return;
  const bool byFeet = walls().intersects({WallContact::footNear, WallContact::footFar});
  Vec3 end, root;
  double count = 0;
  for (const Limb limb : kBothLimbs)
    if (walls().contains(contactOf(byFeet ? WallContact::footNear : WallContact::handNear, limb))) {
      end = end + (byFeet ? body_.legs[index(limb)].ankle : body_.arms[index(limb)].wrist);
      root = root + (byFeet ? body_.pelvis() : body_.arms[index(limb)].shoulder);
      ++count;
    }
  end = end * (1 / count);
  root = root * (1 / count);
  // one hand alone may reach for a wall at the side
  wall_.beside = !byFeet && count == 1 && std::abs(end.z - root.z) > std::abs(end.x - root.x);
  wallSide_ = acrossWall(end) > acrossWall(root) ? 1 : -1;
  wall_.at = acrossWall(end) + wallSide_ * (byFeet ? sk::kAnkleHeight : sk::kWristRadius);
  wallKnown_ = true;
}

// Feet and hands that rest lie along the floor or wall, whatever the ankle or wrist said.
void Laying::layFlat(Limb limb) {
  const PosedLeg& leg = body_.legs[index(limb)];
  EndPiece& foot = a_.feet[index(limb)];
  const auto alongWall = [off = offTheWall()](Vec3 v) { return direction(v - off * dot(v, off), kUp); };
  if (rests(Contact::footNear, limb)) {
    foot = {leg.shank.own(level(leg.shank.forward, leg.shank.world(foot.along))), leg.shank.own(kUp)};
  } else if (walls().contains(contactOf(WallContact::footNear, limb))) {
    const EndPiece flat{leg.shank.own(alongWall(leg.shank.forward)), leg.shank.own(offTheWall())};
    byHeel_[index(limb)] = std::atan2(flat.along.y, flat.along.x) / kRadiansPerDegree < -limitOf(Motion::footDown);
    foot = byHeel_[index(limb)] ? footAt(a_.pose.legs[index(limb)].ankle) : flat;
  }
  const PosedArm& arm = body_.arms[index(limb)];
  EndPiece& hand = a_.hands[index(limb)];
  const Frame& chest = body_.turns[PosedBody::kNeck];
  if (rests(Contact::handNear, limb)) {
    const Vec3 ahead = level(chest.forward - chest.up * chest.forward.y, chest.up);
    constexpr double fall = (sk::kWristRadius - sk::kFingerRadius) / (sk::kHand - sk::kFingerRadius);
    hand = {arm.forearm.own(direction(ahead - kUp * fall, ahead)), arm.forearm.own(kUp)};
  } else if (walls().contains(contactOf(WallContact::handNear, limb))) {
    hand = {arm.forearm.own(alongWall(chest.up)), arm.forearm.own(offTheWall())};
  }
}

Ball Laying::footOnWall(Limb limb) const {
  const PosedLeg& leg = body_.legs[index(limb)];
  if (byHeel_[index(limb)])
    return {leg.heel, sk::kHeelRadius, legOf(limb), 3};
  return {leg.ankle, sk::kAnkleHeight, legOf(limb), 2};
}

// The shoulder that a body lies on slides in until the ribs carry the weight.
void Laying::drawInShoulders() {
  bool changed = false;
  for (const Limb limb : kBothLimbs) {
    const double outward = sideOf(limb) * body_.turns[PosedBody::kNeck].right.y;
    const double sink = sk::kShoulderRadius - body_.arms[index(limb)].shoulder.y;
    double& offset = a_.shoulderOffsets[index(limb)];
    if (sink > kCloseEnough && outward < -0.3) {
      offset = std::max(offset - sink / -outward, 0.0);
      changed = true;
    }
  }
  if (changed)
    body_ = posed(a_);
}

} // namespace matwright
