#include "tests/support/Documents.h"

#include <QSignalSpy>

namespace matwright {
namespace {

struct FourSteps : testing::Test {
  OpenClass open;
  StepId a = open.add("hundred", {0, 0});
  StepId b = open.add("saw", {0, 1});
  StepId c = open.add("clam", {1, 0});
  StepId d = open.add("wall-slide", {3, 0});
};

TEST_F(FourSteps, ExtendingFollowsTheOrderOfTheClassBothWays) {
  open.selection.select(c);
  open.selection.extendTo(a);
  EXPECT_EQ(open.selection.steps(), (std::vector{a, b, c}));
  open.selection.extendTo(d);
  EXPECT_EQ(open.selection.steps(), (std::vector{c, d}));
  EXPECT_EQ(open.selection.current(), d);
}

TEST_F(FourSteps, TogglingAddsAndTakesAway) {
  open.selection.select(a);
  open.selection.toggle(d);
  open.selection.toggle(b);
  EXPECT_EQ(open.selection.steps(), (std::vector{a, b, d}));
  open.selection.toggle(a);
  EXPECT_EQ(open.selection.steps(), (std::vector{b, d}));
}

TEST_F(FourSteps, TheGapFollowsTheCurrentStep) {
  open.selection.select(c);
  EXPECT_EQ(open.selection.gap(), (Place{1, 1}));
  open.selection.selectGap({0, 1});
  EXPECT_TRUE(open.selection.steps().empty());
  EXPECT_EQ(open.selection.gap(), (Place{0, 1}));
  open.selection.clear();
  EXPECT_EQ(open.selection.gap(), (Place{3, 1}));
}

TEST_F(FourSteps, WhatLeavesTheClassLeavesTheSelection) {
  open.selection.set({a, c}, c);
  QSignalSpy changed(&open.selection, &StepSelection::changed);
  ASSERT_TRUE(open.document.perform(RemoveSteps{{c}}, QStringLiteral("remove")));
  EXPECT_EQ(open.selection.steps(), (std::vector{a}));
  EXPECT_EQ(open.selection.current(), a);
  EXPECT_EQ(changed.count(), 1);
  open.document.undoStack()->undo();
  EXPECT_EQ(open.selection.steps(), (std::vector{a}));
}

TEST_F(FourSteps, AnotherClassStartsWithNothingSelected) {
  open.selection.selectAll();
  EXPECT_EQ(open.selection.steps().size(), 4U);
  open.document.load(emptyClass("Next"));
  EXPECT_TRUE(open.selection.steps().empty());
  EXPECT_EQ(open.selection.gap(), (Place{0, 0}));
}

} // namespace
} // namespace matwright
