// What else could stand in the place of a step, in the inspector.
#include "core/evaluate/Swaps.h"
#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/inspector/InspectorPanel.h"
#include "ui/text/CautionText.h"
#include "ui/text/SwapText.h"

#include <QListWidget>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

struct Replacing : ::testing::Test, Panels {
  Replacing() : panel(document, selection, commands) {
    testing::layOut(panel, {300, 700});
    panel.show();
    panel.activateWindow();
    selection.select(stepOf("hundred"));
  }

  QListWidget* list() { return panel.findChild<QListWidget*>(QStringLiteral("replacements")); }
  bool open() { return list() && list()->isVisible(); }
  const Step& step() const { return *findStep(document.plan(), id); }
  std::vector<Swap> wanted() const {
    return replacementsFor(document.knowledge(), document.plan(), document.roster(), document.day(), id);
  }

  const StepId id = stepOf("hundred");
  InspectorPanel panel;
};

TEST_F(Replacing, IsAskedForFromTheStepsPage) {
  EXPECT_FALSE(open());
  testing::namedIn<QToolButton>(panel, QStringLiteral("Replace this step")).click();
  ASSERT_TRUE(open());
  EXPECT_TRUE(testing::saysIn(panel, QStringLiteral("In place of The hundred")));
  EXPECT_TRUE(testing::saysIn(panel, standingNotice()));
}

TEST_F(Replacing, ListsTheBestTenWithAllThatIsSaidOfThem) {
  commands.wantReplacements();
  ASSERT_TRUE(open());
  const auto swaps = wanted();
  ASSERT_EQ(swaps.size(), kMostReplacements);
  ASSERT_EQ(list()->count(), 10);
  for (int i = 0; i < list()->count(); ++i) {
    const Swap& swap = swaps[static_cast<std::size_t>(i)];
    const QListWidgetItem& row = *list()->item(i);
    EXPECT_EQ(row.text(), swapName(swap));
    const QString spoken = row.data(Qt::AccessibleTextRole).toString();
    for (const QString& part : {swapName(swap), disturbanceText(swap)})
      EXPECT_TRUE(spoken.contains(part)) << spoken.toStdString();
    for (const SwapLine& line : cautionLines(swap, id, document.evaluation(), document.roster()))
      EXPECT_TRUE(spoken.contains(line.words)) << spoken.toStdString();
    EXPECT_FALSE(spoken.contains(QStringLiteral("safe"), Qt::CaseInsensitive));
    EXPECT_TRUE(row.toolTip().contains(QString::fromStdString(swap.movement->about)));
  }
}

TEST_F(Replacing, IsOneEntryOfTheUndoList) {
  const ClassPlan before = document.plan();
  const Swap second = wanted().at(1);
  commands.wantReplacements();
  QTest::keyClick(list(), Qt::Key_Down);
  QTest::keyClick(list(), Qt::Key_Return);
  EXPECT_EQ(step(), swapped(*findStep(before, id), second));
  EXPECT_FALSE(open()) << "it is done";
  EXPECT_TRUE(testing::saysIn(panel, QString::fromStdString(second.movement->name)));
  EXPECT_EQ(document.undoStack()->count(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(document.plan(), before);
}

TEST_F(Replacing, IsDoneByAClickToo) {
  const Swap first = wanted().front();
  commands.wantReplacements();
  QTest::mouseClick(list()->viewport(), Qt::LeftButton, {}, list()->visualItemRect(list()->item(0)).center());
  EXPECT_EQ(step().movement, first.movement->id);
}

TEST_F(Replacing, IsLeftByEscapeAndTheKeyboardGoesBackToWhereItWas) {
  auto& dose = testing::namedIn<QSpinBox>(panel, QStringLiteral("Dose"));
  dose.setFocus();
  commands.wantReplacements();
  ASSERT_TRUE(open());
  EXPECT_TRUE(list()->hasFocus());
  QTest::keyClick(list(), Qt::Key_Escape);
  EXPECT_FALSE(open());
  EXPECT_TRUE(dose.hasFocus());
  EXPECT_EQ(document.undoStack()->count(), 0);
}

TEST_F(Replacing, IsOverWhenAnotherStepIsSelected) {
  commands.wantReplacements();
  selection.select(stepOf("saw"));
  EXPECT_FALSE(open());
  selection.select(id);
  EXPECT_FALSE(open());
}

TEST_F(Replacing, FollowsTheClassWhileItIsSeenAndIsOverWhenItIsNot) {
  commands.wantReplacements();
  const QString first = list()->item(0)->text();
  commands.insertMovement(wanted().front().movement->id, {0, 0});
  selection.select(id);
  commands.wantReplacements();
  EXPECT_NE(list()->item(0)->text(), first) << "the class has it now";
  document.undoStack()->undo();
  ASSERT_TRUE(open());
  EXPECT_EQ(list()->item(0)->text(), first);
  panel.hide();
  document.perform(SetStepNote{id, "note"}, QStringLiteral("x"));
  panel.show();
  EXPECT_FALSE(open());
}

TEST_F(Replacing, SaysWhatGoesWithTheStepWhateverIsPutIn) {
  commands.wantReplacements();
  const QString words = QStringLiteral("What single people do in place of this step goes with it.");
  EXPECT_FALSE(testing::saysIn(panel, words));
  document.perform(SetVariant{id, {document.plan().people.front(), step().movement, {}}}, QStringLiteral("x"));
  EXPECT_TRUE(testing::saysIn(panel, words));
}

TEST_F(Replacing, IsForASingleStep) {
  selection.clear();
  EXPECT_FALSE(commands.canReplace());
  commands.wantReplacements();
  EXPECT_FALSE(open());
  selection.selectAll();
  EXPECT_FALSE(commands.canReplace());
  commands.wantReplacements();
  EXPECT_FALSE(open());
}

TEST_F(Replacing, CutsNothing) {
  for (const int width : {260, 300, 420}) {
    testing::layOut(panel, {width, 700});
    commands.wantReplacements();
    ASSERT_TRUE(open());
    QCoreApplication::processEvents(); // rows are laid out for the width a moment later
    EXPECT_EQ(testing::cutParts(panel), QStringList()) << width;
    const QRect last = list()->visualItemRect(list()->item(list()->count() - 1));
    EXPECT_LE(last.bottom(), list()->viewport()->height()) << "the list is as tall as its rows at " << width;
  }
}

} // namespace
} // namespace matwright
