// Rules on where in the class a step stands, what comes before it, how long it lasts, and what the class has not.
#include "core/screening/Screening.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Date kDay = day(2026, 6, 1);

using Spoken = std::vector<std::pair<std::size_t, double>>; // where, and what was measured there

std::vector<Finding> findings(const Rule& rule, const std::vector<StepFacts>& steps) {
  RuleBook book;
  book.rules = {rule};
  return screen(book, std::span<const Person>{}, activeRules(book, std::span<const Person>{}, kDay), steps, kDay);
}

Spoken spoken(const Rule& rule, const std::vector<StepFacts>& steps) {
  Spoken all;
  for (const Finding& each : findings(rule, steps))
    all.emplace_back(each.step, each.measured);
  return all;
}

StepFacts asks(FeatureSet features, double work = 30, Elevation at = Elevation::faceUp, int effort = 4) {
  StepFacts facts;
  facts.features = features;
  facts.work = facts.oneSide = Seconds(work);
  facts.gap = Seconds(10);
  facts.repetitions = 5;
  facts.at = {at};
  facts.effort = Effort(effort);
  return facts;
}

// One step after another, each with a gap of 10 s before it.
std::vector<StepFacts> inOrder(std::vector<StepFacts> steps) {
  Seconds at;
  for (StepFacts& each : steps) {
    each.workBegin = at + each.gap;
    at = workEnd(each);
  }
  return steps;
}

Rule measuring(Scope scope, FeatureSet any, double amount, MeasureUnit unit) {
  Rule made = rule("r", scope, Level::adapt, any);
  made.threshold = Threshold{amount, unit, ThresholdOrigin::ours, amount};
  return made;
}

// ---- a step by the time of one side ----

TEST(LongSteps, SpeakWhenOneSideTakesLonger) {
  // A stretch held for more than 60 s (Garber 2011: about 60 s in all).
  const Rule hold = measuring(Scope::step, {Feature::stretchEnd}, 60, MeasureUnit::seconds);
  StepFacts sided = asks({Feature::stretchEnd}, 120);
  sided.oneSide = Seconds(60);
  EXPECT_THAT(spoken(hold, inOrder({asks({Feature::stretchEnd}, 60), asks({Feature::stretchEnd}, 61), sided,
                                    asks({Feature::rot}, 300)})),
              ElementsAre(std::pair(1u, 61.0)));
}

// ---- steps and ways that are counted ----

TEST(Counted, StepsInARowPassTheirNumber) {
  // More than two in a row that press on the midline: the program's own.
  const Rule inRow = measuring(Scope::stretch, {Feature::abdPressure}, 2, MeasureUnit::steps);
  const StepFacts press = asks({Feature::abdPressure}), other = asks({});
  EXPECT_THAT(spoken(inRow, inOrder({press, press, other, press, press, press, press})),
              ElementsAre(std::pair(5u, 4.0)));
  EXPECT_THAT(spoken(inRow, inOrder({press, press, other, press, press})), IsEmpty());
}

TEST(Counted, StepsOfTheWholeClassPassTheirNumber) {
  const Rule all = measuring(Scope::total, {Feature::abdPressure}, 2, MeasureUnit::steps);
  const StepFacts press = asks({Feature::abdPressure}), other = asks({});
  EXPECT_THAT(spoken(all, inOrder({press, other, press, other, press, press})), ElementsAre(std::pair(4u, 4.0)));
}

TEST(Counted, ChangesAreWaysIntoSteps) {
  // More than four changes between floor and standing: the program's own.
  const Rule rising = measuring(Scope::total, {Feature::rise}, 4, MeasureUnit::changes);
  StepFacts risen = asks({});
  risen.wayFeatures = {Feature::rise, Feature::kneel};
  const StepFacts inPlace = asks({Feature::rise}); // rises within: no way
  EXPECT_THAT(spoken(rising, inOrder({risen, inPlace, risen, risen, inPlace, risen})), IsEmpty());
  EXPECT_THAT(spoken(rising, inOrder({risen, risen, risen, risen, inPlace, risen, risen})),
              ElementsAre(std::pair(5u, 6.0)));
  EXPECT_EQ(findings(rising, inOrder({risen, risen, risen, risen, risen}))[0].because, FeatureSet{Feature::rise});
}

// ---- heights and effort ----

