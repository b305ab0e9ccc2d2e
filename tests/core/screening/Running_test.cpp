// Rules that count: totals over the class and stretches in a row.
#include "core/screening/Screening.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const Date kDay = day(2026, 6, 1);

// Where a rule speaks and the sum it measured there.
using Spoken = std::vector<std::pair<std::size_t, double>>;

struct Lying { // a step in a resting shape; `rests`: that shape lasts through the gap before it
  double gap, work;
  bool rests = true;
};

StepFacts supine(Lying lying) {
  StepFacts facts;
  facts.features = facts.shapeFeatures = {Feature::supine};
  if (lying.rests)
    facts.restFeatures = {Feature::supine};
  facts.gap = Seconds(lying.gap);
  facts.work = Seconds(lying.work);
  facts.repetitions = 1;
  return facts;
}

StepFacts upright(double gap, double work) {
  StepFacts facts;
  facts.gap = Seconds(gap);
  facts.work = Seconds(work);
  facts.repetitions = 1;
  return facts;
}

StepFacts lifted(double gap, double work, int repetitions = 5) { // a movement's own feature, in no shape
  StepFacts facts = upright(gap, work);
  facts.features = {Feature::neckLift};
  facts.repetitions = repetitions;
  return facts;
}

std::vector<Finding> findings(Scope scope, FeatureSet any, double amount, MeasureUnit unit,
                              const std::vector<StepFacts>& steps) {
  RuleBook book;
  book.rules = {rule("r", scope, Level::adapt, any)};
  book.rules[0].threshold = Threshold{amount, unit, ThresholdOrigin::ours, amount};
  return screen(book, std::span<const Person>{}, activeRules(book, std::span<const Person>{}, kDay), steps, kDay);
}

Spoken spoken(Scope scope, FeatureSet any, double amount, MeasureUnit unit, const std::vector<StepFacts>& steps) {
  Spoken all;
  for (const Finding& each : findings(scope, any, amount, unit, steps))
    all.emplace_back(each.step, each.measured);
  return all;
}

Spoken supineTotal(double amount, const std::vector<StepFacts>& steps) {
  return spoken(Scope::total, {Feature::supine}, amount, MeasureUnit::seconds, steps);
}
Spoken supineStretch(double amount, const std::vector<StepFacts>& steps) {
  return spoken(Scope::stretch, {Feature::supine}, amount, MeasureUnit::seconds, steps);
}
Spoken liftStretch(double amount, const std::vector<StepFacts>& steps) {
  return spoken(Scope::stretch, {Feature::neckLift}, amount, MeasureUnit::seconds, steps);
}

// 5 + 60, upright, 60 (got up in between), 10 + 60: 195 s lying.
const std::vector<StepFacts> kLyingTwice{supine({5, 60}), upright(20, 40), supine({20, 60, false}), supine({10, 60})};

TEST(Totals, SumWorkAndTheGapsInWhichTheShapeLasts) {
  EXPECT_THAT(supineTotal(194, kLyingTwice), ElementsAre(std::pair(3u, 195.0)));
  EXPECT_THAT(supineTotal(195, kLyingTwice), IsEmpty()); // only more than the threshold counts
}

TEST(Totals, SpeakOnceWhereTheSumPassesAndMeasureTheWholeClass) {
  EXPECT_THAT(supineTotal(100, kLyingTwice), ElementsAre(std::pair(2u, 195.0)));
  EXPECT_THAT(supineTotal(0, kLyingTwice), ElementsAre(std::pair(0u, 195.0)));
}

// 600 s in all from week 16 on, the program's own threshold: no published limit for exercise.
TEST(Totals, TenMinutesOnTheBackInAllPassAtTheStepThatFillsThem) {
  const std::vector<StepFacts> steps(12, supine({5, 50})); // 55 s each; the eleventh reaches 605
  EXPECT_THAT(supineTotal(600, steps), ElementsAre(std::pair(10u, 660.0)));
}

// More than 60 loaded bends a class: expert opinion (Contreras & Schoenfeld 2011, from memory).
TEST(Totals, CountRepetitionsWithoutGaps) {
  const std::vector<StepFacts> steps{lifted(5, 30, 20), upright(5, 30), lifted(5, 30, 30), lifted(5, 30, 11)};
  EXPECT_THAT(spoken(Scope::total, {Feature::neckLift}, 60, MeasureUnit::repetitions, steps),
              ElementsAre(std::pair(3u, 61.0)));
  EXPECT_THAT(spoken(Scope::total, {Feature::neckLift}, 61, MeasureUnit::repetitions, steps), IsEmpty());
}

TEST(Totals, AreNotPassedByTheRoundingOfTheirTerms) {
  std::vector<StepFacts> steps(10, supine({0.1, 0.2})); // a little over 3 in doubles
  EXPECT_THAT(supineTotal(3, steps), IsEmpty());
  steps.push_back(supine({0, 0.1}));
  EXPECT_THAT(supineTotal(3, steps), SizeIs(1));
}

