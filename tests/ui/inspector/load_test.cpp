#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/inspector/InspectorPanel.h"
#include "ui/inspector/LoadChart.h"
#include "ui/inspector/LoadOptions.h"
#include "ui/text/LoadText.h"

#include <QListWidget>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

constexpr std::size_t kLowBack = index(LoadedJoint::lowBack);

struct LoadTest : ::testing::Test, Panels {
  LoadTest() : panel(document, selection, commands) {
    testing::layOut(panel, {300, 700});
    selection.select(stepOf("saw"));
    button(QStringLiteral("Load")).click();
    selection.clear();
  }

  QListWidget& options() { return testing::namedIn<QListWidget>(panel, QStringLiteral("Options side by side")); }
  QString spokenRow(int row) { return options().item(row)->data(Qt::AccessibleTextRole).toString(); }
  const Movement& movement(const char* id) const { return *document.knowledge().catalogue.find({id}); }
  const OptionId& optionOf(const char* id) const { return findStep(document.plan(), stepOf(id))->option; }
  QToolButton& button(const QString& words) {
    return testing::visibleIn<QToolButton>(panel, words, [&](const QToolButton& each) { return each.text() == words; });
  }

  InspectorPanel panel;
};

TEST_F(LoadTest, TellsPeakAndMeanOfEachJointForTheBodyOfTheSettings) {
  selection.select(stepOf("hundred"));
  const auto load = document.knowledge().loads->of(movement("hundred"), nullptr);
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    const QString words =
        jointLoadText(static_cast<LoadedJoint>(i), load->peak, load->mean, BodySize{}).mid(1); // it begins a line
    EXPECT_TRUE(testing::saysIn(panel, words)) << words.toStdString();
  }
  EXPECT_TRUE(testing::saysIn(panel, leverText(document.knowledge().loads->lever(load->peak[kLowBack]))));
  EXPECT_TRUE(testing::saysIn(panel, bodyText(BodyTable::winter, BodySize{})));

  const BodySize small{.mass = 50, .stature = 1.50};
  document.setBody(small); // at once
  EXPECT_TRUE(testing::saysIn(panel, jointLoadText(LoadedJoint::lowBack, load->peak, load->mean, small).mid(1)));
  EXPECT_FALSE(testing::saysIn(panel, jointLoadText(LoadedJoint::lowBack, load->peak, load->mean, {}).mid(1)));
}

TEST_F(LoadTest, ShowsTheMovementAsWrittenAndEveryOptionWithItsNumbers) {
  selection.select(stepOf("hundred"));
  const Movement& hundred = movement("hundred");
  ASSERT_EQ(options().count(), static_cast<int>(hundred.options.size()) + 1);
  for (std::size_t i = 0; i < hundred.options.size(); ++i) {
    const Option& option = hundred.options[i];
    const QString spoken = spokenRow(static_cast<int>(i) + 1);
    EXPECT_TRUE(spoken.startsWith(QString::fromStdString(option.name)));
    const auto peak = document.knowledge().loads->of(hundred, &option)->peak;
    for (std::size_t k = 0; k < kLoadedJoints; ++k)
      EXPECT_TRUE(spoken.contains(
          QStringLiteral("%1 %2").arg(text(static_cast<LoadedJoint>(k)), momentText(peak[k] * newtonMetres({})))))
          << spoken.toStdString();
    EXPECT_TRUE(spoken.contains(QStringLiteral("effort %1").arg(effortOf(hundred, &option).value())));
  }
}

TEST_F(LoadTest, ARowChoosesItsOptionAsTheListOfOptionsDoes) {
  selection.select(stepOf("hundred"));
  ASSERT_TRUE(optionOf("hundred").empty());
  EXPECT_TRUE(spokenRow(0).endsWith(QStringLiteral("in use")));
  options().setFocus();
  QTest::keyClick(&options(), Qt::Key_Down);
  EXPECT_TRUE(optionOf("hundred").empty()); // looked at, not yet chosen
  QTest::keyClick(&options(), Qt::Key_Space);
  const Option& first = movement("hundred").options[0];
  EXPECT_EQ(optionOf("hundred"), first.id);
  EXPECT_EQ(findStep(document.plan(), stepOf("hundred"))->tempo, tempoOf(movement("hundred"), &first));
  EXPECT_TRUE(spokenRow(1).endsWith(QStringLiteral("in use")));
  EXPECT_FALSE(spokenRow(0).endsWith(QStringLiteral("in use")));
  EXPECT_EQ(document.undoStack()->count(), 1);
  QTest::keyClick(&options(), Qt::Key_Return); // the one in use
  EXPECT_EQ(document.undoStack()->count(), 1);
  QTest::mouseClick(options().viewport(), Qt::LeftButton, {}, options().visualItemRect(options().item(0)).center());
  EXPECT_TRUE(optionOf("hundred").empty());
}

TEST(OptionLoads, TheGreatestAndTheLeastAreThoseOfWhatIsShown) {
  const auto row = [](double effort, double lowBack) { return OptionLoad{{}, {}, {effort, lowBack, 0, 0}}; };
  const std::vector<OptionLoad> rows{row(3, 40.2), row(5, 39.8), row(3, 62), row(4, 12)};
  EXPECT_EQ(extremeOf(rows, 0, 0), Extreme::least);
  EXPECT_EQ(extremeOf(rows, 1, 0), Extreme::greatest);
  EXPECT_EQ(extremeOf(rows, 2, 0), Extreme::least); // both of them
  EXPECT_EQ(extremeOf(rows, 3, 0), Extreme::none);
  EXPECT_EQ(extremeOf(rows, 2, 1), Extreme::greatest);
  EXPECT_EQ(extremeOf(rows, 3, 1), Extreme::least);
  EXPECT_EQ(extremeOf(rows, 0, 1), Extreme::none);
  EXPECT_EQ(extremeOf(rows, 0, 2), Extreme::none); // all alike
}

