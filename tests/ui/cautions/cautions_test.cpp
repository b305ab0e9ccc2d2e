#include "core/evaluate/Swaps.h"
#include "tests/support/Finding.h"
#include "tests/support/NothingCut.h"
#include "tests/support/PanelFixture.h"
#include "ui/cautions/CautionList.h"
#include "ui/cautions/SwapMenu.h"
#include "ui/controls/MarkedTree.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QTreeView>
#include <algorithm>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using testing::Panels;

struct Cautions : ::testing::Test, Panels {
  Cautions() : list(document, selection) { testing::layOut(list, {300, 700}); }

  QTreeView& view() { return *list.findChild<QTreeView*>(); }
  QAbstractItemModel& model() { return *view().model(); }
  bool says(const QString& words) const { return testing::saysIn(list, words); }
  int rows() {
    int count = 0;
    for (int group = 0; group < model().rowCount(); ++group)
      count += model().rowCount(model().index(group, 0));
    return count;
  }
  // The first row that is about a step.
  QModelIndex stepRow(StepId& step) {
    const auto groups = cautionGroups(document);
    for (std::size_t group = 0; group < groups.size(); ++group)
      for (std::size_t row = 0; row < groups[group].rows.size(); ++row)
        if (groups[group].rows[row].step) {
          step = *groups[group].rows[row].step;
          return model().index(static_cast<int>(row), 0, model().index(static_cast<int>(group), 0));
        }
    return {};
  }

  CautionList list;
};

TEST_F(Cautions, ListsEverythingThatWasFoundStrongestFirst) {
  EXPECT_EQ(rows(), static_cast<int>(document.evaluation().cautions.size() + document.evaluation().remarks.size()));
  int last = static_cast<int>(kWordCount<Level>);
  for (int group = 0; group < model().rowCount(); ++group) {
    const QModelIndex heading = model().index(group, 0);
    const int level = heading.data(kLevelRole).isValid() ? heading.data(kLevelRole).toInt() : -1;
    EXPECT_LT(level, last);
    last = level;
    for (int row = 0; row < model().rowCount(heading); ++row)
      EXPECT_EQ(model().index(row, 0, heading).data(kLevelRole), heading.data(kLevelRole));
  }
}

TEST_F(Cautions, SaysTheLevelInWordsInEveryRow) {
  const QModelIndex heading = model().index(0, 0);
  const QString word = text(static_cast<Level>(heading.data(kLevelRole).toInt()));
  EXPECT_TRUE(model().index(0, 0, heading).data(Qt::AccessibleTextRole).toString().contains(word));
  EXPECT_TRUE(model().index(0, 0, heading).data().toString().contains(word));
}

TEST_F(Cautions, AClickGoesToTheStep) {
  StepId step;
  const QModelIndex index = stepRow(step);
  ASSERT_TRUE(index.isValid());
  QSignalSpy wanted(&list, &CautionList::stepWanted);
  view().scrollTo(index);
  QTest::mouseClick(view().viewport(), Qt::LeftButton, {}, view().visualRect(index).center());
  EXPECT_EQ(wanted.count(), 1);
  EXPECT_EQ(selection.current(), step);
}

TEST_F(Cautions, EnterGoesToTheStepAndArrowsDoNot) {
  StepId step;
  const QModelIndex index = stepRow(step);
  QSignalSpy wanted(&list, &CautionList::stepWanted);
  view().setCurrentIndex(index.siblingAtRow(0));
  EXPECT_EQ(wanted.count(), 0);
  view().setCurrentIndex(index);
  QTest::keyClick(&view(), Qt::Key_Return);
  EXPECT_EQ(wanted.count(), 1);
  EXPECT_EQ(selection.current(), step);
}

int cautionsOf(const Evaluation& evaluation, const PersonId& person) {
  return static_cast<int>(
      std::count_if(evaluation.cautions.begin(), evaluation.cautions.end(), [&](const Caution& caution) {
        return caution.person >= evaluation.people.size() || evaluation.people[caution.person] == person;
      }));
}

