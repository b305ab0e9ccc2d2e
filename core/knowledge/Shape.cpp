#include "core/knowledge/Shape.h"

#include "core/figure/Resting.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr EnumSet<Contact> kLegContacts{Contact::kneeNear, Contact::shinNear, Contact::footNear, Contact::toesNear,
                                        Contact::heelNear};
constexpr EnumSet<Contact> kKneeContacts{Contact::kneeNear, Contact::shinNear};
constexpr double kAtHead = 0.15, kAtLeg = 0.17; // how near a wrist is to what the hand holds

double angleBetween(Vec3 one, Vec3 other) {
  return std::acos(std::clamp(dot(one, other), -1.0, 1.0)) / kRadiansPerDegree;
}

double distanceToLine(Vec3 point, Vec3 from, Vec3 to) {
  const Vec3 line = to - from;
  const double share = std::clamp(dot(point - from, line) / std::max(dot(line, line), 1e-9), 0.0, 1.0);
  return length(point - (from + line * share));
}

bool anyArm(const Shape& shape, bool (*test)(const Shape::Arm&)) {
  return std::any_of(shape.arms.begin(), shape.arms.end(), test);
}
bool anyLeg(const Shape& shape, bool (*test)(const Shape::Leg&)) {
  return std::any_of(shape.legs.begin(), shape.legs.end(), test);
}
bool allLegs(const Shape& shape, bool (*test)(const Shape::Leg&)) {
  return std::all_of(shape.legs.begin(), shape.legs.end(), test);
}

template <class Angle> double most(const Shape& shape, Angle angle) {
  return std::max(angle(shape.legs[0].angles), angle(shape.legs[1].angles));
}
template <class Angle> double least(const Shape& shape, Angle angle) {
  return std::min(angle(shape.legs[0].angles), angle(shape.legs[1].angles));
}

double hipOf(const LegAngles& leg) { return leg.hip; }
double outOf(const LegAngles& leg) { return leg.out; }
double turnOf(const LegAngles& leg) { return leg.turn; }
double kneeOf(const LegAngles& leg) { return leg.knee; }

double split(const Shape& shape) { return most(shape, hipOf) - least(shape, hipOf); }

// On the knees with the hips bent, as on all fours.
bool kneels(const Shape& shape) {
  return anyLeg(shape, [](const Shape::Leg& leg) { return leg.on.intersects(kKneeContacts) && leg.angles.hip > 60; });
}

bool shouldersBear(const Shape& shape, double above) {
  return shape.has(Contact::upperBack) && shape.hipsAbove >= above;
}

// A feature and what shows it in one pose.
struct Sign {
  Feature feature;
  bool (*shows)(const Shape&);
};

