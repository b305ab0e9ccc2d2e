#include "core/figure/Freedom.h"

#include "core/figure/JointLimits.h"

#include <algorithm>

namespace matwright {

namespace {

constexpr double kDegreesPerRadian = 1.0 / kRadiansPerDegree;
const double kMostElbow = rangeOf(Joint::elbowNear).most; // degrees
constexpr double kLargestTurn = 0.35;                     // radians at once
constexpr double kLargestShift = 0.3;                     // statures at once
constexpr int kMostHoldBacks = 3;                         // joints at their end, and those that then come to theirs

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

struct Stop {
  std::size_t freedom = 0;
  AngleRange range; // of further turns, degrees
};

double ankleOf(const EndPiece& foot) { return std::atan2(foot.along.y, foot.along.x) * kDegreesPerRadian; }

// How far each freedom that is a joint goes. What is outside already goes no further.
class Stops {
public:
  explicit Stops(const Articulation& a) {
    add(a, neckBend, Joint::neckBend);
    add(a, neckSide, Joint::neckSide);
    for (const Limb limb : kBothLimbs) {
      const auto put = [&](std::size_t freedom, Joint near) {
        add(a, freedom, limb == Limb::near ? near : otherSide(near));
      };
      put(place(limb, shoulder), Joint::shoulderNear);
      put(place(limb, armOut), Joint::armOutNear);
      put(place(limb, elbow), Joint::elbowNear);
      put(place(limb, hip), Joint::hipNear);
      put(place(limb, legOut), Joint::legOutNear);
      put(place(limb, legTurn), Joint::legTurnNear);
      put(place(limb, knee), Joint::kneeNear);
      put(place(limb, ankle), Joint::ankleNear);
    }
  }

  // The freedoms that stand at their end and would be turned further.
  bool holdBack(FreedomRow& able, const FreedomRow& change) const {
    bool any = false;
    for (const Stop& stop : stops_)
      if (able[stop.freedom] != 0 &&
          ((stop.range.least >= 0 && change[stop.freedom] < 0) || (stop.range.most <= 0 && change[stop.freedom] > 0))) {
        able[stop.freedom] = 0;
        any = true;
      }
    return any;
  }

  double held(std::size_t freedom, double turn) const {
    for (const Stop& stop : stops_)
      if (stop.freedom == freedom)
        return std::clamp(turn, stop.range.least, stop.range.most);
    return turn;
  }

private:
  void add(const Articulation& a, std::size_t freedom, Joint joint) {
    const bool foot = joint == Joint::ankleNear || joint == Joint::ankleFar;
    const double angle = foot ? ankleOf(a.feet[joint == Joint::ankleFar]) : angleOf(a.pose, joint);
    const AngleRange range = rangeIn(a.pose, joint);
    stops_[count_++] = {freedom, {std::min(0.0, range.least - angle), std::max(0.0, range.most - angle)}};
  }

  std::array<Stop, 2 + 2 * 8> stops_;
  std::size_t count_ = 0;
};

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
    row[place(limb, ankle)] =
        rests(Contact::footNear) || laying.walls().contains(contactOf(WallContact::footNear, limb)) ? 0 : 0.5;
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
  const Stops stops(a);
  FreedomRow able = readiness;
  FreedomRow change = leastChange(gaps, able, caution);
  for (int pass = 0; pass < kMostHoldBacks && stops.holdBack(able, change); ++pass)
    change = leastChange(gaps, able, caution);
  const auto turn = [&](std::size_t freedom) {
    return stops.held(freedom, std::clamp(change[freedom], -kLargestTurn, kLargestTurn) * kDegreesPerRadian);
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
    arm.elbow += turn(place(limb, elbow));
    LegAngles& leg = a.pose.legs[index(limb)];
    leg.hip += turn(place(limb, hip));
    leg.out += turn(place(limb, legOut));
    leg.turn += turn(place(limb, legTurn));
    leg.knee += turn(place(limb, knee));
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
          pose = turned(pose, limb == Limb::near ? Joint::elbowNear : Joint::elbowFar, kBend);
          pose = turned(pose, limb == Limb::near ? Joint::shoulderNear : Joint::shoulderFar, -kBend / 2);
        }
      }
      if (gap.slope[place(limb, hip)] != 0 && std::abs(gap.slope[place(limb, knee)]) < kNoHint) {
        pose = turned(pose, limb == Limb::near ? Joint::kneeNear : Joint::kneeFar, kBend);
        pose = turned(pose, limb == Limb::near ? Joint::hipNear : Joint::hipFar, kBend / 2);
      }
    }
  }
}

} // namespace matwright
