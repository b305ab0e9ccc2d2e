#include "tests/ui/timeline/Terrains.h"
#include "ui/text/LoadText.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QWheelEvent>

namespace matwright {
namespace {

using Ids = std::vector<StepId>;

struct View : testing::Test {
  OpenTerrain open;
  View() { open.fill(); }
  void click(QPoint at, Qt::KeyboardModifiers modifiers = {}) {
    open.press(at, modifiers);
    open.release(at, modifiers);
  }
};

TEST_F(View, ClicksSelectOneTwoOrARange) {
  click(open.middleOf(StepId{2}));
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{2}}));
  click(open.middleOf(StepId{4}), Qt::ControlModifier);
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{2}, StepId{4}}));
  click(open.middleOf(StepId{2}), Qt::ControlModifier);
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{4}}));
  click(open.middleOf(StepId{1}));
  click(open.middleOf(StepId{4}), Qt::ShiftModifier);
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{1}, StepId{2}, StepId{3}, StepId{4}}));
  click(open.middleOf(StepId{3}));
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{3}}));
  EXPECT_EQ(open.entries(), 0);
}

TEST_F(View, AFrameOnFreeGroundSelectsWhatItTouches) {
  const TerrainGeometry& geometry = open.view->geometry();
  const QRectF second = geometry.block(StepId{1})->rect, third = geometry.block(StepId{3})->rect;
  const QRectF frame(QPointF(second.center().x(), geometry.header().bottom() + 3),
                     QPointF(third.center().x(), geometry.terrain().bottom() - 1));
  const QRect within = open.view->toViewport(frame).toRect();
  open.drag(within.topLeft(), within.bottomRight());
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{1}, StepId{2}, StepId{3}}));
  open.release(within.bottomRight());
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{1}, StepId{2}, StepId{3}}));
}

TEST_F(View, EscapeTakesAFrameBack) {
  open.selection.select(StepId{5});
  const QRect terrain = open.view->toViewport(open.view->geometry().terrain()).toRect();
  open.drag(terrain.topLeft() + QPoint(2, 3), terrain.bottomRight() - QPoint(2, 3));
  EXPECT_GT(open.selection.steps().size(), 1u);
  QTest::keyClick(open.view.get(), Qt::Key_Escape);
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{5}}));
}

TEST_F(View, AClickOnAGapChoosesIt) {
  const GapSlot* gap = open.view->geometry().gap({1, 2});
  const Connector& connector = open.view->geometry().connectors()[1];
  ASSERT_TRUE(gap);
  const QPointF on = connector.points[connector.points.size() / 2];
  click(open.view->toViewport(QRectF(on, QSizeF(0, 0))).topLeft().toPoint());
  EXPECT_TRUE(open.selection.hasOwnGap());
  EXPECT_EQ(open.selection.gap(), (Place{1, 2}));
  click(open.inBand(3)); // the empty section is one large gap
  EXPECT_EQ(open.selection.gap(), (Place{3, 0}));
}

TEST_F(View, ASectionNameSelectsItsSteps) {
  const QRectF label = open.view->geometry().sections()[2].label;
  click(open.view->toViewport(label).center().toPoint());
  EXPECT_EQ(open.selection.steps(), (Ids{StepId{4}, StepId{5}}));
}

TEST_F(View, ADoubleClickActivates) {
  StepId activated;
  QObject::connect(open.view.get(), &TerrainView::stepActivated, open.view.get(),
                   [&](StepId step) { activated = step; });
  QTest::mouseDClick(open.view->viewport(), Qt::LeftButton, {}, open.middleOf(StepId{3}));
  EXPECT_EQ(activated, StepId{3});
  EXPECT_EQ(open.selection.current(), StepId{3});
}

TEST_F(View, ARightClickAsksForTheMenuOfWhatIsThere) {
  std::optional<StepId> step;
  std::optional<Place> place;
  QObject::connect(open.view.get(), &TerrainView::stepContextMenu, open.view.get(),
                   [&](QPoint, StepId id) { step = id; });
  QObject::connect(open.view.get(), &TerrainView::gapContextMenu, open.view.get(),
                   [&](QPoint, Place at) { place = at; });
  const auto ask = [&](QPoint at) {
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, open.view->viewport()->mapToGlobal(at));
    QApplication::sendEvent(open.view->viewport(), &event);
  };
  ask(open.middleOf(StepId{2}));
  EXPECT_EQ(step, StepId{2});
  EXPECT_TRUE(open.selection.contains(StepId{2}));
  EXPECT_FALSE(place);
  ask(open.inBand(0));
  EXPECT_EQ(place, (Place{0, 0}));
}

TEST_F(View, FitsUntilZoomedAndFitsAgain) {
  EXPECT_TRUE(open.view->isFitted());
  EXPECT_EQ(open.view->horizontalScrollBar()->maximum(), 0);
  const double fitting = open.view->pixelsPerSecond();
  open.view->resize(1600, 560);
  QApplication::processEvents();
  EXPECT_GT(open.view->pixelsPerSecond(), fitting);
  open.view->zoomIn();
  EXPECT_FALSE(open.view->isFitted());
  const double zoomed = open.view->pixelsPerSecond();
  open.view->resize(1500, 560);
  QApplication::processEvents();
  EXPECT_DOUBLE_EQ(open.view->pixelsPerSecond(), zoomed);
  EXPECT_GT(open.view->horizontalScrollBar()->maximum(), 0);
  open.view->zoomToFit();
  EXPECT_TRUE(open.view->isFitted());
  EXPECT_LT(open.view->pixelsPerSecond(), zoomed);
  for (int i = 0; i < 40; ++i)
    open.view->zoomIn();
  EXPECT_LE(open.view->pixelsPerSecond(), 16);
  for (int i = 0; i < 60; ++i)
    open.view->zoomOut();
  EXPECT_TRUE(open.view->isFitted());
}

