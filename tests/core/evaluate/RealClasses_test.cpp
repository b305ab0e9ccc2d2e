// Classes of real movements for people with real conditions.
#include "core/evaluate/Evaluation.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

class RealClasses : public testing::Test {
protected:
  void SetUp() override { ASSERT_TRUE(readRealKnowledge()) << whatIsWrongWithRealKnowledge(); }

  // The first movement of the catalogue that starts and ends in a position of that height and asks for nothing more.
  static Step restingAt(Elevation elevation, std::int64_t id, int seconds) {
    const Knowledge& knowledge = realKnowledge();
    for (const Movement& each : knowledge.catalogue.movements()) {
      const Position* start = knowledge.transitions.find(each.start);
      const Position* end = knowledge.transitions.find(each.end);
      if (start->elevation == elevation && end->elevation == elevation && each.features.empty() && each.props.empty() &&
          each.sides == Sides::together)
        return dosed(stepOf(StepId{id}, each), seconds, DoseUnit::seconds);
    }
    ADD_FAILURE() << "no plain movement " << word(elevation);
    return {};
  }
  static Evaluation evaluated(std::vector<Step> steps, std::vector<Person> people) {
    ClassPlan plan = classOf(std::move(steps));
    plan.people = idsOf(people);
    return evaluate(realKnowledge(), plan, people, kDay);
  }
  static int count(const Evaluation& evaluation, const std::string& rule, std::optional<StepId> step = {}) {
    return static_cast<int>(
        std::count_if(evaluation.cautions.begin(), evaluation.cautions.end(), [&](const Caution& each) {
          return each.rule && each.rule->id.value == rule && (!step || each.step == step);
        }));
  }
};

// A fall of pressure shows within three minutes of standing up, an initial one within 15 seconds (Freeman et al. 2011,
// Clin Auton Res 21: 69-72, second-hand). A long lie and then standing is what the caution is for; staying down is not.
TEST_F(RealClasses, RisingFromALongLieIsCautionedForLowPressureOnStanding) {
  const std::vector<Person> people{person("ida", {"orthostatic-hypotension"})};
  const auto rising = evaluated({restingAt(Elevation::faceUp, 1, 300), restingAt(Elevation::standing, 2, 60)}, people);
  EXPECT_EQ(count(rising, "orthostatic-hypotension-rise", StepId{2}), 1);
  const auto staying = evaluated({restingAt(Elevation::faceUp, 1, 300), restingAt(Elevation::sitting, 2, 60)}, people);
  EXPECT_EQ(count(staying, "orthostatic-hypotension-rise"), 0);
}

std::vector<Person> expecting(int week) {
  std::vector<Person> people{person("ida", {"pregnancy"})};
  people[0].conditions[0].qualifiers["week"] = daysAfter(kDay, 7 * (40 - week));
  return people;
}

// From week 16: more than three minutes on the back in a row, or ten in all. No limit for exercise is published; the
// thresholds are the program's own.
TEST_F(RealClasses, MinutesOnTheBackAddUpFromTheSixteenthWeek) {
  std::vector<Step> steps;
  for (int i = 0; i < 11; ++i) // lie and sit by turns: 11 x 55 s and no long stretch
    for (Elevation elevation : {Elevation::faceUp, Elevation::sitting})
      steps.push_back(restingAt(elevation, static_cast<std::int64_t>(steps.size() + 1), 55));
  EXPECT_EQ(count(evaluated(steps, expecting(16)), "pregnancy-supine-total"), 1);
  EXPECT_EQ(count(evaluated(steps, expecting(16)), "pregnancy-supine-stretch"), 0);
  EXPECT_EQ(count(evaluated(steps, expecting(15)), "pregnancy-supine-total"), 0);
  steps.resize(18);
  EXPECT_EQ(count(evaluated(steps, expecting(16)), "pregnancy-supine-total"), 0);
}

TEST_F(RealClasses, MinutesOnTheBackInARowIncludeTheGapsBetween) {
  const Step one = restingAt(Elevation::faceUp, 1, 85), two = restingAt(Elevation::faceUp, 2, 85);
  const Evaluation evaluation = evaluated({one, two}, expecting(16));
  // 170 s of work; with the talking before each it is more than 180.
  EXPECT_GT(evaluation.schedule.length, Seconds(180));
  EXPECT_EQ(count(evaluation, "pregnancy-supine-stretch", StepId{2}), 1);
}

