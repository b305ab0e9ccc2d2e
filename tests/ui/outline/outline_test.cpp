#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/outline/OutlineModel.h"
#include "ui/outline/OutlineView.h"
#include "ui/text/VocabularyText.h"

#include <QContextMenuEvent>
#include <QDropEvent>
#include <QLineEdit>
#include <QMenu>
#include <QSpinBox>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using testing::Panels;

struct Outline : ::testing::Test, Panels {
  Outline() : view(document, selection, commands) { testing::layOut(view, {710, 700}); }

  OutlineModel& model() { return view.outline(); }
  QModelIndex at(const char* movement, OutlineColumn column = OutlineColumn::name) {
    return model().indexOf(stepOf(movement), column);
  }
  void drop(const QMimeData& carried, const QPoint& point) {
    QDragEnterEvent enter(point, Qt::CopyAction | Qt::MoveAction, &carried, Qt::LeftButton, {});
    QApplication::sendEvent(view.viewport(), &enter);
    QDragMoveEvent move(point, Qt::CopyAction | Qt::MoveAction, &carried, Qt::LeftButton, {});
    QApplication::sendEvent(view.viewport(), &move);
    QDropEvent dropped(point, Qt::CopyAction | Qt::MoveAction, &carried, Qt::LeftButton, {});
    QApplication::sendEvent(view.viewport(), &dropped);
  }
  std::vector<std::string> section(std::size_t index) const {
    std::vector<std::string> ids;
    for (const Step& step : document.plan().sections[index].steps)
      ids.push_back(step.movement.value);
    return ids;
  }

  OutlineView view;
};

TEST_F(Outline, HasALineForEveryStepUnderItsSection) {
  ASSERT_EQ(model().rowCount(), 4);
  EXPECT_EQ(model().index(0, 0).data().toString(), QStringLiteral("Arrive"));
  int steps = 0;
  for (int section = 0; section < 4; ++section)
    steps += model().rowCount(model().index(section, 0));
  EXPECT_EQ(steps, 20);
}

TEST_F(Outline, TellsOfAStepWhatTheEvaluationFound) {
  const StepId saw = stepOf("saw");
  const TimedStep* timed = document.evaluation().timed(saw);
  ASSERT_TRUE(timed);
  EXPECT_EQ(at("saw", OutlineColumn::begins).data().toString(), clock(timed->begin));
  EXPECT_EQ(at("saw", OutlineColumn::length).data().toString(), clock(timed->work.whole + timed->turning));
  EXPECT_EQ(at("saw", OutlineColumn::change).data().toString(), clock(timed->moving + timed->turning));
  const auto level = document.evaluation().strongestAt(saw);
  ASSERT_TRUE(level);
  EXPECT_EQ(at("saw", OutlineColumn::caution).data(kLevelRole).toInt(), static_cast<int>(*level));
  EXPECT_TRUE(at("saw").data(Qt::AccessibleTextRole).toString().contains(text(*level)));
}

TEST_F(Outline, SharesTheSelectionBothWays) {
  const StepId saw = stepOf("saw");
  QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, view.visualRect(at("saw")).center());
  EXPECT_THAT(selection.steps(), ElementsAre(saw));
  EXPECT_EQ(selection.current(), saw);
  QTest::mouseClick(view.viewport(), Qt::LeftButton, Qt::ControlModifier, view.visualRect(at("hundred")).center());
  EXPECT_THAT(selection.steps(), ElementsAre(stepOf("hundred"), saw));
  EXPECT_EQ(selection.current(), stepOf("hundred"));

  selection.set({stepOf("mermaid"), saw}, saw);
  EXPECT_EQ(view.selectionModel()->selectedRows().size(), 2);
  EXPECT_TRUE(view.selectionModel()->isRowSelected(at("mermaid").row(), at("mermaid").parent()));
  EXPECT_EQ(view.currentIndex(), at("saw"));
  EXPECT_EQ(selection.steps().size(), 2U);
}

TEST_F(Outline, AHeadingStandsForTheStartOfItsSection) {
  QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, view.visualRect(model().indexOfSection(2)).center());
  EXPECT_TRUE(selection.hasOwnGap());
  EXPECT_EQ(selection.gap(), (Place{2, 0}));
  EXPECT_TRUE(view.selectionModel()->isRowSelected(2, {}));
}