TEST(Heights, LastThroughAGapInWhichTheBodyStaysThere) {
  Rule standing = measuring(Scope::total, {}, 100, MeasureUnit::seconds);
  standing.asks.at = {Elevation::standing};
  StepFacts up = asks({}, 50, Elevation::standing);
  EXPECT_THAT(spoken(standing, inOrder({up, up})), IsEmpty());
  StepFacts stayed = up;
  stayed.restAt = {Elevation::standing};
  EXPECT_THAT(spoken(standing, inOrder({up, stayed})), ElementsAre(std::pair(1u, 110.0)));
}

TEST(Heights, GoOnInARowOnlyWhereTheBodyStaysThere) {
  Rule standing = measuring(Scope::stretch, {}, 100, MeasureUnit::seconds);
  standing.asks.at = {Elevation::standing};
  const StepFacts up = asks({}, 60, Elevation::standing);
  StepFacts stayed = up;
  stayed.restAt = {Elevation::standing};
  EXPECT_THAT(spoken(standing, inOrder({up, up, up})), IsEmpty()); // down and up again between them
  EXPECT_THAT(spoken(standing, inOrder({up, stayed})), ElementsAre(std::pair(1u, 130.0)));
}

TEST(Hard, WorkGoesOnOverGapsThatAddNothing) {
  Rule hard = measuring(Scope::stretch, {}, 100, MeasureUnit::seconds);
  hard.asks.effortFrom = 7;
  const StepFacts seven = asks({}, 60, Elevation::faceUp, 7), six = asks({}, 60, Elevation::faceUp, 6);
  EXPECT_THAT(spoken(hard, inOrder({seven, seven})), ElementsAre(std::pair(1u, 120.0)));
  EXPECT_THAT(spoken(hard, inOrder({seven, six, seven})), IsEmpty());
}

// ---- early ----

// Vigorous work before a warm-up of 10 to 15 min (Stickland 2012, minutes from memory).
TEST(Early, SpeaksWhereWorkBeginsBeforeSoMuchHasPassed) {
  Rule vigorous = measuring(Scope::early, {}, 100, MeasureUnit::seconds);
  vigorous.asks.effortFrom = 7;
  const StepFacts easy = asks({}, 35), hard = asks({}, 35, Elevation::faceUp, 8);
  // Work begins at 10, 55, 100.
  EXPECT_THAT(spoken(vigorous, inOrder({hard, hard, hard})), ElementsAre(std::pair(0u, 10.0), std::pair(1u, 55.0)));
  EXPECT_THAT(spoken(vigorous, inOrder({easy, easy, hard})), IsEmpty());
}

TEST(Early, InPercentIsOfTheLengthOfTheClass) {
  const Rule bend = measuring(Scope::early, {Feature::flexEnd}, 25, MeasureUnit::percent);
  const StepFacts fold = asks({Feature::flexEnd}, 40);
  // Work begins at 10, 60, 110, 160 of 200 s: 5, 30, 55 and 80 %.
  EXPECT_THAT(spoken(bend, inOrder({fold, fold, fold, fold})), ElementsAre(std::pair(0u, 5.0)));
  Rule wider = bend;
  wider.threshold->amount = 30;
  EXPECT_THAT(spoken(wider, inOrder({fold, fold, fold, fold})), ElementsAre(std::pair(0u, 5.0)));
  wider.threshold->amount = 30.1;
  EXPECT_EQ(spoken(wider, inOrder({fold, fold, fold, fold})).size(), 2u);
}

// ---- late ----

// A cool-down of 5 to 10 min (ACSM, from memory).
TEST(Late, SpeaksWhereWorkGoesOnWhenNoMoreThanThatIsLeft) {
  Rule vigorous = measuring(Scope::late, {}, 100, MeasureUnit::seconds);
  vigorous.asks.effortFrom = 7;
  const StepFacts hard = asks({}, 40, Elevation::faceUp, 8), easy = asks({}, 40);
  // Work ends 150, 100, 50 and 0 s before the end.
  EXPECT_THAT(spoken(vigorous, inOrder({hard, hard, hard, hard})),
              ElementsAre(std::pair(2u, 50.0), std::pair(3u, 0.0)));
  EXPECT_THAT(spoken(vigorous, inOrder({hard, hard, easy, easy})), IsEmpty());
}

