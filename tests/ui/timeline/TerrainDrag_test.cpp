#include "tests/ui/timeline/Terrains.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QPainter>
#include <QScrollBar>

namespace matwright {
namespace {

using Order = std::vector<std::int64_t>;

struct Drags : testing::Test {
  OpenTerrain open;
  std::vector<std::optional<Snapshot>> previews;

  Drags() {
    open.fill();
    QObject::connect(open.view.get(), &TerrainView::previewChanged, open.view.get(),
                     [this](std::optional<Snapshot> snapshot) { previews.push_back(std::move(snapshot)); });
  }

  // The middle of the half of a block: dropping there goes before or behind it.
  QPoint before(StepId step) const {
    const QRectF rect = open.view->toViewport(open.view->settledGeometry().block(step)->rect);
    return QPointF(rect.left() + rect.width() * 0.2, rect.center().y()).toPoint();
  }
  QPoint behind(StepId step) const {
    const QRectF rect = open.view->toViewport(open.view->settledGeometry().block(step)->rect);
    return QPointF(rect.left() + rect.width() * 0.8, rect.center().y()).toPoint();
  }

  std::unique_ptr<QMimeData> carried(const QString& format, const QByteArray& data) {
    auto mime = std::make_unique<QMimeData>();
    mime->setData(format, data);
    return mime;
  }
  bool enter(const QMimeData& mime, QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QDragEnterEvent event(at, Qt::CopyAction | Qt::MoveAction, &mime, Qt::LeftButton, modifiers);
    event.ignore();
    QApplication::sendEvent(open.view->viewport(), &event);
    return event.isAccepted();
  }
  bool over(const QMimeData& mime, QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QDragMoveEvent event(at, Qt::CopyAction | Qt::MoveAction, &mime, Qt::LeftButton, modifiers);
    QApplication::sendEvent(open.view->viewport(), &event);
    return event.isAccepted();
  }
  void drop(const QMimeData& mime, QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    QDropEvent event(at, Qt::CopyAction | Qt::MoveAction, &mime, Qt::LeftButton, modifiers);
    QApplication::sendEvent(open.view->viewport(), &event);
  }
  void leave() {
    QDragLeaveEvent event;
    QApplication::sendEvent(open.view->viewport(), &event);
  }

