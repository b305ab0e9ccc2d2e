// The edit that puts into a class what fills it up.
#include "core/compose/Compose.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

// What a class looks like that was filled up: other steps anywhere among its own, and now and then another length, pace
// and other people.
ComposeResult filledAtRandom(Draw& draw, const ClassPlan& before) {
  ComposeResult result;
  result.status = ComposeStatus::composed;
  result.plan = before;
  std::int64_t id = highestStepId(before).value;
  for (int i = draw.from(0, 12); i > 0; --i) {
    auto& steps = result.plan.sections[draw.below(result.plan.sections.size())].steps;
    steps.insert(steps.begin() + static_cast<std::ptrdiff_t>(draw.below(steps.size() + 1)),
                 randomStep(draw, realKnowledge().catalogue, StepId{++id}));
  }
  if (draw.chance(0.3))
    result.plan.target = minutes(draw.from(10, 90));
  if (draw.chance(0.3))
    result.plan.pace.mobility = 1.5;
  if (draw.chance(0.3))
    result.plan.people = {PersonId{"ada"}};
  return result;
}

TEST(ComposeEdit, GivesExactlyTheClassThatWasComposed) {
  forEachSeed<Draw>(1, 200, [](Draw& draw) {
    const ClassPlan before = randomClass(draw, realKnowledge().catalogue, draw.from(0, 20));
    const ComposeResult result = filledAtRandom(draw, before);
    const auto after = applyEdit(before, editOf(before, result));
    ASSERT_TRUE(after);
    EXPECT_EQ(*after, result.plan);
  });
}

TEST(ComposeEdit, ChangesNothingWhereNothingIsNew) {
  Draw draw(1);
  const ClassPlan before = randomClass(draw, realKnowledge().catalogue, 8);
  ComposeResult result;
  result.plan = before;
  EXPECT_TRUE(std::get<EditGroup>(editOf(before, result)).edits.empty());
}

TEST(ComposeEdit, PutsARunOfNewStepsInAtOnce) {
  const ClassPlan before = emptyClass("One");
  ComposeResult result;
  result.plan = before;
  Draw draw(2);
  for (int id = 1; id <= 5; ++id)
    result.plan.sections[1].steps.push_back(randomStep(draw, realKnowledge().catalogue, StepId{id}));
  EXPECT_EQ(std::get<EditGroup>(editOf(before, result)).edits.size(), 1u);
}

TEST(ComposeEdit, GivesTheClassOfASearch) {
  ClassWishes wishes;
  wishes.length = minutes(20);
  wishes.sections = usualSections(wishes.length);
  wishes.people = {PersonId{"nobody-on-file"}};
  ClassPlan before = blankClass(wishes);
  before.people.clear();
  before.sections[1].steps.push_back(stepOf(StepId{7}, *realKnowledge().catalogue.find(MovementId{"pelvic-tilt"})));
  ComposeLimits limits;
  limits.evaluations = 20'000;
  const ComposeResult result = composed(realKnowledge(), wishes, {}, day(2026, 6, 1), before, limits).value();
  ASSERT_EQ(result.status, ComposeStatus::composed);
  EXPECT_EQ(applyEdit(before, editOf(before, result)).value(), result.plan);
}

} // namespace
} // namespace matwright::test