// What the drawing of a feature must have in one of its poses at least.
constexpr Sign kNeeded[] = {
    {Feature::flexLoad, [](const Shape& s) { return s.bend >= 12; }},
    {Feature::flexEnd, [](const Shape& s) { return s.bend >= 44; }},
    {Feature::extLoad, [](const Shape& s) { return s.bend <= -6 && s.faces <= 0.6; }},
    {Feature::extEnd, [](const Shape& s) { return s.lumbar <= -15; }},
    {Feature::rot, [](const Shape& s) { return s.turn >= 30; }},
    {Feature::flexRot, [](const Shape& s) { return s.turn >= 12 && s.bend >= 15; }},
    {Feature::extRot, [](const Shape& s) { return s.turn >= 12 && s.bend <= -6; }},
    {Feature::latflex, [](const Shape& s) { return s.side >= 25 || (s.sideOn >= 0.7 && !s.trunk); }},
    {Feature::neckLift, [](const Shape& s) { return !s.has(Contact::head); }},
    {Feature::neckEnd,
     [](const Shape& s) {
       return std::abs(s.neck.bend) >= 28 || std::abs(s.neck.turn) >= 45 || std::abs(s.neck.side) >= 25;
     }},
    {Feature::neckLoad,
     [](const Shape& s) { return shouldersBear(s, 0.08) || (s.has(Contact::head) && s.hipsAbove >= 0.08); }},
    {Feature::inverted, [](const Shape& s) { return s.headBelow >= 0.02 || s.hipsAbove >= 0.08; }},
    {Feature::spineRoll, [](const Shape& s) { return s.bend >= 28 || shouldersBear(s, 0.08); }},
    {Feature::wristLoad,
     [](const Shape& s) {
       return s.wall.intersects({WallContact::handNear, WallContact::handFar}) ||
              anyArm(s, [](const Shape::Arm& arm) { return arm.hand || arm.propsBehind; });
     }},
    {Feature::kneel,
     [](const Shape& s) { return anyLeg(s, [](const Shape::Leg& leg) { return leg.on.intersects(kKneeContacts); }); }},
    {Feature::hipFlex90, [](const Shape& s) { return most(s, hipOf) + std::max(0.0, s.bend) > 90; }},
    {Feature::hipAdd, [](const Shape& s) { return least(s, outOf) <= -5; }},
    {Feature::hipIr, [](const Shape& s) { return least(s, turnOf) <= -15; }},
    {Feature::hipExtEr,
     [](const Shape& s) {
       return anyLeg(s, [](const Shape::Leg& leg) { return leg.angles.hip < 0 && leg.angles.turn >= 10; });
     }},
    {Feature::hipWide, [](const Shape& s) { return most(s, outOf) >= 20 || split(s) >= 30; }},
    {Feature::oneLeg, [](const Shape& s) { return s.legs[0].on != s.legs[1].on || s.sideOn >= 0.7; }},
    {Feature::kneeDeep, [](const Shape& s) { return most(s, kneeOf) > 95; }},
    {Feature::toeLoad,
     [](const Shape& s) {
       return anyLeg(s, [](const Shape::Leg& leg) { return leg.on.contains(Contact::toesNear); });
     }},
    {Feature::nerveTension,
     [](const Shape& s) {
       return std::any_of(s.legs.begin(), s.legs.end(), [&](const Shape::Leg& leg) {
         return leg.angles.knee <= 15 && leg.angles.hip + std::max(0.0, s.bend) >= 85;
       });
     }},
    {Feature::legsLong,
     [](const Shape& s) {
       return most(s, kneeOf) < 25 && (s.sideOn > 0.7 || anyLeg(s, [](const Shape::Leg& leg) { return leg.free; }));
     }},
    {Feature::armOver,
     [](const Shape& s) { return anyArm(s, [](const Shape::Arm& arm) { return arm.elevation >= 95; }); }},
    {Feature::armExt,
     [](const Shape& s) { return anyArm(s, [](const Shape::Arm& arm) { return arm.angles.shoulder <= -15; }); }},
};

// The same for what a drawing only often tells.
constexpr Sign kOftenNeeded[] = {
    {Feature::armAber,
     [](const Shape& s) {
       return anyArm(s, [](const Shape::Arm& arm) {
         return arm.angles.out >= 35 || arm.elevation >= 130 || (arm.angles.elbow >= 80 && arm.elevation >= 90);
       });
     }},
    {Feature::reclineFlat, [](const Shape& s) { return s.chestBelow >= -0.02 || s.hipsAbove >= 0; }},
};

