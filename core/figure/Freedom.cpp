#include "core/figure/Freedom.h"

#include "core/figure/Joint.h"

#include <algorithm>

namespace matwright {

namespace {

constexpr double kDegreesPerRadian = 1.0 / kRadiansPerDegree;
const double kMostElbow = rangeOf(Joint::elbowNear).most, kMostKnee = rangeOf(Joint::kneeNear).most; // degrees
constexpr double kLargestTurn = 0.35;                                                                // radians at once
constexpr double kLargestShift = 0.3;                                                                // statures at once

enum Freedom {
  height,
  shift, // along x
  tilt,  // of the whole body in the plane of the side view
  wallPlace,
  neckBend,
  neckSide,
  firstArm,
  firstLeg = firstArm + 2 * 3,
  freedoms = firstLeg + 2 * 5
};
static_assert(freedoms == kFreedoms);
enum ArmFreedom { shoulder, armOut, elbow };
enum LegFreedom { hip, legOut, legTurn, knee, ankle };

constexpr std::size_t place(Limb limb, ArmFreedom joint) { return firstArm + 3 * index(limb) + joint; }
constexpr std::size_t place(Limb limb, LegFreedom joint) { return firstLeg + 5 * index(limb) + joint; }

// Fills in how a ball's distance along `normal` grows with the turns of joints.
class Slopes {
public:
  Slopes(FreedomRow& row, const Laying& laying, const Ball& ball, Vec3 normal)
      : row_(row), laying_(laying), ball_(ball), normal_(normal) {}

  void fill() {
    const PosedBody& body = laying_.body();
    const Vec3 pivot = laying_.restsOnTrunk() ? laying_.bearingBall().centre : body.pelvis();
    add(tilt, {0, 0, 1}, pivot);
    switch (ball_.part) {
    case BodyPart::trunk:
      break;
    case BodyPart::head: {
      const Frame& neck = body.turns[PosedBody::kNeck];
      add(neckBend, -neck.right, body.spine[PosedBody::kNeck + 1]);
      add(neckSide, neck.forward, body.spine[PosedBody::kNeck + 1]);
      break;
    }
    case BodyPart::armNear:
      fillArm(Limb::near);
      break;
    case BodyPart::armFar:
      fillArm(Limb::far);
      break;
    case BodyPart::legNear:
      fillLeg(Limb::near);
      break;
    case BodyPart::legFar:
      fillLeg(Limb::far);
      break;
    }
  }

private:
  void add(std::size_t freedom, Vec3 axis, Vec3 pivot) {
    row_[freedom] = dot(cross(axis, ball_.centre - pivot), normal_);
  }

  void fillArm(Limb limb) {
    const PosedArm& arm = laying_.body().arms[index(limb)];
    const Frame& chest = laying_.body().turns[PosedBody::kNeck];
    const Frame lifted = chest.raised(laying_.articulation().pose.arms[index(limb)].shoulder);
    add(place(limb, shoulder), chest.right, arm.shoulder);
    add(place(limb, armOut), lifted.forward * -sideOf(limb), arm.shoulder);
    if (ball_.place >= 2)
      add(place(limb, elbow), arm.upperArm.right, arm.elbow);
  }

  void fillLeg(Limb limb) {
    const PosedLeg& leg = laying_.body().legs[index(limb)];
    const Frame& pelvis = laying_.body().turns[PosedBody::kPelvis];
    const Frame lifted = pelvis.raised(laying_.articulation().pose.legs[index(limb)].hip);
    add(place(limb, hip), pelvis.right, leg.hip);
    add(place(limb, legOut), lifted.forward * -sideOf(limb), leg.hip);
    add(place(limb, legTurn), leg.thigh.up * -sideOf(limb), leg.hip);
    if (ball_.place >= 2)
      add(place(limb, knee), -leg.thigh.right, leg.knee);
    if (ball_.place >= 3)
      add(place(limb, ankle), leg.shank.right, leg.ankle);
  }

