#include "tests/support/NothingCut.h"
#include "ui/controls/OrderedList.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

struct Fruit : ::testing::Test {
  Fruit() : list(QStringLiteral("Fruit"), QStringLiteral("Add a fruit")) {
    list.setStock({{QStringLiteral("a"), QStringLiteral("apple")},
                   {QStringLiteral("b"), QStringLiteral("bilberry")},
                   {QStringLiteral("c"), QStringLiteral("cherry")}});
    QObject::connect(&list, &OrderedList::edited, &list,
                     [this](const QStringList& keys) { edits << keys.join(QString()); });
    testing::layOut(list, {400, 300});
  }
  void press(const QString& name) {
    QApplication::processEvents();
    for (QToolButton* button : list.findChildren<QToolButton*>())
      if (button->accessibleName() == name && button->isVisibleTo(&list))
        return button->click();
    ADD_FAILURE() << "no button " << name.toStdString();
  }
  void type(const QString& words) {
    auto* field = list.findChild<QLineEdit*>();
    QTest::keyClicks(field, words);
    QTest::keyClick(field, Qt::Key_Return);
    QTest::qWait(20);
  }
  QStringList shown() const {
    QApplication::processEvents();
    QStringList names;
    for (const QLabel* label : list.findChildren<QLabel*>())
      if (label->isVisibleTo(&list))
        names << label->text();
    return names;
  }

  OrderedList list;
  QStringList edits;
};

TEST_F(Fruit, IsShownInItsOrderWithTheMainOneFirst) {
  list.setFirstIsMain(true);
  list.show({QStringLiteral("c"), QStringLiteral("a")});
  EXPECT_EQ(shown(), (QStringList{"Cherry (the main one)", "Apple"}));
  EXPECT_TRUE(edits.isEmpty());
}

TEST_F(Fruit, WhatIsTypedIsFoundAndAddedAtTheEnd) {
  list.show({QStringLiteral("a")});
  type(QStringLiteral("cher"));
  EXPECT_EQ(edits, QStringList{"ac"});
  EXPECT_EQ(list.keys(), (QStringList{"a", "c"}));
}

TEST_F(Fruit, WhatIsNotInStockIsNotAdded) {
  type(QStringLiteral("turnip"));
  EXPECT_TRUE(edits.isEmpty());
}

TEST_F(Fruit, EachIsThereOnce) {
  list.show({QStringLiteral("a")});
  type(QStringLiteral("apple"));
  EXPECT_TRUE(edits.isEmpty());
}

TEST_F(Fruit, MovesUpAndAway) {
  list.show({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
  press(QStringLiteral("Move up: Cherry"));
  EXPECT_EQ(edits.last(), QStringLiteral("acb"));
  press(QStringLiteral("Take away: Apple"));
  EXPECT_EQ(edits.last(), QStringLiteral("cb"));
}

TEST_F(Fruit, AKeyThatIsNotInStockIsShownAsItIs) {
  list.show({QStringLiteral("zucchini")});
  EXPECT_EQ(shown(), QStringList{"Zucchini"});
}

} // namespace
} // namespace matwright
