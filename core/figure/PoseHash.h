// A hash of poses, for tables of what was worked out from them.
#pragma once

#include "core/figure/Pose.h"

#include <bit>
#include <cstdint>
#include <initializer_list>

namespace matwright {

// FNV-1a over numbers. Equal numbers give equal hashes; contacts and views are left to comparing.
class NumberHash {
public:
  void add(std::initializer_list<double> numbers) {
    for (const double number : numbers) {
      hash_ ^= std::bit_cast<std::uint64_t>(number + 0.0); // -0 is 0
      hash_ *= 0x100000001b3;
      hash_ ^= hash_ >> 29;
    }
  }
  void add(const Pose& pose) {
    add({pose.lean, pose.roll});
    for (const SpineAngles& part : {pose.lumbar, pose.thorax, pose.neck})
      add({part.bend, part.side, part.turn});
    for (const ArmAngles& arm : pose.arms)
      add({arm.shoulder, arm.out, arm.elbow});
    for (const LegAngles& leg : pose.legs)
      add({leg.hip, leg.out, leg.turn, leg.knee, leg.ankle});
  }
  std::size_t value() const { return static_cast<std::size_t>(hash_); }

private:
  std::uint64_t hash_ = 0xcbf29ce484222325;
};

struct PoseHash {
  std::size_t operator()(const Pose& pose) const {
    NumberHash hash;
    hash.add(pose);
    return hash.value();
  }
};

} // namespace matwright
