// The numbers from 0 up that fit some equations best.
#pragma once

#include <array>
#include <cstddef>

namespace matwright {

// Minimises |A x - b| over x >= 0 by the active-set method of C. L. Lawson and R. J. Hanson, Solving Least Squares
// Problems, 1974, chapter 23, on the normal equations. A row at a time is taken in; at most kMost unknowns.
class NonNegativeFit {
public:
  static constexpr std::size_t kMost = 40;
  using Row = std::array<double, kMost>;

  explicit NonNegativeFit(std::size_t unknowns) : n_(unknowns) {}

  // `row` times x should be `right`; `weight` tells how much a miss counts.
  void take(const Row& row, double right, double weight = 1);
  // A slight preference for small and equal numbers, where the equations leave a choice.
  void prefer(double weight);

  Row solve() const;

private:
  using Set = std::array<bool, kMost>;
  Row solveFor(const Set& free) const;
  std::size_t steepest(const Row& x, const Set& free, const Set& barred) const;

  std::size_t n_;
  std::array<Row, kMost> gram_{}; // A^T A
  Row right_{};                   // A^T b
};

} // namespace matwright
