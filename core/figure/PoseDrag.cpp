#include "core/figure/PoseDrag.h"

#include "core/figure/JointLimits.h"
#include "core/figure/Resting.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace matwright {

namespace {

constexpr double kThere = 1e-6;        // statures: the handle is where it should be
constexpr double kProbe = 0.01;        // degrees
constexpr double kLargestStep = 12;    // degrees a round
constexpr double kMostlyInPlane = 0.5; // of a joint's motion, from there on it takes part
constexpr int kMostRounds = 60;
constexpr std::size_t kMostJoints = 4;
constexpr double kLimitMiss = 0.004; // statures: from there on a limit is said to stand in the way

double distance(Point2 a, Point2 b) { return std::hypot(a.x - b.x, a.y - b.y); }

bool isToes(Handle handle) { return handle == Handle::toesNear || handle == Handle::toesFar; }

bool legRests(const Pose& pose, Limb limb) {
  for (const Contact contact : {Contact::kneeNear, Contact::shinNear, Contact::footNear, Contact::toesNear})
    if (pose.resting().contains(contactOf(contact, limb)))
      return true;
  return pose.wall.contains(contactOf(WallContact::footNear, limb));
}

// Turns joints of one body so that one place of it comes to a point of the picture.
class Reaching {
public:
  Reaching(const Settled& shape, Handle handle, Point2 pointer)
      : start_(shape.articulation), handle_(handle), pointer_(pointer), joints_(jointsOf(handle)),
        square_(shape.body.turns[PosedBody::kPelvis].right.z) {
    for (std::size_t i = 0; i < joints_.size(); ++i) {
      const double now = angleOf(start_.pose, joints_[i]);
      const AngleRange range = rangeIn(start_.pose, joints_[i]);
      ranges_[i] = {std::min(now, range.least), std::max(now, range.most)};
    }
  }

  Drag run() {
    Trial best = climbed(start_.pose);
    // A straight limb does not know which way to bend, and a far pointer may lie behind a hill: other beginnings too.
    for (const double aside : {0.0, 70.0, -70.0, 140.0, -140.0})
      for (const double bend : {0.0, 25.0, 80.0, 130.0})
        if (best.miss >= kThere && (bend == 0 || bendsInTwo()))
          consider(best, climbed(begun(aside, bend)));
    Drag result{.pose = best.pose, .atLimit = {}, .miss = best.miss};
    if (best.miss > kLimitMiss)
      for (std::size_t i = 0; i < joints_.size(); ++i)
        if (takesPart_[i] && isAtEnd(i, angleOf(best.pose, joints_[i])))
          result.atLimit.insert(joints_[i]);
    return result;
  }

private:
  struct Trial {
    Pose pose;
    double miss = 0;
  };
  struct Slope {
    double x = 0, y = 0;  // of the handle in the picture, statures a degree
    double readiness = 0; // how much of the motion is seen
  };

  // Hand and foot hang on two joints, one behind the other.
  bool bendsInTwo() const {
    return handle_ == Handle::handNear || handle_ == Handle::handFar || handle_ == Handle::footNear ||
           handle_ == Handle::footFar;
  }

  Pose begun(double aside, double bend) const {
    Pose pose = start_.pose;
    const std::size_t root = bendsInTwo() ? 1 : 0;
    const auto put = [&](std::size_t i, double by) {
      double& angle = angleOf(pose, joints_[i]);
      angle = std::clamp(angle + by, ranges_[i].least, ranges_[i].most);
    };
    put(root, aside);
    if (bendsInTwo())
      put(0, bend);
    return pose;
  }

  static void consider(Trial& best, const Trial& trial) {
    constexpr double kBetter = 1e-4;
    if (trial.miss < best.miss - kBetter || (trial.miss < kThere && best.miss >= kThere))
      best = trial;
  }

  bool isAtEnd(std::size_t i, double angle) const {
    constexpr double kNear = 0.05;
    return angle <= ranges_[i].least + kNear || angle >= ranges_[i].most - kNear;
  }

