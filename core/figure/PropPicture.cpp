#include "core/figure/PropPicture.h"

#include "core/figure/Skeleton.h"

#include <algorithm>
#include <numbers>

namespace matwright {

namespace sk = skeleton;

namespace {

using Kind = PicturePiece::Kind;

constexpr double kBehindAll = -1e6, kBeforeAll = 1e6;

// Sizes of what is drawn, in statures, of usual things (common practice, no source).
constexpr double kSeatThickness = 0.024, kPost = 0.009, kBackRestFrom = 0.36;
constexpr double kRingRadius = 0.1, kRingThickness = 0.011;
constexpr double kBallRadius = 0.055, kBandThickness = 0.008;
constexpr Vec3 kTail{0, 0.035, 0}; // of a band, beyond the hand
constexpr double kPeeps = 0.03;
constexpr double kWeightHalf = 0.04, kWeightGrip = 0.009, kWeightEnd = 0.021;

Point2 plus(Point2 a, Point2 b) { return {a.x + b.x, a.y + b.y}; }
Point2 times(Point2 a, double by) { return {a.x * by, a.y * by}; }
double lengthOf(Point2 a) { return std::hypot(a.x, a.y); }

class Pieces {
public:
  explicit Pieces(const Settled& shape)
      : shape_(shape), body_(shape.body), pose_(shape.articulation.pose), view_(pose_.view) {}

  std::vector<PicturePiece> run() {
    if (shape_.furniture.chair)
      chair(*shape_.furniture.chair);
    if (shape_.furniture.roller)
      roller(*shape_.furniture.roller);
    for (const Support support : {Support::ball, Support::cushion, Support::bolster})
      underEach(support);
    if (!pose_.onSupport(Support::wedge).empty())
      wedge();
    if (pose_.holds)
      held(*pose_.holds);
    std::stable_sort(pieces_.begin(), pieces_.end(),
                     [](const PicturePiece& a, const PicturePiece& b) { return a.depth < b.depth; });
    return std::move(pieces_);
  }

private:
  Point2 seen(Vec3 place) const { return seenFrom(view_, pose_.flip, place); }
  double depth(Vec3 place) const { return depthFrom(view_, place); }

  void add(Kind kind, std::vector<Point2> points, double radius, double at, bool inHand = false) {
    pieces_.push_back({kind, inHand, std::move(points), radius, at});
  }

  void box(Vec3 a, Vec3 b, double at, Kind kind = Kind::area, bool inHand = false) {
    const Point2 one = seen(a), other = seen(b);
    add(kind, {one, {other.x, one.y}, other, {one.x, other.y}}, 0, at, inHand);
  }

  void oval(Vec3 middle, double halfLength, double halfHeight, double at, bool inHand = false) {
    const Point2 centre = seen(middle);
    if (view_ == View::top)
      halfHeight = halfLength;
    ellipse(Kind::area, centre, {halfLength, 0}, {0, halfHeight}, 0, at, inHand);
  }

  void ellipse(Kind kind, Point2 centre, Point2 u, Point2 v, double radius, double at, bool inHand) {
    constexpr int kCorners = 28;
    std::vector<Point2> points;
    for (int i = 0; i < kCorners; ++i) {
      const double angle = 2 * std::numbers::pi * i / kCorners;
      points.push_back(plus(centre, plus(times(u, std::cos(angle)), times(v, std::sin(angle)))));
    }
    add(kind, std::move(points), radius, at, inHand);
  }