  FreedomRow& row_;
  const Laying& laying_;
  const Ball& ball_;
  Vec3 normal_;
};

bool stops(double angle, double turn, double most) { return (angle <= 0 && turn < 0) || (angle >= most && turn > 0); }

} // namespace

FreedomRow readiness(const Laying& laying, bool following) {
  FreedomRow row{};
  row[wallPlace] = laying.walls().contains(WallContact::back) ? 0 : 4;
  row[neckBend] = row[neckSide] = 1;
  bool onHands = false, onLegs = false;
  for (const Limb limb : kBothLimbs) {
    const auto rests = [&](Contact near) { return laying.rests(near, limb); };
    const bool onFoot = rests(Contact::footNear) || rests(Contact::toesNear) || rests(Contact::heelNear);
    for (const Contact near : {Contact::handNear, Contact::forearmNear}) // on the top of a chair the arms give way
      onHands = onHands || (rests(near) && laying.surface(contactOf(near, limb)) < kChairTopHeight);
    onLegs = onLegs || onFoot || rests(Contact::kneeNear) || rests(Contact::shinNear);
    row[place(limb, shoulder)] = 0.6;
    row[place(limb, armOut)] = 0.3;
    row[place(limb, elbow)] = 1;
    // a leg on its heel stays straight, a leg on its sole bends at the knee first
    const bool straight = rests(Contact::heelNear) || !onFoot;
    row[place(limb, hip)] = straight ? 1 : 0.3;
    row[place(limb, legOut)] = 0.3;
    row[place(limb, legTurn)] = 0.1;
    row[place(limb, knee)] = straight && !rests(Contact::shinNear) ? 0.1 : 1;
    row[place(limb, ankle)] = rests(Contact::footNear) ? 0 : 0.5;
  }
  const bool onBothEnds = onLegs && (onHands || laying.on().contains(Contact::head));
  const bool tilts = (!laying.restsOnTrunk() && onBothEnds) || (laying.restsOnlyOn(Contact::upperBack) && onLegs);
  constexpr double kHardly = 0.05;
  if (!laying.restsOnTrunk())
    row[height] = following ? kHardly : 20;
  if (tilts)
    row[tilt] = following ? kHardly : 8;
  else if (laying.restsOnlyOn(Contact::seat) && onHands)
    row[tilt] = following ? kHardly : 0.3; // leans a little more or less when the arms alone cannot reach
  row[shift] = kHardly;
  return row;
}

Gap heightGap(const Laying& laying, const Ball& ball, double level) {
  Gap gap{.size = ball.height() - level, .slope = {}};
  gap.slope[height] = 1;
  Slopes(gap.slope, laying, ball, {0, 1, 0}).fill();
  return gap;
}

Gap wallGap(const Laying& laying, const Ball& ball) {
  Gap gap{.size = laying.wallSide() * (laying.wall() - laying.acrossWall(ball.centre)) - ball.radius, .slope = {}};
  gap.slope[wallPlace] = laying.wallSide();
  Slopes(gap.slope, laying, ball, laying.offTheWall()).fill();
  return gap;
}

Gap placeGap(const Laying& laying, const Ball& ball, Vec3 along, Vec3 place) {
  constexpr double kLess = 0.1;
  Gap gap{.size = kLess * dot(ball.centre - place, along), .slope = {}};
  Slopes(gap.slope, laying, ball, along * kLess).fill();
  gap.slope[shift] = along.x * kLess;
  return gap;
}

void closeGaps(Laying& laying, std::span<const Gap> gaps, const FreedomRow& readiness, double caution) {
  Articulation& a = laying.articulation();
  FreedomRow able = readiness;
  FreedomRow change = leastChange(gaps, able, caution);
  for (const Limb limb : kBothLimbs) {
    if (stops(a.pose.arms[index(limb)].elbow, change[place(limb, elbow)], kMostElbow))
      able[place(limb, elbow)] = 0;
    if (stops(a.pose.legs[index(limb)].knee, change[place(limb, knee)], kMostKnee))
      able[place(limb, knee)] = 0;
  }
  if (able != readiness)
    change = leastChange(gaps, able, caution);
  const auto turn = [&](std::size_t freedom) {
    return std::clamp(change[freedom], -kLargestTurn, kLargestTurn) * kDegreesPerRadian;
  };
  a.pelvis.y += std::clamp(change[height], -kLargestShift, kLargestShift);
  a.pelvis.x += std::clamp(change[shift], -kLargestShift, kLargestShift);
  laying.wall() += std::clamp(change[wallPlace], -kLargestShift, kLargestShift);
  a.pose.lean -= turn(tilt);
  a.pose.neck.bend += turn(neckBend);
  a.pose.neck.side += turn(neckSide);
  for (const Limb limb : kBothLimbs) {
    ArmAngles& arm = a.pose.arms[index(limb)];
    arm.shoulder += turn(place(limb, shoulder));
    arm.out += turn(place(limb, armOut));
    arm.elbow = std::clamp(arm.elbow + turn(place(limb, elbow)), 0.0, kMostElbow);
    LegAngles& leg = a.pose.legs[index(limb)];
    leg.hip += turn(place(limb, hip));
    leg.out += turn(place(limb, legOut));
    leg.turn += turn(place(limb, legTurn));
    leg.knee = std::clamp(leg.knee + turn(place(limb, knee)), 0.0, kMostKnee);
    if (const double bend = turn(place(limb, ankle)); bend != 0) {
      const Frame bent = Frame{}.raised(bend);
      EndPiece& foot = a.feet[index(limb)];
      foot = {bent.world(foot.along), bent.world(foot.outward)};
    }
  }
}

void unlock(Laying& laying, std::span<const Gap> gaps) {
  constexpr double kSunk = -1e-3, kNoHint = 0.03, kBend = 16;
  Pose& pose = laying.articulation().pose;
  for (const Gap& gap : gaps) {
    if (gap.size > kSunk)
      continue;
    for (const Limb limb : kBothLimbs) {
      ArmAngles& arm = pose.arms[index(limb)];
      if (gap.slope[place(limb, shoulder)] != 0) {
        if (arm.elbow >= kMostElbow) {
          arm.elbow = 0;
        } else if (std::abs(gap.slope[place(limb, elbow)]) < kNoHint) {
          arm.elbow += kBend;
          arm.shoulder -= kBend / 2;
        }
      }
      if (gap.slope[place(limb, hip)] != 0 && std::abs(gap.slope[place(limb, knee)]) < kNoHint) {
        pose.legs[index(limb)].knee += kBend;
        pose.legs[index(limb)].hip += kBend / 2;
      }
    }
  }
}

} // namespace matwright