  Articulation bodyIn(const Pose& pose) const {
    Articulation body = start_;
    body.pose = pose;
    if (isToes(handle_)) {
      const std::size_t limb = handle_ == Handle::toesNear ? 0 : 1;
      body.feet[limb] = footAt(pose.legs[limb].ankle);
    }
    return body;
  }

  Vec3 place(const Pose& pose) const { return placeOf(posed(bodyIn(pose)), handle_); }
  Point2 seen(Vec3 place) const { return seenFrom(start_.pose.view, start_.pose.flip, place); }

  Slope slope(const Pose& pose, Vec3 here, std::size_t i) {
    Pose moved = pose;
    angleOf(moved, joints_[i]) += kProbe;
    const Vec3 there = place(moved);
    const Point2 from = seen(here), to = seen(there);
    Slope found{(to.x - from.x) / kProbe, (to.y - from.y) / kProbe, 0};
    const double whole = length(there - here) / kProbe;
    const double share = whole > 1e-9 ? std::hypot(found.x, found.y) / whole : 0;
    if (share > kMostlyInPlane) {
      found.readiness = share * share * share * share;
      takesPart_[i] = true;
    }
    return found;
  }

  // From a pose on, round by round, towards the pointer.
  Trial climbed(Pose pose) {
    double miss = distance(seen(place(pose)), pointer_);
    double caution = 1e-9;
    for (int round = 0; round < kMostRounds && miss > kThere; ++round) {
      const Vec3 here = place(pose);
      std::array<Slope, kMostJoints> slopes;
      for (std::size_t i = 0; i < joints_.size(); ++i)
        slopes[i] = slope(pose, here, i);
      const Point2 at = seen(here);
      const Pose next = stepped(pose, slopes, {pointer_.x - at.x, pointer_.y - at.y}, caution);
      const double nextMiss = distance(seen(place(next)), pointer_);
      if (nextMiss < miss) {
        const bool crawls = miss - nextMiss < 1e-9;
        pose = next;
        miss = nextMiss;
        caution = std::max(caution / 4, 1e-10);
        if (crawls)
          break;
      } else {
        caution *= 8;
        if (caution > 1)
          break;
      }
    }
    return {pose, miss};
  }

  // The least weighted change that leads to the pointer, to first order; what is at its end gives way to the others.
  Pose stepped(const Pose& pose, std::array<Slope, kMostJoints> slopes, Point2 wanted, double caution) const {
    std::array<double, kMostJoints> turns{};
    for (std::size_t attempt = 0; attempt <= joints_.size(); ++attempt) {
      double xx = caution, xy = 0, yy = caution;
      for (std::size_t i = 0; i < joints_.size(); ++i) {
        xx += slopes[i].readiness * slopes[i].x * slopes[i].x;
        xy += slopes[i].readiness * slopes[i].x * slopes[i].y;
        yy += slopes[i].readiness * slopes[i].y * slopes[i].y;
      }
      const double whole = xx * yy - xy * xy;
      const double x = (yy * wanted.x - xy * wanted.y) / whole, y = (xx * wanted.y - xy * wanted.x) / whole;
      bool stopped = false;
      for (std::size_t i = 0; i < joints_.size(); ++i) {
        turns[i] = slopes[i].readiness * (slopes[i].x * x + slopes[i].y * y);
        const double now = angleOf(pose, joints_[i]);
        if ((turns[i] < 0 && now <= ranges_[i].least) || (turns[i] > 0 && now >= ranges_[i].most)) {
          slopes[i].readiness = 0;
          stopped = true;
        }
      }
      if (!stopped)
        break;
    }
    double largest = kLargestStep;
    for (std::size_t i = 0; i < joints_.size(); ++i)
      largest = std::max(largest, std::abs(turns[i]));
    Pose next = pose;
    for (std::size_t i = 0; i < joints_.size(); ++i) {
      double& angle = angleOf(next, joints_[i]);
      const double before = angle;
      angle = std::clamp(angle + turns[i] * (kLargestStep / largest), ranges_[i].least, ranges_[i].most);
      if (joints_[i] == Joint::lean)
        keepLegs(next, angle - before);
    }
    return next;
  }

