#include "core/figure/Passage.h"

#include "core/figure/JointLimits.h"
#include "core/figure/Laying.h"
#include "core/figure/Resting.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace matwright {

namespace {

double mix(double a, double b, double share) { return a + (b - a) * share; }

SpineAngles mix(const SpineAngles& a, const SpineAngles& b, double share) {
  return {mix(a.bend, b.bend, share), mix(a.side, b.side, share), mix(a.turn, b.turn, share)};
}
ArmAngles mix(const ArmAngles& a, const ArmAngles& b, double share) {
  return {mix(a.shoulder, b.shoulder, share), mix(a.out, b.out, share), mix(a.elbow, b.elbow, share)};
}
LegAngles mix(const LegAngles& a, const LegAngles& b, double share) {
  return {mix(a.hip, b.hip, share), mix(a.out, b.out, share), mix(a.turn, b.turn, share), mix(a.knee, b.knee, share),
          mix(a.ankle, b.ankle, share)};
}
// Evenly round from one direction to another, by `over` where they point away from one another.
Vec3 turned(Vec3 a, Vec3 b, Vec3 over, double share) {
  const Vec3 aside = direction(b - a * dot(a, b), direction(over - a * dot(a, over), over));
  const double angle = std::acos(std::clamp(dot(a, b), -1.0, 1.0)) * share;
  return direction(a * std::cos(angle) + aside * std::sin(angle), a);
}
EndPiece mix(const EndPiece& a, const EndPiece& b, double share) {
  const Vec3 along = turned(a.along, b.along, a.outward, share);
  const Vec3 outward = turned(a.outward, b.outward, a.along, share);
  return {along, direction(outward - along * dot(outward, along), a.outward)};
}

// What rests in both: whole contacts, and parts of those that only one of the two has whole.
EnumSet<Contact> sharedContacts(EnumSet<Contact> one, EnumSet<Contact> other) {
  const EnumSet<Contact> both = one & other;
  const EnumSet<Contact> within = withParts(both).without(both);
  return both | (withParts(one) & withParts(other)).without(within);
}

// What rests in both poses, on the same things.
Pose sharedPose(const Pose& one, const Pose& other) {
  Pose shared;
  shared.on = sharedContacts(one.on, other.on);
  for (std::size_t i = 0; i < shared.supports.size(); ++i)
    shared.supports[i] = sharedContacts(one.supports[i], other.supports[i]);
  shared.wall = one.wall & other.wall;
  return shared;
}

EnumSet<Contact> leantOn(const Pose& pose) {
  return pose.onSupport(Support::chairBack) | pose.onSupport(Support::wedge);
}

// A chair or roller of one of the key poses stands there all the way.
std::optional<Standing> mix(const std::optional<Standing>& a, const std::optional<Standing>& b, double share) {
  if (!a || !b)
    return a ? a : b;
  return Standing{between(a->place, b->place, share), share < 0.5 ? a->facing : b->facing};
}
Furniture mix(const Furniture& a, const Furniture& b, double share) {
  return {mix(a.chair, b.chair, share), mix(a.roller, b.roller, share)};
}

// An arm whose straight way leads deep through the floor goes round by the side.
void sweepArms(Articulation& middle, const Articulation& halfway, double share) {
  constexpr double kDeep = -0.03, kOutward = 80;
  const PosedBody body = posed(halfway);
  for (const Limb limb : kBothLimbs) {
    const PosedArm& arm = body.arms[index(limb)];
    const bool resting =
        middle.pose.resting().intersects({contactOf(Contact::handNear, limb), contactOf(Contact::forearmNear, limb)});
    double& out = middle.pose.arms[index(limb)].out;
    if (!resting && std::min(arm.elbow.y, arm.wrist.y) < kDeep)
      out = std::min(out + kOutward * std::sin(share * std::numbers::pi), std::max(out, limitOf(Motion::armOut)));
  }
}

} // namespace

Pose interpolated(const Pose& start, const Pose& end, double share) {
  Pose pose = share < 0.5 ? start : end;
  pose.lean = mix(start.lean, end.lean, share);
  pose.roll = mix(start.roll, end.roll, share);
  pose.lumbar = mix(start.lumbar, end.lumbar, share);
  pose.thorax = mix(start.thorax, end.thorax, share);
  pose.neck = mix(start.neck, end.neck, share);
  for (const Limb limb : kBothLimbs) {
    pose.arms[index(limb)] = mix(start.arms[index(limb)], end.arms[index(limb)], share);
    pose.legs[index(limb)] = mix(start.legs[index(limb)], end.legs[index(limb)], share);
  }
  return pose;
}

Settled alignedTo(const Settled& start, const Settled& end) {
  const Pose& from = start.articulation.pose;
  const Pose& to = end.articulation.pose;
  const EnumSet<Contact> shared = sharedPose(from, to).resting();
  Vec3 offset = start.body.pelvis() - end.body.pelvis();
  if (start.wall && end.wall && start.wall->beside == end.wall->beside) {
    (start.wall->beside ? offset.z : offset.x) = start.wall->at - end.wall->at;
  } else if (!shared.empty()) {
    offset = {};
    shared.forEach(
        [&](Contact contact) { offset = offset + placeOf(start.body, contact) - placeOf(end.body, contact); });
    offset = offset * (1.0 / shared.size());
  }
  Settled moved = end;
  moved.articulation.pelvis = end.articulation.pelvis + Vec3{offset.x, 0, offset.z};
  moved.body = posed(moved.articulation);
  if (moved.wall)
    moved.wall->at += moved.wall->beside ? offset.z : offset.x;
  for (std::optional<Standing>* each : {&moved.furniture.chair, &moved.furniture.roller})
    if (*each)
      (*each)->place = (*each)->place + Vec3{offset.x, 0, offset.z};
  return moved;
}

