// The smallest weighted change of some freedoms that closes some gaps, to first order.
#pragma once

#include <array>
#include <cstddef>
#include <span>

namespace matwright {

inline constexpr std::size_t kFreedoms = 22;
inline constexpr std::size_t kMostGaps = 48;

using FreedomRow = std::array<double, kFreedoms>;

// A distance that should become 0, and how it grows with each freedom.
struct Gap {
  double size = 0;
  FreedomRow slope{};
};

// A freedom of weight 0 stays; one of weight 4 gives way four times as readily as one of weight 1. Gaps that cannot all
// be closed are shared. At most kMostGaps gaps. `caution` (square of a slope) keeps changes small where slopes are
// slight: steps then close less of the gaps, but do not leap.
FreedomRow leastChange(std::span<const Gap> gaps, const FreedomRow& weights, double caution = 1e-6);

} // namespace matwright
