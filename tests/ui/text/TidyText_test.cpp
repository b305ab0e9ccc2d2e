#include "ui/text/TidyText.h"

#include <QStringList>
#include <gtest/gtest.h>

namespace matwright {
namespace {

// Seconds are parted from their numbers by a space that does not break.
QString plain(QString text) { return text.replace(QChar::Nbsp, QLatin1Char(' ')); }

TidyResult resultWith(TidyStatus status) {
  TidyResult result;
  result.status = status;
  result.lower = Seconds(142.9);
  result.plan.sections = {{"Warm-up", {}}, {"", {}}};
  return result;
}

TEST(TidyText, SecondsAreWholeFromTenUp) {
  EXPECT_EQ(plain(secondsText(Seconds(143.4))), QStringLiteral("143 s"));
  EXPECT_EQ(plain(secondsText(Seconds(9.96))), QStringLiteral("10 s"));
  EXPECT_EQ(plain(secondsText(Seconds(0.4))), QStringLiteral("0.4 s"));
  EXPECT_EQ(plain(secondsText(Seconds(5))), QStringLiteral("5 s"));
  EXPECT_EQ(plain(secondsText(Seconds(2.97))), QStringLiteral("3 s"));
  EXPECT_EQ(plain(secondsText(Seconds(0))), QStringLiteral("0 s"));
}

TEST(TidyText, ABoundIsNotRoundedUp) {
  const QString said = plain(outcomeText(resultWith(TidyStatus::bounded), {}));
  EXPECT_TRUE(said.contains(QStringLiteral("No order can be below 142 s"))) << said.toStdString();
  EXPECT_TRUE(plain(progressText({Seconds(150), Seconds(142.9), 3})).contains(QStringLiteral("below 142 s")));
}

TEST(TidyText, EachOutcomeIsSaidInItsOwnWords) {
  EXPECT_EQ(outcomeText(resultWith(TidyStatus::shortest), {}), QStringLiteral("Shortest possible (proven)."));
  EXPECT_EQ(outcomeText(resultWith(TidyStatus::nothingToDo), {}),
            QStringLiteral("Nothing to do: no order is shorter (proven)."));
  EXPECT_TRUE(outcomeText(resultWith(TidyStatus::cancelled), {}).startsWith(QStringLiteral("Stopped before")));
  TidyResult found = resultWith(TidyStatus::cancelled);
  found.moves.resize(1);
  EXPECT_TRUE(outcomeText(found, {}).startsWith(QStringLiteral("Stopped: the best until then")));
}

TEST(TidyText, WithWishesTheShortestIsNotClaimed) {
  TidyWishes wishes;
  wishes.fewerRises = true;
  for (TidyStatus status : {TidyStatus::shortest, TidyStatus::nothingToDo}) {
    const QString said = outcomeText(resultWith(status), wishes);
    EXPECT_TRUE(said.contains(QStringLiteral("with these wishes (proven)"))) << said.toStdString();
    EXPECT_FALSE(said.contains(QStringLiteral("hortest"))) << said.toStdString();
  }
  TidyResult bounded = resultWith(TidyStatus::bounded);
  bounded.after = {Seconds(150), 9, Seconds(30)};
  EXPECT_TRUE(plain(outcomeText(bounded, wishes))
                  .endsWith(QStringLiteral("With wishes it comes to 180 s; no order can be below 142 s.")));
}

TEST(TidyText, WhatIsSavedAndWhatIsMoreIsSaid) {
  EXPECT_EQ(plain(savedText({Seconds(192), 24, {}}, {Seconds(141), 18, {}})),
            QStringLiteral("51 s less moving, 6 changes of position fewer"));
  EXPECT_EQ(plain(savedText({Seconds(140), 18, {}}, {Seconds(141), 19, {}})),
            QStringLiteral("1 s more moving, 1 change of position more"));
  EXPECT_EQ(savedText({Seconds(140), 18, {}}, {Seconds(140), 18, Seconds(30)}), QString());
}

TEST(TidyText, WhatIsSavedIsTheDifferenceOfTheNumbersThatAreShown) {
  EXPECT_EQ(plain(savedText({Seconds(243.4), 2, {}}, {Seconds(163.8), 2, {}})), QStringLiteral("79 s less moving"));
  EXPECT_EQ(savedText({Seconds(243.4), 2, {}}, {Seconds(243.3), 2, {}}), QString());
}

TEST(TidyText, ACostNamesItsWishesOnlyWhereThereAreSome) {
  EXPECT_EQ(plain(costText({Seconds(192), 1, {}})), QStringLiteral("192 s of moving, 1 change of position"));
  EXPECT_TRUE(plain(costText({Seconds(192), 2, Seconds(40)})).endsWith(QStringLiteral("40 s for wishes")));
}

TEST(TidyText, AMoveIsCountedFromOneAndNamesWhatItNowFollows) {
  const Knowledge knowledge; // knows no movement: ids stand for names
  TidyResult result = resultWith(TidyStatus::shortest);
  for (int i = 0; i < 3; ++i)
    for (Section& section : result.plan.sections)
      section.steps.push_back({StepId{i + 1}, MovementId{"move-" + std::to_string(i)}, {}, {}, {}, {}, {}});
  EXPECT_EQ(moveText(knowledge, result, {StepId{3}, {0, 8}, {0, 2}, {}}),
            QStringLiteral("Warm-up, from 9 to 3, after move-1"));
  EXPECT_EQ(moveText(knowledge, result, {StepId{1}, {1, 2}, {1, 0}, {}}),
            QStringLiteral("Section 2, from 3 to 1, at the beginning"));
  EXPECT_EQ(moveText(knowledge, result, {StepId{2}, {0, 1}, {0, 1}, {}}),
            QStringLiteral("Warm-up, still 2, now after move-0"));
}

TEST(TidyText, EveryReasonHasWordsOfItsOwn) {
  QStringList said;
  for (int reason = 0; reason <= static_cast<int>(TidyReason::withOthers); ++reason)
    said << gainText({static_cast<TidyReason>(reason), Seconds(30)});
  EXPECT_EQ(said.removeDuplicates(), 0);
  EXPECT_FALSE(said.contains(QString()));
  EXPECT_EQ(
      plain(gainsText({StepId{1}, {}, {}, {{TidyReason::prerequisite, {}}, {TidyReason::shorterWay, Seconds(12)}}})),
      QStringLiteral("what builds on another comes after it; 12 s less moving"));
}

// The amounts at the head of core/tidy/Tidy.h.
TEST(TidyText, EachWishSaysWhatItWeighs) {
  EXPECT_TRUE(wordsFor(TidyReason::counterMovement).about.contains(QStringLiteral("30 s")));
  EXPECT_TRUE(wordsFor(TidyReason::otherRegion).about.contains(QStringLiteral("5 s")));
  EXPECT_TRUE(wordsFor(TidyReason::wishedArc).about.contains(QStringLiteral("1 s for every 20 s")));
  EXPECT_TRUE(wordsFor(TidyReason::fewerRises).about.contains(QStringLiteral("10 s")));
}

TEST(TidyText, CautionsAreToldStrongestFirstAndTheirAbsenceIsNotCalledSafe) {
  TidyResult result = resultWith(TidyStatus::shortest);
  EXPECT_FALSE(broughtText(result).contains(QStringLiteral("safe"), Qt::CaseInsensitive));
  EXPECT_EQ(takenText(result), QString());
  result.come[static_cast<std::size_t>(Level::askFirst)] = 1;
  result.come[static_cast<std::size_t>(Level::watch)] = 2;
  EXPECT_EQ(broughtText(result), QStringLiteral("This order raises cautions: 1 ask first, 2 watch."));
  result.gone[static_cast<std::size_t>(Level::adapt)] = 1;
  EXPECT_EQ(takenText(result), QStringLiteral("It no longer raises: 1 adapt."));
}

} // namespace
} // namespace matwright
