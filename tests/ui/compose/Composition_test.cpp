#include "core/compose/ComposeCheck.h"
#include "tests/support/PanelFixture.h"
#include "ui/compose/Composition.h"

#include <QSignalSpy>
#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>

namespace matwright {
namespace {

struct CompositionTest : ::testing::Test, testing::Panels {
  Composition composition{document};
  ClassWishes wishes;

  CompositionTest() {
    wishes.name = "Wished";
    wishes.length = minutes(20);
    wishes.sections = usualSections(wishes.length);
    composition.setEvaluations(20'000);
    composition.beginNew();
  }
  void waitFor() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !composition.isSearching(); }, 120000));
    ASSERT_TRUE(composition.last());
  }
  void compose() {
    composition.compose(wishes);
    waitFor();
    ASSERT_TRUE(composition.shown());
  }
  const ClassPlan& shown() { return composition.document().plan(); }
  StepId anyStep(std::size_t section) { return shown().sections[section].steps.front().id; }
  std::vector<ComposeBreachAt> breaches(const ClassPlan& base) {
    return breachesOf(document.knowledge(), wishes, document.roster(), testing::today(), base, shown());
  }
};

TEST_F(CompositionTest, ShowsTheClassThatWasFound) {
  compose();
  EXPECT_EQ(composition.last()->result.status, ComposeStatus::composed);
  EXPECT_EQ(shown(), composition.shown()->result.plan);
  EXPECT_EQ(shown().name, "Wished");
  EXPECT_EQ(breaches(blankClass(wishes)), std::vector<ComposeBreachAt>{});
}

TEST_F(CompositionTest, TheSameWishesGiveTheSameClass) {
  compose();
  const ClassPlan first = shown();
  compose();
  EXPECT_EQ(shown(), first);
}

TEST_F(CompositionTest, AnotherClassIsAnotherOne) {
  compose();
  const ClassPlan first = shown();
  ++wishes.seed;
  composition.composeAnother(wishes);
  EXPECT_EQ(shown(), first) << "which stays meanwhile";
  waitFor();
  EXPECT_NE(shown().sections, first.sections);
  EXPECT_FALSE(composition.shown()->unlike.empty());
}

TEST_F(CompositionTest, ASectionComposedAnewLeavesTheOthers) {
  compose();
  for (int turn = 0; turn < 2; ++turn) {
    const ClassPlan before = shown();
    composition.composeSection(2);
    waitFor();
    ASSERT_EQ(composition.last()->result.status, ComposeStatus::composed);
    for (std::size_t i = 0; i < before.sections.size(); ++i)
      EXPECT_EQ(shown().sections[i] == before.sections[i], i != 2) << i;
    EXPECT_EQ(breaches(blankClass(wishes)), std::vector<ComposeBreachAt>{});
  }
}

TEST_F(CompositionTest, KeptStepsStay) {
  compose();
  const Step kept = *findStep(shown(), anyStep(2));
  composition.keep(kept.id, true);
  EXPECT_TRUE(composition.isKept(kept.id));
  ++wishes.seed;
  composition.composeAnother(wishes);
  waitFor();
  ASSERT_EQ(composition.last()->result.status, ComposeStatus::composed);
  ASSERT_TRUE(findStep(shown(), kept.id));
  EXPECT_EQ(*findStep(shown(), kept.id), kept);
  EXPECT_EQ(placeOf(shown(), kept.id)->section, 2u);
  composition.composeSection(2);
  waitFor();
  EXPECT_TRUE(findStep(shown(), kept.id));
}

TEST_F(CompositionTest, ASectionOfWhichAllStaysIsNotComposedAnew) {
  compose();
  EXPECT_TRUE(composition.canComposeSection(0));
  for (const Step& step : std::vector<Step>(shown().sections[0].steps))
    composition.keep(step.id, true);
  EXPECT_FALSE(composition.canComposeSection(0));
  EXPECT_FALSE(composition.canComposeSection(17));
}

TEST_F(CompositionTest, StopKeepsTheBestSoFar) {
  composition.setEvaluations(1'000'000'000);
  QSignalSpy progress(&composition, &Composition::progressed);
  bool stopped = false;
  QObject::connect(&composition, &Composition::progressed, &composition, [&](const ComposeProgress& so) {
    if (so.best && !stopped) {
      stopped = true;
      composition.stop();
    }
  });
  composition.compose(wishes);
  waitFor();
  EXPECT_TRUE(stopped);
  ASSERT_TRUE(composition.shown());
  EXPECT_TRUE(composition.shown()->result.stopped);
  EXPECT_EQ(breaches(blankClass(wishes)), std::vector<ComposeBreachAt>{});
}

TEST_F(CompositionTest, WhatIsImpossibleLeavesTheClassThatWasShown) {
  compose();
  const ClassPlan first = shown();
  wishes.include = {MovementId{"no-such-movement"}};
  composition.compose(wishes);
  waitFor();
  EXPECT_EQ(composition.last()->result.status, ComposeStatus::impossible);
  EXPECT_EQ(shown(), first);
}

TEST_F(CompositionTest, CompletesTheOpenClassAndKeepsItsSteps) {
  ClassPlan open = document.plan();
  open.sections[2].steps.clear();
  open.target = minutes(30);
  document.load(open);
  composition.beginFrom(open);
  EXPECT_EQ(shown(), open);
  wishes = wishesFor(open);
  composition.compose(wishes);
  waitFor();
  ASSERT_EQ(composition.last()->result.status, ComposeStatus::composed);
  forEachStep(open, [&](const Step& step) {
    ASSERT_TRUE(findStep(shown(), step.id));
    EXPECT_TRUE(composition.isOpen(step.id));
    EXPECT_TRUE(composition.isKept(step.id));
  });
  EXPECT_GT(countSteps(shown()), countSteps(open));
  EXPECT_EQ(document.plan(), open);
}

TEST_F(CompositionTest, NamesAreTakenOverWithoutASearch) {
  compose();
  wishes.name = "Other";
  wishes.sections[0].name = "Hello";
  composition.rename(wishes);
  EXPECT_FALSE(composition.isSearching());
  EXPECT_EQ(shown().name, "Other");
  EXPECT_EQ(shown().sections[0].name, "Hello");
}

TEST_F(CompositionTest, ExplainsAStep) {
  compose();
  std::optional<Explained> heard;
  QObject::connect(&composition, &Composition::explained, [&](const Explained& explained) { heard = explained; });
  composition.explain(anyStep(2));
  ASSERT_TRUE(QTest::qWaitFor([&] { return heard.has_value(); }, 60000));
  EXPECT_EQ(heard->step, anyStep(2));
  EXPECT_FALSE(heard->facts.empty());
  EXPECT_FALSE(heard->reasons.kept);
}

TEST_F(CompositionTest, PeopleWhoChangeAreTold) {
  QSignalSpy told(&composition, &Composition::surroundingsChanged);
  document.perform(RenameClass{"Same people"}, QStringLiteral("Rename"));
  EXPECT_EQ(told.count(), 0);
  std::vector<Person> fewer = document.roster();
  fewer.pop_back();
  document.setRoster(fewer);
  EXPECT_EQ(told.count(), 1);
  EXPECT_EQ(composition.document().roster(), fewer);
}

} // namespace
} // namespace matwright