TEST(Totals, NameAllFeaturesThatWentIntoThem) {
  const auto found = findings(Scope::total, {Feature::neckLift, Feature::supine}, 10, MeasureUnit::seconds,
                              {supine({0, 20}), lifted(5, 20)});
  ASSERT_THAT(found, SizeIs(1));
  EXPECT_EQ(found[0].because, (FeatureSet{Feature::neckLift, Feature::supine}));
}

TEST(Stretches, RunOverNeighbouringStepsAndTheGapsBetween) {
  EXPECT_THAT(supineStretch(129, {supine({5, 60}), supine({5, 60})}), ElementsAre(std::pair(1u, 130.0)));
  EXPECT_THAT(supineStretch(130, {supine({5, 60}), supine({5, 60})}), IsEmpty());
}

TEST(Stretches, AreBrokenByAStepWithoutTheFeature) {
  EXPECT_THAT(supineStretch(100, {supine({5, 60}), upright(5, 1), supine({5, 60, false})}), IsEmpty());
}

TEST(Stretches, AreBrokenByAGapInWhichTheShapeDoesNotLast) {
  EXPECT_THAT(supineStretch(100, {supine({5, 60}), supine({5, 60, false})}), IsEmpty());
}

TEST(Stretches, SpeakOnceEachAndMeasureToTheirEnd) {
  // 65 + 65 + 65 = 195 in a row, up, then 60 + 65 = 125 in a row.
  const std::vector<StepFacts> steps{supine({5, 60}), supine({5, 60}),        supine({5, 60}),
                                     upright(9, 9),   supine({5, 60, false}), supine({5, 60})};
  EXPECT_THAT(supineStretch(120, steps), ElementsAre(std::pair(1u, 195.0), std::pair(5u, 125.0)));
}

// A head lifted in two movements in a row: the gap is no break, for nothing about the resting shape holds the head, but
// it adds nothing either.
TEST(Stretches, OfAMovementsOwnFeatureGoOnOverTheGapWithoutCountingIt) {
  EXPECT_THAT(liftStretch(30, {lifted(5, 20), lifted(5, 20)}), ElementsAre(std::pair(1u, 40.0)));
  EXPECT_THAT(liftStretch(40, {lifted(5, 20), lifted(5, 20)}), IsEmpty());
}

TEST(Stretches, OfAMovementsOwnFeatureAreBrokenByAStepWithoutIt) {
  EXPECT_THAT(liftStretch(30, {lifted(5, 20), supine({5, 1}), lifted(5, 20)}), IsEmpty());
}

// Hands bear weight in a shape (hands and knees) and then in a movement that rests sitting: sitting is a break.
TEST(Stretches, AShapeFollowedByAMovementThatRestsOtherwiseIsBroken) {
  StepFacts four = upright(5, 100);
  four.features = four.shapeFeatures = {Feature::wristLoad};
  StepFacts lift = upright(5, 100);
  lift.features = {Feature::wristLoad};
  EXPECT_THAT(spoken(Scope::stretch, {Feature::wristLoad}, 180, MeasureUnit::seconds, {four, lift}), IsEmpty());
  EXPECT_THAT(spoken(Scope::stretch, {Feature::wristLoad}, 180, MeasureUnit::seconds, {lift, four}), IsEmpty());
  EXPECT_THAT(spoken(Scope::stretch, {Feature::wristLoad}, 180, MeasureUnit::seconds, {lift, lift}),
              ElementsAre(std::pair(1u, 200.0)));
}

TEST(Stretches, OfRepetitionsAreNotBrokenByGaps) {
  const auto inRow = [](std::vector<StepFacts> steps) {
    return spoken(Scope::stretch, {Feature::supine}, 2, MeasureUnit::repetitions, steps);
  };
  EXPECT_THAT(inRow({supine({5, 9}), supine({5, 9, false}), supine({5, 9, false})}), ElementsAre(std::pair(2u, 3.0)));
  EXPECT_THAT(inRow({supine({5, 9}), supine({5, 9}), upright(1, 1), supine({5, 9})}), IsEmpty());
}

TEST(Stretches, OfSeveralFeaturesTogetherNeedAllInEachStep) {
  RuleBook book;
  book.rules = {rule("r", Scope::stretch, Level::adapt)};
  book.rules[0].asks.all = {Feature::supine, Feature::neckLift};
  book.rules[0].threshold = Threshold{30, MeasureUnit::seconds, ThresholdOrigin::ours, 30};
  StepFacts both = supine({5, 20});
  both.features.insert(Feature::neckLift);
  const auto run = [&](const std::vector<StepFacts>& steps) {
    return screen(book, std::span<const Person>{}, activeRules(book, std::span<const Person>{}, kDay), steps, kDay);
  };
  EXPECT_THAT(run({both, both}), SizeIs(1));
  EXPECT_EQ(run({both, both})[0].measured, 40); // in the gap the head is down
  EXPECT_THAT(run({both, supine({5, 20})}), IsEmpty());
  StepFacts apart = both;
  apart.restFeatures = {};
  EXPECT_THAT(run({both, apart}), IsEmpty());
}

} // namespace
} // namespace matwright::test