// Balance in the first two thirds: the program's own. A step of which only the end lies in the last third speaks.
TEST(Late, InPercentIsOfTheLengthOfTheClassAndCountsEveryPart) {
  Rule balance = measuring(Scope::late, {Feature::balance}, 33, MeasureUnit::percent);
  const StepFacts wobble = asks({Feature::balance}, 90);
  // Work from 10 to 100, 110 to 200, 210 to 300 of 300 s.
  EXPECT_THAT(spoken(balance, inOrder({wobble, wobble, wobble})), ElementsAre(std::pair(2u, 0.0)));
  balance.threshold->amount = 34;
  const Spoken both = spoken(balance, inOrder({wobble, wobble, wobble}));
  ASSERT_EQ(both.size(), 2u);
  EXPECT_EQ(both[0].first, 1u);
  EXPECT_NEAR(both[0].second, 100.0 / 3, 1e-9);
}

TEST(Late, CountsTheTurnBetweenSidesAsPartOfTheStep) {
  const Rule late = measuring(Scope::late, {Feature::balance}, 5, MeasureUnit::seconds);
  StepFacts sided = asks({Feature::balance}, 60);
  sided.turning = Seconds(8);
  EXPECT_THAT(spoken(late, inOrder({sided})), ElementsAre(std::pair(0u, 0.0)));
  EXPECT_EQ(workEnd(inOrder({sided})[0]), Seconds(78));
}

// ---- order ----

// From lying to standing with less than 60 s between: the program's own.
Rule fromLyingToStanding() {
  Rule made = measuring(Scope::order, {}, 60, MeasureUnit::seconds);
  made.asks.at = {Elevation::standing};
  made.after = Earlier{{{Feature::supine, Feature::prone}, {}, {}, 0}, Seconds{}};
  return made;
}

const StepFacts kLying = asks({Feature::supine});
const StepFacts kSitting = asks({}, 50, Elevation::sitting);
const StepFacts kStanding = asks({}, 30, Elevation::standing);

TEST(Order, SpeaksWhereTooLittleLiesBetween) {
  const auto steps = inOrder({kLying, kStanding});
  const auto found = findings(fromLyingToStanding(), steps);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].step, 1u);
  EXPECT_EQ(found[0].earlier, 0u);
  EXPECT_EQ(found[0].measured, 10); // from the end of the one to the beginning of the other
  EXPECT_TRUE(found[0].because.empty());
  EXPECT_THAT(spoken(fromLyingToStanding(), inOrder({kLying, kSitting, kStanding})), IsEmpty()); // 70 s
  EXPECT_THAT(spoken(fromLyingToStanding(), inOrder({kStanding, kLying})), IsEmpty());
}

TEST(Order, IsSilentWhereExactlyThatLiesBetween) {
  Rule rule = fromLyingToStanding();
  rule.threshold->amount = 70;
  EXPECT_THAT(spoken(rule, inOrder({kLying, kSitting, kStanding})), IsEmpty());
  rule.threshold->amount = 70.1;
  EXPECT_THAT(spoken(rule, inOrder({kLying, kSitting, kStanding})), ElementsAre(std::pair(2u, 70.0)));
}

TEST(Order, SpeaksAtEachLaterStepThatIsTooNear) {
  EXPECT_THAT(spoken(fromLyingToStanding(), inOrder({kLying, kStanding, kStanding, kStanding})),
              ElementsAre(std::pair(1u, 10.0), std::pair(2u, 50.0)));
}

TEST(Order, CountsFromTheLastStepOfTheEarlierKind) {
  StepFacts both = asks({Feature::supine}, 30, Elevation::standing); // of either kind
  EXPECT_THAT(spoken(fromLyingToStanding(), inOrder({kLying, both, kSitting, kStanding})),
              ElementsAre(std::pair(1u, 10.0)));
  EXPECT_THAT(spoken(fromLyingToStanding(), inOrder({kLying, both, kStanding})),
              ElementsAre(std::pair(1u, 10.0), std::pair(2u, 10.0)));
  EXPECT_EQ(findings(fromLyingToStanding(), inOrder({kLying, both, kStanding}))[1].earlier, 1u);
}

