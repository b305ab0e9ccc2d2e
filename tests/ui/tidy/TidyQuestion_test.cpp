#include "tests/support/Finding.h"
#include "tests/ui/tidy/Untidy.h"
#include "ui/tidy/TidyQuestion.h"

#include <QCheckBox>
#include <QComboBox>
#include <QMenu>
#include <QToolButton>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

struct Asking : ::testing::Test, Untidy {
  TidyQuestion question;
  int changes = 0;

  Asking() {
    load({"hundred", "clam", "hundred", "clam"});
    ClassPlan plan = document.plan();
    plan.sections[1].steps = {stepOf(StepId{5}, *document.knowledge().catalogue.find(MovementId{"saw"}))};
    document.load(plan);
    question.setPlan(document.knowledge(), document.plan());
    question.show();
    QObject::connect(&question, &TidyQuestion::changed, &question, [this] { ++changes; });
  }
  QComboBox& scope() { return testing::namedIn<QComboBox>(question, QStringLiteral("What is tidied")); }
  QStringList scopes() {
    QStringList all;
    for (int i = 0; i < scope().count(); ++i)
      all << scope().itemText(i);
    return all;
  }
};

TEST_F(Asking, TheWholeClassIsAskedForAtFirstWithoutWishesAndPins) {
  const TidyRequest request = question.request();
  EXPECT_FALSE(request.section);
  EXPECT_THAT(request.steps, IsEmpty());
  EXPECT_THAT(request.pinned, IsEmpty());
  EXPECT_EQ(request.wishes, TidyWishes{});
}

TEST_F(Asking, SectionsWithStepsCanBeChosen) {
  EXPECT_EQ(scopes().size(), 3);
  scope().setCurrentIndex(2);
  Q_EMIT scope().activated(2);
  EXPECT_EQ(question.request().section, 2U);
  EXPECT_EQ(changes, 1);
}

TEST_F(Asking, SelectedStepsAreAskedForAlone) {
  question.setSteps({StepId{1}, StepId{2}, StepId{3}});
  EXPECT_THAT(question.request().steps, ElementsAre(StepId{1}, StepId{2}, StepId{3}));
  EXPECT_FALSE(question.request().section);
  EXPECT_EQ(scope().currentText(), QStringLiteral("3 selected steps"));
}

TEST_F(Asking, AllStepsOfASectionAreThatSection) {
  question.setSteps({StepId{4}, StepId{1}, StepId{2}, StepId{3}});
  EXPECT_EQ(question.request().section, 2U);
  EXPECT_THAT(question.request().steps, IsEmpty());
}

TEST_F(Asking, OneStepOrAllAreTheWholeClass) {
  question.setSteps({StepId{1}, StepId{2}});
  for (const std::vector<StepId>& steps :
       {std::vector<StepId>{}, {StepId{2}}, {StepId{1}, StepId{2}, StepId{3}, StepId{4}, StepId{5}}}) {
    question.setSteps(steps);
    EXPECT_FALSE(question.request().section);
    EXPECT_THAT(question.request().steps, IsEmpty());
    EXPECT_EQ(scopes().size(), 3);
  }
}

TEST_F(Asking, EachBoxIsAWishOfItsOwn) {
  const auto boxes = question.findChildren<QCheckBox*>();
  ASSERT_EQ(boxes.size(), 4);
  const std::vector<TidyWishes> wishes{{true, false, false, false},
                                       {false, true, false, false},
                                       {false, false, true, false},
                                       {false, false, false, true}};
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    boxes[static_cast<int>(i)]->click();
    EXPECT_EQ(question.request().wishes, wishes[i]);
    boxes[static_cast<int>(i)]->click();
    EXPECT_TRUE(boxes[static_cast<int>(i)]->toolTip().contains(QStringLiteral(" s ")));
    EXPECT_TRUE(boxes[static_cast<int>(i)]->toolTip().contains(QStringLiteral("no source")));
  }
  EXPECT_EQ(changes, 8);
}

TEST_F(Asking, PinsAreListedAndCanBeReleased) {
  const QToolButton* pins = question.pins();
  EXPECT_FALSE(pins->isEnabled());
  question.pin(StepId{2}, true);
  question.pin(StepId{2}, true);
  question.pin(StepId{4}, true);
  EXPECT_EQ(changes, 2);
  EXPECT_THAT(question.request().pinned, ElementsAre(StepId{2}, StepId{4}));
  EXPECT_EQ(pins->text(), QStringLiteral("Pinned: 2"));
  pins->menu()->actions().front()->trigger();
  EXPECT_THAT(question.request().pinned, ElementsAre(StepId{4}));
  pins->menu()->actions().front()->trigger();
  EXPECT_EQ(question.request().pinned.size(), 2U);
  pins->menu()->actions().back()->trigger();
  EXPECT_THAT(question.request().pinned, IsEmpty());
}

TEST_F(Asking, WhatTheClassNoLongerHasIsNotAskedFor) {
  question.setSteps({StepId{1}, StepId{2}, StepId{3}});
  question.pin(StepId{2}, true);
  ASSERT_TRUE(document.perform(RemoveSteps{{StepId{2}}}, QString()));
  question.setPlan(document.knowledge(), document.plan());
  EXPECT_THAT(question.request().steps, ElementsAre(StepId{1}, StepId{3}));
  EXPECT_THAT(question.request().pinned, IsEmpty());
  ASSERT_TRUE(document.perform(RemoveSteps{{StepId{1}}}, QString()));
  question.setPlan(document.knowledge(), document.plan());
  EXPECT_THAT(question.request().steps, IsEmpty());
  EXPECT_FALSE(question.request().section);
}

} // namespace
} // namespace matwright
