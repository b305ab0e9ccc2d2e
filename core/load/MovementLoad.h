// The moments of weight through one repetition of a movement.
#pragma once

#include "core/load/JointMoments.h"
#include "core/movement/Movement.h"

#include <memory>
#include <mutex>
#include <unordered_map>

namespace matwright {

using ByLoadedJoint = std::array<double, kLoadedJoints>; // by LoadedJoint; body weights times statures

struct MovementLoad {
  static constexpr std::size_t kTimes = 49; // the first and the last of a repetition included

  std::array<ByLoadedJoint, kTimes> course{}; // at even times of a repetition
  ByLoadedJoint peak{};
  ByLoadedJoint mean{}; // over the time of a repetition
  // What is left out of these: the most that setting a free limb in motion and stopping it adds about its hip or
  // shoulder at the movement's pace. In body masses times square statures a square second; none for the low back.
  ByLoadedJoint swing{};
  friend bool operator==(const MovementLoad&, const MovementLoad&) = default;
};

// Held still at each moment; `swing` tells what that leaves out. Of hips and shoulders the greater of the two sides at
// each moment.
MovementLoad loadOf(const KeyPoses& poses, const Tempo& tempo, BodyTable table);

// A swing in newton metres.
constexpr double swingNewtonMetres(double swing, const BodySize& size) {
  return swing * size.mass * size.stature * size.stature;
}

// Remembers what was worked out, by poses and tempo: a thousand movements at most, then it begins anew. Safe to be
// asked from several threads.
class Loads {
public:
  explicit Loads(BodyTable table = BodyTable::winter) : table_(table) {}

  BodyTable table() const { return table_; }
  // At a tempo of its own, as steps may have one.
  std::shared_ptr<const MovementLoad> of(const KeyPoses& poses, const Tempo& tempo) const;
  std::shared_ptr<const MovementLoad> of(const Movement& movement, const Option* option) const;
  // A moment as a share of the straight-leg value.
  double lever(double lowBackMoment) const { return lowBackMoment / straightLeg_; }

private:
  struct Key {
    KeyPoses poses;
    Tempo tempo;
    friend bool operator==(const Key&, const Key&) = default;
  };
  struct KeyHash {
    std::size_t operator()(const Key& key) const;
  };

  BodyTable table_;
  double straightLeg_ = straightLegMoment(table_);
  mutable std::mutex mutex_;
  mutable std::unordered_map<Key, std::shared_ptr<const MovementLoad>, KeyHash> known_;
};

} // namespace matwright