TEST_F(Outline, ArrowKeysMoveTheSelection) {
  selection.select(stepOf("breathing-ribs"));
  QTest::keyClick(&view, Qt::Key_Down);
  EXPECT_EQ(selection.current(), stepOf("pelvic-tilt"));
}

TEST_F(Outline, EditsADoseInItsRow) {
  selection.select(stepOf("hundred"));
  QTest::keyClick(&view, Qt::Key_F2);
  auto* box = view.findChild<QSpinBox*>();
  ASSERT_TRUE(box);
  EXPECT_EQ(box->value(), 10);
  box->setValue(8);
  QTest::keyClick(box, Qt::Key_Return);
  QApplication::processEvents();
  EXPECT_EQ(findStep(document.plan(), stepOf("hundred"))->dose, (Dose{8, DoseUnit::breaths}));
  EXPECT_EQ(document.undoStack()->count(), 1);
  document.undoStack()->undo();
  EXPECT_EQ(at("hundred", OutlineColumn::dose).data().toString(), QStringLiteral("10 breaths"));
}

TEST_F(Outline, RenamesASectionInItsRow) {
  QTest::mouseDClick(view.viewport(), Qt::LeftButton, {}, view.visualRect(model().indexOfSection(1)).center());
  auto* field = view.findChild<QLineEdit*>();
  ASSERT_TRUE(field);
  field->setText(QStringLiteral("Wake up"));
  QTest::keyClick(field, Qt::Key_Return);
  QApplication::processEvents();
  EXPECT_EQ(document.plan().sections[1].name, "Wake up");
  EXPECT_EQ(document.undoStack()->count(), 1);
}

TEST_F(Outline, RefusesAnEmptySectionName) {
  EXPECT_FALSE(model().setData(model().indexOfSection(1), QStringLiteral("  "), Qt::EditRole));
  EXPECT_EQ(document.plan().sections[1].name, "Warm");
}

TEST_F(Outline, MovesStepsWithTheKeyboardAcrossSections) {
  selection.select(stepOf("knee-folds"));
  QTest::keyClick(&view, Qt::Key_Down, Qt::AltModifier);
  EXPECT_EQ(section(0).size(), 3U);
  EXPECT_EQ(section(1).front(), "knee-folds");
  QTest::keyClick(&view, Qt::Key_Up, Qt::AltModifier);
  EXPECT_EQ(document.plan(), testing::twentySteps());
  EXPECT_EQ(selection.current(), stepOf("knee-folds"));
}

TEST_F(Outline, RemovesWhatIsSelected) {
  selection.set({stepOf("saw"), stepOf("mermaid")}, stepOf("saw"));
  QTest::keyClick(&view, Qt::Key_Delete);
  EXPECT_EQ(countSteps(document.plan()), 18U);
  EXPECT_EQ(document.undoStack()->count(), 1);
}

TEST_F(Outline, StepsAreDraggedToAnotherPlace) {
  selection.set({stepOf("pelvic-tilt"), stepOf("saw")}, stepOf("saw"));
  std::unique_ptr<QMimeData> carried(view.selectedMimeData());
  ASSERT_TRUE(carried);
  EXPECT_EQ(carried->data(kStepIdsMime).split(' ').size(), 2);
  const QRect row = view.visualRect(at("shoulder-bridge"));
  drop(*carried, {40, row.bottom() - 2}); // the lower half: after it
  EXPECT_THAT(section(1), ElementsAre("head-nod-curl", "shoulder-bridge", "pelvic-tilt", "saw", "four-point-cat",
                                      "four-point-opposite-reach", "swan-preparation"));
  EXPECT_EQ(document.undoStack()->count(), 1);
  EXPECT_EQ(selection.steps().size(), 2U);
}

TEST_F(Outline, TakesMovementsFromTheCatalogue) {
  QMimeData carried;
  carried.setData(kMovementMime, "clam");
  const QRect row = view.visualRect(at("four-point-cat"));
  drop(carried, {40, row.top() + 2}); // the upper half: before it
  EXPECT_THAT(section(1), ElementsAre("head-nod-curl", "shoulder-bridge", "clam", "four-point-cat",
                                      "four-point-opposite-reach", "swan-preparation"));
  EXPECT_EQ(selection.current(), stepOf("clam"));
}

