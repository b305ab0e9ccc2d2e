#include "core/figure/LeastChange.h"

#include <gmock/gmock.h>
#include <vector>

namespace matwright {
namespace {

FreedomRow all(double weight) {
  FreedomRow row;
  row.fill(weight);
  return row;
}

TEST(LeastChange, ClosesAGapByTheShortestWay) {
  std::vector<Gap> gaps{{.size = 5, .slope = {3, 4}}};
  const FreedomRow change = leastChange(gaps, all(1));
  EXPECT_NEAR(change[0], -0.6, 1e-5); // along (3, 4), whose length is 5
  EXPECT_NEAR(change[1], -0.8, 1e-5);
  EXPECT_EQ(change[2], 0);
}

TEST(LeastChange, ReadierFreedomsGiveWayMore) {
  std::vector<Gap> gaps{{.size = 1, .slope = {1, 1}}};
  FreedomRow weights = all(1);
  weights[1] = 3;
  const FreedomRow change = leastChange(gaps, weights);
  EXPECT_NEAR(change[0], -0.25, 1e-5);
  EXPECT_NEAR(change[1], -0.75, 1e-5);
}

TEST(LeastChange, AFreedomOfWeightZeroStays) {
  std::vector<Gap> gaps{{.size = 1, .slope = {1, 0.5}}};
  FreedomRow weights = all(1);
  weights[0] = 0;
  const FreedomRow change = leastChange(gaps, weights);
  EXPECT_EQ(change[0], 0);
  EXPECT_NEAR(change[1], -2, 1e-4);
}

TEST(LeastChange, ClosesSeveralGapsAtOnce) {
  std::vector<Gap> gaps{{.size = 1, .slope = {1, 1}}, {.size = -2, .slope = {0, 1, 1}}};
  const FreedomRow change = leastChange(gaps, all(1));
  EXPECT_NEAR(change[0] + change[1], -1, 1e-4);
  EXPECT_NEAR(change[1] + change[2], 2, 1e-4);
}

TEST(LeastChange, ContradictingGapsAreShared) {
  std::vector<Gap> gaps{{.size = 1, .slope = {1}}, {.size = -3, .slope = {1}}};
  EXPECT_NEAR(leastChange(gaps, all(1))[0], 1, 1e-3); // half of the way to each
}

TEST(LeastChange, NoGapsNoChange) {
  for (const double part : leastChange({}, all(1)))
    EXPECT_EQ(part, 0);
}

} // namespace
} // namespace matwright