namespace {

constexpr int kLinks = Passage::kLinks;
constexpr int kMoreTries = 2; // of a shape that has not come up yet
constexpr double kLeap = 35;  // degrees from one link to the next, more than any limb turns evenly

// What cannot come up by its joints comes up with the whole body.
void raise(Settled& shape) {
  const double low = clearance(shape.body);
  if (low >= 0)
    return;
  shape.articulation.pelvis.y -= low;
  move(shape.body, {0, -low, 0});
  shape.deepestSink = 0;
}

Articulation mixed(const Articulation& a, const Articulation& b, double share) {
  Articulation middle = a;
  middle.pose = interpolated(a.pose, b.pose, share);
  middle.pelvis = between(a.pelvis, b.pelvis, share);
  for (const Limb limb : kBothLimbs) {
    const std::size_t i = index(limb);
    middle.feet[i] = mix(a.feet[i], b.feet[i], share);
    middle.hands[i] = mix(a.hands[i], b.hands[i], share);
    middle.shoulderOffsets[i] = mix(a.shoulderOffsets[i], b.shoulderOffsets[i], share);
  }
  return middle;
}

bool leaps(const ArmAngles& a, const ArmAngles& b) {
  return std::max({std::abs(a.shoulder - b.shoulder), std::abs(a.out - b.out), std::abs(a.elbow - b.elbow)}) > kLeap;
}
bool leaps(const LegAngles& a, const LegAngles& b) {
  return std::max({std::abs(a.hip - b.hip), std::abs(a.out - b.out), std::abs(a.turn - b.turn),
                   std::abs(a.knee - b.knee)}) > kLeap;
}
bool leaps(const EndPiece& a, const EndPiece& b) {
  const double least = std::cos(kLeap * kRadiansPerDegree);
  return dot(a.along, b.along) < least || dot(a.outward, b.outward) < least;
}

// What leaps from one link to the next, as a foot that turns over, does so at once: half way it would stand in the
// floor, and lift the whole body off it.
void keepLeaps(Articulation& middle, const Articulation& before, const Articulation& after, bool towardsAfter) {
  const Articulation& nearer = towardsAfter ? after : before;
  for (const Limb limb : kBothLimbs) {
    const std::size_t i = index(limb);
    if (leaps(before.pose.legs[i], after.pose.legs[i]) || leaps(before.feet[i], after.feet[i])) {
      middle.pose.legs[i] = nearer.pose.legs[i];
      middle.feet[i] = nearer.feet[i];
    }
    if (leaps(before.pose.arms[i], after.pose.arms[i]) || leaps(before.hands[i], after.hands[i])) {
      middle.pose.arms[i] = nearer.pose.arms[i];
      middle.hands[i] = nearer.hands[i];
    }
  }
}

Settled shapeBetween(const Settled& start, const Settled& end, double share) {
  const Articulation& a = start.articulation;
  const Articulation& b = end.articulation;
  Articulation middle = mixed(a, b, share);
  const Pose shared = sharedPose(a.pose, b.pose);
  middle.pose.on = shared.on;
  middle.pose.supports = shared.supports;
  middle.pose.wall = shared.wall;
  sweepArms(middle, mixed(a, b, 0.5), share);
  std::vector<Hold> holds;
  middle.pose.resting().without(kTrunkContacts | leantOn(middle.pose)).forEach([&](Contact contact) {
    holds.push_back({contact, between(placeOf(start.body, contact), placeOf(end.body, contact), share)});
  });
  Settled shape = settledFrom(middle, holds, start.wall);
  for (int again = 0; again < kMoreTries && shape.deepestSink > kCloseEnough; ++again)
    shape = settledFrom(shape.articulation, holds, shape.wall);
  raise(shape);
  shape.furniture = mix(start.furniture, end.furniture, share);
  return shape;
}

} // namespace

Passage::Passage(const Settled& start, const Settled& end) {
  Settled aligned = alignedTo(start, end);
  shapes_.push_back(start);
  // What only one end of the way rests on stands there all the way.
  shapes_.front().furniture = mix(start.furniture, aligned.furniture, 0);
  aligned.furniture = mix(start.furniture, aligned.furniture, 1);
  for (int i = 1; i < kLinks; ++i)
    shapes_.push_back(shapeBetween(start, aligned, static_cast<double>(i) / kLinks));
  shapes_.push_back(aligned);
}

Settled Passage::at(double share) const {
  const double place = std::clamp(share, 0.0, 1.0) * kLinks;
  const std::size_t link = std::min(static_cast<std::size_t>(place), static_cast<std::size_t>(kLinks - 1));
  const double part = place - static_cast<double>(link);
  const Settled& before = shapes_[link];
  const Settled& after = shapes_[link + 1];
  if (part <= 0)
    return before;
  if (part >= 1)
    return after;
  Settled shape = part < 0.5 ? before : after;
  shape.articulation = mixed(before.articulation, after.articulation, part);
  keepLeaps(shape.articulation, before.articulation, after.articulation, part >= 0.5);
  if (before.wall && after.wall)
    shape.wall->at = mix(before.wall->at, after.wall->at, part);
  shape.furniture = mix(before.furniture, after.furniture, part);
  shape.body = posed(shape.articulation);
  raise(shape);
  return shape;
}

} // namespace matwright