// An arch straight after a loaded bend, with no neutral item between: a popular habit, no source.
TEST(Order, InStepsCountsThoseBetween) {
  Rule straight = measuring(Scope::order, {Feature::extLoad}, 1, MeasureUnit::steps);
  straight.after = Earlier{{{Feature::flexLoad}, {}, {}, 0}, Seconds{}};
  const StepFacts bend = asks({Feature::flexLoad}), arch = asks({Feature::extLoad}), plain = asks({});
  EXPECT_THAT(spoken(straight, inOrder({bend, arch, plain, arch})), ElementsAre(std::pair(1u, 0.0)));
  straight.threshold->amount = 2;
  EXPECT_THAT(spoken(straight, inOrder({bend, plain, arch, plain, arch})), ElementsAre(std::pair(2u, 1.0)));
}

// More than 2 min at the end of the bend, then loaded work within 2 min (McGill & Brown 1992: half of the stiffness is
// back in 2 min; the marks are the program's own).
TEST(Order, CountsOnlyWhatLastedLongEnoughBefore) {
  Rule stiff = measuring(Scope::order, {Feature::flexLoad}, 120, MeasureUnit::seconds);
  stiff.after = Earlier{{{Feature::flexEnd}, {}, {}, 0}, Seconds(120)};
  const StepFacts curl = asks({Feature::flexLoad}), plain = asks({}, 20);
  EXPECT_THAT(spoken(stiff, inOrder({asks({Feature::flexEnd}, 120), curl})), IsEmpty());
  EXPECT_THAT(spoken(stiff, inOrder({asks({Feature::flexEnd}, 121), curl})), ElementsAre(std::pair(1u, 10.0)));
  // Two in a row last together; with a break between they do not.
  const StepFacts fold = asks({Feature::flexEnd}, 70);
  EXPECT_THAT(spoken(stiff, inOrder({fold, fold, curl})), ElementsAre(std::pair(2u, 10.0)));
  EXPECT_THAT(spoken(stiff, inOrder({fold, plain, fold, curl})), IsEmpty());
  // A short fold after the long one does not wipe it out.
  EXPECT_THAT(spoken(stiff, inOrder({asks({Feature::flexEnd}, 130), plain, asks({Feature::flexEnd}, 5), curl})),
              ElementsAre(std::pair(3u, 55.0)));
}

TEST(Order, MayAskTheEarlierStepForAllAndForItsHeight) {
  Rule rule = fromLyingToStanding();
  rule.after->demand = {{}, {Feature::inverted, Feature::breathHold}, {Elevation::faceUp}, 0};
  const StepFacts enough = asks({Feature::inverted, Feature::breathHold});
  EXPECT_EQ(spoken(rule, inOrder({enough, kStanding})).size(), 1u);
  EXPECT_THAT(spoken(rule, inOrder({asks({Feature::inverted}), kStanding})), IsEmpty());
  StepFacts elsewhere = enough;
  elsewhere.at = {Elevation::faceDown};
  EXPECT_THAT(spoken(rule, inOrder({elsewhere, kStanding})), IsEmpty());
}

// ---- missing ----

// Nothing for balance: prompts to add it (Morin 2023: balance and resistance each twice a week).
TEST(Missing, SpeaksOnceForAClassThatHasNoneOfIt) {
  const Rule none = rule("r", Scope::missing, Level::watch, {Feature::balance, Feature::extLoad});
  const auto found = findings(none, inOrder({asks({Feature::rot}), asks({})}));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].step, Finding::kNone);
  EXPECT_TRUE(found[0].because.empty());
  EXPECT_THAT(spoken(none, inOrder({asks({Feature::rot}), asks({Feature::extLoad})})), IsEmpty());
}

TEST(Missing, DoesNotCountWhatIsAskedOnTheWay) {
  StepFacts way = asks({});
  way.wayFeatures = {Feature::balance};
  EXPECT_EQ(spoken(rule("r", Scope::missing, Level::watch, {Feature::balance}), inOrder({way})).size(), 1u);
}

TEST(Missing, SaysNothingOfAnEmptyClass) {
  EXPECT_THAT(spoken(rule("r", Scope::missing, Level::watch, {Feature::balance}), {}), IsEmpty());
}

TEST(Missing, SpeaksForEachWhomItConcerns) {
  RuleBook book;
  book.conditions = {condition("ache")};
  book.rules = {rule("r", Scope::missing, Level::watch, {Feature::balance}, "ache")};
  const std::vector<Person> people{person("ida", {"ache"}), person("bo"), person("cy", {"ache"})};
  const auto steps = inOrder({asks({})});
  const auto found = screen(book, people, activeRules(book, people, kDay), steps, kDay);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[1].person, 2u);
}

} // namespace
} // namespace matwright::test