TEST_F(View, TheWheelZoomsAboutThePointer) {
  open.view->zoomIn();
  const QPointF at(700, 200);
  const auto wheel = [&](int turn) {
    QWheelEvent event(at, open.view->viewport()->mapToGlobal(at), {}, QPoint(0, turn), Qt::NoButton,
                      Qt::ControlModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(open.view->viewport(), &event);
  };
  const auto moment = [&] { return open.view->geometry().scale().timeOf(open.view->toTerrain(at).x()).value(); };
  const double before = moment();
  wheel(120);
  wheel(120);
  EXPECT_NEAR(moment(), before, 2 / open.view->pixelsPerSecond());
  wheel(-120);
  EXPECT_NEAR(moment(), before, 3 / open.view->pixelsPerSecond());
}

TEST_F(View, TheCurrentStepIsBroughtIntoSight) {
  for (int i = 0; i < 10; ++i)
    open.view->zoomIn();
  open.selection.select(StepId{5});
  QRectF rect = open.view->toViewport(open.view->geometry().block(StepId{5})->rect);
  EXPECT_TRUE(rect.intersects(QRectF(open.view->viewport()->rect()).adjusted(110, 0, 0, 0)));
  open.selection.select(StepId{1});
  rect = open.view->toViewport(open.view->geometry().block(StepId{1})->rect);
  EXPECT_GE(rect.left(), 100);
}

TEST_F(View, ToolTipsSayWhatTheBlockHasNoRoomFor) {
  const QString tip = stepToolTip(open.view->subject(), 1);
  EXPECT_TRUE(tip.contains(QStringLiteral("Roll up")));
  EXPECT_TRUE(tip.contains(open.view->scene().steps[1].dose.toHtmlEscaped()));
  EXPECT_FALSE(tip.contains(QStringLiteral("safe"), Qt::CaseInsensitive));
  const QString way = wayToolTip(open.view->subject(), 2);
  const auto& changes = open.document.evaluation().schedule.steps[2].way.changes;
  ASSERT_FALSE(changes.empty());
  EXPECT_TRUE(way.contains(QString::fromStdString(changes.front()->cue).toHtmlEscaped()));
  EXPECT_TRUE(spineToolTip(open.view->subject(), open.view->scene().steps[0].workBegin)
                  .contains(QStringLiteral("The hundred")));
  EXPECT_TRUE(effortToolTip(open.view->subject(), Seconds(60)).contains(QStringLiteral("10")));
}

TEST_F(View, TheStripOfEffortTellsTheLoadOfTheLowBackToo) {
  const ClassLoad& load = open.document.evaluation().load;
  const QString words = jointLoadText(LoadedJoint::lowBack, load.steps[0].peak, load.steps[0].mean, BodySize{});
  const QString tip = effortToolTip(open.view->subject(), open.view->scene().steps[0].workBegin);
  EXPECT_TRUE(tip.contains(words.toHtmlEscaped())) << tip.toStdString();
  EXPECT_TRUE(tip.contains(leverText(load.steps[0].lever)));
  EXPECT_TRUE(tip.contains(loadNotice().toHtmlEscaped()));
  EXPECT_TRUE(stepToolTip(open.view->subject(), 0).contains(withCapital(words).toHtmlEscaped()));
  EXPECT_TRUE(
      spokenStep(open.view->subject(), 0).contains(QString(words).replace(QChar(QChar::Nbsp), QLatin1Char(' '))));
}

TEST_F(View, AsksForTheHeightThatAllItsStripsTake) {
  const int least = open.view->minimumSizeHint().height();
  EXPECT_LE(least, 400);
  open.view->resize(900, least);
  QApplication::processEvents();
  EXPECT_LE(open.view->geometry().spineStrip().bottom(), open.view->viewport()->height());
  EXPECT_EQ(open.view->verticalScrollBar()->maximum(), 0);
}

TEST_F(View, ToolTipsNameWhoIsMeantAndHowStrongly) {
  Person person;
  person.id = PersonId{"ilo"};
  person.name = "Ilo";
  person.conditions.push_back({ConditionId{"osteoporosis"}, {}, {}, {}});
  open.document.setRoster({person});
  ASSERT_TRUE(open.document.perform(SetPeople{{person.id}}, QString()));
  const auto level = open.document.evaluation().strongestAt(StepId{2});
  ASSERT_TRUE(level);
  const QString tip = stepToolTip(open.view->subject(), 1);
  EXPECT_TRUE(tip.contains(QStringLiteral("Ilo")));
  EXPECT_TRUE(tip.contains(text(*level)));
}

TEST_F(View, FollowsTheDocument) {
  open.document.undoStack()->clear();
  ASSERT_TRUE(open.document.perform(RemoveSteps{{StepId{2}}}, QString()));
  EXPECT_EQ(open.view->geometry().block(StepId{2}), nullptr);
  open.document.undoStack()->undo();
  EXPECT_NE(open.view->geometry().block(StepId{2}), nullptr);
}

TEST_F(View, AnOpenedClassIsShownWhole) {
  open.view->zoomIn();
  open.fill();
  EXPECT_TRUE(open.view->isFitted());
}

TEST_F(View, FollowsTheFontOfTheApplication) {
  const qreal gutter = open.view->geometry().frame().gutter;
  QFont font = open.view->font();
  font.setPixelSize(20);
  open.view->setFont(font);
  QApplication::processEvents();
  EXPECT_GT(open.view->geometry().frame().gutter, gutter);
}

} // namespace
} // namespace matwright
