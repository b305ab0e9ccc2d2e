#include "core/figure/PoseHash.h"
#include "ui/figure/FigurePaint.h"

#include <unordered_map>

namespace matwright {

namespace {

constexpr std::size_t kMostKept = 1024;

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
