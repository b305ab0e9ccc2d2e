// One section composed anew, while the rest stays.
#include "core/compose/ComposeAgain.h"
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
  wishes.recentIsKnown = false;
  return wishes;
}

ComposeLimits brief() {
  ComposeLimits limits;
  limits.evaluations = 40'000;
  return limits;
}

ComposeResult compose(const ClassWishes& wishes) {
  return composed(realKnowledge(), wishes, {}, kDay, blankClass(wishes), brief()).value();
}

ComposeResult again(const ClassWishes& wishes, const ClassPlan& plan, std::size_t section,
                    std::span<const MovementId> unlike = {}) {
  return sectionComposedAgain(realKnowledge(), wishes, {}, kDay, blankClass(wishes), plan, section, brief(), unlike)
      .value();
}

Step stepDoing(int id, const char* movement) {
  return stepOf(StepId{id}, *realKnowledge().catalogue.find(MovementId{movement}));
}

TEST(ComposeAgain, KeepsTheOtherSectionsAndEveryPromise) {
  const ClassWishes wishes = wishesOf(30);
  const ClassPlan plan = compose(wishes).plan;
  for (std::size_t section : {1u, 2u}) {
    const auto unlike = movementsBeyond(plan, blankClass(wishes));
    const ComposeResult other = again(wishes, plan, section, unlike);
    ASSERT_EQ(other.status, ComposeStatus::composed) << section;
    for (std::size_t i = 0; i < plan.sections.size(); ++i)
      EXPECT_EQ(other.plan.sections[i] == plan.sections[i], i != section) << i;
    EXPECT_EQ(breachesOf(realKnowledge(), wishes, {}, kDay, blankClass(wishes), other.plan),
              std::vector<ComposeBreachAt>{});
    EXPECT_EQ(other.chosen.size(), countSteps(other.plan));
  }
}

TEST(ComposeAgain, KeepsTheOtherSectionsWhereNoneHasALength) {
  ClassWishes wishes = wishesOf(20);
  for (WishedSection& section : wishes.sections)
    section.length = {};
  ClassPlan plan = compose(wishes).plan;
  const auto fullest = std::max_element(plan.sections.begin(), plan.sections.end(),
                                        [](const auto& a, const auto& b) { return a.steps.size() < b.steps.size(); });
  const auto section = static_cast<std::size_t>(fullest - plan.sections.begin());
  const ComposeResult other = again(wishes, plan, section, movementsBeyond(plan, blankClass(wishes)));
  ASSERT_EQ(other.status, ComposeStatus::composed);
  for (std::size_t i = 0; i < plan.sections.size(); ++i)
    EXPECT_EQ(other.plan.sections[i] == plan.sections[i], i != section) << i;
}

TEST(ComposeAgain, KeepsWhatKeptStepsNeed) {
  const Movement& teaser = *realKnowledge().catalogue.find(MovementId{"teaser"});
  ASSERT_FALSE(teaser.prerequisites.empty());
  ClassPlan plan = emptyClass("One");
  plan.sections[1].steps = {stepDoing(1, teaser.prerequisites.front().value.c_str()), stepDoing(2, "swimming")};
  plan.sections[2].steps = {stepDoing(3, "teaser")};
  const StepId kept[] = {StepId{3}};
  const ClassPlan left = keptWith(realKnowledge().catalogue, plan, kept);
  EXPECT_TRUE(findStep(left, StepId{1}));
  EXPECT_FALSE(findStep(left, StepId{2}));
  EXPECT_TRUE(findStep(left, StepId{3}));
  EXPECT_EQ(movementsBeyond(plan, left), std::vector<MovementId>{MovementId{"swimming"}});
}

TEST(ComposeAgain, KeepsNothingOfAClassWhereNothingIsAskedFor) {
  ClassPlan plan = emptyClass("One");
  plan.sections[0].steps = {stepDoing(1, "swimming")};
  EXPECT_EQ(countSteps(keptWith(realKnowledge().catalogue, plan, {})), 0u);
}

} // namespace
} // namespace matwright::test
