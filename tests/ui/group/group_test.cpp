#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/group/GroupModel.h"
#include "ui/group/GroupView.h"
#include "ui/text/VocabularyText.h"

#include <QAbstractItemModelTester>
#include <QHeaderView>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using testing::Panels;

struct GroupTest : ::testing::Test, Panels {
  GroupTest() : view(document, selection) {
    testing::layOut(view, {820, 460});
    QObject::connect(&view, &GroupView::cautionWanted, &view,
                     [this](std::optional<StepId> step, std::optional<PersonId> person) {
                       asked.push_back({step, person});
                     });
    QObject::connect(&view, &GroupView::insteadWanted, &view,
                     [this](std::optional<StepId> step, std::optional<PersonId> person, const QPoint&) {
                       instead.push_back({step, person});
                     });
  }

  QTableView& table() { return *view.findChild<QTableView*>(); }
  QAbstractItemModel& model() { return *table().model(); }
  int rowOf(const char* movement) { return static_cast<GroupModel&>(model()).rowOf(stepOf(movement)); }
  int columnOf(const char* person) {
    for (int column = 1; column < model().columnCount(); ++column)
      if (static_cast<GroupModel&>(model()).personAt(column) == PersonId{person})
        return column;
    return -1;
  }
  QModelIndex cell(const char* movement, const char* person) {
    return model().index(rowOf(movement), columnOf(person));
  }
  void click(const QModelIndex& index) {
    table().scrollTo(index);
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, table().visualRect(index).center());
  }
  void clickHeader(int column) {
    QHeaderView& header = *table().horizontalHeader();
    QTest::mouseClick(header.viewport(), Qt::LeftButton, {},
                      {header.sectionViewportPosition(column) + header.sectionSize(column) / 2, header.height() / 2});
  }

  using Asked = std::pair<std::optional<StepId>, std::optional<PersonId>>;
  GroupView view;
  std::vector<Asked> asked, instead;
};

TEST_F(GroupTest, HasAColumnAPersonAndOneForEverybody) {
  QStringList heads;
  for (int column = 0; column < model().columnCount(); ++column)
    heads << model().headerData(column, Qt::Horizontal).toString();
  EXPECT_EQ(heads,
            QStringList({QStringLiteral("All"), QStringLiteral("R.A."), QStringLiteral("I.T."), QStringLiteral("W.O."),
                         QStringLiteral("K.L."), QStringLiteral("G.F."), QStringLiteral("N.H.")}));
  EXPECT_EQ(model().headerData(1, Qt::Horizontal, Qt::AccessibleTextRole).toString(), QStringLiteral("Rosa Amberley"));
}

TEST_F(GroupTest, HasTheSectionsAsHeadingsOverTheirSteps) {
  EXPECT_EQ(model().rowCount(), 2 + 4 + 20);
  EXPECT_EQ(model().headerData(2, Qt::Vertical).toString(), QStringLiteral("Arrive"));
  EXPECT_TRUE(model().index(2, 0).data(GroupModel::kSectionRole).toBool());
  EXPECT_EQ(model().flags(model().index(2, 1)), Qt::NoItemFlags);
  EXPECT_EQ(model().headerData(rowOf("hundred"), Qt::Vertical).toString(), QStringLiteral("The hundred"));
}

TEST_F(GroupTest, CountsTheCautionsOfEachPersonAtEachStep) {
  const Evaluation& evaluation = document.evaluation();
  int shown = 0;
  for (int row = 1; row < model().rowCount(); ++row)
    for (int column = 0; column < model().columnCount(); ++column)
      shown += model().index(row, column).data(GroupModel::kCountRole).toInt();
  EXPECT_EQ(shown, static_cast<int>(evaluation.cautions.size()));
  int sums = 0;
  for (int column = 0; column < model().columnCount(); ++column)
    sums += model().index(0, column).data(GroupModel::kCountRole).toInt();
  EXPECT_EQ(sums, shown);
  std::optional<Level> strongest;
  int count = 0;
  for (const Caution& caution : evaluation.cautions)
    if (caution.step == stepOf("hundred") && caution.person < evaluation.people.size() &&
        evaluation.people[caution.person].value == "person-1") {
      strongest = std::max(strongest, std::optional{caution.level});
      ++count;
    }
  ASSERT_GT(count, 0);
  EXPECT_EQ(cell("hundred", "person-1").data(GroupModel::kCountRole).toInt(), count);
  EXPECT_EQ(cell("hundred", "person-1").data(GroupModel::kLevelRole).toInt(), static_cast<int>(*strongest));
}

TEST_F(GroupTest, SaysInWordsWhoWhereAndWhat) {
  const QModelIndex index = cell("hundred", "person-1");
  const QString spoken = index.data(Qt::AccessibleTextRole).toString();
  EXPECT_TRUE(spoken.startsWith(QStringLiteral("Rosa Amberley, The hundred, "))) << spoken.toStdString();
  EXPECT_TRUE(spoken.contains(text(static_cast<Level>(index.data(GroupModel::kLevelRole).toInt()))));
  EXPECT_GT(index.data(Qt::ToolTipRole).toString().count(QLatin1Char('\n')), 0);
  EXPECT_EQ(cell("hundred", "person-6").data(Qt::AccessibleTextRole).toString(),
            QStringLiteral("Noor Hallam, The hundred, none raised"));
}

