// What composing promises, over the knowledge that comes with the program.
#include "core/compose/ComposeCheck.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

ClassWishes wishesOf(double length) {
  ClassWishes wishes;
  wishes.length = minutes(length);
  wishes.sections = usualSections(wishes.length);
  wishes.props = {Prop::ring, Prop::ball};
  return wishes;
}

ComposeLimits brief() {
  ComposeLimits limits;
  limits.evaluations = 60'000;
  return limits;
}

ComposeResult compose(const ClassWishes& wishes, std::span<const Person> roster = {}) {
  return composed(realKnowledge(), wishes, roster, kDay, blankClass(wishes), brief()).value();
}

TEST(RealCompose, FillsAnHourAndKeepsEveryPromise) {
  for (double length : {20.0, 45.0, 60.0}) {
    const ClassWishes wishes = wishesOf(length);
    const ComposeResult result = compose(wishes);
    ASSERT_EQ(result.status, ComposeStatus::composed) << length;
    EXPECT_EQ(breachesOf(realKnowledge(), wishes, {}, kDay, blankClass(wishes), result.plan),
              std::vector<ComposeBreachAt>{});
    EXPECT_EQ(result.chosen.size(), countSteps(result.plan));
    EXPECT_GT(countSteps(result.plan), length / 3);
  }
}

TEST(RealCompose, TheSameSeedGivesTheSameClassAndAnotherAnotherOne) {
  ClassWishes wishes = wishesOf(30);
  const ComposeResult first = compose(wishes);
  EXPECT_EQ(compose(wishes), first);
  wishes.seed = 2;
  EXPECT_NE(compose(wishes).plan.sections, first.plan.sections);
}

TEST(RealCompose, KeepsWhatIsThereAndFillsTheRest) {
  const ClassWishes wishes = wishesOf(40);
  ClassPlan half = compose(wishes).plan;
  half.sections[2].steps.clear();
  ClassWishes own = wishesFor(half);
  const ComposeResult result = composed(realKnowledge(), own, {}, kDay, half, brief()).value();
  ASSERT_EQ(result.status, ComposeStatus::composed);
  EXPECT_EQ(breachesOf(realKnowledge(), own, {}, kDay, half, result.plan), std::vector<ComposeBreachAt>{});
  EXPECT_EQ(result.chosen.size() + countSteps(half), countSteps(result.plan));
}

TEST(RealCompose, TellsWhatCannotBe) {
  ClassWishes wishes = wishesOf(30);
  wishes.include = {MovementId{"teaser"}, MovementId{"no-such-movement"}};
  wishes.leaveOut = {MovementId{"roll-up"}};
  wishes.recentIsKnown = false;
  const ComposeResult result = compose(wishes);
  ASSERT_EQ(result.status, ComposeStatus::impossible);
  ASSERT_EQ(result.obstacles.size(), 2u);
  EXPECT_EQ(result.obstacles[0].kind, ObstacleKind::leftOut);
  EXPECT_EQ(result.obstacles[0].movement, MovementId{"roll-up"});
  EXPECT_EQ(result.obstacles[0].neededFor, MovementId{"teaser"});
  EXPECT_EQ(result.obstacles[1].kind, ObstacleKind::unknownMovement);
  EXPECT_EQ(result.plan, blankClass(wishes));
}

} // namespace
} // namespace matwright::test