// What shows a feature beyond doubt.
constexpr Sign kPlain[] = {
    {Feature::supine,
     [](const Shape& s) { return s.has(Contact::back) && std::abs(s.tilt) < 0.26 && s.faces >= 0.7 && s.bend < 44; }},
    {Feature::prone, [](const Shape& s) { return s.has(Contact::front) && !kneels(s); }},
    {Feature::sidelie,
     [](const Shape& s) { return s.has(Contact::side) && s.sideOn >= 0.7 && std::abs(s.tilt) < 0.3; }},
    {Feature::flexLoad, [](const Shape& s) { return s.has(Contact::back) && !s.has(Contact::head) && s.bend >= 30; }},
    {Feature::flexEnd, [](const Shape& s) { return s.bend >= 62; }},
    {Feature::flexRot, [](const Shape& s) { return s.turn >= 20 && s.bend >= 20; }},
    {Feature::extLoad, [](const Shape& s) { return s.bend <= -15 && s.has(Contact::front); }},
    {Feature::extEnd, [](const Shape& s) { return s.lumbar <= -34; }},
    {Feature::extRot, [](const Shape& s) { return s.turn >= 20 && s.bend <= -10; }},
    {Feature::rot, [](const Shape& s) { return s.turn >= 32; }},
    {Feature::latflex, [](const Shape& s) { return s.side >= 25 || (s.sideOn >= 0.7 && !s.trunk && s.tilt < 0.6); }},
    {Feature::neckLift,
     [](const Shape& s) { return s.lying && !s.has(Contact::head) && s.tilt < 0.6 && !s.handAtHead; }},
    {Feature::neckEnd, [](const Shape& s) { return std::abs(s.neck.bend) >= 34 || std::abs(s.neck.turn) >= 60; }},
    {Feature::neckLoad, [](const Shape& s) { return shouldersBear(s, 0.20); }},
    {Feature::inverted, [](const Shape& s) { return s.headBelow >= 0.05 || s.hipsAbove >= 0.14; }},
    {Feature::reclineFlat, [](const Shape& s) { return s.chestBelow >= 0.012; }},
    {Feature::wristLoad,
     [](const Shape& s) {
       return !s.trunk && !s.has(Contact::head) &&
              anyArm(s, [](const Shape::Arm& arm) { return arm.hand && !arm.forearm; });
     }},
    {Feature::kneel,
     [](const Shape& s) {
       return !s.trunk && s.sideOn < 0.7 && anyLeg(s, [](const Shape::Leg& leg) {
         return leg.on.intersects(kKneeContacts) && leg.angles.knee >= 45;
       });
     }},
    // Open, crossed legs are the matter of the position.
    {Feature::hipFlex90,
     [](const Shape& s) {
       return anyLeg(s, [](const Shape::Leg& leg) { return leg.angles.hip >= 97 && leg.angles.out < 25; });
     }},
    {Feature::hipAdd, [](const Shape& s) { return least(s, outOf) <= -12; }},
    {Feature::hipIr, [](const Shape& s) { return least(s, turnOf) <= -35; }},
    {Feature::hipExtEr,
     [](const Shape& s) {
       return anyLeg(s, [](const Shape::Leg& leg) { return leg.angles.hip <= -10 && leg.angles.turn >= 20; });
     }},
    {Feature::hipWide,
     [](const Shape& s) {
       return most(s, outOf) >= 40 || (split(s) >= 60 && s.tilt >= 0.6 && !s.trunk &&
                                       allLegs(s, [](const Shape::Leg& leg) { return !leg.on.empty(); }));
     }},
    {Feature::oneLeg,
     [](const Shape& s) {
       return s.legs[0].on.empty() != s.legs[1].on.empty() &&
              !s.on.intersects({Contact::back, Contact::front, Contact::side, Contact::seat, Contact::head});
     }},
    // Lying, head and upper back carry.
    {Feature::kneeDeep,
     [](const Shape& s) {
       return !s.trunk && anyLeg(s, [](const Shape::Leg& leg) { return !leg.on.empty() && leg.angles.knee > 100; });
     }},
    {Feature::toeLoad,
     [](const Shape& s) {
       return !s.trunk && !s.has(Contact::head) &&
              anyLeg(s, [](const Shape::Leg& leg) { return leg.on.contains(Contact::toesNear); }) &&
              allLegs(s, [](const Shape::Leg& leg) {
                return !leg.on.intersects({Contact::kneeNear, Contact::shinNear, Contact::footNear});
              });
     }},
    {Feature::nerveTension,
     [](const Shape& s) {
       return s.lumbar >= 15 && anyLeg(s, [](const Shape::Leg& leg) {
                return leg.angles.knee < 15 && leg.angles.ankle > 0 && leg.angles.hip >= 60;
              });
     }},
    {Feature::legsLong,
     [](const Shape& s) {
       const bool carried = most(s, outOf) >= 20 && allLegs(s, [](const Shape::Leg& leg) { return leg.held; });
       return most(s, kneeOf) < 25 && allLegs(s, [](const Shape::Leg& leg) { return leg.free; }) && !carried;
     }},
    // Arms that hang in a roll down are not held up.
    {Feature::armOver,
     [](const Shape& s) {
       return anyArm(s, [](const Shape::Arm& arm) { return arm.elevation >= 120 && !arm.hangs; });
     }},
    {Feature::armExt,
     [](const Shape& s) {
       return !s.lying && s.faces > 0 &&
              anyArm(s, [](const Shape::Arm& arm) { return arm.hand && arm.angles.shoulder <= -30; });
     }},
};

constexpr Sign kFaint[] = {
    {Feature::hipFlex90, [](const Shape& s) { return most(s, hipOf) >= 91; }},
    {Feature::armOver,
     [](const Shape& s) {
       return anyArm(s, [](const Shape::Arm& arm) { return arm.elevation >= 100 && !arm.hangs; });
     }},
    {Feature::reclineFlat, [](const Shape& s) { return s.chestBelow >= -0.02; }},
    {Feature::hipAdd, [](const Shape& s) { return least(s, outOf) <= -5; }},
    {Feature::hipIr, [](const Shape& s) { return least(s, turnOf) <= -15; }},
    {Feature::hipWide, [](const Shape& s) { return most(s, outOf) >= 30; }},
};

