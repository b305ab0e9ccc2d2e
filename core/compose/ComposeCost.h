#pragma once

#include "core/base/Words.h"
#include "core/units/Units.h"

#include <array>

namespace matwright {

// What a class costs that is composed from wishes; the amounts stand at the head of Compose.h.
enum class ComposePart {
  moving,
  counterMovement,
  otherRegion,
  fewerRises,
  effortArc,
  warmFirst,
  focus,
  roundness,
  variety,
  screening,
  asWritten,
  fetching,
};
template <> struct Words<ComposePart> {
  static constexpr auto list =
      wordList("moving", "counter-movement", "other-region", "fewer-rises", "effort-arc", "warm-first", "focus",
               "roundness", "variety", "screening", "as-written", "fetching");
};

struct ComposeCost {
  std::array<Seconds, kWordCount<ComposePart>> parts{};

  Seconds& of(ComposePart part) { return parts[static_cast<std::size_t>(part)]; }
  const Seconds& of(ComposePart part) const { return parts[static_cast<std::size_t>(part)]; }
  Seconds total() const {
    Seconds sum;
    for (Seconds part : parts)
      sum += part;
    return sum;
  }
  friend bool operator==(const ComposeCost&, const ComposeCost&) = default;
};

} // namespace matwright
