// Linear equations of a positive definite matrix.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace matwright {

// Solves m y = y for the first n rows and columns of m, of which the lower half is given, by Cholesky's method. Both
// are written over: y with the solution, m with its factor. A pivot below `least` (its square) counts as that: what is
// all but singular gives a solution, though not an exact one.
template <class Matrix, class Column> void solveByCholesky(Matrix& m, Column& y, std::size_t n, double least) {
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = m[i][j];
      for (std::size_t k = 0; k < j; ++k)
        sum -= m[i][k] * m[j][k];
      m[i][j] = i == j ? std::sqrt(std::max(sum, least)) : sum / m[j][j];
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

} // namespace matwright