TEST_F(Cautions, AreThoseOfThePeopleItIsSeenFor) {
  const int wanted = cautionsOf(document.evaluation(), {"person-1"});
  ASSERT_GT(wanted, 0);
  ASSERT_LT(wanted, static_cast<int>(document.evaluation().cautions.size()));
  document.setSeenPeople({{"person-1"}});
  EXPECT_EQ(rows(), wanted) << "without the remarks, which are about nobody";
  EXPECT_TRUE(says(QString::number(wanted)));
}

TEST_F(Cautions, AreFoundByStepAndPerson) {
  const Evaluation& evaluation = document.evaluation();
  for (const Caution& caution : evaluation.cautions) {
    const auto person =
        caution.person < evaluation.people.size() ? std::optional{evaluation.people[caution.person]} : std::nullopt;
    ASSERT_TRUE(list.showCaution(caution.step, person));
    const QModelIndex found = view().currentIndex();
    const CautionRow& row = cautionGroups(document)[static_cast<std::size_t>(found.parent().row())]
                                .rows[static_cast<std::size_t>(found.row())];
    EXPECT_EQ(row.step, caution.step);
    EXPECT_EQ(evaluation.cautions[row.index].person, caution.person);
  }
  EXPECT_FALSE(list.showCaution(StepId{999}, std::nullopt));
  EXPECT_FALSE(list.showCaution(stepOf("hundred"), PersonId{"nobody"}));
}

TEST_F(Cautions, WhatElseCouldBeDoneIsOfferedForTheCautionAskedFor) {
  const auto* menu = list.findChild<SwapMenu*>();
  list.offerSwaps(StepId{999}, PersonId{"person-1"}, {});
  EXPECT_FALSE(menu->isVisible());
  list.offerSwaps(stepOf("hundred"), PersonId{"person-1"}, {});
  EXPECT_TRUE(menu->isVisible());
  EXPECT_TRUE(menu->actions().front()->text().contains(QStringLiteral("Rosa")));
}

TEST_F(Cautions, WithNobodyChosenItSaysThatNothingWasScreened) {
  document.load(emptyClass("Nobody"));
  ASSERT_TRUE(document.evaluation().cautions.empty());
  EXPECT_TRUE(says(noCautionText(false)));
  EXPECT_TRUE(says(standingNotice()));
}

TEST_F(Cautions, APersonWithoutCautionsIsNeverCalledSafe) {
  ClassPlan plan = emptyClass("Two people");
  plan.people = {{"person-1"}, {"person-6"}};
  document.load(plan);
  document.setSeenPeople({{"person-6"}});
  ASSERT_EQ(cautionsOf(document.evaluation(), {"person-6"}), 0);
  EXPECT_EQ(rows(), 0);
  EXPECT_TRUE(says(noCautionText(true)));
  EXPECT_TRUE(says(standingNotice()));
}

TEST_F(Cautions, ShowsTheWholeReasonOfTheRowChosen) {
  for (QToolButton* button : list.findChildren<QToolButton*>())
    if (button->isCheckable())
      button->click();
  StepId step;
  const QModelIndex index = stepRow(step);
  view().setCurrentIndex(index);
  const auto groups = cautionGroups(document);
  const CautionRow& row =
      groups[static_cast<std::size_t>(index.parent().row())].rows[static_cast<std::size_t>(index.row())];
  const auto* reason = list.findChild<QPlainTextEdit*>();
  EXPECT_TRUE(reason->isVisible());
  EXPECT_EQ(reason->toPlainText(), wholeReason(document, row));
  EXPECT_TRUE(reason->toPlainText().contains(standingNotice()));
}

TEST_F(Cautions, AClosedGroupStaysClosedWhenTheClassChanges) {
  view().setExpanded(model().index(0, 0), false);
  selection.select(stepOf("standing-breathing"));
  commands.removeSelected();
  EXPECT_FALSE(view().isExpanded(model().index(0, 0)));
  EXPECT_TRUE(view().isExpanded(model().index(1, 0)));
}

