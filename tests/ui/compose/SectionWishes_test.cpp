#include "tests/support/Finding.h"
#include "ui/compose/SectionWishes.h"

#include <QCheckBox>
#include <QSignalSpy>
#include <QSpinBox>
#include <QToolButton>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct SectionWishesTest : ::testing::Test {
  SectionWishes wishes;
  QSignalSpy changes{&wishes, &SectionWishes::changed};

  SectionWishesTest() { wishes.show({{"Warm", minutes(10)}, {"Main", minutes(30)}}, minutes(40)); }
  QSpinBox& minutesOf(const char* name) {
    return testing::namedIn<QSpinBox>(wishes, QStringLiteral("Minutes of %1").arg(QLatin1String(name)));
  }
  Seconds sum() const {
    Seconds all;
    for (const WishedSection& section : wishes.sections())
      all += section.length;
    return all;
  }
};

TEST_F(SectionWishesTest, SaysWhatIsLeftOver) {
  EXPECT_TRUE(testing::saysIn(wishes, QStringLiteral("nothing left over")));
  minutesOf("Main").setValue(27);
  EXPECT_FALSE(wishes.fit());
  EXPECT_TRUE(testing::saysIn(wishes, QStringLiteral("3:00 of 40:00 left over")));
  minutesOf("Main").setValue(31);
  EXPECT_TRUE(testing::saysIn(wishes, QStringLiteral("1:00 more than the 40:00 of the class")));
  EXPECT_EQ(changes.count(), 2);
  testing::buttonIn(wishes, QStringLiteral("Make Them Fit")).click();
  EXPECT_TRUE(wishes.fit());
  EXPECT_EQ(sum(), minutes(40));
}

TEST_F(SectionWishesTest, FollowsTheLengthOfTheClassWhileItFits) {
  wishes.setLength(minutes(20));
  EXPECT_TRUE(wishes.fit());
  EXPECT_EQ(wishes.sections()[0].length, minutes(5));
  minutesOf("Main").setValue(10);
  wishes.setLength(minutes(30));
  EXPECT_EQ(wishes.sections()[1].length, minutes(10)) << "what does not fit is the teacher's own";
  EXPECT_EQ(changes.count(), 1);
}

TEST_F(SectionWishesTest, LengthsComeBackThatWereLetBe) {
  QCheckBox& open = *wishes.findChild<QCheckBox*>();
  open.click();
  EXPECT_EQ(sum(), Seconds{});
  EXPECT_TRUE(wishes.fit());
  EXPECT_FALSE(testing::saysIn(wishes, QStringLiteral("left over")));
  open.click();
  EXPECT_EQ(wishes.sections()[0].length, minutes(10));
  EXPECT_EQ(wishes.sections()[1].length, minutes(30));
}

TEST_F(SectionWishesTest, SectionsAreAddedAndTakenAway) {
  testing::buttonIn(wishes, QStringLiteral("Add a Section")).click();
  EXPECT_EQ(wishes.sections().size(), 3u);
  EXPECT_FALSE(wishes.fit());
  testing::namedIn<QToolButton>(wishes, QStringLiteral("Take away: Warm")).click();
  ASSERT_EQ(wishes.sections().size(), 2u);
  EXPECT_EQ(wishes.sections()[0].name, "Main");
  testing::namedIn<QToolButton>(wishes, QStringLiteral("Take away: Main")).click();
  EXPECT_FALSE(wishes.findChild<QToolButton*>()->isEnabled()) << "one stays";
}

TEST(FittedSections, TakeTheLengthInWholeMinutes) {
  for (double length : {5.0, 17.0, 50.0, 61.5, 240.0}) {
    const auto sections = fitted(usualSections(minutes(50)), minutes(length));
    Seconds sum;
    for (const WishedSection& section : sections) {
      EXPECT_GE(section.length, minutes(1));
      sum += section.length;
    }
    EXPECT_NEAR(sum.minutes(), length, 1e-9);
  }
}

TEST(FittedSections, ShareAlikeWhereAMinuteIsTooMuch) {
  const auto sections = fitted(std::vector<WishedSection>(20, {"", {}}), minutes(10));
  for (const WishedSection& section : sections)
    EXPECT_NEAR(section.length.minutes(), 0.5, 1e-9);
}

} // namespace
} // namespace matwright
