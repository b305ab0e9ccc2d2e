#include "core/figure/Settle.h"

#include "core/figure/Freedom.h"
#include "core/figure/Skeleton.h"

#include <algorithm>

namespace matwright {

namespace sk = skeleton;

namespace {

constexpr int kMostRounds = 40;
constexpr int kPatience = 4; // rounds without progress
constexpr int kMostUnlocks = 2;
constexpr double kCautionFresh = 1e-6, kCautionFollowing = 5e-3;

class Settling {
public:
  Settling(const Articulation& articulation, bool following, std::span<const Hold> holds, std::optional<Wall> wall)
      : laying_(articulation, wall), following_(following), readiness_(readiness(laying_, following)),
        limbs_(limbContacts(laying_.on())), holds_(holds) {}

  Settled run() {
    double best = 1e9;
    int stalled = 0, unlocks = 0;
    for (int round = 0; round < kMostRounds; ++round) {
      laying_.refresh();
      collect();
      if (worst() < kCloseEnough)
        return result();
      stalled = worst() > 0.98 * best ? stalled + 1 : 0;
      best = std::min(best, worst());
      if (stalled == kPatience) {
        if (following_ || unlocks++ == kMostUnlocks) // shapes that follow one another must not leap
          return result();
        unlock(laying_, gaps());
        stalled = 0;
      }
      closeGaps(laying_, gaps(), readiness_, following_ ? kCautionFollowing : kCautionFresh);
    }
    laying_.refresh();
    collect();
    return result();
  }

private:
  // The contacts of limbs and head, each place once.
  static EnumSet<Contact> limbContacts(EnumSet<Contact> on) {
    EnumSet<Contact> limbs = on.without(kTrunkContacts);
    for (const Limb limb : kBothLimbs) {
      if (on.contains(contactOf(Contact::footNear, limb)))
        limbs = limbs.without({contactOf(Contact::toesNear, limb), contactOf(Contact::heelNear, limb)});
      if (on.contains(contactOf(Contact::shinNear, limb)))
        limbs = limbs.without({contactOf(Contact::kneeNear, limb)});
    }
    return limbs;
  }

  std::span<const Gap> gaps() const { return {gaps_.data(), count_}; }

  double worst() const {
    double worst = 0;
    for (const Gap& gap : gaps())
      worst = std::max(worst, std::abs(gap.size));
    return worst;
  }

  void add(const Gap& gap) {
    if (count_ < kMostGaps)
      gaps_[count_++] = gap;
  }

  void collect() {
    count_ = 0;
    const PosedBody& body = laying_.body();
    limbs_.forEach([&](Contact contact) {
      for (const Ball& ball : contactBalls(body, contact))
        add(heightGap(laying_, ball, laying_.surface(contact)));
    });
    for (const Limb limb : kBothLimbs) {
      const PosedLeg& leg = body.legs[index(limb)];
      const bool onFoot = laying_.rests(Contact::footNear, limb);
      if (laying_.rests(Contact::shinNear, limb) && !laying_.rests(Contact::toesNear, limb) && !onFoot)
        add(heightGap(laying_, {leg.toes, sk::kToeRadius, legOf(limb), 3},
                      laying_.surface(contactOf(Contact::shinNear, limb)))); // the foot lies on its back
    }
    for (const Ball& ball : wallBalls())
      add(wallGap(laying_, ball));
    keepAbove();
    for (const Hold& hold : holds_) {
      const Ball ball = contactBalls(body, hold.contact)[0];
      const Vec3 place = hold.place + ball.centre - placeOf(body, hold.contact);
      add(placeGap(laying_, ball, {1, 0, 0}, place));
      add(placeGap(laying_, ball, {0, 0, 1}, place));
    }
  }

  ContactBalls wallBalls() const {
    ContactBalls balls;
    const EnumSet<WallContact> walls = laying_.walls();
    for (const Limb limb : kBothLimbs) {
      if (walls.contains(contactOf(WallContact::footNear, limb)) && !laying_.rests(Contact::footNear, limb))
        balls.add(laying_.footOnWall(limb));
      if (walls.contains(contactOf(WallContact::handNear, limb)) && !laying_.rests(Contact::handNear, limb))
        balls.add({laying_.body().arms[index(limb)].wrist, sk::kWristRadius, armOf(limb), 2});
    }
    return balls;
  }