TEST_F(Cautions, RowsAreAsTallAsTheirWordsAndDoNotOverlap) {
  for (const QSize size : {QSize(300, 700), QSize(710, 300), QSize(270, 500)}) {
    testing::layOut(list, size);
    EXPECT_THAT(testing::cutParts(list), ::testing::IsEmpty()) << size.width();
    const QModelIndex heading = model().index(0, 0);
    for (int row = 1; row < model().rowCount(heading); ++row)
      EXPECT_GT(view().visualRect(model().index(row, 0, heading)).top(),
                view().visualRect(model().index(row - 1, 0, heading)).bottom());
    const QModelIndex first = model().index(0, 0, heading);
    const QString all = first.data().toString() + QLatin1Char(' ') + first.data(kBodyRole).toString();
    const int width = view().viewport()->width();
    EXPECT_GE(view().visualRect(first).height(),
              view().fontMetrics().boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, all).height());
  }
}

// The first caution on a step about one person for which something can be done instead.
const Caution* swappable(const PlanDocument& document) {
  for (const Caution& caution : document.evaluation().cautions)
    if (caution.step && caution.person != Finding::kNone &&
        !swapsFor(document.knowledge(), document.plan(), document.roster(), document.day(), caution,
                  document.evaluation().people[caution.person])
             .empty())
      return &caution;
  return nullptr;
}

std::vector<QAction*> offers(const SwapMenu& menu) {
  std::vector<QAction*> all;
  for (QAction* action : menu.actions())
    if (!action->isSeparator() && action->isEnabled())
      all.push_back(action);
  return all;
}

TEST_F(Cautions, OfferWhatOnePersonMayDoInsteadAsHerVariant) {
  const Caution* caution = swappable(document);
  ASSERT_TRUE(caution);
  const ClassPlan before = document.plan();
  const StepId step = *caution->step;
  const PersonId person = document.evaluation().people[caution->person];
  const Rule* rule = caution->rule;
  SwapMenu menu(document);
  menu.fill(*caution);
  ASSERT_FALSE(offers(menu).empty());
  const QString name = QString::fromStdString(people.find(person)->name);
  EXPECT_EQ(menu.actions().front()->text(), QStringLiteral("For %1 alone, printed on the card").arg(name));
  QStringList said;
  for (const QAction* action : menu.actions())
    said << action->text();
  EXPECT_TRUE(said.contains(QStringLiteral("For everybody"))) << "the two kinds are told apart in words";
  offers(menu).front()->trigger();
  ASSERT_TRUE(variantOf(*findStep(document.plan(), step), person));
  for (const Caution& each : document.evaluation().cautions)
    EXPECT_FALSE(each.step == step && each.rule == rule && each.person != Finding::kNone &&
                 document.evaluation().people[each.person] == person);
  document.undoStack()->undo();
  EXPECT_EQ(document.plan(), before);
}

TEST_F(Cautions, AVariantCanBeTakenBack) {
  const Caution caution = *swappable(document);
  const StepId step = *caution.step;
  const PersonId person = document.evaluation().people[caution.person];
  const ClassPlan before = document.plan();
  document.perform(SetVariant{step, {person, findStep(before, step)->movement, {}}}, QStringLiteral("x"));
  SwapMenu menu(document);
  menu.fill(caution);
  offers(menu).front()->trigger();
  EXPECT_EQ(document.plan(), before);
}

TEST_F(Cautions, OfferASwapForEverybody) {
  const Caution caution = *swappable(document);
  const Step before = *findStep(document.plan(), *caution.step);
  SwapMenu menu(document);
  menu.fill(caution);
  const auto all = offers(menu);
  all.back()->trigger();
  const Step after = *findStep(document.plan(), *caution.step);
  EXPECT_TRUE(after.movement != before.movement || after.option != before.option);
  EXPECT_TRUE(after.variants.empty());
}

TEST_F(Cautions, TheButtonForSwapsIsForStepsAlone) {
  StepId step;
  const QModelIndex row = stepRow(step);
  QToolButton* button = nullptr;
  for (QToolButton* each : list.findChildren<QToolButton*>())
    if (each->menu())
      button = each;
  ASSERT_TRUE(button);
  view().setCurrentIndex(row);
  EXPECT_TRUE(button->isEnabled());
  view().setCurrentIndex(row.parent());
  EXPECT_FALSE(button->isEnabled());
}

} // namespace
} // namespace matwright
