#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

using Ids = std::vector<StepId>;
using Order = std::vector<std::int64_t>;

struct Keys : testing::Test {
  OpenTerrain open;
  Keys() {
    open.fill();
    open.view->setFocus();
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(open.view.get(), key, modifiers); }
  std::int64_t current() { return open.selection.current().value_or(StepId{}).value; }
};

TEST_F(Keys, WalkFromStepToStep) {
  key(Qt::Key_Right);
  EXPECT_EQ(current(), 1);
  key(Qt::Key_Right);
  key(Qt::Key_Right);
  key(Qt::Key_Right);
  EXPECT_EQ(current(), 4); // across the section border
  key(Qt::Key_Left);
  EXPECT_EQ(current(), 3);
  key(Qt::Key_End);
  EXPECT_EQ(current(), 5);
  key(Qt::Key_Right);
  EXPECT_EQ(current(), 5);
  key(Qt::Key_Home);
  EXPECT_EQ(current(), 1);
}

TEST_F(Keys, JumpBetweenSections) {
  open.selection.select(StepId{2});
  key(Qt::Key_Down);
  EXPECT_EQ(current(), 4);
  key(Qt::Key_Down);
  EXPECT_EQ(current(), 4); // the next one is empty
  key(Qt::Key_Up);
  EXPECT_EQ(current(), 1);
}

TEST_F(Keys, ShiftExtends) {
  open.selection.select(StepId{2});
  key(Qt::Key_Right, Qt::ShiftModifier);
  key(Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{2}, StepId{3}, StepId{4}}));
  key(Qt::Key_Home, Qt::ShiftModifier);
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{1}, StepId{2}}));
  key(Qt::Key_A, Qt::ControlModifier);
  EXPECT_EQ(open.selection.steps().size(), 5u);
}

TEST_F(Keys, AltMovesTheSelectedSteps) {
  open.selection.select(StepId{3});
  key(Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(open.order(1), (Order{1, 3, 2}));
  EXPECT_EQ(open.entries(), 1);
  key(Qt::Key_Right, Qt::AltModifier);
  key(Qt::Key_Right, Qt::AltModifier);
  EXPECT_EQ(open.order(2), (Order{3, 4, 5}));
  EXPECT_EQ(current(), 3);
}

TEST_F(Keys, PlusAndMinusChangeTheDose) {
  open.selection.select(StepId{2});
  const int dose = findStep(open.document.plan(), StepId{2})->dose.amount;
  key(Qt::Key_Plus);
  EXPECT_EQ(findStep(open.document.plan(), StepId{2})->dose.amount, dose + 1);
  key(Qt::Key_Minus);
  key(Qt::Key_Minus);
  EXPECT_EQ(findStep(open.document.plan(), StepId{2})->dose.amount, dose - 1);
  EXPECT_EQ(open.entries(), 3);
}

TEST_F(Keys, HoldingAKeyIsOneEntry) {
  open.selection.select(StepId{2});
  for (int i = 0; i < 4; ++i) {
    QKeyEvent press(QEvent::KeyPress, Qt::Key_Plus, Qt::NoModifier, QStringLiteral("+"), i > 0);
    QApplication::sendEvent(open.view.get(), &press);
  }
  QKeyEvent release(QEvent::KeyRelease, Qt::Key_Plus, Qt::NoModifier, QStringLiteral("+"));
  QApplication::sendEvent(open.view.get(), &release);
  EXPECT_EQ(open.entries(), 1);
  key(Qt::Key_Plus);
  EXPECT_EQ(open.entries(), 2);
}

TEST_F(Keys, DeleteRemovesWhatIsSelected) {
  open.selection.set({StepId{1}, StepId{3}}, StepId{3});
  key(Qt::Key_Delete);
  EXPECT_EQ(open.order(1), (Order{2}));
  EXPECT_EQ(open.entries(), 1);
  EXPECT_TRUE(open.selection.current());
}

TEST_F(Keys, TheGapCursorWalksThroughEveryPlace) {
  open.selection.select(StepId{1});
  key(Qt::Key_G);
  EXPECT_TRUE(open.selection.hasOwnGap());
  EXPECT_EQ(open.selection.gap(), (Place{1, 1}));
  key(Qt::Key_Left);
  EXPECT_EQ(open.selection.gap(), (Place{1, 0}));
  key(Qt::Key_Left);
  EXPECT_EQ(open.selection.gap(), (Place{0, 0}));
  key(Qt::Key_End);
  EXPECT_EQ(open.selection.gap(), (Place{3, 0}));
  key(Qt::Key_Up);
  EXPECT_EQ(open.selection.gap(), (Place{2, 0}));
  std::optional<Place> asked;
  QObject::connect(open.view.get(), &TerrainView::gapActivated, open.view.get(), [&](Place place) { asked = place; });
  key(Qt::Key_Return);
  EXPECT_EQ(asked, (Place{2, 0}));
  key(Qt::Key_Escape);
  EXPECT_FALSE(open.selection.hasOwnGap());
  EXPECT_EQ(current(), 4);
}

TEST_F(Keys, ReturnActivatesTheCurrentStep) {
  StepId activated;
  QObject::connect(open.view.get(), &TerrainView::stepActivated, open.view.get(),
                   [&](StepId step) { activated = step; });
  open.selection.select(StepId{4});
  key(Qt::Key_Return);
  EXPECT_EQ(activated, StepId{4});
}

TEST_F(Keys, ZoomByKey) {
  key(Qt::Key_Plus, Qt::ControlModifier);
  EXPECT_FALSE(open.view->isFitted());
  EXPECT_EQ(open.entries(), 0);
  key(Qt::Key_Minus, Qt::ControlModifier);
  EXPECT_TRUE(open.view->isFitted());
  key(Qt::Key_Plus, Qt::ControlModifier);
  key(Qt::Key_0, Qt::ControlModifier);
  EXPECT_TRUE(open.view->isFitted());
}

TEST_F(Keys, TheMenuKeyAsksForTheMenuOfTheCurrentStep) {
  StepId asked;
  QObject::connect(open.view.get(), &TerrainView::stepContextMenu, open.view.get(),
                   [&](QPoint, StepId step) { asked = step; });
  open.selection.select(StepId{3});
  QContextMenuEvent event(QContextMenuEvent::Keyboard, QPoint(), QPoint());
  QApplication::sendEvent(open.view->viewport(), &event);
  EXPECT_EQ(asked, StepId{3});
}

TEST_F(Keys, OtherKeysAreLeftToTheWindow) {
  QKeyEvent event(QEvent::KeyPress, Qt::Key_F5, Qt::NoModifier);
  event.accept();
  QApplication::sendEvent(open.view.get(), &event);
  EXPECT_FALSE(event.isAccepted());
}

} // namespace
} // namespace matwright
