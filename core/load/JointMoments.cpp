#include "core/load/JointMoments.h"

#include "core/figure/Resting.h"
#include "core/figure/Skeleton.h"
#include "core/load/Reactions.h"

#include <algorithm>

namespace matwright {

namespace {

namespace sk = skeleton;

constexpr double kLies = 0.025;      // statures: a limb so near the floor lies on it, though its pose does not say so
constexpr double kOnTheOther = 0.07; // statures between the surfaces of legs that are drawn side by side

constexpr Limb otherOf(Limb limb) { return limb == Limb::near ? Limb::far : Limb::near; }

class Weigher {
public:
  Weigher(const Settled& settled, const WeighedBody& body)
      : settled_(settled), body_(body), touching_(touchingBelow(settled)),
        bearings_(bearingsOf(settled, body_, touching_)) {
    lies_ = liesFlat();
    for (const Bearing& bearing : bearings_)
      supported_.insert(bearing.segment);
  }

  JointMoments moments() {
    JointMoments result;
    for (const Limb limb : kBothLimbs) {
      result.hips[index(limb)] = ofLimb(thighOf(limb), limb);
      result.shoulders[index(limb)] = ofLimb(upperArmOf(limb), limb);
      for (const Segment first : {thighOf(limb), upperArmOf(limb)})
        if (!isCarried(first, limb))
          result.free |= beyond(first);
    }
    result.lowBack = lies_ ? ofLyingTrunk() : ofFreeTrunk();
    return result;
  }

private:
  // Pelvis and some of the trunk above it lie, and on one level, or on a wedge.
  bool liesFlat() const {
    if (!touching_.any() || touching_.first > PosedBody::kLumbar || touching_.last <= PosedBody::kLumbar)
      return false;
    constexpr double kLevel = 0.02; // statures
    const auto heightAt = [&](std::size_t point) { return lowestTrunkBall(settled_.body, point, point).height(); };
    return std::abs(heightAt(touching_.first) - heightAt(touching_.last)) < kLevel ||
           !settled_.articulation.pose.onSupport(Support::wedge).empty();
  }

  bool rests(SegmentSet part) const { return part.intersects(supported_); }

  // A limb by its first segment: whether something carries it. In lying that may be the other leg.
  bool isCarried(Segment first, Limb limb) const {
    if (rests(beyond(first)))
      return true;
    if (!lies_)
      return false;
    if (first == upperArmOf(limb))
      return settled_.body.arms[index(limb)].wrist.y - sk::kWristRadius < kLies;
    return liesLow(limb) || (liesLow(otherOf(limb)) && liesOnTheOther());
  }

  bool liesLow(Limb limb) const {
    const PosedLeg& leg = settled_.body.legs[index(limb)];
    return rests(beyond(thighOf(limb))) || leg.knee.y - sk::kKneeRadius < kLies ||
           leg.ankle.y - sk::kAnkleRadius < kLies;
  }

  bool liesOnTheOther() const {
    const PosedLeg &near = settled_.body.legs[0], &far = settled_.body.legs[1];
    return length(near.knee - far.knee) < 2 * sk::kKneeRadius + kOnTheOther &&
           length(near.ankle - far.ankle) < 2 * sk::kAnkleRadius + kOnTheOther;
  }

  double ofLimb(Segment first, Limb limb) {
    const SegmentSet part = beyond(first);
    const Vec3 joint = body_[first].joint;
    if (!isCarried(first, limb))
      return length(momentAbout(body_, joint, part));
    return lies_ ? 0 : length(momentAbout(body_, joint, part, forces()));
  }

  // What is lifted of the trunk leans on arms or head.
  bool isPropped() const {
    return settled_.articulation.pose.resting().intersects(
        {Contact::head, Contact::handNear, Contact::handFar, Contact::forearmNear, Contact::forearmFar});
  }

  double ofLyingTrunk() const {
    SegmentSet legs, upper;
    for (const Limb limb : kBothLimbs)
      if (!isCarried(thighOf(limb), limb))
        legs |= beyond(thighOf(limb));
    if (touching_.first > PosedBody::kLumbar) // the pelvis has left the floor
      for (std::size_t i = PosedBody::kPelvis; i < touching_.first; ++i)
        legs.insert(static_cast<Segment>(i));
    if (touching_.last + 1 < PosedBody::kNeck) {
      if (!isPropped())
        upper = beyond(static_cast<Segment>(touching_.last));
      for (const Limb limb : kBothLimbs)
        if (isCarried(upperArmOf(limb), limb))
          upper = upper.without(beyond(upperArmOf(limb)));
    }
    return std::max(length(momentAbout(body_, lumbarAt(touching_.first), legs)),
                    length(momentAbout(body_, lumbarAt(touching_.last), upper)));
  }

  // The point of the lumbar spine that is nearest to a point of the spine.
  Vec3 lumbarAt(std::size_t spinePoint) const {
    return body_[static_cast<Segment>(std::clamp(spinePoint, PosedBody::kLumbar, PosedBody::kThorax))].joint;
  }

  double ofFreeTrunk() {
    const SegmentSet above = beyond(Segment::lumbar1), below = wholeBody().without(above);
    const Vec3 joint = body_[Segment::lumbar1].joint;
    if (!rests(above))
      return length(momentAbout(body_, joint, above));
    if (!rests(below))
      return length(momentAbout(body_, joint, below));
    return length(momentAbout(body_, joint, above, forces()));
  }

  const std::vector<Force>& forces() {
    if (!solved_) {
      forces_ = reactions(body_, bearings_);
      solved_ = true;
    }
    return forces_;
  }

  const Settled& settled_;
  const WeighedBody& body_;
  Touching touching_;
  std::vector<Bearing> bearings_;
  SegmentSet supported_;
  bool lies_ = false, solved_ = false;
  std::vector<Force> forces_;
};

} // namespace

double JointMoments::of(LoadedJoint joint) const {
  switch (joint) {
  case LoadedJoint::lowBack:
    return lowBack;
  case LoadedJoint::hip:
    return std::max(hips[0], hips[1]);
  case LoadedJoint::shoulder:
    break;
  }
  return std::max(shoulders[0], shoulders[1]);
}

JointMoments jointMoments(const Settled& settled, const WeighedBody& body) { return Weigher(settled, body).moments(); }

JointMoments jointMoments(const Settled& settled, BodyTable table) {
  return jointMoments(settled, weighed(settled.body, table));
}

double straightLegMoment(BodyTable table) {
  Pose pose;
  pose.lean = -90;
  const WeighedBody body = weighed(posed(pose), table);
  return length(
      momentAbout(body, body[Segment::lumbar1].joint, beyond(Segment::thighNear) | beyond(Segment::thighFar)));
}

} // namespace matwright
