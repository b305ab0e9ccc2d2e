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

} // namespace

Laying::Laying(const Articulation& articulation, std::optional<double> wall) : a_(articulation) {
  if (wall) {
    wall_ = *wall;
    wallSide_ = wall_ > a_.pelvis.x ? 1 : -1;
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
  const double height = lowestTrunkBall(body_, PosedBody::kPelvis, PosedBody::kNeck).height();
  a_.pelvis.y -= height;
  move(body_, {0, -height, 0});
}

// By how much the whole should turn so that the trunk rests as it is said to: with pelvis and ribs when it lies and
// the back between them is hollow; with the seat or the upper back when these alone carry it. In degrees; 0 when it
// does already, or cannot.
double Laying::levelling() const {
  Ball one, other;
  if (on().contains(Contact::upperBack) || restsOnlyOn(Contact::seat)) {
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
  const double difference = other.height() - one.height(), apart = other.centre.x - one.centre.x;
  if (std::abs(difference) < kCloseEnough || std::abs(apart) < 0.01)
    return 0;
  return std::atan(difference / apart) / kRadiansPerDegree;
}

void Laying::placeWall() {
  if (walls().empty())
    return;
  if (walls().contains(WallContact::back)) { // and the head does not go through it
    wallSide_ = body_.turns[PosedBody::kPelvis].forward.x > 0 ? -1 : 1;
    double reach = wallSide_ * body_.head.x + skeleton::kHeadRadius;
    for (std::size_t i = 0; i <= PosedBody::kNeck; ++i)
      reach = std::max(reach, wallSide_ * body_.spine[i].x + trunkRadius(i));
    wall_ = wallSide_ * reach;
    wallKnown_ = true;
    return;
  }
  if (wallKnown_)
    return;
  const bool byFeet = walls().contains(WallContact::feet);
  const Vec3 near = byFeet ? body_.legs[0].ankle : body_.arms[0].wrist;
  const Vec3 far = byFeet ? body_.legs[1].ankle : body_.arms[1].wrist;
  const double root = byFeet ? body_.pelvis().x : body_.neck().x;
  wallSide_ = near.x + far.x > 2 * root ? 1 : -1;
  wall_ = (near.x + far.x) / 2 + wallSide_ * (byFeet ? sk::kAnkleHeight : sk::kWristRadius);
  wallKnown_ = true;
}

// Feet and hands that rest lie along the floor or wall, whatever the ankle or wrist said.
void Laying::layFlat(Limb limb) {
  const PosedLeg& leg = body_.legs[index(limb)];
  EndPiece& foot = a_.feet[index(limb)];
  const Vec3 offTheWall{-wallSide_, 0, 0};
  if (rests(Contact::footNear, limb)) {
    foot = {leg.shank.own(level(leg.shank.forward, leg.shank.world(foot.along))), leg.shank.own(kUp)};
  } else if (walls().contains(WallContact::feet)) {
    const Vec3 ahead = leg.shank.forward;
    const EndPiece flat{leg.shank.own(direction({0, ahead.y, ahead.z}, kUp)), leg.shank.own(offTheWall)};
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
  } else if (walls().contains(WallContact::hands)) {
    hand = {arm.forearm.own(direction({0, chest.up.y, chest.up.z}, kUp)), arm.forearm.own(offTheWall)};
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
