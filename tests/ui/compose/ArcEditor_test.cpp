#include "tests/support/Finding.h"
#include "ui/compose/ArcEditor.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct ArcEditorTest : ::testing::Test {
  ArcEditor editor;
  QSignalSpy changes{&editor, &ArcEditor::changed};

  ArcEditorTest() {
    editor.show({{0, 2}, {0.5, 6}, {1, 1}});
    editor.resize(300, 92);
  }
  void drag(std::size_t point, QPoint by) {
    const QPoint from = editor.placeOf(editor.arc()[point]).toPoint();
    QTest::mousePress(&editor, Qt::LeftButton, {}, from);
    QTest::mouseMove(&editor, from + by);
    QTest::mouseRelease(&editor, Qt::LeftButton, {}, from + by);
  }
};

TEST_F(ArcEditorTest, PointsAreRaisedByKeys) {
  QTest::keyClick(&editor, Qt::Key_Right);
  QTest::keyClick(&editor, Qt::Key_Up);
  EXPECT_EQ(editor.arc()[1], (ArcPoint{0.5, 6.5}));
  EXPECT_EQ(changes.count(), 1);
  EXPECT_TRUE(editor.accessibleDescription().contains(QStringLiteral("effort 6.5 of 10")));
  QTest::keyClick(&editor, Qt::Key_Left, Qt::ShiftModifier);
  EXPECT_NEAR(editor.arc()[1].at, 0.45, 1e-9);
}

TEST_F(ArcEditorTest, TheEndsStayAtTheEnds) {
  QTest::keyClick(&editor, Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(editor.arc()[0].at, 0);
  EXPECT_EQ(changes.count(), 0);
}

TEST_F(ArcEditorTest, APointIsDraggedNoFurtherThanItsNeighbours) {
  drag(1, {500, 500});
  EXPECT_EQ(editor.arc()[1], (ArcPoint{1, 0}));
  drag(1, {-500, -500});
  EXPECT_EQ(editor.arc()[1], (ArcPoint{0, 10}));
  ClassWishes wishes;
  wishes.sections = usualSections(wishes.length);
  wishes.arc = editor.arc();
  EXPECT_FALSE(faultIn(wishes));
}

TEST_F(ArcEditorTest, ShowingAnArcIsNoChange) {
  editor.show(usualArc());
  EXPECT_EQ(changes.count(), 0);
}

TEST(ArcChoiceTest, AShapeIsChosenAndNamed) {
  ArcChoice choice;
  QSignalSpy changes(&choice, &ArcChoice::changed);
  QToolButton& even = testing::namedIn<QToolButton>(choice, QStringLiteral("Effort: Even"));
  EXPECT_FALSE(even.isChecked());
  even.click();
  EXPECT_EQ(changes.count(), 1);
  EXPECT_TRUE(even.isChecked());
  EXPECT_EQ(choice.summary(), QStringLiteral("Even"));
  EXPECT_NE(choice.arc(), usualArc());
  choice.show({{0, 5}});
  EXPECT_FALSE(even.isChecked());
  EXPECT_EQ(choice.summary(), QStringLiteral("An own shape"));
}

} // namespace
} // namespace matwright
