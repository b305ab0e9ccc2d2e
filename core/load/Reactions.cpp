#include "core/load/Reactions.h"

#include "core/figure/Resting.h"
#include "core/figure/Skeleton.h"
#include "core/load/LeastSquares.h"

#include <algorithm>

namespace matwright {

namespace sk = skeleton;

namespace {

constexpr double kTouch = 0.008;   // statures: flesh gives way by about so much
constexpr double kGliding = 0.002; // a trunk on its way from one rest to another may be drawn so far above the floor
constexpr Vec3 kUp{0, 1, 0};
constexpr double kBalance = 1e5; // how much more balance counts than ease
constexpr double kEvenness = 1e-4;

Segment segmentAt(std::size_t spinePoint) {
  return spinePoint <= PosedBody::kLumbar ? Segment::pelvis
                                          : static_cast<Segment>(std::min(spinePoint, PosedBody::kNeck) - 1);
}

// Gathers the supports of one body.
class Gathering {
public:
  Gathering(const Settled& settled, const WeighedBody& body)
      : drawn_(settled.body), pose_(settled.articulation.pose), body_(body) {
    if (settled.wall) {
      const auto across = [&](Vec3 place) { return settled.wall->beside ? place.z : place.x; };
      const double away = settled.wall->at > across(drawn_.pelvis()) ? -1 : 1;
      away_ = settled.wall->beside ? Vec3{0, 0, away} : Vec3{away, 0, 0};
    }
  }

  std::vector<Bearing> bearings(const Touching& touching) {
    bearings_.reserve(NonNegativeFit::kMost);
    for (std::size_t i = touching.first; i <= touching.last; ++i)
      if (touching.points[i])
        addSpine(i, kUp);
    if (resting_.contains(Contact::head) || isLow(drawn_.head, sk::kHeadRadius))
      add(Segment::headAndNeck, body_[Segment::headAndNeck].end + drawn_.head - drawn_.crown, kUp);
    for (const Limb limb : kBothLimbs) {
      addArm(limb);
      addLeg(limb);
    }
    const std::size_t below = bearings_.size();
    if (!pose_.wall.empty())
      addWall();
    if (const Vec3 ahead = drawn_.turns[PosedBody::kPelvis].forward; !pose_.onSupport(Support::chairBack).empty())
      addBack({ahead.x > 0 ? 1.0 : -1.0, 0, 0});
    if (bearings_.size() > below)
      addFriction(below);
    return std::move(bearings_);
  }

private:
  void add(Segment segment, Vec3 at, Vec3 push) {
    if (bearings_.size() < NonNegativeFit::kMost)
      bearings_.push_back({segment, at, push});
  }

  // The flesh to the right and to the left of the spine, each if it reaches as far against the push as the other does.
  void addSpine(std::size_t point, Vec3 push) {
    const Segment segment = segmentAt(point);
    const Vec3 joint = point == 0 ? body_[segment].joint : body_[segment].end;
    const Vec3 aside = drawn_.turns[point].right * trunkHalfWidth(point);
    const double slant = dot(aside, push);
    if (slant < kTouch / 2)
      add(segment, joint + aside, push);
    if (-slant < kTouch / 2)
      add(segment, joint - aside, push);
  }

  bool rests(Contact near, Limb limb) const { return resting_.contains(contactOf(near, limb)); }

  static bool isLow(Vec3 centre, double radius) { return centre.y - radius < kTouch; }

  void addArm(Limb limb) {
    const Segment hand = handOf(limb), forearm = parentOf(hand);
    const PosedArm& arm = drawn_.arms[index(limb)];
    const bool onForearm = rests(Contact::forearmNear, limb), onHand = rests(Contact::handNear, limb);
    if (onForearm || isLow(arm.elbow, sk::kElbowRadius))
      add(forearm, body_[forearm].joint, kUp);
    if (onForearm || onHand || isLow(arm.wrist, sk::kWristRadius))
      add(hand, body_[hand].joint, kUp);
    if (onHand)
      add(hand, between(body_[hand].joint, body_[hand].end, kPalm), kUp);
  }

