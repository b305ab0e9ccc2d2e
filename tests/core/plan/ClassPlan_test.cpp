#include "core/plan/ClassPlan.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>
#include <limits>

namespace matwright::test {
namespace {

ClassPlan twoSections() {
  ClassPlan plan;
  plan.sections = {{"One", {step(4, "curl"), step(9, "kick")}}, {"Two", {step(7, "swing")}}};
  return plan;
}

TEST(ClassPlan, AnEmptyClassHasFourSectionsAndNoSteps) {
  const ClassPlan plan = emptyClass("Monday");
  EXPECT_EQ(plan.name, "Monday");
  EXPECT_EQ(plan.sections.size(), 4u);
  EXPECT_EQ(countSteps(plan), 0u);
  EXPECT_EQ(highestStepId(plan), StepId{0});
  EXPECT_TRUE(isWellFormed(plan.pace));
}

TEST(ClassPlan, StepsAreFoundByIdInWhateverSection) {
  const ClassPlan plan = twoSections();
  EXPECT_EQ(countSteps(plan), 3u);
  EXPECT_EQ(placeOf(plan, StepId{9}), (Place{0, 1}));
  EXPECT_EQ(placeOf(plan, StepId{7}), (Place{1, 0}));
  EXPECT_EQ(placeOf(plan, StepId{5}), std::nullopt);
  EXPECT_EQ(findStep(plan, StepId{7}), &plan.sections[1].steps[0]);
  EXPECT_EQ(findStep(plan, StepId{5}), nullptr);
  EXPECT_EQ(highestStepId(plan), StepId{9});
}

TEST(ClassPlan, StepsAreVisitedInOrder) {
  std::vector<std::int64_t> ids;
  forEachStep(twoSections(), [&](const Step& each) { ids.push_back(each.id.value); });
  EXPECT_EQ(ids, (std::vector<std::int64_t>{4, 9, 7}));
}

TEST(ClassPlan, AStepTakesTheUsualDoseAndTempo) {
  const Movement curl = smallMovements().front();
  const Step made = stepOf(StepId{3}, curl);
  EXPECT_EQ(made.id, StepId{3});
  EXPECT_EQ(made.movement, curl.id);
  EXPECT_TRUE(made.option.empty());
  EXPECT_EQ(made.dose, curl.dose);
  EXPECT_EQ(made.tempo, curl.tempo);
  EXPECT_EQ(made.onlySide, std::nullopt);
}

TEST(ClassPlan, AStepInAnOptionTakesItsDoseAndTempo) {
  const Movement curl = smallMovements().front();
  EXPECT_EQ(stepOf(StepId{3}, curl, OptionId{"low"}).dose, (Dose{3, DoseUnit::repetitions}));
  EXPECT_EQ(stepOf(StepId{3}, curl, OptionId{"low"}).tempo, curl.tempo);
  EXPECT_EQ(stepOf(StepId{3}, curl, OptionId{"hard"}).tempo.secondsPerCount, Seconds(2));
  EXPECT_EQ(stepOf(StepId{3}, curl, OptionId{"hard"}).option.value, "hard");
}

TEST(ClassPlan, AStepInAnOptionThatIsNotThereIsAsWritten) {
  const Movement curl = smallMovements().front();
  EXPECT_EQ(stepOf(StepId{3}, curl, OptionId{"sideways"}), stepOf(StepId{3}, curl));
}

TEST(Pace, BoundsAreInclusive) {
  EXPECT_TRUE(isWellFormed({Pace::kLowestMobility, Pace::kSlowestSpeech, Seconds(0)}));
  EXPECT_TRUE(isWellFormed({Pace::kHighestMobility, Pace::kFastestSpeech, Seconds(Pace::kLongestSettle)}));
}

TEST(Pace, IsIllFormedOutsideItsBounds) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(isWellFormed({0.49, 150, Seconds(2)}));
  EXPECT_FALSE(isWellFormed({4.01, 150, Seconds(2)}));
  EXPECT_FALSE(isWellFormed({1, 59, Seconds(2)}));
  EXPECT_FALSE(isWellFormed({1, 241, Seconds(2)}));
  EXPECT_FALSE(isWellFormed({1, 150, Seconds(-1)}));
  EXPECT_FALSE(isWellFormed({1, 150, Seconds(61)}));
  EXPECT_FALSE(isWellFormed({nan, 150, Seconds(2)}));
  EXPECT_FALSE(isWellFormed({1, nan, Seconds(2)}));
  EXPECT_FALSE(isWellFormed({1, 150, Seconds(nan)}));
}

} // namespace
} // namespace matwright::test