  void chair(const Standing& standing) {
    const double f = standing.facing, half = kSeatWidth / 2;
    const Vec3 back = standing.place;
    const bool satOn = pose_.onSupport(Support::chair).intersects(kTrunkContacts);
    const bool before = view_ == View::front && !satOn && back.x + f * kSeatDepth / 2 > body_.pelvis().x + 0.15;
    const double at = before ? kBeforeAll : kBehindAll;
    const Kind kind = before ? Kind::frame : Kind::area;
    const auto corner = [&](double along, double y, double aside) {
      return Vec3{back.x + f * along, y, back.z + aside * half};
    };
    for (const double aside : {-1.0, 1.0}) {
      add(Kind::line,
          {seen(corner(kSeatDepth - 2 * kPost, kPost, aside)),
           seen(corner(kSeatDepth - 2 * kPost, kSeatHeight - kSeatThickness, aside))},
          kPost, at);
      add(Kind::line, {seen(corner(-kPost, kPost, aside)), seen(corner(-kPost, kChairTopHeight - kPost, aside))}, kPost,
          at);
    }
    box(corner(-2 * kPost, kBackRestFrom, -1), corner(0, kChairTopHeight, 1), at, kind);
    box(corner(-2 * kPost, kSeatHeight - kSeatThickness, -1), corner(kSeatDepth, kSeatHeight, 1), at, kind);
  }

  void roller(const Standing& standing) {
    const bool along = !pose_.onSupport(Support::rollerAlong).empty();
    const double length = kRollerLength / 2, r = kRollerRadius;
    const Vec3 middle = standing.place + Vec3{0, r, 0};
    if (view_ == (along ? View::front : View::side)) {
      add(Kind::disc, {seen(middle)}, r, kBehindAll);
      return;
    }
    const Vec3 reach = along ? Vec3{length, r, r} : Vec3{r, r, length};
    box(middle - reach, middle + reach, kBehindAll);
  }

  // How far along x a contact lies on something flat.
  std::pair<double, double> stretch(Contact contact, Support support) const {
    const auto spine = [&](std::size_t from, std::size_t to, double more) {
      return std::pair{std::min(body_.spine[from].x, body_.spine[to].x) - more,
                       std::max(body_.spine[from].x, body_.spine[to].x) + more};
    };
    switch (contact) {
    case Contact::back:
    case Contact::front:
      return support == Support::bolster ? spine(PosedBody::kLumbar + 1, PosedBody::kSkull, 0.03)
                                         : spine(PosedBody::kPelvis, PosedBody::kLumbar + 2, 0.02);
    case Contact::upperBack:
      return spine(PosedBody::kThorax, PosedBody::kNeck, 0.0);
    case Contact::seat:
      return spine(PosedBody::kPelvis, PosedBody::kPelvis, 0.085);
    default:
      break;
    }
    const double x = placeOf(body_, contact).x;
    return {x - 0.065, x + 0.065};
  }

  void underEach(Support support) {
    EnumSet<Contact> contacts = pose_.onSupport(support);
    contacts.forEach([&](Contact contact) {
      const double top = surfaceUnder(pose_, contact), height = heightOf(support), bottom = top - height;
      Vec3 place = placeOf(body_, contact);
      place.y = bottom + height / 2;
      const bool ofLeg = contact >= Contact::kneeNear;
      if (support == Support::ball || (support == Support::bolster && ofLeg)) {
        oval(place, support == Support::ball ? height * 0.72 : height / 2, height / 2,
             support == Support::ball && view_ == View::side ? kBeforeAll : kBehindAll);
        return;
      }
      const auto [from, to] = stretch(contact, support);
      constexpr double kHalfWidth = 0.11;
      const double half = contact >= Contact::handNear ? 0.07 : kHalfWidth;
      box({from, bottom, place.z - half}, {to, top, place.z + half}, kBehindAll);
    });
  }

  // Fills what is between the floor and the back.
  void wedge() {
    if (view_ != View::side) {
      const double half = 0.14;
      box({body_.spine[0].x, 0, -half}, {body_.head.x + (body_.head.x < 0 ? -0.06 : 0.06), 0.2, half}, kBehindAll);
      return;
    }
    std::vector<Point2> edge;
    edge.push_back(seen({body_.spine[0].x, 0, 0}));
    for (std::size_t i = PosedBody::kLumbar; i <= PosedBody::kNeck; ++i)
      edge.push_back(seen(body_.spine[i] - body_.turns[i].forward * (trunkRadius(i) * 0.9)));
    Vec3 end = body_.spine[PosedBody::kNeck] - body_.turns[PosedBody::kNeck].forward * trunkRadius(PosedBody::kNeck);
    if (pose_.onSupport(Support::wedge).contains(Contact::head)) {
      end = body_.head - body_.headTurn.forward * sk::kHeadRadius;
      edge.push_back(seen(end));
      end = end + body_.headTurn.up * 0.04;
    }
    edge.push_back(seen(end));
    edge.push_back(seen({end.x, 0, 0}));
    add(Kind::area, std::move(edge), 0, kBehindAll);
  }

