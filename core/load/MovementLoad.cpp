#include "core/load/MovementLoad.h"

#include "core/figure/Passage.h"
#include "core/figure/PoseHash.h"
#include "core/movement/Repetition.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

constexpr std::size_t kShapes = 25; // evenly along the way, its ends included

// All along the way from the start to the end pose: what is borne, and where the segments are.
class Course {
public:
  Course(const KeyPoses& poses, BodyTable table) : table_(table), still_(poses.start == poses.end) {
    if (still_) {
      shapes_.fill(shapeOf(settled(poses.start)));
      return;
    }
    const Passage passage(settled(poses.start), settled(poses.end));
    for (std::size_t i = 0; i < kShapes; ++i)
      shapes_[i] = shapeOf(passage.at(static_cast<double>(i) / (kShapes - 1)));
  }

  bool isStill() const { return still_; }

  ByLoadedJoint at(double share) const {
    const std::size_t before = linkAt(share);
    const double part = placeOf(share) - static_cast<double>(before);
    const auto mixed = [part](double from, double to) { return std::lerp(from, to, part); };
    ByLoadedJoint values;
    for (std::size_t i = 0; i < kLoadedJoints; ++i) {
      const auto joint = static_cast<LoadedJoint>(i);
      values[i] = mixed(shapes_[before].moments.of(joint), shapes_[before + 1].moments.of(joint));
    }
    return values;
  }

  // What it takes to move on from a share of the way with a speed and an acceleration (shares a second).
  ByLoadedJoint swingAt(double share, double speed, double acceleration) const {
    const std::size_t middle = std::clamp<std::size_t>(linkAt(share), 1, kShapes - 2);
    const Shape &before = shapes_[middle - 1], &shape = shapes_[middle], &after = shapes_[middle + 1];
    constexpr double kStep = 1.0 / (kShapes - 1);
    const auto change = [&](Vec3 from, Vec3 here, Vec3 to) {
      const Vec3 slope = (to - from) * (0.5 / kStep), bend = (to - here * 2 + from) * (1 / (kStep * kStep));
      return slope * acceleration + bend * (speed * speed);
    };
    std::array<SegmentMotion, kSegments> motion;
    for (std::size_t i = 0; i < kSegments; ++i) {
      const auto axis = [i](const Shape& of) { return of.body.segments[i].end - of.body.segments[i].joint; };
      motion[i] = {change(before.body.segments[i].centre, shape.body.segments[i].centre, after.body.segments[i].centre),
                   change(axis(before), axis(shape), axis(after))};
    }
    ByLoadedJoint swing{};
    const auto add = [&](LoadedJoint joint, Segment first) {
      double& most = swing[static_cast<std::size_t>(joint)];
      if (shape.moments.free.contains(first))
        most =
            std::max(most, length(inertialMoment(shape.body, table_, shape.body[first].joint, beyond(first), motion)));
    };
    for (const Limb limb : kBothLimbs) {
      add(LoadedJoint::hip, thighOf(limb));
      add(LoadedJoint::shoulder, upperArmOf(limb));
    }
    return swing;
  }

private:
  struct Shape {
    JointMoments moments;
    WeighedBody body;
  };

  Shape shapeOf(const Settled& settled) const {
    const WeighedBody body = weighed(settled.body, table_);
    return {jointMoments(settled, body), body};
  }
  static double placeOf(double share) { return std::clamp(share, 0.0, 1.0) * (kShapes - 1); }
  static std::size_t linkAt(double share) { return std::min(static_cast<std::size_t>(placeOf(share)), kShapes - 2); }

  BodyTable table_;
  bool still_;
  std::array<Shape, kShapes> shapes_;
};

} // namespace

MovementLoad loadOf(const KeyPoses& poses, const Tempo& tempo, BodyTable table) {
  const Course course(poses, table);
  const Seconds whole = lengthOf(tempo);
  MovementLoad load;
  constexpr auto kSpans = static_cast<double>(MovementLoad::kTimes - 1);
  const auto shareAt = [&](double place) { // repetitions follow one another
    return momentAt(tempo, whole * (std::fmod(place + kSpans, kSpans) / kSpans)).share;
  };
  const double span = whole.value() / kSpans;
  for (std::size_t i = 0; i < MovementLoad::kTimes; ++i) {
    const bool last = i + 1 == MovementLoad::kTimes;
    const auto place = static_cast<double>(i);
    const double share = shareAt(place);
    load.course[i] = course.at(share);
    ByLoadedJoint swing{};
    if (!course.isStill()) {
      constexpr double kApart = 0.25; // of a span
      const double earlier = shareAt(place - kApart), later = shareAt(place + kApart), apart = kApart * span;
      swing = course.swingAt(share, (later - earlier) / (2 * apart), (later - 2 * share + earlier) / (apart * apart));
    }
    for (std::size_t k = 0; k < kLoadedJoints; ++k) {
      load.peak[k] = std::max(load.peak[k], load.course[i][k]);
      load.mean[k] += load.course[i][k] * (i == 0 || last ? 0.5 : 1) / kSpans;
      load.swing[k] = std::max(load.swing[k], swing[k]);
    }
  }
  return load;
}

std::size_t Loads::KeyHash::operator()(const Key& key) const {
  NumberHash hash;
  hash.add(key.poses.start);
  hash.add(key.poses.end);
  hash.add({key.tempo.secondsPerCount.value()});
  for (const Phase& phase : key.tempo.phases)
    hash.add({static_cast<double>(phase.breath), static_cast<double>(phase.counts)});
  return hash.value();
}

std::shared_ptr<const MovementLoad> Loads::of(const Movement& movement, const Option* option) const {
  return of(posesOf(movement, option), tempoOf(movement, option));
}

std::shared_ptr<const MovementLoad> Loads::of(const KeyPoses& poses, const Tempo& tempo) const {
  constexpr std::size_t kMostKnown = 1000;
  Key key{poses, tempo};
  {
    const std::lock_guard lock(mutex_);
    if (const auto found = known_.find(key); found != known_.end())
      return found->second;
  }
  auto load = std::make_shared<const MovementLoad>(loadOf(key.poses, key.tempo, table_));
  const std::lock_guard lock(mutex_);
  if (known_.size() >= kMostKnown)
    known_.clear();
  return known_.emplace(std::move(key), std::move(load)).first->second;
}

} // namespace matwright
