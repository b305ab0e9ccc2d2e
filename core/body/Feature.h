// What a movement, a position or a change asks of the body, as far as a caution can ask for it. The
// definitions by which a feature is judged stand in resources/FORMAT.md, section 1.
#pragma once

#include "core/base/EnumSet.h"

namespace matwright {

enum class Feature {
  flexLoad,
  flexEnd,
  extLoad,
  extEnd,
  rot,
  flexRot,
  extRot,
  latflex,
  spineFast,
  spineRoll,
  neckLift,
  neckEnd,
  neckLoad,
  supine,
  prone,
  sidelie,
  inverted,
  reclineFlat,
  wristLoad,
  kneel,
  hipFlex90,
  hipAdd,
  hipIr,
  hipExtEr,
  hipWide,
  oneLeg,
  kneeDeep,
  kneeTwist,
  toeLoad,
  nerveTension,
  legsLong,
  abdPressure,
  armOver,
  armAber,
  armExt,
  breathHold,
  isoHold,
  rise,
  balance,
  impact,
  stretchEnd
};

template <> struct Words<Feature> {
  static constexpr auto list = wordList(
      "flex-load", "flex-end", "ext-load", "ext-end", "rot", "flex-rot", "ext-rot", "latflex", "spine-fast",
      "spine-roll", "neck-lift", "neck-end", "neck-load", "supine", "prone", "sidelie", "inverted", "recline-flat",
      "wrist-load", "kneel", "hip-flex90", "hip-add", "hip-ir", "hip-ext-er", "hip-wide", "one-leg", "knee-deep",
      "knee-twist", "toe-load", "nerve-tension", "legs-long", "abd-pressure", "arm-over", "arm-aber", "arm-ext",
      "breath-hold", "iso-hold", "rise", "balance", "impact", "stretch-end");
};

using FeatureSet = EnumSet<Feature>;

} // namespace matwright
