#include "core/figure/Moment.h"

#include "core/figure/Resting.h"
#include "core/figure/Skeleton.h"

#include <algorithm>

namespace matwright {

namespace sk = skeleton;

namespace {

struct Place {
  sk::SegmentMass mass;
  Vec3 from, to; // the centre lies on the way
};

Limb limbOf(Segment segment, Segment near) { return segment == near ? Limb::near : Limb::far; }

Place placeOf(const PosedBody& body, Segment segment) {
  switch (segment) {
  case Segment::headAndNeck:
    return {sk::kHeadAndNeckMass, body.neck(), body.crown};
  case Segment::thorax:
    return {sk::kThoraxMass, body.thorax(), body.neck()};
  case Segment::abdomen:
    return {sk::kAbdomenMass, body.lumbar(), body.thorax()};
  case Segment::pelvis:
    return {sk::kPelvisMass, body.pelvis(), body.lumbar()};
  case Segment::upperArmNear:
  case Segment::upperArmFar: {
    const PosedArm& arm = body.arms[index(limbOf(segment, Segment::upperArmNear))];
    return {sk::kUpperArmMass, arm.shoulder, arm.elbow};
  }
  case Segment::forearmNear:
  case Segment::forearmFar: {
    const PosedArm& arm = body.arms[index(limbOf(segment, Segment::forearmNear))];
    return {sk::kForearmMass, arm.elbow, arm.wrist};
  }
  case Segment::handNear:
  case Segment::handFar: {
    const PosedArm& arm = body.arms[index(limbOf(segment, Segment::handNear))];
    return {sk::kHandMass, arm.wrist, arm.fingertips};
  }
  case Segment::thighNear:
  case Segment::thighFar: {
    const PosedLeg& leg = body.legs[index(limbOf(segment, Segment::thighNear))];
    return {sk::kThighMass, leg.hip, leg.knee};
  }
  case Segment::lowerLegNear:
  case Segment::lowerLegFar: {
    const PosedLeg& leg = body.legs[index(limbOf(segment, Segment::lowerLegNear))];
    return {sk::kShankAndFootMass, leg.knee, leg.ankle};
  }
  }
  return {};
}

} // namespace

SegmentSet armSegments(Limb limb) {
  if (limb == Limb::near)
    return {Segment::upperArmNear, Segment::forearmNear, Segment::handNear};
  return {Segment::upperArmFar, Segment::forearmFar, Segment::handFar};
}

SegmentSet legSegments(Limb limb) {
  if (limb == Limb::near)
    return {Segment::thighNear, Segment::lowerLegNear};
  return {Segment::thighFar, Segment::lowerLegFar};
}

SegmentSet upperBodySegments() {
  return SegmentSet{Segment::headAndNeck, Segment::thorax, Segment::abdomen} | armSegments(Limb::near) |
         armSegments(Limb::far);
}

double massShare(Segment segment) { return placeOf({}, segment).mass.mass; }

Vec3 centreOfMass(const PosedBody& body, Segment segment) {
  const Place place = placeOf(body, segment);
  return between(place.from, place.to, place.mass.centre);
}

Vec3 centreOfMass(const PosedBody& body, SegmentSet segments) {
  Vec3 sum;
  double mass = 0;
  segments.forEach([&](Segment segment) {
    sum = sum + centreOfMass(body, segment) * massShare(segment);
    mass += massShare(segment);
  });
  return sum * (1 / mass);
}

double gravityMoment(const PosedBody& body, Vec3 about, SegmentSet segments, const BodySize& size) {
  Vec3 moment; // of unit weight, per body mass and stature
  segments.forEach([&](Segment segment) {
    moment = moment + cross(centreOfMass(body, segment) - about, {0, -massShare(segment), 0});
  });
  return length(moment) * size.mass * size.stature * kGravity;
}

SegmentSet heldSegments(const Pose& pose) {
  const EnumSet<Contact> on = pose.resting();
  SegmentSet held;
  if (!on.contains(Contact::head))
    held.insert(Segment::headAndNeck);
  bool carried = on.intersects({Contact::back, Contact::front, Contact::side, Contact::upperBack, Contact::head}) ||
                 pose.wall.intersects({WallContact::back, WallContact::handNear, WallContact::handFar});
  for (const Limb limb : kBothLimbs)
    carried = carried || on.contains(contactOf(Contact::handNear, limb)) ||
              on.contains(contactOf(Contact::forearmNear, limb));
  if (!carried)
    held |= {Segment::thorax, Segment::abdomen};
  for (const Limb limb : kBothLimbs) {
    const auto rests = [&](Contact near) { return on.contains(contactOf(near, limb)); };
    if (!rests(Contact::handNear) && !rests(Contact::forearmNear) &&
        !pose.wall.contains(contactOf(WallContact::handNear, limb)))
      held |= armSegments(limb);
    if (!rests(Contact::footNear) && !rests(Contact::toesNear) && !rests(Contact::heelNear) &&
        !rests(Contact::kneeNear) && !rests(Contact::shinNear) &&
        !pose.wall.contains(contactOf(WallContact::footNear, limb)))
      held |= legSegments(limb);
  }
  return held;
}

double lowBackMoment(const PosedBody& body, const Pose& pose, const BodySize& size) {
  const SegmentSet held = heldSegments(pose);
  const SegmentSet legs = held & (legSegments(Limb::near) | legSegments(Limb::far));
  const SegmentSet trunk{Segment::thorax, Segment::abdomen};
  const SegmentSet upper = held.containsAll(trunk) ? held & upperBodySegments() : SegmentSet{};
  return std::max(gravityMoment(body, body.lumbar(), legs, size), gravityMoment(body, body.lumbar(), upper, size));
}

} // namespace matwright
