#include "tests/support/NothingCut.h"
#include "ui/controls/CautionCard.h"
#include "ui/controls/CheckMenu.h"
#include "ui/controls/ChoiceButton.h"
#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/ListSide.h"
#include "ui/controls/MarkedTree.h"

#include <QDateEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QStandardItemModel>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

constexpr Date kDay{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{9}};

TEST(FlowLayout, BeginsANewLineWhereTheWidthEnds) {
  QWidget panel;
  FlowLayout line(&panel, 10);
  for (int i = 0; i < 3; ++i) {
    auto* box = new QWidget;
    box->setFixedSize(100, 20);
    line.addWidget(box);
  }
  EXPECT_EQ(line.heightForWidth(320), 20); // 100 + 10 + 100 + 10 + 100
  EXPECT_EQ(line.heightForWidth(319), 50); // two lines of 20 and a gap of 10
  EXPECT_EQ(line.heightForWidth(100), 80);
}

TEST(FlowLayout, GivesHiddenItemsNoRoom) {
  QWidget panel;
  FlowLayout line(&panel, 10);
  auto* shown = new QWidget;
  auto* hidden = new QWidget;
  shown->setFixedSize(100, 20);
  hidden->setFixedSize(100, 20);
  line.addWidget(shown);
  line.addWidget(hidden);
  testing::layOut(panel, {150, 100});
  EXPECT_EQ(line.heightForWidth(150), 50);
  hidden->hide();
  EXPECT_EQ(line.heightForWidth(150), 20);
}

TEST(ChoiceButton, SaysWhatIsChosenAndThatNothingIsMeansAny) {
  ChoiceButton button(QStringLiteral("Level"), {QStringLiteral("Watch"), QStringLiteral("Adapt")});
  QSignalSpy changed(&button, &ChoiceButton::changed);
  EXPECT_TRUE(button.text().startsWith(QStringLiteral("Level ")));
  EXPECT_EQ(button.accessibleName(), QStringLiteral("Level: any"));
  const auto actions = button.menu()->actions();
  actions[1]->trigger();
  EXPECT_TRUE(button.text().startsWith(QStringLiteral("Adapt ")));
  EXPECT_EQ(button.values<Level>(), EnumSet<Level>{Level::adapt});
  actions[0]->trigger();
  EXPECT_TRUE(button.text().startsWith(QStringLiteral("Level: 2 ")));
  EXPECT_EQ(button.accessibleName(), QStringLiteral("Level: Watch, Adapt"));
  EXPECT_EQ(changed.count(), 2);
  button.setChosen({});
  EXPECT_EQ(changed.count(), 2);
  EXPECT_FALSE(actions[0]->isChecked() || button.isChecked());
}

struct OneGroup : ::testing::Test {
  OneGroup() {
    auto* heading = new QStandardItem(QStringLiteral("Heading"));
    heading->setData(true, kGroupRole);
    heading->appendRow(new QStandardItem(QStringLiteral("Row")));
    model.appendRow(heading);
    tree.setModel(&model);
    testing::layOut(tree, {300, 200});
  }
  QModelIndex heading() const { return model.index(0, 0); }

  QStandardItemModel model;
  MarkedTree tree{QStringLiteral("Tree")};
};

TEST_F(OneGroup, AHeadingOpensAndClosesByEnterAndARowIsChosen) {
  QSignalSpy chosen(&tree, &MarkedTree::chosen);
  tree.setCurrentIndex(heading());
  QTest::keyClick(&tree, Qt::Key_Return);
  EXPECT_TRUE(tree.isExpanded(heading()));
  QTest::mouseClick(tree.viewport(), Qt::LeftButton, {}, tree.visualRect(heading()).center());
  EXPECT_FALSE(tree.isExpanded(heading()));
  EXPECT_EQ(chosen.count(), 0);
  tree.expandAll();
  tree.setCurrentIndex(model.index(0, 0, heading()));
  QTest::keyClick(&tree, Qt::Key_Return);
  EXPECT_EQ(chosen.count(), 1);
}

TEST_F(OneGroup, TheArrowDownLeadsFromTheSearchToTheList) {
  auto* list = new MarkedTree(QStringLiteral("List"));
  list->setModel(&model);
  ListSide side(QStringLiteral("Things"), QStringLiteral("Search"), QStringLiteral("None"), list);
  testing::layOut(side, {300, 400});
  side.activateWindow();
  side.search()->setFocus();
  QTest::keyClick(side.search(), Qt::Key_Down);
  EXPECT_TRUE(list->hasFocus());
  EXPECT_EQ(testing::cutParts(side), QStringList());
}