FeatureSet missing(FeatureSet features, std::span<const Sign> signs, std::span<const Shape> shapes) {
  FeatureSet found;
  for (const Sign& sign : signs)
    if (features.contains(sign.feature) && std::none_of(shapes.begin(), shapes.end(), sign.shows))
      found.insert(sign.feature);
  return found;
}

FeatureSet shown(std::span<const Sign> signs, std::span<const Shape> shapes) {
  FeatureSet found;
  for (const Sign& sign : signs)
    if (std::any_of(shapes.begin(), shapes.end(), sign.shows))
      found.insert(sign.feature);
  return found;
}

// From the back to the seat, or the other way: the body rolls between the two.
bool rollsUp(std::span<const Shape> shapes) {
  const auto some = [&](Contact contact) {
    return std::any_of(shapes.begin(), shapes.end(), [&](const Shape& shape) { return shape.has(contact); });
  };
  return some(Contact::back) && some(Contact::seat);
}

} // namespace

Shape::Shape(const Pose& pose)
    : on(pose.resting()), wall(pose.wall), bend(pose.lumbar.bend + pose.thorax.bend),
      turn(std::abs(pose.lumbar.turn + pose.thorax.turn)), side(std::abs(pose.lumbar.side + pose.thorax.side)),
      lumbar(pose.lumbar.bend), neck(pose.neck) {
  const PosedBody body = posed(pose);
  const Frame& pelvis = body.turns[PosedBody::kPelvis];
  tilt = pelvis.up.y;
  sideOn = std::abs(pelvis.right.y);
  faces = pelvis.forward.y;
  headBelow = (body.thorax().y + body.neck().y) / 2 - body.head.y;
  chestBelow = body.thorax().y - body.neck().y;
  hipsAbove = body.pelvis().y - body.neck().y;
  trunk = on.intersects(kTrunkContacts);
  lying = on.intersects({Contact::back, Contact::upperBack, Contact::front});
  for (const Limb limb : kBothLimbs) {
    const PosedArm& posedArm = body.arms[index(limb)];
    Arm& arm = arms[index(limb)];
    arm.angles = pose.arms[index(limb)];
    arm.elevation = angleBetween(posedArm.upperArm.up, body.turns[PosedBody::kNeck].up);
    arm.hangs = posedArm.upperArm.up.y >= 0.85;
    arm.hand = has(contactOf(Contact::handNear, limb));
    arm.forearm = has(contactOf(Contact::forearmNear, limb));
    arm.propsBehind = arm.angles.elbow >= 80 && arm.angles.shoulder <= -30;
    handAtHead = handAtHead || length(posedArm.wrist - body.head) < kAtHead;

    const PosedLeg& posedLeg = body.legs[index(limb)];
    Leg& leg = legs[index(limb)];
    leg.angles = pose.legs[index(limb)];
    kLegContacts.forEach([&](Contact near) {
      if (has(contactOf(near, limb)))
        leg.on.insert(near);
    });
    leg.free = leg.on.empty() && !wall.contains(contactOf(WallContact::footNear, limb)) && !has(Contact::side);
    leg.held = std::any_of(body.arms.begin(), body.arms.end(), [&](const PosedArm& each) {
      return std::min(distanceToLine(each.wrist, posedLeg.hip, posedLeg.knee),
                      distanceToLine(each.wrist, posedLeg.knee, posedLeg.ankle)) < kAtLeg;
    });
  }
}

FeatureSet unshown(FeatureSet features, std::span<const Shape> shapes) {
  FeatureSet found = missing(features, kNeeded, shapes);
  if (rollsUp(shapes))
    found.erase(Feature::spineRoll);
  return found;
}

FeatureSet hardlyShown(FeatureSet features, std::span<const Shape> shapes) {
  return missing(features, kOftenNeeded, shapes);
}

FeatureSet shownBy(std::span<const Shape> shapes) { return shown(kPlain, shapes); }

FeatureSet faintlyShownBy(std::span<const Shape> shapes) { return shown(kFaint, shapes); }

} // namespace matwright