  // When the pelvis leans, legs that rest stay as they are: the hips give way.
  void keepLegs(Pose& pose, double leaned) const {
    constexpr double kSquare = 0.9;
    if (std::abs(square_) < kSquare)
      return;
    for (const Limb limb : kBothLimbs)
      if (legRests(pose, limb))
        pose = turned(pose, limb == Limb::near ? Joint::hipNear : Joint::hipFar, square_ > 0 ? leaned : -leaned);
  }

  const Articulation& start_;
  Handle handle_;
  Point2 pointer_;
  std::span<const Joint> joints_;
  double square_; // how far the pelvis stands square to the side view, with its sign
  std::array<AngleRange, kMostJoints> ranges_;
  std::array<bool, kMostJoints> takesPart_{};
};

// What the picture's plane is in the world.
Vec3 worldStep(const Pose& pose, Point2 step) {
  const double mirror = pose.flip ? -1 : 1;
  switch (pose.view) {
  case View::side:
    return {mirror * step.x, step.y, 0};
  case View::front:
    return {0, step.y, -mirror * step.x};
  case View::top:
    return {mirror * step.x, 0, -step.y};
  }
  return {};
}

// The place of a limb that its contacts hold to the floor, the outermost first.
std::optional<Handle> heldBy(const Pose& pose, Limb limb, bool arm) {
  const auto rests = [&](Contact near) { return pose.resting().contains(contactOf(near, limb)); };
  const auto of = [limb](Handle near) { return static_cast<Handle>(static_cast<int>(near) + (limb == Limb::far)); };
  if (arm) {
    if (rests(Contact::forearmNear))
      return of(Handle::elbowNear);
    if (rests(Contact::handNear) || pose.wall.contains(contactOf(WallContact::handNear, limb)))
      return of(Handle::handNear);
    return std::nullopt;
  }
  if (rests(Contact::kneeNear) || rests(Contact::shinNear))
    return of(Handle::kneeNear);
  if (rests(Contact::footNear) || rests(Contact::toesNear) || rests(Contact::heelNear) ||
      pose.wall.contains(contactOf(WallContact::footNear, limb)))
    return of(Handle::footNear);
  return std::nullopt;
}

Drag seatMoved(const Settled& shape, Point2 pointer) {
  const Pose& pose = shape.articulation.pose;
  const Point2 at = seenPlaceOf(shape, Handle::seat);
  const Point2 step{pointer.x - at.x, pointer.y - at.y};
  Drag result{.pose = pose, .atLimit = {}, .miss = std::hypot(step.x, step.y)};
  if (pose.resting().intersects(kTrunkContacts))
    return result;
  Settled moved = shape;
  moved.articulation.pelvis = moved.articulation.pelvis + worldStep(pose, step);
  double miss = 0;
  bool held = false;
  for (const bool arm : {false, true})
    for (const Limb limb : kBothLimbs)
      if (const std::optional<Handle> handle = heldBy(pose, limb, arm)) {
        held = true;
        moved.body = posed(moved.articulation);
        const Drag drag = Reaching(moved, *handle, seenPlaceOf(shape, *handle)).run();
        moved.articulation.pose = drag.pose;
        result.atLimit |= drag.atLimit;
        miss = std::max(miss, drag.miss);
      }
  if (!held)
    return result;
  result.pose = moved.articulation.pose;
  result.miss = miss;
  return result;
}

} // namespace

Drag dragged(const Settled& shape, Handle handle, Point2 pointer) {
  if (distance(seenPlaceOf(shape, handle), pointer) < kThere)
    return {.pose = shape.articulation.pose, .atLimit = {}, .miss = 0};
  return handle == Handle::seat ? seatMoved(shape, pointer) : Reaching(shape, handle, pointer).run();
}

} // namespace matwright
