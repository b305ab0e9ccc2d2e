#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "tests/ui/tidy/Untidy.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/MarkedTree.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"
#include "ui/tidy/TidyDialog.h"
#include "ui/tidy/TidyTerrains.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;

struct Tidying : ::testing::Test, Untidy {
  std::unique_ptr<TidyDialog> dialog = std::make_unique<TidyDialog>(document);

  void open(const std::vector<StepId>& steps = {}) {
    dialog->askFor(steps);
    dialog->show();
    QApplication::processEvents();
  }
  bool ends() {
    return QTest::qWaitFor([this] { return !dialog->search().isSearching(); }, 60000);
  }
  QPushButton& button(const char* words) { return testing::buttonIn(*dialog, QString::fromUtf8(words)); }
  QPushButton& use() { return button("&Use This Order"); }
  bool says(const char* words) { return testing::saysIn(*dialog, QString::fromUtf8(words)); }
  MarkedTree& tree() { return testing::namedIn<MarkedTree>(*dialog, QStringLiteral("What the order changes")); }
  QStringList headings() {
    QStringList all;
    for (int row = 0; row < tree().model()->rowCount(); ++row)
      all << tree().model()->index(row, 0).data().toString();
    return all;
  }
  QAction& pin() {
    for (QAction* action : dialog->terrains().actions())
      if (action->shortcut() == QKeySequence(Qt::Key_P))
        return *action;
    ADD_FAILURE() << "no pin";
    std::abort();
  }
};

TEST_F(Tidying, ItSearchesAtOnceWhenItIsOpened) {
  loadRestless();
  EXPECT_FALSE(dialog->search().isSearching());
  open();
  ASSERT_TRUE(ends());
  ASSERT_TRUE(dialog->search().found());
  EXPECT_TRUE(says("Shortest possible (proven)"));
  const TidyCost before = dialog->search().found()->result.before, after = dialog->search().found()->result.after;
  EXPECT_LT(after.changes, before.changes);
  EXPECT_TRUE(testing::saysIn(*dialog, withCapital(savedText(before, after))));
  EXPECT_TRUE(testing::saysIn(
      *dialog, QStringLiteral("%1 \u2192 %2").arg(secondsText(before.moving), secondsText(after.moving))));
  EXPECT_TRUE(use().isEnabled());
  EXPECT_TRUE(headings().contains(QStringLiteral("What moves, and why (1)")));
}

