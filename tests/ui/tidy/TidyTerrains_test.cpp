#include "tests/ui/tidy/Untidy.h"
#include "ui/theme/Theme.h"
#include "ui/tidy/TidyTerrains.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QWheelEvent>
#include <cmath>

namespace matwright {
namespace {

// The restless class and its order, in a view.
struct Pictured : ::testing::Test, Untidy {
  std::unique_ptr<TidyTerrains> view;
  TidyResult result;

  Pictured() {
    loadRestless();
    result = *tidied(document.knowledge(), document.plan(), {}, document.day());
    view = std::make_unique<TidyTerrains>(document);
    view->resize(900, 520);
    view->show();
    view->setPicture({document.snapshot(), *document.preview(editOf(document.plan(), result)), result.moves});
    QApplication::processEvents();
  }
  ~Pictured() override { QApplication::setPalette(paletteOf(lightTheme())); }

  QPoint middle(StepId step, bool after) const {
    const TidyStage& stage = view->stage();
    return view
        ->toViewport((after ? stage.after : stage.before).block(step)->rect.center() +
                     QPointF(0, after ? stage.afterTop : 0))
        .toPoint();
  }
  void click(QPoint at) { QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, at); }
  void key(int key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(view.get(), static_cast<Qt::Key>(key), modifiers);
  }
  StepId moved() const { return result.moves.front().step; }
  // How many pixels of this colour a part of the picture has, roughly.
  int coloured(const QRectF& part, const QColor& colour) const {
    const QImage image = view->grab().toImage();
    int found = 0;
    const QRect area = part.toAlignedRect().intersected(image.rect());
    for (int y = area.top(); y <= area.bottom(); ++y)
      for (int x = area.left(); x <= area.right(); ++x) {
        const QColor pixel = image.pixelColor(x, y);
        found += std::abs(pixel.red() - colour.red()) + std::abs(pixel.green() - colour.green()) +
                     std::abs(pixel.blue() - colour.blue()) <
                 60;
      }
    return found;
  }
  QRectF between() const {
    const QPointF top = view->toViewport({0, view->stage().beforeBottom() + 2});
    return {top.x(), top.y(), view->viewport()->width() - top.x() - 3,
            view->stage().afterTop - view->stage().beforeBottom() - 4};
  }
};

TEST_F(Pictured, AClickOnABlockInEitherTerrainChoosesItsStep) {
  for (const StepId step : {StepId{1}, StepId{4}, moved()})
    for (const bool after : {false, true}) {
      view->setCurrent({});
      click(middle(step, after));
      EXPECT_EQ(view->current(), step);
    }
  click(QPoint(view->viewport()->width() - 3, 3));
  EXPECT_FALSE(view->current());
}

TEST_F(Pictured, KeysChooseStepsInTheOrderOfTheTidiedClass) {
  std::vector<StepId> order;
  forEachStep(result.plan, [&](const Step& step) { order.push_back(step.id); });
  for (const StepId step : order) {
    key(Qt::Key_Right);
    EXPECT_EQ(view->current(), step);
  }
  key(Qt::Key_Right);
  EXPECT_EQ(view->current(), order.back());
  key(Qt::Key_Left);
  EXPECT_EQ(view->current(), order[order.size() - 2]);
  key(Qt::Key_Home);
  EXPECT_EQ(view->current(), order.front());
  key(Qt::Key_Left);
  EXPECT_EQ(view->current(), order.front());
  key(Qt::Key_End);
  EXPECT_EQ(view->current(), order.back());
}

TEST_F(Pictured, AnotherClassForgetsAStepThatItDoesNotHave) {
  view->setCurrent(StepId{4});
  load({"hundred"});
  QSignalSpy spy(view.get(), &TidyTerrains::currentChanged);
  view->setPicture({document.snapshot(), document.snapshot(), {}});
  EXPECT_FALSE(view->current());
  EXPECT_EQ(spy.count(), 1);
}

TEST_F(Pictured, WhatMovesIsJoinedByALineInLightAndDark) {
  for (const Theme* theme : {&lightTheme(), &darkTheme()}) {
    QApplication::setPalette(paletteOf(*theme));
    QApplication::processEvents();
    // Nothing but the ground lies between the terrains.
    const auto lines = [&] {
      const QRect band = between().toAlignedRect();
      return band.width() * band.height() - coloured(band, theme->ground);
    };
    view->setPicture({document.snapshot(), document.snapshot(), {}});
    EXPECT_EQ(lines(), 0);
    view->setPicture({document.snapshot(), *document.preview(editOf(document.plan(), result)), result.moves});
    view->setCurrent({});
    const int thin = lines();
    EXPECT_GT(thin, 20);
    view->setCurrent(moved());
    EXPECT_GT(lines(), thin + 20); // the current one is stronger
  }
}

TEST_F(Pictured, APinIsSeenInBothTerrains) {
  for (const bool after : {false, true}) {
    view->setPinned({});
    const QRectF head(QPointF(middle(StepId{1}, after)) -
                          QPointF(8, view->stage().before.block(StepId{1})->rect.height() / 2 + 11),
                      QSizeF(16, 12));
    const QColor ink = themeFor(view->palette()).ink;
    const int without = coloured(head, ink);
    view->setPinned({StepId{1}});
    EXPECT_GT(coloured(head, ink), without + 15) << after;
  }
}

TEST_F(Pictured, TheCurrentStepIsSpokenWithWhereItComesFromAndItsPin) {
  EXPECT_EQ(view->accessibleDescription(), QString());
  EXPECT_FALSE(view->accessibleName().isEmpty());
  view->setPinned({StepId{1}});
  view->setCurrent(moved());
  EXPECT_TRUE(view->accessibleDescription().contains(
      QStringLiteral("moves here from step %1").arg(result.moves.front().from.index + 1)))
      << view->accessibleDescription().toStdString();
  view->setCurrent(StepId{1});
  EXPECT_TRUE(view->accessibleDescription().endsWith(QStringLiteral("pinned")));
  EXPECT_FALSE(view->accessibleDescription().contains(QStringLiteral("moves here")));
}

TEST_F(Pictured, ZoomingKeepsBothOnOneScaleAndZeroShowsAll) {
  const double fitting = view->stage().after.scale().pixelsPerSecond();
  EXPECT_EQ(view->horizontalScrollBar()->maximum(), 0);
  key(Qt::Key_Plus, Qt::ControlModifier);
  key(Qt::Key_Plus, Qt::ControlModifier);
  EXPECT_NEAR(view->stage().after.scale().pixelsPerSecond(), fitting * 1.5625, 1e-9);
  EXPECT_EQ(view->stage().before.scale().pixelsPerSecond(), view->stage().after.scale().pixelsPerSecond());
  EXPECT_GT(view->horizontalScrollBar()->maximum(), 0);
  view->setCurrent({});
  view->horizontalScrollBar()->setValue(0);
  key(Qt::Key_End);
  EXPECT_GT(view->horizontalScrollBar()->value(), 0); // what is chosen comes into sight
  key(Qt::Key_Minus, Qt::ControlModifier);
  EXPECT_NEAR(view->stage().after.scale().pixelsPerSecond(), fitting * 1.25, 1e-9);
  key(Qt::Key_0, Qt::ControlModifier);
  EXPECT_NEAR(view->stage().after.scale().pixelsPerSecond(), fitting, 1e-9);
  EXPECT_EQ(view->horizontalScrollBar()->maximum(), 0);
}

TEST_F(Pictured, ALowViewScrollsUpAndDown) {
  view->resize(900, 200);
  QApplication::processEvents();
  EXPECT_GT(view->verticalScrollBar()->maximum(), 0);
  view->verticalScrollBar()->setValue(view->verticalScrollBar()->maximum());
  const QPoint at = middle(StepId{4}, true);
  EXPECT_TRUE(view->viewport()->rect().contains(at));
  click(at);
  EXPECT_EQ(view->current(), StepId{4});
}

} // namespace
} // namespace matwright
