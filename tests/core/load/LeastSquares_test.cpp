#include "core/load/LeastSquares.h"
#include "tests/support/Seeds.h"

#include <gmock/gmock.h>
#include <random>
#include <vector>

namespace matwright {
namespace {

using Row = NonNegativeFit::Row;

TEST(LeastSquares, SolvesWhatCanBeSolved) {
  NonNegativeFit fit(2);
  fit.take({2, 1}, 5);
  fit.take({1, 3}, 10);
  const Row x = fit.solve();
  EXPECT_NEAR(x[0], 1, 1e-9);
  EXPECT_NEAR(x[1], 3, 1e-9);
}

TEST(LeastSquares, LeavesOutWhatWouldHaveToPull) {
  NonNegativeFit fit(2);
  fit.take({1, 1}, 1);
  fit.take({1, -1}, 3); // 2 and -1 without the bound; 2 and 0 fits best with it
  const Row x = fit.solve();
  EXPECT_NEAR(x[0], 2, 1e-9);
  EXPECT_EQ(x[1], 0);
}

TEST(LeastSquares, SharesEvenlyWhereTheEquationsLeaveAChoice) {
  NonNegativeFit fit(4);
  fit.take({1, 1, 1, 1}, 1, 1e5);
  fit.prefer(1e-4);
  const Row x = fit.solve();
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_NEAR(x[i], 0.25, 1e-6);
}

// Equations at random, with more unknowns than equations in half of them.
struct Equations {
  explicit Equations(unsigned seed) : random(seed) {
    std::uniform_real_distribution<double> number(-1, 1);
    unknowns = 1 + random() % 20;
    rows.resize(1 + random() % 24);
    for (auto& [row, right] : rows) {
      for (std::size_t i = 0; i < unknowns; ++i)
        row[i] = number(random);
      right = number(random);
    }
  }

  std::mt19937 random;
  std::size_t unknowns = 0;
  std::vector<std::pair<Row, double>> rows;
};

// The conditions of Karush, Kuhn and Tucker, which hold at the best fit and nowhere else: nothing is below 0, what is
// above 0 would not better the fit by growing or shrinking, and what is 0 not by growing.
TEST(LeastSquares, NoSmallChangeBettersTheFit) {
  test::forEachSeed<Equations>(1, 400, [](const Equations& equations) {
    NonNegativeFit fit(equations.unknowns);
    for (const auto& [row, right] : equations.rows)
      fit.take(row, right);
    fit.prefer(1e-4);
    const Row x = fit.solve();
    for (std::size_t i = 0; i < equations.unknowns; ++i) {
      double slope = -1e-4 * x[i];
      for (const auto& [row, right] : equations.rows) {
        double miss = right;
        for (std::size_t j = 0; j < equations.unknowns; ++j)
          miss -= row[j] * x[j];
        slope += miss * row[i];
      }
      EXPECT_GE(x[i], 0);
      EXPECT_LT(slope, 1e-6);
      if (x[i] > 0) {
        EXPECT_NEAR(slope, 0, 1e-6);
      }
    }
  });
}

} // namespace
} // namespace matwright