  // What the last preview promised is what the class is now.
  void expectAsPreviewed() {
    ASSERT_FALSE(previews.empty());
    EXPECT_FALSE(previews.back()); // over
    const Snapshot* last = nullptr;
    for (const auto& preview : previews)
      if (preview)
        last = &*preview;
    ASSERT_TRUE(last);
    EXPECT_EQ(last->evaluation->schedule.length, open.document.evaluation().schedule.length);
    EXPECT_EQ(last->evaluation->schedule.changes, open.document.evaluation().schedule.changes);
    EXPECT_EQ(last->evaluation->cautions, open.document.evaluation().cautions);
    EXPECT_EQ(*last->plan, open.document.plan());
  }
};

TEST_F(Drags, AMovementFromTheCatalogueGoesWhereItWasShown) {
  const auto mime = carried(kMovementMime, "roll-up");
  ASSERT_TRUE(enter(*mime, open.inBand(0)));
  EXPECT_TRUE(open.view->isInGesture());
  EXPECT_EQ(open.order(1), (Order{1, 2, 3}));     // nothing done yet
  EXPECT_EQ(open.view->scene().steps.size(), 6u); // but shown
  ASSERT_TRUE(over(*mime, before(StepId{3})));
  EXPECT_EQ(open.view->scene().steps[2].name, QStringLiteral("Roll up"));
  ASSERT_TRUE(previews.back());
  EXPECT_GT(previews.back()->evaluation->schedule.length, open.document.evaluation().schedule.length);
  drop(*mime, before(StepId{3}));
  EXPECT_EQ(open.order(1), (Order{1, 2, 6, 3}));
  EXPECT_EQ(open.entries(), 1);
  EXPECT_EQ(open.selection.current(), StepId{6});
  EXPECT_FALSE(open.view->isInGesture());
  expectAsPreviewed();
  open.document.undoStack()->undo();
  EXPECT_EQ(open.order(1), (Order{1, 2, 3}));
}

TEST_F(Drags, IntoAnEmptySection) {
  const auto mime = carried(kMovementMime, "saw");
  enter(*mime, open.inBand(3));
  drop(*mime, open.inBand(3));
  EXPECT_EQ(open.document.plan().sections[3].steps.size(), 1u);
  expectAsPreviewed();
}

TEST_F(Drags, IntoAnEmptyClass) {
  open.document.load(emptyClass("New"));
  QApplication::processEvents();
  const auto mime = carried(kMovementMime, "saw");
  ASSERT_TRUE(enter(*mime, open.inBand(1)));
  drop(*mime, open.inBand(1));
  EXPECT_EQ(open.document.plan().sections[1].steps.size(), 1u);
}

TEST_F(Drags, LeavingTheViewLeavesNothing) {
  const auto mime = carried(kMovementMime, "saw");
  enter(*mime, open.inBand(0));
  leave();
  EXPECT_FALSE(open.view->isInGesture());
  EXPECT_FALSE(previews.back());
  EXPECT_EQ(open.view->scene().steps.size(), 5u);
  EXPECT_EQ(open.entries(), 0);
}

TEST_F(Drags, WhatIsNotKnownIsNotTaken) {
  EXPECT_FALSE(enter(*carried(kMovementMime, "no-such-movement"), open.inBand(0)));
  EXPECT_FALSE(enter(*carried(QStringLiteral("text/plain"), "saw"), open.inBand(0)));
  EXPECT_FALSE(enter(*carried(kStepIdsMime, "77 x"), open.inBand(0)));
  EXPECT_FALSE(open.view->isInGesture());
}

TEST_F(Drags, StepsFromAnotherViewOfTheClassAreMoved) {
  const auto mime = carried(kStepIdsMime, "1 5");
  ASSERT_TRUE(enter(*mime, open.inBand(0)));
  drop(*mime, open.inBand(0));
  EXPECT_EQ(open.order(0), (Order{1, 5}));
  EXPECT_EQ(open.entries(), 1);
  expectAsPreviewed();
}

TEST_F(Drags, ABlockIsMovedToAnotherPlace) {
  open.drag(open.middleOf(StepId{1}), behind(StepId{3}));
  EXPECT_EQ(open.order(1), (Order{1, 2, 3}));
  EXPECT_EQ(open.view->scene().steps[2].id, StepId{1}); // the ghost
  open.release(behind(StepId{3}));
  EXPECT_EQ(open.order(1), (Order{2, 3, 1}));
  EXPECT_EQ(open.entries(), 1);
  expectAsPreviewed();
}

TEST_F(Drags, SeveralSelectedMoveTogether) {
  open.selection.set({StepId{1}, StepId{4}}, StepId{4});
  open.drag(open.middleOf(StepId{4}), behind(StepId{2}));
  open.release(behind(StepId{2}));
  EXPECT_EQ(open.order(1), (Order{2, 1, 4, 3}));
  EXPECT_EQ(open.selection.steps(), (std::vector<StepId>{StepId{1}, StepId{4}}));
  EXPECT_EQ(open.entries(), 1);
  expectAsPreviewed();
}

TEST_F(Drags, WithControlTheyAreCopied) {
  open.drag(open.middleOf(StepId{3}), open.inBand(0), Qt::ControlModifier);
  open.release(open.inBand(0), Qt::ControlModifier);
  EXPECT_EQ(open.order(1), (Order{1, 2, 3}));
  EXPECT_EQ(open.order(0), (Order{6}));
  EXPECT_EQ(open.document.plan().sections[0].steps[0].movement, open.document.plan().sections[1].steps[2].movement);
  EXPECT_EQ(open.selection.steps(), (std::vector<StepId>{StepId{6}}));
  EXPECT_EQ(open.entries(), 1);
  expectAsPreviewed();
}

TEST_F(Drags, EscapeEndsADragAsIfItHadNeverBegun) {
  const ClassPlan plan = open.document.plan();
  open.drag(open.middleOf(StepId{1}), behind(StepId{3}));
  EXPECT_TRUE(open.view->isInGesture());
  QTest::keyClick(open.view.get(), Qt::Key_Escape);
  EXPECT_FALSE(open.view->isInGesture());
  EXPECT_FALSE(previews.back());
  open.release(behind(StepId{3}));
  EXPECT_EQ(open.document.plan(), plan);
  EXPECT_EQ(open.entries(), 0);
}

TEST_F(Drags, DroppedWhereItStoodItLeavesNoEntry) {
  open.drag(open.middleOf(StepId{1}), open.middleOf(StepId{1}) + QPoint(14, 0));
  open.release(open.middleOf(StepId{1}) + QPoint(14, 0));
  EXPECT_EQ(open.order(1), (Order{1, 2, 3}));
  EXPECT_EQ(open.entries(), 0);
}

TEST_F(Drags, TheEdgeChangesTheDoseInWholeRepetitions) {
  const Step step = open.document.plan().sections[1].steps[1];
  ASSERT_EQ(step.dose.unit, DoseUnit::repetitions);
  const Seconds one = lengthOf(step.tempo);
  const double pixels = open.view->pixelsPerSecond();
  const QPoint from = open.edgeOf(StepId{2});
  const QPoint to = from + QPoint(static_cast<int>(std::lround(one.value() * pixels * 2.2)), 0);
  open.drag(from, to);
  ASSERT_TRUE(previews.back());
  EXPECT_EQ(findStep(*previews.back()->plan, StepId{2})->dose.amount, step.dose.amount + 2);
  EXPECT_EQ(findStep(open.document.plan(), StepId{2})->dose, step.dose);
  open.release(to);
  EXPECT_EQ(findStep(open.document.plan(), StepId{2})->dose.amount, step.dose.amount + 2);
  EXPECT_EQ(open.entries(), 1);
  expectAsPreviewed();
}

TEST_F(Drags, TheDoseNeverFallsBelowOne) {
  const QPoint from = open.edgeOf(StepId{2});
  open.drag(from, from - QPoint(600, 0));
  open.release(from - QPoint(600, 0));
  EXPECT_EQ(findStep(open.document.plan(), StepId{2})->dose.amount, 1);
}

TEST_F(Drags, EscapeTakesAStretchBack) {
  const QPoint from = open.edgeOf(StepId{2});
  open.drag(from, from + QPoint(90, 0));
  ASSERT_TRUE(previews.back());
  QTest::keyClick(open.view.get(), Qt::Key_Escape);
  open.release(from + QPoint(90, 0));
  EXPECT_EQ(open.entries(), 0);
}

TEST_F(Drags, BothSidesOfAStepAreStretchedTogether) {
  const Step step = open.document.plan().sections[2].steps[0]; // each side
  const QPoint from = open.edgeOf(StepId{4});
  const int by = static_cast<int>(std::lround(2 * lengthOf(step.tempo).value() * open.view->pixelsPerSecond()));
  open.drag(from, from + QPoint(by, 0));
  open.release(from + QPoint(by, 0));
  EXPECT_EQ(findStep(open.document.plan(), StepId{4})->dose.amount, step.dose.amount + 1);
}

TEST_F(Drags, TheScaleStandsStillWhileSomethingIsDragged) {
  const double scale = open.view->pixelsPerSecond();
  const auto mime = carried(kMovementMime, "hundred");
  enter(*mime, open.inBand(0));
  EXPECT_EQ(open.view->pixelsPerSecond(), scale);
  EXPECT_EQ(open.view->geometry().scale().pixelsPerSecond(), scale);
  drop(*mime, open.inBand(0));
  EXPECT_TRUE(open.view->isFitted());
}

TEST_F(Drags, NearTheBorderTheViewScrolls) {
  for (int i = 0; i < 8; ++i)
    open.view->zoomIn();
  open.view->horizontalScrollBar()->setValue(0);
  open.drag(open.middleOf(StepId{1}), QPoint(open.view->viewport()->width() - 4, 200));
  ASSERT_TRUE(open.view->isInGesture());
  EXPECT_TRUE(QTest::qWaitFor([&] { return open.view->horizontalScrollBar()->value() > 100; }, 5000));
  open.moveTo(QPoint(open.view->geometry().frame().gutter + 4, 200));
  EXPECT_TRUE(QTest::qWaitFor([&] { return open.view->horizontalScrollBar()->value() == 0; }, 5000));
  QTest::keyClick(open.view.get(), Qt::Key_Escape);
  EXPECT_EQ(open.entries(), 0);
}

TEST_F(Drags, TheChipStaysWithinTheView) {
  // Painting at every corner must not reach outside, or the text would be cut.
  QImage image(400, 200, QImage::Format_ARGB32);
  const QRectF view(50, 40, 300, 120);
  for (const QPointF at : {view.topLeft(), view.topRight(), view.bottomLeft(), view.bottomRight(), view.center()}) {
    image.fill(Qt::transparent);
    QPainter painter(&image);
    paintChip(painter, at, view, QStringLiteral("+1:16 \u00b7 2 more changes \u00b7 1 new caution (ask first)"),
              Level::askFirst, open.view->font(), lightTheme());
    painter.end();
    int painted = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        if (qAlpha(image.pixel(x, y)) > 0) {
          ++painted;
          ASSERT_TRUE(view.contains(QPointF(x, y))) << x << ' ' << y;
        }
    EXPECT_GT(painted, 2000);
  }
}

TEST_F(Drags, AChangeOfTheClassFromElsewhereEndsTheGesture) {
  open.drag(open.middleOf(StepId{1}), behind(StepId{3}));
  ASSERT_TRUE(open.document.perform(RemoveSteps{{StepId{1}}}, QString()));
  EXPECT_FALSE(open.view->isInGesture());
  open.release(behind(StepId{3}));
  EXPECT_EQ(open.order(1), (Order{2, 3}));
}

// Any drag anywhere: what was previewed is what comes, one entry at most, and undo leads back.
TEST_F(Drags, PreviewsAlwaysComeTrue) {
  test::Draw draw(17);
  for (int round = 0; round < 40; ++round) {
    open.document.load(test::randomClass(draw, open.document.knowledge().catalogue, draw.from(3, 14)));
    QApplication::processEvents();
    const ClassPlan plan = open.document.plan();
    const auto& blocks = open.view->geometry().blocks();
    const QRectF rect = open.view->toViewport(blocks[draw.below(blocks.size())].rect);
    const QPoint from = draw.chance(0.5)
                            ? QPointF(rect.left() + rect.width() * 0.3, rect.center().y()).toPoint()
                            : QPoint(static_cast<int>(rect.right()) - 1, static_cast<int>(rect.center().y()));
    const QPoint to(draw.from(110, 1190), draw.from(30, 400));
    previews.clear();
    const auto modifiers = draw.chance(0.3) ? Qt::KeyboardModifiers(Qt::ControlModifier) : Qt::KeyboardModifiers();
    open.drag(from, to, modifiers);
    open.release(to, modifiers);
    EXPECT_LE(open.entries(), 1);
    if (!previews.empty() && open.entries() == 1) {
      expectAsPreviewed();
    }
    if (open.entries() == 1)
      open.document.undoStack()->undo();
    EXPECT_EQ(open.document.plan(), plan);
  }
}

} // namespace
} // namespace matwright