TEST_F(Outline, BelowTheLastRowIsTheEndOfTheClass) {
  EXPECT_EQ(view.placeAt({40, view.viewport()->height() - 2}), (Place{3, 3}));
}

TEST_F(Outline, LeavesForeignDragsAlone) {
  QMimeData carried;
  carried.setText(QStringLiteral("hello"));
  drop(carried, {40, 60});
  EXPECT_EQ(document.plan(), testing::twentySteps());
}

TEST_F(Outline, ADropOfAMovementThatIsUnknownChangesNothing) {
  QMimeData carried;
  carried.setData(kMovementMime, "no-such-movement");
  drop(carried, {40, 60});
  EXPECT_EQ(document.plan(), testing::twentySteps());
}

TEST_F(Outline, NamesHaveTheRoomTheyNeedAtEveryWidth) {
  for (const int width : {270, 360, 470, 710, 1000}) {
    testing::layOut(view, {width, 700});
    for (const char* movement : {"single-straight-leg-stretch", "four-point-opposite-reach", "hundred"}) {
      const QModelIndex index = at(movement);
      const int room = view.columnWidth(0) - 12;
      const int tall =
          view.fontMetrics().boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, index.data().toString()).height();
      EXPECT_GE(view.visualRect(index).height(), tall) << width;
      EXPECT_GT(room, 60) << width;
    }
    for (int column = 1; column < kOutlineColumns; ++column)
      if (!view.isColumnHidden(column))
        for (const char* movement : {"criss-cross", "hundred"}) {
          const QModelIndex index = model().indexOf(stepOf(movement), static_cast<OutlineColumn>(column));
          EXPECT_GE(view.columnWidth(column), view.fontMetrics().horizontalAdvance(index.data().toString())) << width;
        }
  }
}

TEST_F(Outline, SaysWhenAMovementIsNotInTheCatalogue) {
  ClassPlan plan = testing::twentySteps();
  plan.sections[0].steps[1].movement = {"lost-movement"};
  document.load(plan);
  const QModelIndex index = model().indexOf(plan.sections[0].steps[1].id);
  EXPECT_TRUE(index.data(kUnknownRole).toBool());
  EXPECT_EQ(index.data().toString(), QStringLiteral("lost-movement"));
}

TEST_F(Outline, FollowsUndoAndRedo) {
  selection.select(stepOf("saw"));
  commands.removeSelected();
  EXPECT_EQ(model().rowCount(model().indexOfSection(2)), 7);
  document.undoStack()->undo();
  EXPECT_EQ(model().rowCount(model().indexOfSection(2)), 8);
  document.undoStack()->redo();
  EXPECT_EQ(model().rowCount(model().indexOfSection(2)), 7);
}

TEST_F(Outline, ItsMenusAskToTidyStepsAndSections) {
  std::vector<StepId> wanted;
  QObject::connect(&view, &OutlineView::tidyWanted, [&](const std::vector<StepId>& steps) { wanted = steps; });
  const auto tidy = [&](const QModelIndex& index) -> QAction* {
    const QPoint at = view.visualRect(index).center();
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, view.viewport()->mapToGlobal(at));
    QApplication::sendEvent(view.viewport(), &event);
    for (QAction* action : view.findChildren<QMenu*>().back()->actions())
      if (action->text().startsWith(QStringLiteral("Tidy")))
        return action;
    return nullptr;
  };
  selection.select(stepOf("saw"));
  QAction* steps = tidy(at("saw"));
  ASSERT_TRUE(steps);
  EXPECT_FALSE(steps->isEnabled()); // one alone has no order
  const std::vector<StepId> two{document.plan().sections[2].steps[0].id, document.plan().sections[2].steps[1].id};
  selection.set(two, two.front());
  steps = tidy(model().indexOf(two.front(), OutlineColumn::name));
  ASSERT_TRUE(steps && steps->isEnabled());
  steps->trigger();
  EXPECT_EQ(wanted, two);
  QAction* whole = tidy(model().indexOfSection(2));
  ASSERT_TRUE(whole && whole->isEnabled());
  whole->trigger();
  EXPECT_EQ(wanted.size(), document.plan().sections[2].steps.size());
}

} // namespace
} // namespace matwright
