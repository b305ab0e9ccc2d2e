#include "core/figure/LeastChange.h"

#include "core/base/Cholesky.h"

#include <algorithm>

namespace matwright {

namespace {

using Matrix = std::array<std::array<double, kMostGaps>, kMostGaps>;
using Column = std::array<double, kMostGaps>;

} // namespace

FreedomRow leastChange(std::span<const Gap> gaps, const FreedomRow& weights, double caution) {
  const std::size_t n = std::min(gaps.size(), kMostGaps);
  Matrix m;
  Column y;
  for (std::size_t i = 0; i < n; ++i) {
    FreedomRow weighted;
    for (std::size_t k = 0; k < kFreedoms; ++k)
      weighted[k] = gaps[i].slope[k] * weights[k];
    y[i] = -gaps[i].size;
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = i == j ? caution : 0;
      for (std::size_t k = 0; k < kFreedoms; ++k)
        sum += weighted[k] * gaps[j].slope[k];
      m[i][j] = sum;
    }
  }
  solveByCholesky(m, y, n, 1e-12);
  FreedomRow change{};
  for (std::size_t k = 0; k < kFreedoms; ++k)
    for (std::size_t i = 0; i < n; ++i)
      change[k] += weights[k] * gaps[i].slope[k] * y[i];
  return change;
}

} // namespace matwright