  // What has sunk is held at the floor until it would rise by itself.
  void keepAbove() {
    const auto held = [](bool before, const Ball& ball) {
      return ball.height() < (before ? kCloseEnough : -kCloseEnough);
    };
    const std::array<Ball, kOuterBalls> outer = outerBalls(laying_.body());
    for (std::size_t i = 0; i < kOuterBalls; ++i) {
      lifted_[i] = outer[i].place > 0 && held(lifted_[i], outer[i]) && (lifted_[i] || !restsBy(outer[i]));
      if (lifted_[i])
        add(heightGap(laying_, outer[i], 0));
    }
    if (!laying_.restsOnTrunk()) {
      const Ball lowest = lowestTrunkBall(laying_.body(), PosedBody::kPelvis, PosedBody::kNeck);
      trunkLifted_ = held(trunkLifted_, lowest);
      if (trunkLifted_)
        add(heightGap(laying_, lowest, 0));
    }
  }

  // True when a contact already holds the ball at the floor.
  bool restsBy(const Ball& ball) const {
    bool found = false;
    limbs_.forEach([&](Contact contact) {
      for (const Ball& resting : contactBalls(laying_.body(), contact))
        found = found || resting.centre == ball.centre;
    });
    return found;
  }

  Settled result() const {
    Settled settled{.articulation = laying_.articulation(), .body = laying_.body(), .wall = {}, .furniture = {}};
    for (const Limb limb : kBothLimbs) {
      const Vec3 along = settled.articulation.feet[index(limb)].along;
      settled.articulation.pose.legs[index(limb)].ankle = std::atan2(along.y, along.x) / kRadiansPerDegree;
    }
    const auto widen = [&settled](double gap) { settled.largestGap = std::max(settled.largestGap, std::abs(gap)); };
    laying_.on().forEach([&](Contact contact) { widen(clearance(settled, contact)); });
    if (!laying_.walls().empty()) {
      settled.wall = laying_.wallPlace();
      for (const Ball& ball : wallBalls())
        widen(wallGap(laying_, ball).size);
    }
    settled.furniture = furnitureOf(settled.body, settled.articulation.pose);
    settled.deepestSink = std::max(0.0, -clearance(settled.body));
    return settled;
  }

  Laying laying_;
  bool following_;
  FreedomRow readiness_;
  EnumSet<Contact> limbs_;
  std::span<const Hold> holds_;
  std::array<Gap, kMostGaps> gaps_;
  std::size_t count_ = 0;
  std::array<bool, kOuterBalls> lifted_{};
  bool trunkLifted_ = false;
};

} // namespace

Settled settled(const Pose& pose) {
  Articulation articulation = articulated(pose);
  for (const Limb limb : kBothLimbs) {
    const EnumSet<Contact> resting = pose.resting();
    const bool onShin = resting.contains(contactOf(Contact::shinNear, limb));
    if (onShin && !resting.contains(contactOf(Contact::toesNear, limb)))
      articulation.feet[index(limb)] = footAt(std::min(pose.legs[index(limb)].ankle, -60.0));
  }
  articulation.pelvis.y -= clearance(posed(articulation));
  return Settling(articulation, false, {}, {}).run();
}

Settled settledFrom(const Articulation& near, std::span<const Hold> holds, std::optional<Wall> wall) {
  return Settling(near, true, holds, wall).run();
}

Vec3 placeOf(const PosedBody& body, Contact contact) {
  switch (contact) {
  case Contact::back:
  case Contact::front:
  case Contact::seat:
  case Contact::side:
    return body.pelvis();
  case Contact::upperBack:
    return between(body.thorax(), body.neck(), 0.5);
  default:
    break;
  }
  const ContactBalls balls = contactBalls(body, contact);
  return balls.size() == 2 ? between(balls[0].centre, balls[1].centre, 0.5) : balls[0].centre;
}

namespace {

double clearanceOver(const PosedBody& body, Contact contact, double surface) {
  double worst = 0;
  for (const Ball& ball : contactBalls(body, contact))
    if (std::abs(ball.height() - surface) > std::abs(worst))
      worst = ball.height() - surface;
  return worst;
}

} // namespace

double clearance(const PosedBody& body, Contact contact) { return clearanceOver(body, contact, 0); }

double clearance(const Settled& shape, Contact contact) {
  return clearanceOver(shape.body, contact, surfaceUnder(shape.articulation.pose, contact));
}

double clearance(const PosedBody& body) {
  double lowest = lowestTrunkBall(body, PosedBody::kPelvis, PosedBody::kNeck).height();
  for (const Ball& ball : outerBalls(body))
    lowest = std::min(lowest, ball.height());
  return lowest;
}

} // namespace matwright