TEST(NoteField, RefusesWhatWouldGrowPastItsBytes) {
  NoteField field(QStringLiteral("Note"), 10, 2);
  field.showNote(QStringLiteral("12345678"));
  QSignalSpy edited(&field, &NoteField::edited);
  field.moveCursor(QTextCursor::End);
  QTest::keyClicks(&field, QStringLiteral("9"));
  EXPECT_EQ(edited.count(), 1);
  field.insertPlainText(QStringLiteral("\u00e9")); // two bytes: one too many
  EXPECT_EQ(field.toPlainText(), QStringLiteral("123456789"));
  EXPECT_EQ(edited.count(), 1);
}

TEST(LineField, CountsBytesAndNotLetters) {
  std::unique_ptr<QLineEdit> field(lineField(QStringLiteral("Name"), 4));
  for (int i = 0; i < 3; ++i)
    field->insert(QStringLiteral("\u00e9")); // two bytes each
  EXPECT_EQ(field->text(), QStringLiteral("\u00e9\u00e9"));
}

TEST(SearchField, NamesItsButtonThatEmptiesIt) {
  std::unique_ptr<QLineEdit> field(searchField(QStringLiteral("Find"), QStringLiteral("Find")));
  const auto buttons = field->findChildren<QToolButton*>();
  ASSERT_FALSE(buttons.isEmpty());
  for (const QToolButton* button : buttons)
    EXPECT_FALSE(button->accessibleName().isEmpty());
}

TEST(DateField, IsSetFromItsProposalAndTakenAwayAgain) {
  DateField field(QStringLiteral("Date"), QStringLiteral("Set"));
  field.setProposal(kDay);
  QSignalSpy edited(&field, &DateField::edited);
  field.findChild<QPushButton*>()->click();
  EXPECT_EQ(field.date(), kDay);
  field.findChild<QDateEdit*>()->setDate(QDate(2026, 3, 10));
  EXPECT_EQ(isoDate(*field.date()), "2026-03-10");
  for (QToolButton* button : field.findChildren<QToolButton*>())
    if (!button->accessibleName().isEmpty())
      button->click();
  EXPECT_EQ(field.date(), std::nullopt);
  EXPECT_EQ(edited.count(), 3);
}

TEST(DateField, EmitsNothingWhenItIsShown) {
  DateField field(QStringLiteral("Date"), QStringLiteral("Set"));
  QSignalSpy edited(&field, &DateField::edited);
  field.setDate(kDay);
  field.setDate(std::nullopt);
  EXPECT_EQ(edited.count(), 0);
}

TEST(CheckMenu, StaysOpenWhileBoxesAreTicked) {
  CheckMenu menu;
  QAction* action = menu.addAction(QStringLiteral("one"));
  action->setCheckable(true);
  menu.popup({0, 0});
  menu.setActiveAction(action);
  QTest::keyClick(&menu, Qt::Key_Space);
  EXPECT_TRUE(action->isChecked());
  EXPECT_TRUE(menu.isVisible());
  const QPoint middle = menu.actionGeometry(action).center();
  QTest::mouseClick(&menu, Qt::LeftButton, {}, middle);
  EXPECT_FALSE(action->isChecked());
  EXPECT_TRUE(menu.isVisible());
}

TEST(CautionCard, ShowsTheWholeReasonOnDemandAndLetsItBeSelected) {
  CautionCard card({Level::adapt,
                    QStringLiteral("Rosa"),
                    {},
                    QStringLiteral("loaded bend"),
                    QStringLiteral("head down"),
                    QStringLiteral("Why: because")});
  testing::layOut(card, {270, 300});
  QLabel* whole = nullptr;
  for (QLabel* label : card.findChildren<QLabel*>())
    if (label->text() == QStringLiteral("Why: because"))
      whole = label;
  ASSERT_TRUE(whole);
  EXPECT_FALSE(whole->isVisible());
  card.findChild<QToolButton*>()->click();
  EXPECT_TRUE(whole->isVisible());
  EXPECT_TRUE(whole->textInteractionFlags().testFlag(Qt::TextSelectableByKeyboard));
  EXPECT_TRUE(card.accessibleName().contains(QStringLiteral("adapt")));
}

TEST(LargeLabel, FollowsTheFontOfTheApplication) {
  const QFont before = QApplication::font();
  std::unique_ptr<QLabel> label(largeLabel(QStringLiteral("47:20"), 1.5));
  QFont larger = before;
  larger.setPixelSize(20);
  QApplication::setFont(larger);
  QEvent changed(QEvent::ApplicationFontChange); // sent by the application itself only while it runs
  QApplication::sendEvent(label.get(), &changed);
  EXPECT_EQ(label->font().pixelSize(), 30);
  QApplication::setFont(before);
}

} // namespace
} // namespace matwright
