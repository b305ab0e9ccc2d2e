#include "core/evaluate/Spread.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace matwright {
namespace {

double normalDensity(double z) { return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi); }

} // namespace

double normalChance(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

Spread spreadOf(Seconds mean, double variation) {
  const double deviation = mean.value() * variation;
  return {mean.value(), deviation * deviation};
}

Spread greaterOf(const Spread& a, const Spread& b) {
  const double theta = std::sqrt(a.variance + b.variance);
  if (theta == 0)
    return {std::max(a.mean, b.mean), 0};
  const double alpha = (a.mean - b.mean) / theta;
  if (std::abs(alpha) > 8) // beyond what a double can tell apart
    return alpha > 0 ? a : b;
  // Counted from the smaller mean, so that no large squares are subtracted.
  const double base = std::min(a.mean, b.mean);
  const double meanA = a.mean - base;
  const double meanB = b.mean - base;
  const double chanceA = normalChance(alpha);
  const double chanceB = normalChance(-alpha);
  const double bump = theta * normalDensity(alpha);
  const double first = meanA * chanceA + meanB * chanceB + bump;
  const double second =
      (meanA * meanA + a.variance) * chanceA + (meanB * meanB + b.variance) * chanceB + (meanA + meanB) * bump;
  return {base + first, second - first * first};
}

Spread scaled(const Spread& spread, double variation) {
  const double squared = variation * variation;
  return {spread.mean, spread.variance * (1 + squared) + spread.mean * spread.mean * squared};
}

} // namespace matwright
