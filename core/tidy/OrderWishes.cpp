#include "core/tidy/OrderWishes.h"

#include <algorithm>

namespace matwright {
namespace {

const FeatureSet kEndRange{Feature::flexEnd, Feature::extEnd,  Feature::stretchEnd,
                           Feature::rot,     Feature::flexRot, Feature::extRot};

} // namespace

int risesOn(const Way& way) {
  return static_cast<int>(std::count_if(way.changes.begin(), way.changes.end(),
                                        [](const Change* change) { return change->features.contains(Feature::rise); }));
}

bool goesToEndRange(FeatureSet features) { return features.intersects(kEndRange); }

SpineTurn spineTurnOf(const Movement& movement) {
  const auto& spine = movement.spine;
  if (spine.front() == SpineAction::flexion)
    return SpineTurn::flexion;
  const bool extends = std::find(spine.begin(), spine.end(), SpineAction::extension) != spine.end();
  return extends ? SpineTurn::counter : SpineTurn::other;
}

} // namespace matwright
