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

TEST(ClassPlan, OnePersonsVariantsStandInThePlaceOfTheirSteps) {
  const Catalogue catalogue(smallMovements());
  ClassPlan plan = twoSections();
  Step& curl = plan.sections[0].steps[0];
  curl.dose = {8, DoseUnit::repetitions};
  curl.note = "slowly";
  curl.variants = {{PersonId{"bo"}, MovementId{"fold"}, {}}, {PersonId{"ida"}, MovementId{"curl"}, OptionId{"low"}}};

  const Step low = asDoneBy(PersonId{"ida"}, plan, catalogue).sections[0].steps[0];
  EXPECT_EQ(low.id, StepId{4});
  EXPECT_EQ(low.option, OptionId{"low"});
  EXPECT_EQ(low.dose, (Dose{8, DoseUnit::repetitions})) << "what was dosed for the step holds for its options";
  EXPECT_TRUE(low.variants.empty());
  const Step fold = asDoneBy(PersonId{"bo"}, plan, catalogue).sections[0].steps[0];
  EXPECT_EQ(fold.movement, MovementId{"fold"});
  EXPECT_EQ(fold.dose, (Dose{40, DoseUnit::seconds}));
  EXPECT_EQ(asDoneBy(PersonId{"cy"}, plan, catalogue), plan);
  EXPECT_EQ(asDoneBy(PersonId{"ida"}, plan, catalogue).sections[1], plan.sections[1]);
}

TEST(ClassPlan, AVariantThatNobodyKnowsKeepsDoseAndTempo) {
  ClassPlan plan = twoSections();
  plan.sections[1].steps[0].variants = {{PersonId{"bo"}, MovementId{"handstand"}, OptionId{"gone"}}};
  const Step step = asDoneBy(PersonId{"bo"}, plan, Catalogue(smallMovements())).sections[1].steps[0];
  EXPECT_EQ(step.movement, MovementId{"handstand"});
  EXPECT_EQ(step.option, OptionId{"gone"});
  EXPECT_EQ(step.dose, plan.sections[1].steps[0].dose);
  EXPECT_EQ(step.tempo, plan.sections[1].steps[0].tempo);
}

} // namespace
} // namespace matwright::test
