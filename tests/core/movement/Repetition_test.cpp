#include "core/movement/Repetition.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

Tempo tempo(std::vector<Phase> phases, double secondsPerCount = 1) { return {Seconds(secondsPerCount), phases}; }

double shareAt(const Tempo& of, double seconds) { return momentAt(of, Seconds(seconds)).share; }

TEST(Repetition, GoesThereOnTheFirstBreathAndBackOnTheSecond) {
  const Tempo two = tempo({{Breath::out, 4}, {Breath::in, 2}});
  EXPECT_EQ(shareAt(two, 0), 0);
  EXPECT_NEAR(shareAt(two, 2), 0.5, 1e-12);
  EXPECT_NEAR(shareAt(two, 4), 1, 1e-12);
  EXPECT_NEAR(shareAt(two, 5), 0.5, 1e-12);
  EXPECT_NEAR(shareAt(two, 5.999), 0, 1e-3);
  EXPECT_EQ(momentAt(two, Seconds(3)).breath, Breath::out);
  EXPECT_EQ(momentAt(two, Seconds(5)).breath, Breath::in);
}

TEST(Repetition, AFreePhaseHoldsTheShapeThatWasReached) {
  const Tempo held = tempo({{Breath::out, 2}, {Breath::free, 5}, {Breath::in, 2}, {Breath::free, 1}});
  EXPECT_NEAR(shareAt(held, 2.0), 1, 1e-12);
  EXPECT_NEAR(shareAt(held, 6.9), 1, 1e-12);
  EXPECT_NEAR(shareAt(held, 8), 0.5, 1e-12);
  EXPECT_NEAR(shareAt(held, 9.5), 0, 1e-12);
  const Tempo waits = tempo({{Breath::free, 2}, {Breath::in, 1}, {Breath::out, 1}});
  EXPECT_EQ(shareAt(waits, 1), 0);
}

TEST(Repetition, AHeldBreathHoldsTheShape) {
  const Tempo held = tempo({{Breath::in, 2}, {Breath::hold, 3}, {Breath::out, 2}});
  EXPECT_NEAR(shareAt(held, 3.5), 1, 1e-12);
  EXPECT_EQ(momentAt(held, Seconds(3.5)).breath, Breath::hold);
}

TEST(Repetition, FourBreathsGoThereInTwoAndBackInTwo) {
  const Tempo four = tempo({{Breath::in, 1}, {Breath::out, 1}, {Breath::in, 1}, {Breath::out, 1}});
  EXPECT_NEAR(shareAt(four, 1), 0.5, 1e-12);
  EXPECT_NEAR(shareAt(four, 2), 1, 1e-12);
  EXPECT_NEAR(shareAt(four, 3), 0.5, 1e-12);
}

TEST(Repetition, ALoneOrFreePhaseStillMoves) {
  EXPECT_NEAR(shareAt(tempo({{Breath::free, 4}}), 2), 1, 1e-12);
  EXPECT_NEAR(shareAt(tempo({{Breath::out, 4}}), 1), 0.5, 1e-12);
  EXPECT_NEAR(shareAt(tempo({{Breath::free, 2}, {Breath::free, 2}}), 2), 1, 1e-12);
}

TEST(Repetition, CountsWithinThePhaseAndRepeats) {
  const Tempo slow = tempo({{Breath::in, 3}, {Breath::out, 5}}, 0.5);
  EXPECT_EQ(momentAt(slow, Seconds(0)).count, 1);
  EXPECT_EQ(momentAt(slow, Seconds(1.2)).count, 3);
  EXPECT_EQ(momentAt(slow, Seconds(1.6)).count, 1);
  EXPECT_EQ(momentAt(slow, Seconds(1.6)).phase, 1u);
  EXPECT_EQ(momentAt(slow, Seconds(1.6)), momentAt(slow, Seconds(1.6 + 4 * 3)));
  EXPECT_EQ(momentAt(slow, Seconds(-2)), momentAt(slow, Seconds(0)));
}

TEST(Repetition, TheShareNeverLeaps) {
  for (const Tempo& each :
       {tempo({{Breath::in, 2}, {Breath::out, 3}}), tempo({{Breath::in, 1}, {Breath::free, 2}, {Breath::out, 1}}),
        tempo({{Breath::out, 2}, {Breath::in, 1}, {Breath::out, 2}}), tempo({{Breath::free, 3}})}) {
    double before = shareAt(each, 0);
    for (int i = 1; i < 1000; ++i) {
      const double share = shareAt(each, i * 0.01);
      ASSERT_NEAR(share, before, 0.04);
      ASSERT_GE(share, 0);
      ASSERT_LE(share, 1);
      before = share;
    }
  }
}

} // namespace
} // namespace matwright
