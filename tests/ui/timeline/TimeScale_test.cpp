#include "ui/timeline/TimeScale.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using namespace literals;

TEST(TimeScale, TimeAndPlaceAreInverse) {
  for (const double scale : {0.15, 0.7, 3.0, 12.0}) {
    const TimeScale plain(scale);
    const TimeScale padded(scale, {{0_s, 70}, {90_s, 80}, {90_s, 60}, {600_s, 75}});
    for (double at = 0; at < 1200; at += 7.3) {
      EXPECT_NEAR(plain.timeOf(plain.xOf(Seconds(at))).value(), at, 1e-6);
      EXPECT_NEAR(padded.timeOf(padded.xOf(Seconds(at))).value(), at, 1e-6);
    }
  }
}

TEST(TimeScale, APadTakesPlaceButNoTime) {
  const TimeScale scale(2.0, {{10_s, 50}, {10_s, 30}, {20_s, 40}});
  EXPECT_DOUBLE_EQ(scale.xBefore(10_s), 20);
  EXPECT_DOUBLE_EQ(scale.xOf(10_s), 100);
  EXPECT_DOUBLE_EQ(scale.xOfPad(0), 20);
  EXPECT_DOUBLE_EQ(scale.xOfPad(1), 70);
  EXPECT_DOUBLE_EQ(scale.xOfPad(2), 120);
  for (const double x : {20.0, 40.0, 69.0, 70.0, 99.0})
    EXPECT_EQ(scale.timeOf(x), 10_s) << x;
  EXPECT_TRUE(scale.isInPad(20));
  EXPECT_TRUE(scale.isInPad(99));
  EXPECT_FALSE(scale.isInPad(100));
  EXPECT_FALSE(scale.isInPad(19));
  EXPECT_LT(scale.timeOf(-4).value(), 0);
}

TEST(TimeScale, LaterIsNeverFurtherLeft) {
  const TimeScale scale(0.4, {{0_s, 70}, {30_s, 70}, {30_s, 64}, {500_s, 90}});
  for (double at = 0; at < 900; at += 3)
    EXPECT_LE(scale.xOf(Seconds(at)), scale.xBefore(Seconds(at + 3)));
}

TEST(Ticks, MajorOnesKeepTheirDistanceAtEveryZoom) {
  for (double pixels = 0.05; pixels < 16; pixels *= 1.17) {
    const auto ticks = ticksOf(TimeScale(pixels), minutes(60), 46);
    ASSERT_FALSE(ticks.empty());
    EXPECT_TRUE(ticks.front().major);
    double last = -1e9, lastMajor = -1e9;
    for (const Tick& tick : ticks) {
      EXPECT_GT(tick.x, last);
      last = tick.x;
      if (!tick.major)
        continue;
      EXPECT_GE(tick.x - lastMajor, 46) << pixels;
      lastMajor = tick.x;
    }
  }
}

TEST(Ticks, BecomeDenserWithTheZoom) {
  const auto far = ticksOf(TimeScale(0.2), minutes(50), 46);
  const auto near = ticksOf(TimeScale(2), minutes(50), 46);
  const auto nearest = ticksOf(TimeScale(12), minutes(50), 46);
  EXPECT_LT(far.size(), near.size());
  EXPECT_LT(near.size(), nearest.size());
  EXPECT_EQ(far[1].at.value(), 60);    // minor marks each minute
  EXPECT_EQ(nearest[1].at.value(), 1); // each second
  EXPECT_LE(far.back().at, minutes(50));
}

} // namespace
} // namespace matwright