  Vec3 palm(Limb limb) const {
    const PosedArm& arm = body_.arms[index(limb)];
    return between(arm.wrist, arm.fingertips, 0.6);
  }
  Vec3 sole(Limb limb) const {
    const PosedLeg& leg = body_.legs[index(limb)];
    return between(leg.heel, leg.toes, 0.6);
  }

  void held(const HeldProp& prop) {
    const PosedLeg& near = body_.legs[0];
    const PosedLeg& far = body_.legs[1];
    switch (prop.at) {
    case HeldAt::hands:
      if (prop.what == Held::weights) {
        weight(Limb::near);
        weight(Limb::far);
      } else {
        between2(prop.what, palm(Limb::near), palm(Limb::far), body_.turns[PosedBody::kNeck].up, sk::kWristRadius);
      }
      break;
    case HeldAt::handNear:
    case HeldAt::handFar: {
      const Limb limb = prop.at == HeldAt::handNear ? Limb::near : Limb::far;
      if (prop.what == Held::weights)
        weight(limb);
      else
        ball(palm(limb));
      break;
    }
    case HeldAt::knees: { // a little above the joints
      const Vec3 a = between(near.knee, near.hip, 0.15), b = between(far.knee, far.hip, 0.15);
      between2(prop.what, a, b, near.thigh.forward, sk::kKneeRadius * 1.1);
      break;
    }
    case HeldAt::ankles: {
      const Vec3 a = between(near.ankle, near.knee, 0.1), b = between(far.ankle, far.knee, 0.1);
      between2(prop.what, a, b, near.shank.forward, sk::kAnkleRadius * 1.2);
      break;
    }
    case HeldAt::feet:
      taut({palm(Limb::near), sole(Limb::near)});
      taut({palm(Limb::far), sole(Limb::far)});
      taut({sole(Limb::near), sole(Limb::far)});
      break;
    case HeldAt::footNear:
    case HeldAt::footFar: {
      const Limb limb = prop.at == HeldAt::footNear ? Limb::near : Limb::far;
      taut({palm(Limb::near), sole(limb), palm(Limb::far)});
      break;
    }
    case HeldAt::handAndKnee:
      ball(between(palm(Limb::near), far.knee, 0.5));
      break;
    case HeldAt::lowBack:
      behindBack(prop.what);
      break;
    case HeldAt::lap: {
      const Vec3 hips = between(near.hip, far.hip, 0.5), knees = between(near.knee, far.knee, 0.5);
      const Vec3 a = between(hips, knees, 0.3), b = between(hips, knees, 0.9);
      box({a.x, std::max(a.y, b.y) + sk::kKneeRadius, -0.1}, {b.x, std::max(a.y, b.y) + sk::kKneeRadius + 0.045, 0.1},
          view_ == View::side ? 0 : kBeforeAll, Kind::area, true);
      break;
    }
    case HeldAt::seat: {
      const Vec3 low = body_.pelvis() - Vec3{0, trunkRadius(0), 0};
      box(low + Vec3{-0.075, -kCushionHeight, -0.1}, low + Vec3{0.075, 0.004, 0.1}, 0, Kind::area, true);
      break;
    }
    }
  }

  void behindBack(Held what) {
    const double radius = what == Held::ball ? kBallRadius : 0.03;
    const std::size_t at = PosedBody::kLumbar + (what == Held::ball ? 1 : 4);
    Vec3 place = body_.spine[at] - body_.turns[at].forward * (trunkRadius(at) + radius * 0.9);
    constexpr double kSeated = 0.1;
    if (what == Held::ball && body_.pelvis().y < kSeated) { // it lies on the floor and touches the back
      const double behind = body_.turns[PosedBody::kPelvis].forward.x < 0 ? 1 : -1;
      place = {-1e9, radius, body_.pelvis().z};
      for (std::size_t i = 0; i < PosedBody::kNeck; ++i) {
        const double apart = trunkRadius(i) + radius, above = body_.spine[i].y - radius;
        if (std::abs(above) < apart)
          place.x = std::max(place.x, behind * body_.spine[i].x + std::sqrt(apart * apart - above * above));
      }
      place.x *= behind;
    }
    add(Kind::disc, {seen(place)}, radius, kBehindAll, true);
  }