TEST_F(Tidying, UsingTheOrderIsOneEntryAndOneUndo) {
  loadRestless();
  const ClassPlan before = document.plan();
  open();
  ASSERT_TRUE(ends());
  const ClassPlan after = dialog->search().found()->result.plan;
  EXPECT_EQ(document.plan(), before);
  use().click();
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_EQ(document.plan(), after);
  EXPECT_NE(after, before);
  EXPECT_EQ(document.undoStack()->count(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(document.plan(), before);
}

TEST_F(Tidying, KeepingOnesOwnChangesNothing) {
  loadRestless();
  const ClassPlan before = document.plan();
  open();
  ASSERT_TRUE(ends());
  button("&Keep Mine").click();
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_EQ(document.plan(), before);
  EXPECT_EQ(document.undoStack()->count(), 0);
}

TEST_F(Tidying, EscapeKeepsOnesOwn) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  QTest::keyClick(dialog.get(), Qt::Key_Escape);
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_EQ(document.undoStack()->count(), 0);
}

TEST_F(Tidying, WhereThereIsNothingToDoThereIsNothingToUse) {
  for (const std::vector<const char*>& movements :
       {std::vector<const char*>{"hundred", "hundred", "clam"}, {"hundred"}}) {
    load(movements);
    open();
    ASSERT_TRUE(ends());
    EXPECT_TRUE(says("Nothing to do: no order is shorter (proven)"));
    EXPECT_FALSE(use().isEnabled());
    EXPECT_EQ(headings(), QStringList());
  }
}

TEST_F(Tidying, AnEmptyClassIsSaidToBeEmpty) {
  document.load(emptyClass("Empty"));
  open();
  ASSERT_TRUE(ends());
  EXPECT_TRUE(says("The class has no steps yet"));
  EXPECT_FALSE(dialog->terrains().isVisible());
  EXPECT_FALSE(use().isEnabled());
  loadRestless(); // while it is open
  ASSERT_TRUE(ends());
  EXPECT_FALSE(says("The class has no steps yet"));
  EXPECT_TRUE(dialog->terrains().isVisible());
}

TEST_F(Tidying, StopKeepsTheBestSoFar) {
  loadEndless();
  dialog->search().setNodes(std::int64_t{1} << 50);
  open();
  for (QCheckBox* wish : dialog->findChildren<QCheckBox*>())
    wish->click();
  ASSERT_TRUE(QTest::qWaitFor([this] { return says("the best so far takes"); }, 60000));
  EXPECT_TRUE(says("no order can be below"));
  EXPECT_FALSE(use().isEnabled());
  button("&Stop").click();
  ASSERT_TRUE(ends());
  EXPECT_TRUE(says("Stopped: the best until then. With wishes it comes to"));
  EXPECT_FALSE(button("&Stop").isEnabled());
  EXPECT_TRUE(use().isEnabled());
  const ClassPlan best = dialog->search().found()->result.plan;
  use().click();
  EXPECT_EQ(document.plan(), best);
}

TEST_F(Tidying, ClosingEndsTheSearch) {
  loadEndless();
  dialog->search().setNodes(std::int64_t{1} << 50);
  open();
  EXPECT_TRUE(dialog->search().isSearching());
  dialog->close();
  EXPECT_FALSE(dialog->search().isSearching());
  dialog->show();
  EXPECT_TRUE(dialog->search().isSearching());
  dialog.reset(); // in the midst of it
}

TEST_F(Tidying, AChangeOfTheClassSearchesAgain) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  ASSERT_TRUE(document.perform(RemoveSteps{{StepId{3}, StepId{4}}}, QStringLiteral("Remove")));
  EXPECT_TRUE(dialog->search().isSearching());
  EXPECT_FALSE(use().isEnabled());
  ASSERT_TRUE(ends());
  EXPECT_TRUE(says("Nothing to do"));
  document.undoStack()->undo();
  ASSERT_TRUE(ends());
  EXPECT_TRUE(says("Shortest possible"));
  EXPECT_EQ(dialog->terrains().stage().after.blocks().size(), 4U);
}

TEST_F(Tidying, WhatIsClosedDoesNotSearch) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  dialog->close();
  loadRestless();
  EXPECT_FALSE(dialog->search().isSearching());
}

TEST_F(Tidying, PinnedStepsStayAndItSearchesAgain) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  const StepId moved = dialog->search().found()->result.moves.front().step;
  EXPECT_FALSE(pin().isEnabled());
  dialog->terrains().setCurrent(moved);
  ASSERT_TRUE(pin().isEnabled());
  pin().trigger();
  ASSERT_TRUE(ends());
  EXPECT_THAT(dialog->search().found()->request.pinned, ElementsAre(moved));
  EXPECT_EQ(placeOf(dialog->search().found()->result.plan, moved), placeOf(document.plan(), moved));
  EXPECT_TRUE(pin().isChecked());
  pin().trigger();
  ASSERT_TRUE(ends());
  EXPECT_TRUE(dialog->search().found()->request.pinned.empty());
}

TEST_F(Tidying, TheKeyPinsFromPictureAndList) {
  loadRestless();
  open();
  dialog->activateWindow();
  ASSERT_TRUE(ends());
  dialog->terrains().setFocus();
  QTest::keyClick(&dialog->terrains(), Qt::Key_Home);
  QTest::keyClick(&dialog->terrains(), Qt::Key_P);
  ASSERT_TRUE(ends());
  EXPECT_EQ(dialog->search().found()->request.pinned.size(), 1U);
  tree().setFocus();
  QTest::keyClick(&tree(), Qt::Key_P);
  ASSERT_TRUE(ends());
  EXPECT_TRUE(dialog->search().found()->request.pinned.empty());
}

