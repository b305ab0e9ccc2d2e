#include "core/figure/LeastChange.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

using Matrix = std::array<std::array<double, kMostGaps>, kMostGaps>;
using Column = std::array<double, kMostGaps>;

// Solves m y = y for a positive definite m, of which the lower half is given, by Cholesky's method.
void solve(Matrix& m, Column& y, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = m[i][j];
      for (std::size_t k = 0; k < j; ++k)
        sum -= m[i][k] * m[j][k];
      m[i][j] = i == j ? std::sqrt(std::max(sum, 1e-12)) : sum / m[j][j];
    }
    for (std::size_t k = 0; k < i; ++k)
      y[i] -= m[i][k] * y[k];
    y[i] /= m[i][i];
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k)
      y[i] -= m[k][i] * y[k];
    y[i] /= m[i][i];
  }
}

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
  solve(m, y, n);
  FreedomRow change{};
  for (std::size_t k = 0; k < kFreedoms; ++k)
    for (std::size_t i = 0; i < n; ++i)
      change[k] += weights[k] * gaps[i].slope[k] * y[i];
  return change;
}

} // namespace matwright
