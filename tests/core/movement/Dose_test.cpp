#include "core/movement/Dose.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

using namespace literals;

const Tempo kSixSeconds{1.0_s, {{Breath::in, 3}, {Breath::out, 3}}};

Work workFor(int amount, DoseUnit unit, Sides sides, std::optional<Side> only = std::nullopt) {
  return workOf({amount, unit}, kSixSeconds, sides, only);
}

TEST(Dose, TogetherBothSidesWorkTheWholeTime) {
  EXPECT_EQ(workFor(5, DoseUnit::repetitions, Sides::together), (Work{30_s, 30_s, 30_s, 5}));
}

TEST(Dose, EachSideDoesTheWholeDose) {
  EXPECT_EQ(workFor(5, DoseUnit::repetitions, Sides::each), (Work{60_s, 30_s, 30_s, 10}));
}

TEST(Dose, OnlyOneSideHalvesWhatEachSideDoes) {
  EXPECT_EQ(workFor(5, DoseUnit::repetitions, Sides::each, Side::left), (Work{30_s, 30_s, 0_s, 5}));
  EXPECT_EQ(workFor(5, DoseUnit::repetitions, Sides::each, Side::right), (Work{30_s, 0_s, 30_s, 5}));
}

TEST(Dose, OnlyOneSideMeansNothingWhenSidesAlternateOrWorkTogether) {
  for (Sides sides : {Sides::together, Sides::alternating})
    EXPECT_EQ(workFor(6, DoseUnit::repetitions, sides, Side::right), workFor(6, DoseUnit::repetitions, sides));
}

TEST(Dose, AnEvenAlternatingDoseIsSharedEqually) {
  EXPECT_EQ(workFor(6, DoseUnit::repetitions, Sides::alternating), (Work{36_s, 18_s, 18_s, 6}));
}

TEST(Dose, AnOddAlternatingDoseGivesTheLeftOneMore) {
  EXPECT_EQ(workFor(5, DoseUnit::repetitions, Sides::alternating), (Work{30_s, 18_s, 12_s, 5}));
}

TEST(Dose, BreathsCountLikeRepetitions) {
  for (Sides sides : {Sides::together, Sides::alternating, Sides::each})
    EXPECT_EQ(workFor(7, DoseUnit::breaths, sides), workFor(7, DoseUnit::repetitions, sides));
}

TEST(Dose, SecondsAreAPlainLengthForEachSide) {
  EXPECT_EQ(workFor(45, DoseUnit::seconds, Sides::together), (Work{45_s, 45_s, 45_s, 8}));
  EXPECT_EQ(workFor(45, DoseUnit::seconds, Sides::alternating), (Work{45_s, Seconds(22.5), Seconds(22.5), 8}));
  EXPECT_EQ(workFor(45, DoseUnit::seconds, Sides::each), (Work{90_s, 45_s, 45_s, 16}));
}

TEST(Dose, APassThatWouldBeginAtTheEndOfTheTimeDoesNotCount) {
  EXPECT_EQ(workFor(60, DoseUnit::seconds, Sides::together).repetitions, 10);
  EXPECT_EQ(workFor(61, DoseUnit::seconds, Sides::together).repetitions, 11);
}

// 9 s in passes of three counts of 0.3 s: in doubles a little more than ten of them.
TEST(Dose, RoundingOfTheTempoBeginsNoFurtherPass) {
  for (int counts = 1; counts <= 12; ++counts)
    for (int tenths = 2; tenths <= 30; ++tenths)
      for (int seconds = 1; seconds <= 120; ++seconds) {
        if (seconds * 10 % (counts * tenths) != 0)
          continue;
        const Tempo tempo{Seconds(tenths / 10.0), {{Breath::free, counts}}};
        const Work work = workOf({seconds, DoseUnit::seconds}, tempo, Sides::together, std::nullopt);
        ASSERT_EQ(work.repetitions, seconds * 10 / (counts * tenths))
            << seconds << " s, " << counts << " counts of " << tenths << " tenths";
      }
}

TEST(Dose, SidesAddUpToTheWholeUnlessTheyWorkTogether) {
  for (int amount = 1; amount <= 20; ++amount)
    for (DoseUnit unit : {DoseUnit::repetitions, DoseUnit::breaths, DoseUnit::seconds})
      for (Sides sides : {Sides::alternating, Sides::each})
        for (std::optional<Side> only :
             {std::optional<Side>{}, std::optional{Side::left}, std::optional{Side::right}}) {
          const Work work = workFor(amount, unit, sides, only);
          EXPECT_DOUBLE_EQ((work.left + work.right).value(), work.whole.value());
        }
}

TEST(Dose, IsWellFormedFromOneToSixHundred) {
  EXPECT_FALSE(isWellFormed(Dose{0, DoseUnit::breaths}));
  EXPECT_TRUE(isWellFormed(Dose{1, DoseUnit::breaths}));
  EXPECT_TRUE(isWellFormed(Dose{Dose::kMost, DoseUnit::seconds}));
  EXPECT_FALSE(isWellFormed(Dose{Dose::kMost + 1, DoseUnit::seconds}));
  EXPECT_FALSE(isWellFormed(Dose{-5, DoseUnit::repetitions}));
}

} // namespace
} // namespace matwright