  void addLeg(Limb limb) {
    const Segment lower = lowerLegOf(limb);
    const PosedLeg& leg = drawn_.legs[index(limb)];
    const Vec3 ankle = body_[lower].end - leg.ankle; // from the drawn ankle to the weighed one
    const bool onShin = rests(Contact::shinNear, limb), onFoot = rests(Contact::footNear, limb);
    if (onShin || rests(Contact::kneeNear, limb) || isLow(leg.knee, sk::kKneeRadius))
      add(lower, body_[lower].joint, kUp);
    if (onShin || isLow(leg.ankle, sk::kAnkleRadius))
      add(lower, body_[lower].end, kUp);
    if (onFoot || rests(Contact::heelNear, limb) || isLow(leg.heel, sk::kHeelRadius))
      add(lower, leg.heel + ankle, kUp);
    if (onFoot || rests(Contact::toesNear, limb) || isLow(leg.toes, sk::kToeRadius))
      add(lower, leg.toes + ankle, kUp);
  }

  // The back against something upright that pushes it.
  void addBack(Vec3 push) {
    double reach = -1e9;
    const auto reachOf = [&](std::size_t i) { return -dot(push, drawn_.spine[i]) + trunkRadius(i); };
    for (std::size_t i = 0; i <= PosedBody::kNeck; ++i)
      reach = std::max(reach, reachOf(i));
    for (std::size_t i = 0; i <= PosedBody::kNeck; ++i)
      if (reachOf(i) > reach - kTouch)
        addSpine(i, push);
  }

  void addWall() {
    if (pose_.wall.contains(WallContact::back))
      addBack(away_);
    for (const Limb limb : kBothLimbs) {
      const Segment hand = handOf(limb);
      const Segment lower = lowerLegOf(limb);
      if (pose_.wall.contains(contactOf(WallContact::handNear, limb)) && !rests(Contact::handNear, limb))
        add(hand, between(body_[hand].joint, body_[hand].end, kPalm / 2), away_);
      if (pose_.wall.contains(contactOf(WallContact::footNear, limb)) && !rests(Contact::footNear, limb))
        add(lower, body_[lower].end, away_);
    }
  }

  // At the first `below` bearings, along the push of what is upright.
  void addFriction(std::size_t below) {
    const Vec3 along = bearings_[below].push;
    for (std::size_t i = 0; i < below; ++i)
      for (const double way : {1.0, -1.0})
        add(bearings_[i].segment, bearings_[i].at, along * way);
  }

  static constexpr double kPalm = 0.6; // of the hand, from the wrist: as far as weight can go