// More than 60 loaded bends a class: expert opinion (Contreras & Schoenfeld 2011, from memory).
TEST_F(RealClasses, LoadedBendsAreCountedOverTheClass) {
  const Movement* hundred = realKnowledge().catalogue.find(MovementId{"hundred"});
  ASSERT_NE(hundred, nullptr);
  ASSERT_TRUE(hundred->features.contains(Feature::flexLoad));
  const auto bends = [&](int repetitions) {
    return count(
        evaluated({dosed(stepOf(StepId{1}, *hundred), 30), dosed(stepOf(StepId{2}, *hundred), repetitions)}, {}),
        "everyone-flexion-total");
  };
  EXPECT_EQ(bends(30), 0);
  EXPECT_EQ(bends(31), 1);
}

// Common practice, no source: ten breaths of five counts in and five out, a count about half a second.
TEST_F(RealClasses, TheHundredIsOneHundredBeatsInFiftySeconds) {
  const Movement* hundred = realKnowledge().catalogue.find(MovementId{"hundred"});
  ASSERT_NE(hundred, nullptr);
  const TimedStep timed = evaluated({stepOf(StepId{1}, *hundred)}, {}).schedule.steps[0];
  EXPECT_NEAR(timed.work.whole.value(), 50, 1e-9);
  EXPECT_EQ(timed.work.repetitions * countsOf(hundred->tempo), 100);
}

TEST_F(RealClasses, EveryMovementCanFollowEveryOther) {
  const auto& movements = realKnowledge().catalogue.movements();
  for (const Movement& first : movements) {
    std::vector<Step> steps;
    for (const Movement& second : movements) {
      steps.push_back(stepOf(StepId{static_cast<std::int64_t>(steps.size() + 1)}, first));
      steps.push_back(stepOf(StepId{static_cast<std::int64_t>(steps.size() + 1)}, second));
    }
    ClassPlan plan = classOf(steps);
    for (const TimedStep& each : evaluate(realKnowledge(), plan, {}, kDay).schedule.steps)
      ASSERT_TRUE(each.reachable) << first.id.value << " and " << each.movement->id.value;
  }
}

TEST_F(RealClasses, NoCautionNamesWhatAnOptionTakesAway) {
  const RuleBook& book = realKnowledge().rules;
  for (const Movement& movement : realKnowledge().catalogue.movements())
    for (const Option& option : movement.options) {
      const StepFacts facts = evaluated({stepOf(StepId{1}, movement, option.id)}, {}).facts[0];
      const FeatureSet gone = option.removes.without(option.adds);
      for (const Rule& each : book.rules)
        EXPECT_FALSE(met(each.asks, askedBy(facts)).value_or(FeatureSet{}).intersects(gone))
            << movement.id.value << ", " << option.id.value;
      EXPECT_TRUE(facts.features.containsAll(option.adds));
    }
}

TEST(RealDrawn, AddingAPersonTakesNoCautionOnAStepAway) {
  forEachSeed<Draw>(1, 30, [](Draw& draw) {
    ASSERT_TRUE(readRealKnowledge()) << whatIsWrongWithRealKnowledge();
    const Knowledge& knowledge = realKnowledge();
    std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, draw.from(0, 8), 2);
    ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(1, 30));
    plan.people = idsOf(people);
    // Rules on steps and on the class; ways change with the people, and times with the ways.
    const auto told = [&] {
      std::vector<std::tuple<std::string, std::string, std::int64_t, Level>> all;
      const Evaluation evaluation = evaluate(knowledge, plan, people, kDay);
      for (const Caution& each : evaluation.cautions)
        if (each.rule && (each.rule->scope == Scope::step || each.rule->scope == Scope::wholeClass))
          all.emplace_back(each.person == Finding::kNone ? "" : evaluation.people[each.person].value,
                           each.rule->id.value, each.step.value_or(StepId{}).value, each.level);
      std::sort(all.begin(), all.end());
      return all;
    };
    const auto before = told();
    people.push_back(randomPerson(draw, knowledge.rules, kDay, 3, "newcomer"));
    plan.people.push_back(PersonId{"newcomer"});
    const auto after = told();
    EXPECT_TRUE(std::includes(after.begin(), after.end(), before.begin(), before.end()));
  });
}

} // namespace
} // namespace matwright::test