TEST_F(GroupTest, AnEmptyFieldIsNotCalledSafe) {
  EXPECT_TRUE(testing::saysIn(view, QStringLiteral("An empty field is no clearance")));
}

TEST_F(GroupTest, AClickSelectsTheStepAndAsksForTheCaution) {
  click(cell("hundred", "person-1"));
  EXPECT_EQ(selection.current(), stepOf("hundred"));
  EXPECT_THAT(asked, ElementsAre(Asked{stepOf("hundred"), PersonId{"person-1"}}));
  click(model().index(rowOf("saw"), 0));
  EXPECT_EQ(asked.back(), (Asked{stepOf("saw"), std::nullopt}));
  click(model().index(1, 1));
  EXPECT_EQ(asked.back(), (Asked{std::nullopt, PersonId{"person-1"}}));
}

TEST_F(GroupTest, TheCurrentRowFollowsTheSelection) {
  click(cell("hundred", "person-2"));
  asked.clear();
  selection.select(stepOf("saw"));
  EXPECT_EQ(table().currentIndex(), cell("saw", "person-2"));
  EXPECT_TRUE(asked.empty()) << "nobody chose a cell";
}

TEST_F(GroupTest, TheCurrentCellStaysWhenTheClassChanges) {
  click(cell("saw", "person-2"));
  asked.clear();
  selection.select(stepOf("breathing-ribs"));
  commands.removeSelected();
  selection.select(stepOf("saw"));
  EXPECT_EQ(table().currentIndex(), cell("saw", "person-2"));
  EXPECT_TRUE(asked.empty());
}

TEST_F(GroupTest, EnterOffersWhatElseToDoWhereThereIsACaution) {
  click(cell("hundred", "person-6"));
  QTest::keyClick(&table(), Qt::Key_Return);
  EXPECT_TRUE(instead.empty());
  click(cell("hundred", "person-1"));
  QTest::keyClick(&table(), Qt::Key_Return);
  EXPECT_THAT(instead, ElementsAre(Asked{stepOf("hundred"), PersonId{"person-1"}}));
}

TEST_F(GroupTest, TheNameOfAPersonSeesTheClassForThemAlone) {
  clickHeader(columnOf("person-1"));
  EXPECT_THAT(document.seenPeople(), ElementsAre(PersonId{"person-1"}));
  EXPECT_FALSE(cell("hundred", "person-1").data(GroupModel::kOutsideRole).toBool());
  EXPECT_TRUE(cell("hundred", "person-2").data(GroupModel::kOutsideRole).toBool());
  EXPECT_EQ(model().flags(cell("hundred", "person-2")), Qt::NoItemFlags);
  EXPECT_GT(cell("hundred", "person-2").data(GroupModel::kCountRole).toInt(), 0) << "the table is of the whole group";
  clickHeader(columnOf("person-1"));
  EXPECT_TRUE(document.seenPeople().empty());
}

TEST_F(GroupTest, SpaceDoesWhatAClickOnTheNameDoes) {
  click(cell("hundred", "person-1"));
  QTest::keyClick(&table(), Qt::Key_Space);
  EXPECT_THAT(document.seenPeople(), ElementsAre(PersonId{"person-1"}));
}

TEST_F(GroupTest, SaysWhoDoesAStepInTheirOwnWay) {
  document.perform(SetVariant{stepOf("hundred"), {{"person-1"}, {"hundred"}, {}}}, QStringLiteral("x"));
  EXPECT_TRUE(cell("hundred", "person-1").data(GroupModel::kVariedRole).toBool());
  EXPECT_TRUE(cell("hundred", "person-1")
                  .data(Qt::AccessibleTextRole)
                  .toString()
                  .contains(QStringLiteral("variant of their own")));
  EXPECT_FALSE(cell("hundred", "person-2").data(GroupModel::kVariedRole).toBool());
}

TEST_F(GroupTest, SaysWhenNobodyIsInTheClass) {
  const QString words = QStringLiteral("Nobody is in this class yet");
  EXPECT_FALSE(testing::saysIn(view, words));
  document.perform(SetPeople{{}}, {});
  EXPECT_TRUE(testing::saysIn(view, words));
  document.load(emptyClass("Nothing"));
  EXPECT_EQ(model().rowCount(), 2);
}

TEST_F(GroupTest, IsARightModelWhateverHappens) {
  const QAbstractItemModelTester tester(&model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
  selection.select(stepOf("hundred"));
  commands.removeSelected();
  document.setSeenPeople({{"person-2"}});
  document.undoStack()->undo();
  document.load(emptyClass("Nothing"));
}

TEST_F(GroupTest, NothingIsCut) {
  for (const QSize size : {QSize(820, 460), QSize(760, 300)}) {
    testing::layOut(view, size);
    EXPECT_THAT(testing::cutParts(view), ::testing::IsEmpty()) << size.width();
  }
}

} // namespace
} // namespace matwright