  const PosedBody& drawn_;
  const Pose& pose_;
  const EnumSet<Contact> resting_ = pose_.resting();
  const WeighedBody& body_;
  Vec3 away_; // from the wall
  std::vector<Bearing> bearings_;
};

using Row = NonNegativeFit::Row;

// The component along an axis.
Row along(const std::array<Row, 3>& rows, Vec3 axis, std::size_t n) {
  Row result{};
  for (std::size_t i = 0; i < n; ++i)
    result[i] = rows[0][i] * axis.x + rows[1][i] * axis.y + rows[2][i] * axis.z;
  return result;
}

// From hip to hip, level.
Vec3 sideways(const WeighedBody& body) {
  Vec3 across = body[Segment::thighNear].joint - body[Segment::thighFar].joint;
  across.y = 0;
  return direction(across, {0, 0, 1});
}

// Asks for three numbers at once, one along each axis.
void take(NonNegativeFit& fit, const std::array<Row, 3>& rows, Vec3 right, double weight) {
  fit.take(rows[0], right.x, weight);
  fit.take(rows[1], right.y, weight);
  fit.take(rows[2], right.z, weight);
}

void put(std::array<Row, 3>& rows, std::size_t column, Vec3 v) {
  rows[0][column] = v.x;
  rows[1][column] = v.y;
  rows[2][column] = v.z;
}

} // namespace

Touching touchingBelow(const Settled& settled) {
  const Pose& pose = settled.articulation.pose;
  std::array<double, PosedBody::kNeck + 1> heights;
  for (std::size_t i = 0; i < heights.size(); ++i)
    heights[i] = lowestTrunkBall(settled.body, i, i).height();
  Touching touching;
  const auto touch = [&](std::size_t from, std::size_t to, double level) {
    for (std::size_t i = from; i <= to; ++i)
      touching.points[i] = touching.points[i] || heights[i] < level + kTouch;
  };
  const EnumSet<Contact> on = pose.resting().without(pose.onSupport(Support::chairBack));
  if (!on.intersects(kTrunkContacts))
    touch(PosedBody::kPelvis, PosedBody::kNeck, kGliding);
  const auto touchLowest = [&](std::size_t from, std::size_t to) {
    touch(from, to, *std::min_element(heights.begin() + from, heights.begin() + to + 1));
  };
  if (!pose.onSupport(Support::wedge).empty()) // leans on it from the seat up
    touch(PosedBody::kPelvis, PosedBody::kNeck, 1);
  else if (on.intersects({Contact::back, Contact::front, Contact::side}))
    touchLowest(PosedBody::kPelvis, PosedBody::kNeck);
  if (on.contains(Contact::seat))
    touchLowest(PosedBody::kPelvis, PosedBody::kLumbar);
  if (on.contains(Contact::upperBack))
    touchLowest(PosedBody::kThorax + 1, PosedBody::kNeck);
  for (std::size_t i = 0; i < heights.size(); ++i) {
    if (!touching.points[i])
      continue;
    if (!touching.any())
      touching.first = i;
    touching.last = i;
  }
  return touching;
}

std::vector<Bearing> bearingsOf(const Settled& settled, const WeighedBody& body, const Touching& touching) {
  return Gathering(settled, body).bearings(touching);
}

std::vector<Force> reactions(const WeighedBody& body, const std::vector<Bearing>& bearings) {
  if (bearings.empty())
    return {};
  const std::size_t n = bearings.size();
  const SegmentSet legs = beyond(Segment::thighNear) | beyond(Segment::thighFar);
  const bool onLegsAlone =
      std::all_of(bearings.begin(), bearings.end(), [&](const Bearing& each) { return legs.contains(each.segment); });
  NonNegativeFit fit(n);
  for (std::size_t j = 1; j < kSegments; ++j) {
    const auto joint = static_cast<Segment>(j);
    const SegmentSet part = beyond(joint);
    std::array<Row, 3> rows{};
    bool touched = false;
    for (std::size_t s = 0; s < n; ++s)
      if (part.contains(bearings[s].segment)) {
        put(rows, s, cross(bearings[s].at - body[joint].joint, bearings[s].push));
        touched = true;
      }
    if (touched)
      take(fit, rows, -momentAbout(body, body[joint].joint, part), 1);
  }
  std::array<Row, 3> turning{}, pushing{};
  const Vec3 about = body[Segment::pelvis].joint;
  for (std::size_t s = 0; s < n; ++s) {
    put(turning, s, cross(bearings[s].at - about, bearings[s].push));
    put(pushing, s, bearings[s].push);
  }
  const Vec3 right = sideways(body), weight = momentAbout(body, about, wholeBody());
  const std::array<Vec3, 3> axes{right, kUp, cross(kUp, right)};
  for (std::size_t i = 0; i < axes.size(); ++i)
    if (i < 2 || !onLegsAlone)
      fit.take(along(turning, axes[i], n), -dot(weight, axes[i]), kBalance);
  take(fit, pushing, kUp, kBalance);
  fit.prefer(kEvenness);
  const Row sizes = fit.solve();
  std::vector<Force> forces;
  for (std::size_t s = 0; s < n; ++s)
    if (sizes[s] > 0)
      forces.push_back({bearings[s].segment, bearings[s].at, bearings[s].push * sizes[s]});
  const Vec3 ahead = cross(kUp, right);
  const double missing = -dot(momentAbout(body, about, wholeBody(), forces), right);
  for (Force& force : forces)
    force.at = force.at + ahead * missing;
  return forces;
}

} // namespace matwright
