#include "core/movement/Dose.h"
#include "core/movement/Tempo.h"

#include <gtest/gtest.h>
#include <limits>

namespace matwright {
namespace {

using namespace literals;

Tempo breathing(double in, double out) {
  // A count of a fifth of a second, so that lengths of breath with a decimal are whole counts.
  return {Seconds(0.2), {{Breath::in, static_cast<int>(in * 5 + 0.5)}, {Breath::out, static_cast<int>(out * 5 + 0.5)}}};
}

Seconds spent(const Tempo& tempo, int repetitions) {
  return workOf({repetitions, DoseUnit::repetitions}, tempo, Sides::together, std::nullopt).whole;
}

TEST(Tempo, LengthIsTheSumOfCountsTimesSecondsACount) {
  const Tempo tempo{Seconds(1.5), {{Breath::in, 2}, {Breath::hold, 1}, {Breath::out, 4}}};
  EXPECT_EQ(countsOf(tempo), 7);
  EXPECT_DOUBLE_EQ(lengthOf(tempo).value(), 10.5);
}

// Six breaths a minute, the resonance rate (Steffen et al. 2017, Front Public Health 5: 222): 60 / 6 s a breath.
TEST(Tempo, SixBreathsAMinuteAreTenSecondsEach) {
  const Tempo tempo = breathing(4, 6);
  EXPECT_NEAR(lengthOf(tempo).value(), 60.0 / 6, 1e-9);
  EXPECT_NEAR(spent(tempo, 6).value(), 60, 1e-9);
}

// An inspiratory share (TI/Ttot) of 0.40 of a ten-second breath: 4.0 s in, 6.0 s out. Computed.
TEST(Tempo, AnInspiratoryShareOfTwoFifthsGivesFourSecondsInAndSixOut) {
  const Tempo tempo = breathing(4, 6);
  const double in = tempo.phases[0].counts * tempo.secondsPerCount.value();
  EXPECT_NEAR(in, 4.0, 1e-9);
  EXPECT_NEAR(in / lengthOf(tempo).value(), 0.40, 1e-9);
  EXPECT_NEAR(lengthOf(tempo).value() - in, 6.0, 1e-9);
}

// Resting breath: most subject means lie at 1.0-2.5 s in and 2.0-3.5 s out (Davis & Stagg 1975, J Physiol 245:
// 481-498). 1.6 + 2.6 s: 4.2 s, 14.29 a minute, share 0.381. Computed.
TEST(Tempo, ARestingBreathOfOnePointSixAndTwoPointSixSecondsRunsFourteenTimesAMinute) {
  const Tempo tempo = breathing(1.6, 2.6);
  EXPECT_NEAR(lengthOf(tempo).value(), 4.2, 1e-9);
  EXPECT_NEAR(60 / lengthOf(tempo).value(), 14.29, 0.005);
  EXPECT_NEAR(1.6 / lengthOf(tempo).value(), 0.381, 0.0005);
}

// Eight repetitions at one ten-second breath each: 80 s; at a resting 4.2 s: 33.6 s. Computed. Which breath is chosen
// changes the length of a class twofold.
TEST(Tempo, EightSlowBreathsTakeMoreThanTwiceAsLongAsEightRestingOnes) {
  EXPECT_NEAR(spent(breathing(4, 6), 8).value(), 80, 1e-9);
  EXPECT_NEAR(spent(breathing(1.6, 2.6), 8).value(), 33.6, 1e-9);
}

// Curl-ups at one every 3 s, 20 a minute (youth field test, Cooper Institute manual, second-hand): 20 take 60 s.
TEST(Tempo, TwentyCurlsAtTwentyAMinuteTakeAMinute) {
  const Tempo tempo{1.5_s, {{Breath::out, 1}, {Breath::in, 1}}};
  EXPECT_NEAR(spent(tempo, 20).value(), 60, 1e-9);
}

// Curl-ups to a beat of 50 a minute, two beats each (handbook protocol, from memory): 25 take 60 s.
TEST(Tempo, TwentyFiveCurlsToFiftyBeatsAMinuteTakeAMinute) {
  const Tempo tempo{Seconds(60.0 / 50), {{Breath::out, 1}, {Breath::in, 1}}};
  EXPECT_NEAR(spent(tempo, 25).value(), 60, 1e-9);
}

// Common practice, no source: ten breaths of five counts in and five out at half a second make one hundred beats.
TEST(Tempo, TheHundredIsOneHundredBeatsInFiftySeconds) {
  const Tempo tempo{0.5_s, {{Breath::in, 5}, {Breath::out, 5}}};
  const Work work = workOf({10, DoseUnit::breaths}, tempo, Sides::together, std::nullopt);
  EXPECT_DOUBLE_EQ(work.whole.value(), 50);
  EXPECT_EQ(work.repetitions * countsOf(tempo), 100);
}

// Common practice, no source: slow opening breaths take about eight to ten seconds, a curl with its return about eight.
TEST(Tempo, FourCountsInAndFourOutAtASecondLastAsLongAsASlowBreath) {
  EXPECT_DOUBLE_EQ(lengthOf({1.0_s, {{Breath::in, 4}, {Breath::out, 4}}}).value(), 8);
}

TEST(Tempo, BoundsAreInclusive) {
  const std::vector<Phase> one{{Breath::free, 1}};
  EXPECT_TRUE(isWellFormed({Seconds(Tempo::kFastestCount), one}));
  EXPECT_TRUE(isWellFormed({Seconds(Tempo::kSlowestCount), one}));
  EXPECT_TRUE(isWellFormed({1.0_s, std::vector<Phase>(Tempo::kMostPhases, {Breath::free, Tempo::kMostCounts})}));
}

TEST(Tempo, IsIllFormedOutsideItsBounds) {
  const std::vector<Phase> one{{Breath::free, 1}};
  EXPECT_FALSE(isWellFormed({Seconds(0.19), one}));
  EXPECT_FALSE(isWellFormed({Seconds(10.01), one}));
  EXPECT_FALSE(isWellFormed({Seconds(std::numeric_limits<double>::quiet_NaN()), one}));
  EXPECT_FALSE(isWellFormed({1.0_s, {}}));
  EXPECT_FALSE(isWellFormed({1.0_s, {{Breath::in, 0}}}));
  EXPECT_FALSE(isWellFormed({1.0_s, {{Breath::in, Tempo::kMostCounts + 1}}}));
  EXPECT_FALSE(isWellFormed({1.0_s, std::vector<Phase>(Tempo::kMostPhases + 1, {Breath::free, 1})}));
}

} // namespace
} // namespace matwright
