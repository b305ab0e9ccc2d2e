#include "ui/figure/FigurePaint.h"

#include <bit>
#include <cstdint>
#include <initializer_list>
#include <unordered_map>

namespace matwright {

namespace {

constexpr std::size_t kMostKept = 1024;

struct PoseHash {
  std::size_t operator()(const Pose& pose) const {
    std::uint64_t hash = 0xcbf29ce484222325; // FNV-1a over the numbers
    const auto add = [&hash](std::initializer_list<double> numbers) {
      for (const double number : numbers) {
        hash ^= std::bit_cast<std::uint64_t>(number + 0.0); // -0 is 0
        hash *= 0x100000001b3;
        hash ^= hash >> 29;
      }
    };
    add({pose.lean, pose.roll});
    for (const SpineAngles& part : {pose.lumbar, pose.thorax, pose.neck})
      add({part.bend, part.side, part.turn});
    for (const ArmAngles& arm : pose.arms)
      add({arm.shoulder, arm.out, arm.elbow});
    for (const LegAngles& leg : pose.legs)
      add({leg.hip, leg.out, leg.turn, leg.knee, leg.ankle});
    return static_cast<std::size_t>(hash);
  }
};

} // namespace

std::shared_ptr<const Settled> settledOnce(const Pose& pose) {
  static thread_local std::unordered_map<Pose, std::shared_ptr<const Settled>, PoseHash> kept;
  if (const auto found = kept.find(pose); found != kept.end())
    return found->second;
  if (kept.size() >= kMostKept)
    kept.clear();
  return kept.emplace(pose, std::make_shared<const Settled>(settled(pose))).first->second;
}

} // namespace matwright
