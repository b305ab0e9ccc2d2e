#include "core/base/Date.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

using namespace std::chrono;

Date date(int y, unsigned m, unsigned d) { return year{y} / month{m} / day{d}; }

TEST(DateFromIso, ReadsTheOneForm) {
  EXPECT_EQ(dateFromIso("2026-11-26"), date(2026, 11, 26));
  EXPECT_EQ(dateFromIso("0001-01-01"), date(1, 1, 1));
  EXPECT_EQ(dateFromIso("9999-12-31"), date(9999, 12, 31));
}

TEST(DateFromIso, KnowsLeapYears) { // Gregorian rule: by four, not by a hundred, but by four hundred
  EXPECT_EQ(dateFromIso("2024-02-29"), date(2024, 2, 29));
  EXPECT_EQ(dateFromIso("2000-02-29"), date(2000, 2, 29));
  EXPECT_FALSE(dateFromIso("2026-02-29"));
  EXPECT_FALSE(dateFromIso("1900-02-29"));
}

TEST(DateFromIso, RefusesEveryOtherForm) {
  for (const char* text : {"", "2026", "2026-11", "2026-1-26", "26-11-2026", "2026/11/26", "2026-11-26 ", " 2026-11-26",
                           "2026-11-2a", "+026-11-26", "-026-11-26", "2026--1-26", "2026-13-01", "2026-00-10",
                           "2026-04-31", "2026-11-00", "2026-11-26T00:00"})
    EXPECT_FALSE(dateFromIso(text)) << text;
}

TEST(IsoDate, GoesThereAndBackForEveryDayOfFourYears) {
  const sys_days end{date(2028, 1, 1)};
  for (sys_days day{date(2024, 1, 1)}; day < end; day += days{1})
    ASSERT_EQ(dateFromIso(isoDate(Date{day})), Date{day}) << isoDate(Date{day});
}

TEST(IsoDate, FillsWithNoughts) { EXPECT_EQ(isoDate(date(987, 6, 5)), "0987-06-05"); }

TEST(WholeWeeks, AreRoundedDown) {
  const Date from = date(2026, 11, 2);
  EXPECT_EQ(wholeWeeksBetween(from, from), 0);
  EXPECT_EQ(wholeWeeksBetween(from, date(2026, 11, 8)), 0);
  EXPECT_EQ(wholeWeeksBetween(from, date(2026, 11, 9)), 1);
  EXPECT_EQ(wholeWeeksBetween(from, date(2026, 11, 15)), 1);
}

TEST(WholeWeeks, AreRoundedDownBeforeTheDayToo) {
  const Date from = date(2026, 11, 9);
  EXPECT_EQ(wholeWeeksBetween(from, date(2026, 11, 8)), -1);
  EXPECT_EQ(wholeWeeksBetween(from, date(2026, 11, 2)), -1);
  EXPECT_EQ(wholeWeeksBetween(from, date(2026, 11, 1)), -2);
}

TEST(WholeWeeks, DoNotMindTheEndOfAYear) { EXPECT_EQ(wholeWeeksBetween(date(2026, 12, 28), date(2027, 1, 11)), 2); }

} // namespace
} // namespace matwright
