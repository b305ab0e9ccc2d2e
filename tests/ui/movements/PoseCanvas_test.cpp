#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/movements/PoseCanvas.h"

#include <QLineF>
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

Pose standing() {
  Pose pose;
  pose.on = {Contact::footNear, Contact::footFar};
  return pose;
}

struct Canvas : ::testing::Test {
  Canvas() {
    canvas.showPose(standing(), {});
    testing::layOut(canvas, {520, 420});
    QObject::connect(&canvas, &PoseCanvas::edited, &canvas, [this](const Pose& pose, const QString& gesture) {
      edits.push_back(pose);
      gestures << gesture;
    });
  }
  void drag(Handle handle, QPointF by, bool release = true) {
    const QPoint from = canvas.spotOf(handle).toPoint();
    canvas.setHandle(handle);
    QTest::mousePress(&canvas, Qt::LeftButton, {}, from);
    for (int i = 1; i <= 4; ++i)
      QTest::mouseMove(&canvas, from + (by * i / 4).toPoint());
    if (release)
      QTest::mouseRelease(&canvas, Qt::LeftButton, {}, from + by.toPoint());
  }

  PoseCanvas canvas;
  std::vector<Pose> edits;
  QStringList gestures;
};

TEST_F(Canvas, ADragIsOneEditWithTheHandleUnderThePointer) {
  const QPointF before = canvas.spotOf(Handle::kneeNear);
  drag(Handle::kneeNear, {45, -25});
  ASSERT_EQ(edits.size(), 1U);
  EXPECT_GT(edits[0].legs[0].hip, 15);
  EXPECT_EQ(edits[0], canvas.pose());
  EXPECT_NE(canvas.spotOf(Handle::kneeNear), before);
}

TEST_F(Canvas, ThePictureStaysInItsPlaceWhenAHandleIsLetGo) {
  drag(Handle::handNear, {30, -60}, false);
  const QPointF head = canvas.spotOf(Handle::head), hand = canvas.spotOf(Handle::handNear);
  QTest::mouseRelease(&canvas, Qt::LeftButton, {}, hand.toPoint());
  EXPECT_LT(QLineF(canvas.spotOf(Handle::head), head).length(), 1.5);
  EXPECT_LT(QLineF(canvas.spotOf(Handle::handNear), hand).length(), 1.5);
}

TEST_F(Canvas, AClickChangesNothing) {
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, canvas.spotOf(Handle::handNear).toPoint());
  EXPECT_TRUE(edits.empty());
  EXPECT_EQ(canvas.pose(), standing());
}

TEST_F(Canvas, ADragThatComesBackChangesNothing) {
  const QPoint from = canvas.spotOf(Handle::handNear).toPoint();
  canvas.setHandle(Handle::handNear);
  QTest::mousePress(&canvas, Qt::LeftButton, {}, from);
  QTest::mouseMove(&canvas, from + QPoint(60, -40));
  EXPECT_NE(canvas.pose(), standing());
  QTest::mouseMove(&canvas, from);
  QTest::mouseRelease(&canvas, Qt::LeftButton, {}, from);
  EXPECT_TRUE(edits.empty());
}

TEST_F(Canvas, EscapeLetsGoOfADrag) {
  drag(Handle::elbowNear, {40, -40}, false);
  EXPECT_NE(canvas.pose(), standing());
  QTest::keyClick(&canvas, Qt::Key_Escape);
  EXPECT_EQ(canvas.pose(), standing());
  EXPECT_TRUE(edits.empty());
  EXPECT_FALSE(canvas.isDragging());
}

TEST_F(Canvas, LimbsThatAreAlikeMoveTogetherUnlessToldNotTo) {
  drag(Handle::handNear, {60, -50});
  ASSERT_EQ(edits.size(), 1U);
  EXPECT_EQ(edits[0].arms[0], edits[0].arms[1]);
  EXPECT_GT(edits[0].arms[0].shoulder, 10);
  canvas.setTogether(false);
  drag(Handle::handNear, {20, -50});
  ASSERT_EQ(edits.size(), 2U);
  EXPECT_NE(edits[1].arms[0], edits[1].arms[1]);
  EXPECT_EQ(edits[1].arms[1], edits[0].arms[1]);
  // Once they differ, they stay different.
  canvas.setTogether(true);
  drag(Handle::handNear, {10, -30});
  EXPECT_EQ(edits.back().arms[1], edits[0].arms[1]);
}

TEST_F(Canvas, ADragLeavesAnglesAloneThatItDoesNotTurn) {
  Pose rough = standing();
  rough.legs[1].knee = 7; // the floor straightens it, but it is written so
  rough.legs[1].hip = 4;
  canvas.showPose(rough, {});
  drag(Handle::handNear, {60, -50});
  ASSERT_EQ(edits.size(), 1U);
  EXPECT_EQ(edits[0].legs, rough.legs);
  EXPECT_EQ(edits[0].thorax, rough.thorax);
}

