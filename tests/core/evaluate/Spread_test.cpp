#include "core/evaluate/Spread.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

namespace matwright {
namespace {

TEST(Spread, HasTheVarianceOfItsCoefficientOfVariation) {
  EXPECT_EQ(spreadOf(Seconds(20), 0.25), (Spread{20, 25}));
  EXPECT_EQ(spreadOf(Seconds(0), 0.25), (Spread{0, 0}));
}

TEST(Spread, IndependentTimesAddTheirVariances) { EXPECT_EQ((Spread{10, 4} + Spread{5, 9}), (Spread{15, 13})); }

// The greater of two standard normal variables has mean 1 / sqrt(pi) and variance 1 - 1 / pi. Computed.
TEST(Spread, TheGreaterOfTwoAlikeLiesLaterThanEither) {
  const Spread greater = greaterOf({0, 1}, {0, 1});
  EXPECT_NEAR(greater.mean, 1 / std::sqrt(std::numbers::pi), 1e-12);
  EXPECT_NEAR(greater.variance, 1 - 1 / std::numbers::pi, 1e-12);
}

TEST(Spread, OfTwoFarApartTheGreaterIsTheLaterOne) {
  EXPECT_EQ(greaterOf({100, 4}, {1, 1}), (Spread{100, 4}));
  EXPECT_EQ(greaterOf({1, 1}, {100, 4}), (Spread{100, 4}));
}

TEST(Spread, OfTwoCertainTimesTheGreaterIsCertain) { EXPECT_EQ(greaterOf({3, 0}, {7, 0}), (Spread{7, 0})); }

TEST(Spread, TheGreaterDoesNotDependOnTheOrder) {
  const Spread one = greaterOf({12, 9}, {10, 2}), other = greaterOf({10, 2}, {12, 9});
  EXPECT_NEAR(one.mean, other.mean, 1e-12);
  EXPECT_NEAR(one.variance, other.variance, 1e-12);
}

// Held against 400 000 draws of the two variables themselves.
TEST(Spread, TheGreaterHasTheMeanAndVarianceOfDraws) {
  std::mt19937_64 engine(7);
  for (const auto& [a, b] : std::initializer_list<std::pair<Spread, Spread>>{
           {{10, 6.25}, {10, 2.25}}, {{12, 9}, {10, 2.25}}, {{4, 1}, {6, 0.81}}, {{8, 4}, {2, 0.09}}}) {
    std::normal_distribution<double> drawA(a.mean, std::sqrt(a.variance)), drawB(b.mean, std::sqrt(b.variance));
    double sum = 0, squares = 0;
    constexpr int kDraws = 400000;
    for (int i = 0; i < kDraws; ++i) {
      const double greater = std::max(drawA(engine), drawB(engine));
      sum += greater;
      squares += greater * greater;
    }
    const double mean = sum / kDraws, variance = squares / kDraws - mean * mean;
    const Spread expected = greaterOf(a, b);
    EXPECT_NEAR(expected.mean, mean, 5 * std::sqrt(variance / kDraws));
    EXPECT_NEAR(expected.variance, variance, variance * 0.015);
  }
}

// With a factor of mean 1 and 4 %: variance (1 + 0.0016) x 25 + 0.0016 x 100^2 = 25.04 + 16. Computed.
TEST(Spread, ACommonFactorWidensTheWhole) {
  const Spread wider = scaled({100, 25}, 0.04);
  EXPECT_DOUBLE_EQ(wider.mean, 100);
  EXPECT_NEAR(wider.variance, 41.04, 1e-9);
}

// Quantiles of the standard normal distribution: 0.8 of it lies within 1.28155 either way.
TEST(Spread, ChancesAreThoseOfTheNormalDistribution) {
  EXPECT_DOUBLE_EQ(normalChance(0), 0.5);
  EXPECT_NEAR(normalChance(1.2815515655), 0.9, 1e-9);
  EXPECT_NEAR(normalChance(-1.2815515655), 0.1, 1e-9);
  EXPECT_NEAR(normalChance(1), 0.8413447461, 1e-9);
}

} // namespace
} // namespace matwright