  void ball(Vec3 middle) { add(Kind::disc, {seen(middle)}, kBallRadius, depth(middle), true); }

  void taut(const std::vector<Vec3>& way) {
    std::vector<Point2> points;
    double nearest = -1e9;
    for (const Vec3& place : way) {
      points.push_back(seen(place));
      nearest = std::max(nearest, depth(place));
    }
    add(Kind::line, std::move(points), kBandThickness, nearest + 0.02, true);
  }

  // Between two places of the body, or round both of them.
  void between2(Held what, Vec3 a, Vec3 b, Vec3 across, double limbRadius) {
    const Vec3 middle = between(a, b, 0.5);
    const Vec3 u = direction(b - a, {0, 0, 1});
    const Vec3 v = direction(across - u * dot(across, u), {0, 1, 0});
    switch (what) {
    case Held::ball: // peeps out between what holds it
      ball(middle + v * (limbRadius == sk::kWristRadius ? 0 : kPeeps));
      break;
    case Held::cushion:
      ellipse(Kind::area, seen(middle + v * kPeeps), times(seenAlong(v), 0.065),
              openTo(seenAlong(v), seenAlong(u), 0.04, 0.035), 0, depth(middle), true);
      break;
    case Held::ring: {
      Point2 one = times(seenAlong(u), kRingRadius), other = times(seenAlong(v), kRingRadius);
      constexpr double kOpen = 0.4; // seen from its edge a ring is drawn a little open
      if (lengthOf(one) > lengthOf(other))
        other = openTo(one, other, 1, kOpen * kRingRadius);
      else
        one = openTo(other, one, 1, kOpen * kRingRadius);
      ellipse(Kind::loop, seen(middle), one, other, kRingThickness, depth(middle), true);
      break;
    }
    case Held::band:
      if (limbRadius == sk::kWristRadius) {
        taut({a - kTail, a, b, b - kTail});
      } else {
        const double half = length(b - a) / 2 + limbRadius;
        ellipse(Kind::loop, seen(middle), times(seenAlong(u), half), times(seenAlong(v), limbRadius), kBandThickness,
                std::max(depth(a), depth(b)) + 0.05, true);
      }
      break;
    case Held::weights:
      break;
    }
  }

  Point2 seenAlong(Vec3 way) const { return seen(way); }

  // `small` made at least `least` long at a right angle to `large`.
  static Point2 openTo(Point2 large, Point2 small, double scale, double least) {
    small = times(small, scale);
    const double size = std::max(lengthOf(large), 1e-9);
    const Point2 aside{-large.y / size, large.x / size};
    const double open = small.x * aside.x + small.y * aside.y;
    const double wanted = open < 0 ? std::min(open, -least) : std::max(open, least);
    return plus(small, times(aside, wanted - open));
  }

  void weight(Limb limb) {
    const PosedArm& arm = body_.arms[index(limb)];
    const Vec3 middle = palm(limb), along = arm.forearm.forward;
    const Vec3 a = middle - along * kWeightHalf, b = middle + along * kWeightHalf;
    const double at = depth(middle) + 0.03;
    add(Kind::line, {seen(a), seen(b)}, kWeightGrip, at, true);
    for (const Vec3& end : {a, b})
      add(Kind::disc, {seen(end)}, kWeightEnd, at, true);
  }

  const Settled& shape_;
  const PosedBody& body_;
  const Pose& pose_;
  View view_;
  std::vector<PicturePiece> pieces_;
};

} // namespace

std::vector<PicturePiece> piecesOf(const Settled& settled) { return Pieces(settled).run(); }

} // namespace matwright