TEST_F(Canvas, ALimitIsSaidInWords) {
  drag(Handle::kneeNear, {-150, -60}, false);
  EXPECT_TRUE(canvas.hint().startsWith(QStringLiteral("At its limit: near hip, bend"))) << canvas.hint().toStdString();
  EXPECT_EQ(canvas.accessibleDescription(), canvas.hint());
}

TEST_F(Canvas, ASeatThatLiesOnTheFloorSaysWhyItStays) {
  Pose lying;
  lying.lean = -90;
  lying.on = {Contact::back, Contact::head};
  canvas.showPose(lying, {});
  drag(Handle::seat, {0, -60});
  EXPECT_TRUE(edits.empty());
  drag(Handle::seat, {0, -60}, false);
  EXPECT_TRUE(canvas.hint().contains(QStringLiteral("rests on the floor"))) << canvas.hint().toStdString();
}

TEST_F(Canvas, AFootThatRestsSaysWhatHoldsItDown) {
  drag(Handle::footNear, {0, -70}, false);
  EXPECT_TRUE(canvas.hint().contains(QStringLiteral("near foot"))) << canvas.hint().toStdString();
  EXPECT_TRUE(canvas.hint().contains(QStringLiteral("Take that away"))) << canvas.hint().toStdString();
  QTest::keyClick(&canvas, Qt::Key_Escape);
  Pose lifted = standing();
  lifted.on.erase(Contact::footNear);
  canvas.setTogether(false);
  canvas.showPose(lifted, {});
  drag(Handle::footNear, {10, -70}, false);
  EXPECT_FALSE(canvas.hint().contains(QStringLiteral("Take that away"))) << canvas.hint().toStdString();
}

TEST_F(Canvas, ArrowKeysTurnByOneDegreeAndWithShiftByFive) {
  canvas.setHandle(Handle::kneeNear);
  QTest::keyClick(&canvas, Qt::Key_Up);
  EXPECT_EQ(canvas.pose().legs[0].hip, 1);
  QTest::keyClick(&canvas, Qt::Key_Up, Qt::ShiftModifier);
  EXPECT_EQ(canvas.pose().legs[0].hip, 6);
  QTest::keyClick(&canvas, Qt::Key_Down);
  EXPECT_EQ(canvas.pose().legs[0].hip, 5);
  QTest::keyClick(&canvas, Qt::Key_Right);
  EXPECT_EQ(canvas.pose().legs[0].out, 1);
  EXPECT_EQ(edits.size(), 4U);
  EXPECT_EQ(gestures, (QStringList{"hip.near", "hip.near", "hip.near", "hip.out.near"}));
}

TEST_F(Canvas, KeysSayWhenAJointGoesNoFurther) {
  canvas.setHandle(Handle::handNear);
  QTest::keyClick(&canvas, Qt::Key_Down);
  EXPECT_TRUE(edits.empty());
  EXPECT_TRUE(canvas.hint().startsWith(QStringLiteral("At its limit: near elbow"))) << canvas.hint().toStdString();
}

TEST_F(Canvas, TabGoesThroughTheHandlesAndThenOn) {
  QWidget window;
  auto* inside = new PoseCanvas(&window);
  auto* after = new QWidget(&window);
  after->setFocusPolicy(Qt::StrongFocus);
  inside->showPose(standing(), {});
  testing::layOut(window, {600, 500});
  window.activateWindow();
  after->setFocus();
  inside->setFocus(Qt::TabFocusReason);
  EXPECT_EQ(inside->handle(), static_cast<Handle>(0));
  for (std::size_t i = 1; i < kWordCount<Handle>; ++i) {
    QTest::keyClick(inside, Qt::Key_Tab);
    EXPECT_EQ(inside->handle(), static_cast<Handle>(i));
  }
  QTest::keyClick(inside, Qt::Key_Tab);
  EXPECT_TRUE(after->hasFocus());
}

TEST_F(Canvas, EveryHandleOfEveryPositionCanBeReachedByThePointer) {
  for (const Position& position : testing::knowledge()->transitions.positions()) {
    canvas.showPose(position.pose, {});
    for (std::size_t i = 0; i < kWordCount<Handle>; ++i) {
      const QPointF spot = canvas.spotOf(static_cast<Handle>(i));
      EXPECT_TRUE(QRectF(canvas.rect()).adjusted(4, 4, -4, -4).contains(spot))
          << position.id.value << " " << word(static_cast<Handle>(i)) << " at " << spot.x() << ", " << spot.y();
    }
  }
}

TEST(WrittenAfter, RoundsToHalfDegreesWhatTheDragTurned) {
  Pose written, before, after;
  before.arms[0].elbow = after.arms[1].elbow = 3;
  after.arms[0].elbow = 41.37;
  after.arms[1].elbow = before.arms[1].elbow;
  EXPECT_EQ(writtenAfter(written, before, after, false).arms[0].elbow, 41.5);
  EXPECT_EQ(writtenAfter(written, before, after, false).arms[1].elbow, 0);
  EXPECT_EQ(writtenAfter(written, before, after, true).arms[1].elbow, 41.5);
}

} // namespace
} // namespace matwright
