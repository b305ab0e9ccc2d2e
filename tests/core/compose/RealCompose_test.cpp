// What composing promises, over the knowledge that comes with the program.
#include "core/compose/ComposeCheck.h"
#include "core/compose/Reasons.h"
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

// Putting the best other one in its place keeps all, and costs what is said.
TEST(RealCompose, TellsWhyAStepWasChosen) {
  ClassWishes wishes = wishesOf(30);
  wishes.include = {MovementId{"swimming"}};
  wishes.recentIsKnown = false;
  const ComposeResult result = compose(wishes);
  ASSERT_EQ(result.status, ComposeStatus::composed);
  int compared = 0, needed = 0;
  for (std::size_t i = 0; i < result.chosen.size(); i += 3) {
    const StepId id = result.chosen[i];
    const Reasons reasons = reasonsFor(realKnowledge(), wishes, {}, kDay, result.plan, result.chosen, id).value();
    const Step& step = *findStep(result.plan, id);
    EXPECT_FALSE(reasons.kept);
    EXPECT_EQ(reasons.included, step.movement == MovementId{"swimming"});
    needed += !reasons.neededBy.empty();
    for (const MovementId& by : reasons.neededBy) {
      const std::vector<MovementId>& needs = realKnowledge().catalogue.find(by)->prerequisites;
      EXPECT_NE(std::find(needs.begin(), needs.end(), step.movement), needs.end());
    }
    if (!reasons.instead) {
      EXPECT_EQ(reasons.others, 0);
      continue;
    }
    ++compared;
    Seconds sum;
    for (const ReasonShare& share : reasons.shares)
      sum += share.seconds;
    EXPECT_NEAR(sum.value(), reasons.worse.value(), 1e-6);
    EXPECT_GT(reasons.others, 0);
  }
  EXPECT_GT(compared, 1);
  EXPECT_GT(needed, 1);
  EXPECT_FALSE(reasonsFor(realKnowledge(), wishes, {}, kDay, result.plan, result.chosen, StepId{999}));
  EXPECT_TRUE(reasonsFor(realKnowledge(), wishes, {}, kDay, result.plan, {}, result.chosen[0])->kept);
}

} // namespace
} // namespace matwright::test