TEST_F(LoadTest, TheCourseIsToldInWordsWithItsBreath) {
  selection.select(stepOf("saw"));
  const auto& chart = testing::namedIn<LoadChart>(panel, QStringLiteral("Moments through one repetition"));
  const QString words = chart.accessibleDescription();
  for (const char* part : {"low back begins at", "hip begins at", "shoulder begins at", "breathe"})
    EXPECT_TRUE(words.contains(QString::fromLatin1(part))) << words.toStdString();
}

TEST(LoadScale, EndsAtARoundNumber) {
  EXPECT_EQ(roundScale(0), 1);
  EXPECT_EQ(roundScale(62), 80);
  EXPECT_EQ(roundScale(80), 80);
  EXPECT_EQ(roundScale(81), 100);
  EXPECT_EQ(roundScale(1.01), 2);
  EXPECT_EQ(roundScale(205), 400);
}

TEST_F(LoadTest, StaysOpenOrClosedFromStepToStep) {
  const auto closed = [&] { return !testing::saysIn(panel, QStringLiteral("Options side by side")); };
  selection.select(stepOf("hundred"));
  EXPECT_FALSE(closed());
  button(QStringLiteral("Load")).click();
  EXPECT_TRUE(closed());
  EXPECT_TRUE(testing::saysIn(panel, QStringLiteral("Low back: peak")));
  selection.select(stepOf("roll-up"));
  EXPECT_TRUE(closed());
  button(QStringLiteral("Load")).click();
  EXPECT_FALSE(closed());
}

TEST_F(LoadTest, IsClosedAtFirst) {
  InspectorPanel another(document, selection, commands);
  testing::layOut(another, {300, 700});
  selection.select(stepOf("hundred"));
  EXPECT_FALSE(testing::saysIn(another, QStringLiteral("Options side by side")));
  EXPECT_TRUE(testing::saysIn(another, QStringLiteral("Low back: peak")));
}

TEST_F(LoadTest, LeadsToWhatItIsAndIsNotFromAStepAndFromTheClass) {
  QSignalSpy wanted(&panel, &InspectorPanel::aboutLoadWanted);
  selection.select(stepOf("hundred"));
  button(QStringLiteral("About load figures")).click();
  EXPECT_EQ(wanted.count(), 1);
  selection.clear();
  button(QStringLiteral("About load figures")).click();
  EXPECT_EQ(wanted.count(), 2);
}

TEST_F(LoadTest, WhatOthersMeasuredStandsApartWhereTheTaskIsTheSame) {
  const QString others = QStringLiteral("Measured by others");
  selection.select(stepOf("roll-up"));
  EXPECT_TRUE(testing::saysIn(panel, others));
  EXPECT_TRUE(testing::saysIn(panel, QStringLiteral("as remembered, not checked against the paper")));
  EXPECT_TRUE(testing::saysIn(panel, QStringLiteral("Axler and McGill 1997")));
  selection.select(stepOf("saw"));
  EXPECT_FALSE(testing::saysIn(panel, others));
}

TEST_F(LoadTest, NothingIsToldOfAMovementThatIsNotInTheCatalogue) {
  ClassPlan plan = document.plan();
  for (Section& section : plan.sections)
    for (Step& step : section.steps)
      step.movement = MovementId{"no-longer-there"};
  document.load(plan);
  selection.clear();
  EXPECT_FALSE(testing::saysIn(panel, QStringLiteral("Load over the class")));
  selection.selectAll();
  selection.select(document.plan().sections[0].steps.empty() ? document.plan().sections[1].steps[0].id
                                                             : document.plan().sections[0].steps[0].id);
  EXPECT_FALSE(testing::saysIn(panel, QStringLiteral("Options side by side")));
}

TEST_F(LoadTest, TheClassTellsSumsAndWhereThePeaksAre) {
  selection.clear();
  const ClassLoad& load = document.evaluation().load;
  EXPECT_TRUE(testing::saysIn(panel, momentMinutesText(load.momentSeconds[kLowBack] * newtonMetres({}))));
  const auto at = heaviestStep(load, LoadedJoint::lowBack);
  ASSERT_TRUE(at);
  EXPECT_TRUE(testing::saysIn(
      panel,
      QStringLiteral("Peak %1 at step %2, ").arg(momentText(load.peak[kLowBack] * newtonMetres({}))).arg(*at + 1)));
}

TEST_F(LoadTest, NothingIsCutInANarrowPanel) {
  for (const char* id : {"hundred", "roll-up", "saw"}) {
    selection.select(stepOf(id));
    testing::layOut(panel, {260, 700});
    EXPECT_THAT(testing::cutParts(panel), ::testing::IsEmpty()) << id;
  }
  selection.clear();
  testing::layOut(panel, {260, 700});
  EXPECT_THAT(testing::cutParts(panel), ::testing::IsEmpty());
}

} // namespace
} // namespace matwright
