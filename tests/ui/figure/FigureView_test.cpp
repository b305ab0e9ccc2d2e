#include "tests/support/RestingPoses.h"
#include "ui/figure/FigureView.h"
#include "ui/theme/Theme.h"

#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using test::squat;

const Tempo kQuick{Seconds(0.2), {{Breath::in, 1}, {Breath::out, 1}}};

QImage shown(FigureView& view) { return view.grab().toImage(); }

class FigureViewTest : public testing::Test {
protected:
  FigureViewTest() {
    view_.resize(240, 180);
    view_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }

  FigureView view_;
};

TEST_F(FigureViewTest, IsEmptyUntilItShowsSomething) {
  const QImage empty = shown(view_);
  view_.showPose(squat().end, QStringLiteral("Squat"));
  EXPECT_EQ(view_.accessibleName(), QStringLiteral("Squat"));
  EXPECT_NE(shown(view_), empty);
  view_.showNothing();
  EXPECT_EQ(shown(view_), empty);
  EXPECT_TRUE(view_.accessibleName().isEmpty());
}

TEST_F(FigureViewTest, StandsStillInTheEndPoseUntilStarted) {
  view_.showMovement(squat(), kQuick, QStringLiteral("Squat"));
  EXPECT_FALSE(view_.isMoving());
  EXPECT_EQ(view_.moment().share, 1);
  const QImage before = shown(view_);
  QTest::qWait(120);
  EXPECT_EQ(shown(view_), before);
}

TEST_F(FigureViewTest, MovesAtItsTempoAndStopsInTheEndPose) {
  view_.showMovement(squat(), kQuick, QStringLiteral("Squat"));
  const QImage still = shown(view_);
  view_.start();
  ASSERT_TRUE(view_.isMoving());
  double least = 1, most = 0;
  EXPECT_TRUE(QTest::qWaitFor(
      [&] {
        least = std::min(least, view_.moment().share);
        most = std::max(most, view_.moment().share);
        return least < 0.3 && most > 0.7;
      },
      5000));
  view_.stop();
  EXPECT_FALSE(view_.isMoving());
  EXPECT_EQ(shown(view_), still);
}

TEST_F(FigureViewTest, SeekShowsTheShapeOfThatTime) {
  view_.showMovement(squat(), {Seconds(1), {{Breath::in, 2}, {Breath::out, 2}}}, QStringLiteral("Squat"));
  view_.seek(Seconds(1));
  EXPECT_DOUBLE_EQ(view_.moment().share, 0.5);
  const QImage half = shown(view_);
  view_.seek(Seconds(2));
  EXPECT_NE(shown(view_), half);
  view_.seek(Seconds(3));
  EXPECT_EQ(shown(view_), half);
}

TEST_F(FigureViewTest, NothingMovesWhileMotionIsReduced) {
  view_.showMovement(squat(), kQuick, QStringLiteral("Squat"));
  view_.setReducedMotion(true);
  view_.start();
  EXPECT_FALSE(view_.isMoving());
  EXPECT_EQ(view_.moment().share, 1);
  view_.setReducedMotion(false);
  EXPECT_TRUE(view_.isMoving());
  view_.setReducedMotion(true);
  EXPECT_FALSE(view_.isMoving());
}

TEST_F(FigureViewTest, ASinglePoseDoesNotMove) {
  view_.showPose(squat().end, QStringLiteral("Squat"));
  view_.start();
  EXPECT_FALSE(view_.isMoving());
}

TEST_F(FigureViewTest, PosesSeenFromDifferentSidesDoNotMove) {
  KeyPoses poses = squat();
  poses.end.view = View::front;
  view_.showMovement(poses, kQuick, QStringLiteral("Squat"));
  view_.start();
  EXPECT_FALSE(view_.isMoving());
}

TEST_F(FigureViewTest, RestsWhileHidden) {
  view_.showMovement(squat(), kQuick, QStringLiteral("Squat"));
  view_.start();
  view_.hide();
  EXPECT_FALSE(view_.isMoving());
  view_.show();
  EXPECT_TRUE(view_.isMoving());
}

TEST_F(FigureViewTest, SaysTheBreathWhileItMoves) {
  view_.showMovement(squat(), {Seconds(5), {{Breath::in, 6}, {Breath::out, 6}}}, QStringLiteral("Squat"));
  view_.start();
  ASSERT_TRUE(view_.isMoving());
  view_.seek(Seconds(0));
  const QImage without = shown(view_).copy(140, 0, 100, 30);
  std::array<QString, kWordCount<Breath>> words;
  words[static_cast<std::size_t>(Breath::in)] = QStringLiteral("in");
  view_.setBreathWords(words);
  view_.seek(Seconds(0));
  EXPECT_NE(shown(view_).copy(140, 0, 100, 30), without);
}

TEST_F(FigureViewTest, CountsWithTheBreath) {
  // Slow as it is, the body hardly moves within a second; the count does.
  view_.showMovement(squat(), {Seconds(1), {{Breath::in, 60}, {Breath::out, 60}}}, QStringLiteral("Squat"));
  std::array<QString, kWordCount<Breath>> words;
  words.fill(QStringLiteral("in"));
  view_.setBreathWords(words);
  view_.start();
  const auto cornerAt = [&](double seconds) {
    view_.seek(Seconds(seconds));
    return shown(view_).copy(180, 0, 60, 24);
  };
  const QImage one = cornerAt(0.1);
  EXPECT_EQ(cornerAt(0.9), one);
  EXPECT_NE(cornerAt(1.1), one);
}

TEST_F(FigureViewTest, AnArrowShowsTheWayWhileNothingMoves) {
  const auto arrow = [&] {
    const QImage image = shown(view_);
    const QColor colour = figureColours(lightTheme(), Qt::white).path;
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        count += image.pixelColor(x, y) == colour ? 1 : 0;
    return count;
  };
  view_.showMovement(squat(), {Seconds(5), {{Breath::in, 6}, {Breath::out, 6}}}, QStringLiteral("Squat"));
  EXPECT_GT(arrow(), 20);
  view_.start();
  EXPECT_EQ(arrow(), 0);
  view_.setReducedMotion(true);
  EXPECT_GT(arrow(), 20);
}

} // namespace
} // namespace matwright