TEST_F(Tidying, ChoosingAMoveShowsItsStepAndTheOtherWayRound) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  const StepId moved = dialog->search().found()->result.moves.front().step;
  const QModelIndex row = tree().model()->index(0, 0, tree().model()->index(0, 0));
  tree().setCurrentIndex(row);
  EXPECT_EQ(dialog->terrains().current(), moved);
  dialog->terrains().setCurrent(StepId{1});
  EXPECT_NE(tree().currentIndex(), row);
  EXPECT_EQ(dialog->terrains().current(), StepId{1});
  dialog->terrains().setCurrent(moved);
  EXPECT_EQ(tree().currentIndex(), row);
  EXPECT_TRUE(row.data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("less moving")));
}

TEST_F(Tidying, SelectedStepsAndSectionsAreWhatIsTidied) {
  loadRestless();
  open({StepId{1}, StepId{2}});
  ASSERT_TRUE(ends());
  EXPECT_THAT(dialog->search().found()->request.steps, ElementsAre(StepId{1}, StepId{2}));
  open({StepId{1}, StepId{2}, StepId{3}, StepId{4}});
  ASSERT_TRUE(ends());
  EXPECT_EQ(dialog->search().found()->request.section, 2U);
}

TEST_F(Tidying, TheReturnKeyUsesTheOrder) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  QTest::keyClick(dialog.get(), Qt::Key_Return);
  EXPECT_EQ(document.undoStack()->count(), 1);
}

TEST_F(Tidying, EverythingThatCanBeUsedHasANameAndTakesTheKeyboard) {
  loadRestless();
  open();
  ASSERT_TRUE(ends());
  for (const QWidget* widget : dialog->findChildren<QWidget*>()) {
    if (!widget->isVisibleTo(dialog.get()) || widget->focusPolicy() == Qt::NoFocus)
      continue;
    const auto* plain = qobject_cast<const QAbstractButton*>(widget);
    const auto* action = qobject_cast<const QToolButton*>(widget);
    EXPECT_FALSE(widget->accessibleName().isEmpty() && (!plain || plain->text().isEmpty()) &&
                 (!action || !action->defaultAction()))
        << widget->metaObject()->className();
  }
}

// Found by trying: with a person whose rules speak of what comes too soon.
struct TidyingForPeople : ::testing::Test, testing::Panels {
  TidyDialog dialog{document};
};

TEST_F(TidyingForPeople, WhatTheOrderRaisesIsSaidBesideTheButton) {
  document.setRoster(testing::sixPeople());
  dialog.askFor({});
  dialog.show();
  ASSERT_TRUE(QTest::qWaitFor([this] { return !dialog.search().isSearching(); }, 60000));
  const TidyFound& found = *dialog.search().found();
  ASSERT_FALSE(found.result.moves.empty());
  EXPECT_TRUE(testing::saysIn(dialog, found.come.empty() ? QStringLiteral("This order raises no further caution")
                                                         : QStringLiteral("This order raises cautions: ")));
  EXPECT_TRUE(testing::saysIn(dialog, QStringLiteral("No mark does not mean safe")));
  for (const LevelMark* mark : dialog.findChildren<LevelMark*>())
    EXPECT_EQ(mark->isVisibleTo(&dialog), !found.come.empty());
}

TEST_F(TidyingForPeople, NothingIsCutAtTheSmallestSize) {
  for (const QSize size : {QSize(1000, 640), QSize(1280, 800), QSize(1900, 1000)}) {
    testing::layOut(dialog, size);
    dialog.askFor({});
    dialog.show();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !dialog.search().isSearching(); }, 60000));
    testing::layOut(dialog, size);
    EXPECT_EQ(dialog.size(), size);
    EXPECT_EQ(testing::cutParts(dialog), QStringList()) << size.width();
  }
}

} // namespace
} // namespace matwright
