#include "core/load/MovementLoad.h"

#include "core/figure/Passage.h"
#include "core/figure/PoseHash.h"
#include "core/movement/Repetition.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

constexpr std::size_t kShapes = 25; // evenly along the way, its ends included

// The moments all along the way from the start to the end pose.
class Course {
public:
  Course(const KeyPoses& poses, BodyTable table) {
    if (poses.start == poses.end) {
      shapes_.fill(valuesOf(settled(poses.start), table));
      return;
    }
    const Passage passage(settled(poses.start), settled(poses.end));
    for (std::size_t i = 0; i < kShapes; ++i)
      shapes_[i] = valuesOf(passage.at(static_cast<double>(i) / (kShapes - 1)), table);
  }

  ByLoadedJoint at(double share) const {
    const double place = std::clamp(share, 0.0, 1.0) * (kShapes - 1);
    const std::size_t before = std::min(static_cast<std::size_t>(place), kShapes - 2);
    ByLoadedJoint values;
    for (std::size_t i = 0; i < kLoadedJoints; ++i)
      values[i] = std::lerp(shapes_[before][i], shapes_[before + 1][i], place - static_cast<double>(before));
    return values;
  }

private:
  static ByLoadedJoint valuesOf(const Settled& shape, BodyTable table) {
    const JointMoments moments = jointMoments(shape, table);
    ByLoadedJoint values;
    for (std::size_t i = 0; i < kLoadedJoints; ++i)
      values[i] = moments.of(static_cast<LoadedJoint>(i));
    return values;
  }

  std::array<ByLoadedJoint, kShapes> shapes_;
};

} // namespace

MovementLoad loadOf(const KeyPoses& poses, const Tempo& tempo, BodyTable table) {
  const Course course(poses, table);
  const Seconds whole = lengthOf(tempo);
  MovementLoad load;
  constexpr auto kSpans = static_cast<double>(MovementLoad::kTimes - 1);
  for (std::size_t i = 0; i < MovementLoad::kTimes; ++i) {
    const bool last = i + 1 == MovementLoad::kTimes; // a repetition ends where the next begins
    const double share = momentAt(tempo, last ? Seconds{} : whole * (static_cast<double>(i) / kSpans)).share;
    load.course[i] = course.at(share);
    for (std::size_t k = 0; k < kLoadedJoints; ++k) {
      load.peak[k] = std::max(load.peak[k], load.course[i][k]);
      load.mean[k] += load.course[i][k] * (i == 0 || last ? 0.5 : 1) / kSpans;
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
  key.tempo.secondsPerCount = Seconds(1);
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
