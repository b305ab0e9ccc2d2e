#include "core/people/Person.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

Date on(int year, unsigned month, unsigned day) {
  return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

TEST(Person, InitialsAreTheFirstLettersOfTheWords) {
  EXPECT_EQ(initialsFrom("Rosa Amberley"), "R.A.");
  EXPECT_EQ(initialsFrom("Rosa"), "R.");
  EXPECT_EQ(initialsFrom("anna-lena holt"), "A.L.H.");
  EXPECT_EQ(initialsFrom("  Rosa   Amberley "), "R.A.");
}

TEST(Person, InitialsAreAtMostThree) { EXPECT_EQ(initialsFrom("Ada Bea Cid Dora"), "A.B.C."); }

TEST(Person, InitialsKeepLettersBeyondAsciiWhole) {
  EXPECT_EQ(initialsFrom("\xC3\x89lise \xC3\x98yen"), "\xC3\x89.\xC3\x98.");
  EXPECT_EQ(initialsFrom("\xE6\x9E\x97 \xE9\x9B\xA8"), "\xE6\x9E\x97.\xE9\x9B\xA8.");
}

TEST(Person, NoNameHasNoInitials) {
  EXPECT_EQ(initialsFrom(""), "");
  EXPECT_EQ(initialsFrom("  - "), "");
}

TEST(Clearance, HoldsFromTheDayItIsGiven) {
  const Clearance clearance{on(2026, 3, 10), std::nullopt, "", {}, {}, ""};
  EXPECT_FALSE(holdsOn(clearance, on(2026, 3, 9)));
  EXPECT_TRUE(holdsOn(clearance, on(2026, 3, 10)));
  EXPECT_TRUE(holdsOn(clearance, on(2031, 1, 1)));
}

TEST(Clearance, HoldsOnItsLastDayAndNoLonger) {
  const Clearance clearance{on(2026, 3, 10), on(2026, 4, 1), "", {}, {}, ""};
  EXPECT_TRUE(holdsOn(clearance, on(2026, 4, 1)));
  EXPECT_FALSE(holdsOn(clearance, on(2026, 4, 2)));
}

TEST(Condition, FindsItsQualifiersById) {
  Condition condition;
  condition.qualifiers = {{"weeks", "Weeks since", QualifierKind::weeksSince, {}},
                          {"phase", "Phase", QualifierKind::choice, {{"acute", "Acute"}}}};
  EXPECT_EQ(findQualifier(condition, "phase"), &condition.qualifiers[1]);
  EXPECT_EQ(findQualifier(condition, "side"), nullptr);
}

TEST(WeekOn, CountsAsScreeningDoes) {
  const Date on = *dateFromIso("2026-11-26");
  EXPECT_EQ(weekOn(QualifierKind::weeksSince, *dateFromIso("2026-11-20"), on), 0);
  EXPECT_EQ(weekOn(QualifierKind::weeksSince, *dateFromIso("2026-11-19"), on), 1);
  EXPECT_EQ(weekOn(QualifierKind::pregnancyWeek, *dateFromIso("2026-11-26"), on), 40);
  EXPECT_EQ(weekOn(QualifierKind::pregnancyWeek, *dateFromIso("2026-11-27"), on), 40); // a part of a week to go
  EXPECT_EQ(weekOn(QualifierKind::pregnancyWeek, *dateFromIso("2026-12-03"), on), 39);
  EXPECT_EQ(weekOn(QualifierKind::pregnancyWeek, *dateFromIso("2026-11-19"), on), 41);
}

} // namespace
} // namespace matwright
