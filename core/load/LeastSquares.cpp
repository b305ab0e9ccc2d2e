#include "core/load/LeastSquares.h"

#include "core/base/Cholesky.h"

#include <algorithm>

namespace matwright {

void NonNegativeFit::take(const Row& row, double right, double weight) {
  for (std::size_t i = 0; i < n_; ++i) {
    if (row[i] == 0)
      continue;
    const double weighted = weight * row[i];
    for (std::size_t j = 0; j <= i; ++j)
      gram_[i][j] += weighted * row[j];
    right_[i] += weighted * right;
  }
}

void NonNegativeFit::prefer(double weight) {
  for (std::size_t i = 0; i < n_; ++i)
    gram_[i][i] += weight;
}

// The free unknowns alone, by Cholesky's method; the others are 0.
NonNegativeFit::Row NonNegativeFit::solveFor(const Set& free) const {
  std::array<std::size_t, kMost> which{};
  std::size_t n = 0;
  for (std::size_t i = 0; i < n_; ++i)
    if (free[i])
      which[n++] = i;
  std::array<Row, kMost> m;
  Row y;
  for (std::size_t i = 0; i < n; ++i) {
    y[i] = right_[which[i]];
    for (std::size_t j = 0; j <= i; ++j)
      m[i][j] = gram_[which[i]][which[j]];
  }
  solveByCholesky(m, y, n, 1e-14);
  Row x{};
  for (std::size_t i = 0; i < n; ++i)
    x[which[i]] = y[i];
  return x;
}

// The unknown that would better the fit most if it grew; n_ when none would. `barred` are left out.
std::size_t NonNegativeFit::steepest(const Row& x, const Set& free, const Set& barred) const {
  constexpr double kFlat = 1e-9;
  std::size_t best = n_;
  double most = kFlat;
  for (std::size_t i = 0; i < n_; ++i) {
    if (free[i] || barred[i])
      continue;
    double slope = right_[i];
    for (std::size_t j = 0; j < n_; ++j)
      slope -= (j <= i ? gram_[i][j] : gram_[j][i]) * x[j];
    if (slope > most) {
      most = slope;
      best = i;
    }
  }
  return best;
}

NonNegativeFit::Row NonNegativeFit::solve() const {
  Set free{}, barred{};
  Row x{};
  for (std::size_t round = 0; round < 4 * kMost; ++round) {
    const std::size_t next = steepest(x, free, barred);
    if (next == n_)
      break;
    free[next] = true;
    Row wished = solveFor(free);
    if (wished[next] <= 0) { // its slope was rounding alone
      free[next] = false;
      barred[next] = true;
      continue;
    }
    barred = {};
    for (;;) {
      double step = 1;
      for (std::size_t i = 0; i < n_; ++i)
        if (free[i] && wished[i] <= 0)
          step = std::min(step, x[i] / (x[i] - wished[i]));
      for (std::size_t i = 0; i < n_; ++i)
        x[i] += free[i] ? step * (wished[i] - x[i]) : 0;
      if (step == 1)
        break;
      for (std::size_t i = 0; i < n_; ++i)
        if (free[i] && x[i] <= 1e-12) {
          free[i] = false;
          x[i] = 0;
        }
      wished = solveFor(free);
    }
  }
  return x;
}

} // namespace matwright
