#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/compose/ComposeDialog.h"
#include "ui/compose/ComposedList.h"
#include "ui/compose/ComposedTerrain.h"
#include "ui/compose/WishesForm.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct ComposeDialogTest : ::testing::Test, testing::Panels {
  std::unique_ptr<ComposeDialog> dialog = std::make_unique<ComposeDialog>(document);

  ComposeDialogTest() { dialog->composition().setEvaluations(15'000); }
  void openNew(const ClassWishes& wishes) {
    dialog->composeNew();
    dialog->form().show(wishes);
    dialog->show();
    ASSERT_TRUE(ends());
  }
  static ClassWishes shortWishes() {
    ClassWishes wishes;
    wishes.name = "Short";
    wishes.length = minutes(15);
    wishes.sections = usualSections(wishes.length);
    return wishes;
  }
  bool ends() {
    QTest::qWait(10);
    return QTest::qWaitFor([this] { return !dialog->composition().isSearching() && dialog->composition().last(); },
                           120000);
  }
  QPushButton& button(const char* words) { return testing::buttonIn(*dialog, QString::fromUtf8(words)); }
  QPushButton& use() { return button("&Use This Class"); }
  bool says(const char* words) { return testing::saysIn(*dialog, QString::fromUtf8(words)); }
  ComposedList& list() { return *dialog->findChild<ComposedList*>(); }
  const ClassPlan& shown() { return dialog->composition().document().plan(); }
};

TEST_F(ComposeDialogTest, ShowsAClassAsSoonAsItIsOpened) {
  openNew(shortWishes());
  EXPECT_EQ(dialog->composition().shown()->wishes, shortWishes());
  EXPECT_TRUE(use().isEnabled());
  EXPECT_TRUE(says("step"));
  EXPECT_TRUE(says("Composing goes by what is on file"));
  EXPECT_EQ(list().model()->rowCount(), 4);
}

TEST_F(ComposeDialogTest, WishesThatChangeAreSearchedForAgain) {
  openNew(shortWishes());
  testing::namedIn<QToolButton>(dialog->form(), QStringLiteral("How hard: Gentle")).click();
  EXPECT_FALSE(use().isEnabled());
  ASSERT_TRUE(QTest::qWaitFor([this] { return dialog->composition().isSearching(); }, 20000));
  ASSERT_TRUE(ends());
  EXPECT_EQ(dialog->composition().shown()->wishes.challenge, Challenge::gentle);
}

TEST_F(ComposeDialogTest, AnotherNameNeedsNoSearch) {
  openNew(shortWishes());
  QLineEdit& name = testing::namedIn<QLineEdit>(dialog->form(), QStringLiteral("Name of the class"));
  name.clear();
  QTest::keyClicks(&name, QStringLiteral("Thursday"));
  EXPECT_FALSE(dialog->composition().isSearching());
  EXPECT_EQ(shown().name, "Thursday");
  EXPECT_TRUE(use().isEnabled());
}

TEST_F(ComposeDialogTest, WhatIsInTheWayIsToldWithWhatMendsIt) {
  ClassWishes wishes = shortWishes();
  wishes.include = {MovementId{"swimming"}};
  wishes.leaveOut = {MovementId{"swimming"}};
  openNew(wishes);
  EXPECT_TRUE(says("No class can meet these wishes"));
  EXPECT_TRUE(says("Swimming is to be included and to be left out"));
  EXPECT_FALSE(use().isEnabled());
  EXPECT_EQ(dialog->form().wishes(), wishes) << "the form stays";
  button("Do not leave out Swimming").click();
  ASSERT_TRUE(QTest::qWaitFor([this] { return dialog->composition().shown().has_value(); }, 120000));
  EXPECT_TRUE(dialog->form().wishes().leaveOut.empty());
  EXPECT_TRUE(use().isEnabled());
}

TEST_F(ComposeDialogTest, SectionsThatDoNotFitAreNotSearchedFor) {
  openNew(shortWishes());
  ClassWishes wishes = shortWishes();
  wishes.sections[0].length += minutes(4);
  dialog->form().show(wishes);
  Q_EMIT dialog->form().changed();
  EXPECT_FALSE(dialog->composition().isSearching());
  EXPECT_FALSE(use().isEnabled());
  EXPECT_TRUE(says("more than the 15:00 of the class"));
}

TEST_F(ComposeDialogTest, AnotherClassHasAnotherSeed) {
  openNew(shortWishes());
  const ClassPlan first = shown();
  QSpinBox& seed = testing::namedIn<QSpinBox>(*dialog, QStringLiteral("Seed"));
  const int before = seed.value();
  button("&Another Class").click();
  ASSERT_TRUE(ends());
  EXPECT_EQ(seed.value(), before + 1);
  EXPECT_NE(shown().sections, first.sections);
}

TEST_F(ComposeDialogTest, ASectionIsComposedAnewByItsButtonAndByKey) {
  openNew(shortWishes());
  for (const bool byKey : {false, true}) {
    const ClassPlan before = shown();
    if (byKey) {
      list().setCurrent(before.sections[2].steps.front().id);
      QTest::keyClick(&list(), Qt::Key_R);
    } else {
      testing::namedIn<QPushButton>(*dialog, QStringLiteral("Another for the section Main")).click();
    }
    ASSERT_TRUE(ends());
    ASSERT_EQ(dialog->composition().last()->result.status, ComposeStatus::composed);
    EXPECT_EQ(shown().sections[0], before.sections[0]);
    EXPECT_EQ(shown().sections[1], before.sections[1]);
    EXPECT_NE(shown().sections[2], before.sections[2]);
  }
}

TEST_F(ComposeDialogTest, AStepIsKeptByTheSpaceBar) {
  openNew(shortWishes());
  const StepId step = shown().sections[1].steps.front().id;
  list().setCurrent(step);
  QTest::keyClick(&list(), Qt::Key_Space);
  EXPECT_TRUE(dialog->composition().isKept(step));
  EXPECT_TRUE(list().currentIndex().data(Qt::AccessibleTextRole).toString().endsWith(QStringLiteral("stays")));
  QTest::keyClick(&list(), Qt::Key_Space);
  EXPECT_FALSE(dialog->composition().isKept(step));
}

TEST_F(ComposeDialogTest, TheChosenStepTellsWhyItIsThere) {
  openNew(shortWishes());
  auto& terrain = *dialog->findChild<ComposedTerrain*>();
  QTest::keyClick(&terrain, Qt::Key_Home);
  EXPECT_EQ(list().current(), terrain.current());
  EXPECT_TRUE(says("Why it is here"));
  EXPECT_TRUE(QTest::qWaitFor([this] { return says("in its place") || says("No other movement"); }, 60000));
  list().setCurrentIndex(list().indexBelow(list().currentIndex()));
  EXPECT_NE(terrain.current(), shown().sections[0].steps.front().id);
  EXPECT_EQ(list().current(), terrain.current());
}

TEST_F(ComposeDialogTest, TheClassIsHandedOnAndTheDialogStays) {
  openNew(shortWishes());
  QSignalSpy used(dialog.get(), &ComposeDialog::useWanted);
  const ClassPlan before = document.plan();
  use().click();
  ASSERT_EQ(used.count(), 1);
  EXPECT_EQ(used.front().front().value<ClassPlan>(), shown());
  EXPECT_EQ(document.plan(), before);
  EXPECT_TRUE(dialog->isVisible());
}

TEST_F(ComposeDialogTest, CompletingIsOneEntryAndOneUndo) {
  ClassPlan half = document.plan();
  half.sections[2].steps.clear();
  half.target = minutes(25);
  document.load(half);
  dialog->complete();
  dialog->show();
  ASSERT_TRUE(ends());
  ASSERT_EQ(dialog->composition().last()->result.status, ComposeStatus::composed);
  const std::size_t steps = countSteps(shown());
  EXPECT_GT(steps, countSteps(half));
  button("&Put into the Class").click();
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_EQ(countSteps(document.plan()), steps);
  EXPECT_EQ(document.undoStack()->count(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(document.plan(), half);
}

TEST_F(ComposeDialogTest, StepsPutInHaveIdsThatTheDocumentNeverHad) {
  ClassPlan half = document.plan();
  half.sections[2].steps.clear();
  half.target = minutes(25);
  document.load(half);
  const StepId had = document.mintStepId();
  dialog->complete();
  dialog->show();
  ASSERT_TRUE(ends());
  button("&Put into the Class").click();
  forEachStep(document.plan(), [&](const Step& step) {
    if (!findStep(half, step.id)) {
      EXPECT_GT(step.id, had);
    }
  });
}

TEST_F(ComposeDialogTest, WishesAreKeptInFiles) {
  QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("wishes.json"));
  ClassWishes wishes = shortWishes();
  wishes.focus.regions = {Region::hips};
  wishes.seed = 7;
  openNew(wishes);
  dialog->saveWishes(file);
  dialog->form().show(shortWishes());
  dialog->openWishes(file);
  EXPECT_EQ(dialog->form().wishes(), wishes);
  EXPECT_EQ(testing::namedIn<QSpinBox>(*dialog, QStringLiteral("Seed")).value(), 7);
}

TEST_F(ComposeDialogTest, AFileThatIsNoWishesChangesNothing) {
  openNew(shortWishes());
  dialog->openWishes(QStringLiteral("/no/such/file.json"));
  EXPECT_EQ(dialog->form().wishes(), shortWishes());
  EXPECT_TRUE(dialog->findChild<QDialog*>()) << "it is told";
}

TEST_F(ComposeDialogTest, NothingSearchesWhileItIsHidden) {
  dialog->composition().setEvaluations(1'000'000'000);
  dialog->composeNew();
  EXPECT_FALSE(dialog->composition().isSearching());
  dialog->show();
  EXPECT_TRUE(dialog->composition().isSearching());
  QTest::keyClick(dialog.get(), Qt::Key_Escape);
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_FALSE(dialog->composition().isSearching());
}

TEST_F(ComposeDialogTest, NothingIsCutInASmallWindow) {
  openNew(shortWishes());
  testing::layOut(*dialog, {1100, 700});
  QApplication::processEvents();
  const QStringList cut = testing::cutParts(*dialog);
  EXPECT_TRUE(cut.isEmpty()) << cut.join(QStringLiteral("; ")).toStdString();
}

} // namespace
} // namespace matwright
