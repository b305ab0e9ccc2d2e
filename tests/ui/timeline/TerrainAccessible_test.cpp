#include "tests/ui/timeline/Terrains.h"

#include <QAccessible>

namespace matwright {
namespace {

struct Accessible : testing::Test {
  OpenTerrain open;
  QAccessibleInterface* list = nullptr;

  Accessible() {
    open.fill();
    list = QAccessible::queryAccessibleInterface(open.view.get());
  }
};

TEST_F(Accessible, IsAListWithOneItemAStep) {
  ASSERT_TRUE(list);
  EXPECT_EQ(list->role(), QAccessible::List);
  ASSERT_EQ(list->childCount(), 5);
  for (int i = 0; i < 5; ++i) {
    QAccessibleInterface* item = list->child(i);
    ASSERT_TRUE(item && item->isValid());
    EXPECT_EQ(item->role(), QAccessible::ListItem);
    EXPECT_EQ(list->indexOfChild(item), i);
    EXPECT_EQ(item->parent(), list);
  }
  EXPECT_EQ(list->child(5), nullptr);
  EXPECT_FALSE(list->text(QAccessible::Name).isEmpty());
}

TEST_F(Accessible, AnItemSaysTheWholeStep) {
  Person person;
  person.id = PersonId{"ilo"};
  person.name = "Ilo";
  person.conditions.push_back({ConditionId{"osteoporosis"}, {}, {}, {}});
  open.document.setRoster({person});
  ASSERT_TRUE(open.document.perform(SetPeople{{person.id}}, QString()));
  const auto level = open.document.evaluation().strongestAt(StepId{1});
  ASSERT_TRUE(level);
  const QString name = list->child(0)->text(QAccessible::Name);
  EXPECT_TRUE(name.startsWith(QStringLiteral("The hundred, step 1, Warm, "))) << name.toStdString();
  EXPECT_TRUE(name.contains(text(*level) + QStringLiteral(" for Ilo"))) << name.toStdString();
  EXPECT_TRUE(name.contains(clock(open.view->scene().steps[0].finish - open.view->scene().steps[0].workBegin)));
}

TEST_F(Accessible, StatesFollowTheSelection) {
  open.view->setFocus();
  open.selection.set({StepId{2}, StepId{3}}, StepId{3});
  EXPECT_FALSE(list->child(0)->state().selected);
  EXPECT_TRUE(list->child(1)->state().selected);
  EXPECT_TRUE(list->child(2)->state().selected);
  EXPECT_TRUE(list->child(2)->state().selectable);
  EXPECT_EQ(list->child(2)->state().focused, open.view->hasFocus());
}

TEST_F(Accessible, PressSelects) {
  QAccessibleActionInterface* actions = list->child(3)->actionInterface();
  ASSERT_TRUE(actions);
  EXPECT_TRUE(actions->actionNames().contains(QAccessibleActionInterface::pressAction()));
  actions->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_EQ(open.selection.current(), StepId{4});
}

TEST_F(Accessible, ItemsAreKnownByTheirSteps) {
  QAccessibleInterface* second = list->child(1);
  open.commands.moveSteps({StepId{2}}, {0, 0});
  EXPECT_EQ(list->child(0), second);
  EXPECT_TRUE(second->text(QAccessible::Name).startsWith(QStringLiteral("Roll up, step 1")));
}

TEST_F(Accessible, RectanglesAreWhereTheBlocksAre) {
  for (int i = 0; i < 5; ++i) {
    const QRect rect = list->child(i)->rect();
    EXPECT_GT(rect.width(), 2);
    EXPECT_EQ(list->childAt(rect.center().x() - rect.width() / 4, rect.center().y()), list->child(i));
  }
  open.view->zoomIn();
  open.view->zoomIn();
  EXPECT_TRUE(list->child(4)->state().offscreen || list->child(4)->rect().left() > 0);
}

TEST_F(Accessible, GoesWithItsView) {
  const QAccessible::Id id = QAccessible::uniqueId(list->child(0));
  open.view.reset();
  EXPECT_EQ(QAccessible::accessibleInterface(id), nullptr);
}

} // namespace
} // namespace matwright
