#include "core/evaluate/Evaluation.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const Date kDay = day(2026, 6, 1);
constexpr std::size_t kNone = Finding::kNone;

class EvaluationTest : public testing::Test {
protected:
  EvaluationTest() {
    RuleBook& book = knowledge_.rules;
    book.conditions = {condition("ache"), condition("pang"), condition("silent")};
    book.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                  rule("up", Scope::way, Level::askFirst, {Feature::rise}, "pang"),
                  rule("whole", Scope::wholeClass, Level::leaveOut, {}, "pang"),
                  rule("bend-way", Scope::way, Level::adapt, {Feature::flexLoad}, "ache"),
                  rule("all", Scope::step, Level::watch, {Feature::balance})};
  }
  Evaluation of(std::vector<Step> steps, std::vector<std::string> people = {}) const {
    ClassPlan plan = classOf(std::move(steps));
    for (std::string& name : people)
      plan.people.push_back(PersonId{std::move(name)});
    return evaluate(knowledge_, plan, roster_, kDay);
  }
  Knowledge knowledge_ = smallKnowledge();
  std::vector<Person> roster_{person("ida", {"ache"}), person("bo", {"pang", "ache"}), person("cy"),
                              person("di", {"cramp"}), person("ed", {"silent"})};
};

std::vector<std::string> told(const Evaluation& evaluation) {
  std::vector<std::string> all;
  for (const Caution& each : evaluation.cautions)
    all.push_back((each.step ? std::to_string(each.step->value) : "-") + " " + std::string(word(each.level)) + " " +
                  (each.rule ? each.rule->id.value : each.name) + " " +
                  (each.person == kNone ? "*" : evaluation.people[each.person].value));
  return all;
}

TEST_F(EvaluationTest, OnlyThoseWhomTheClassNamesAreScreenedInItsOrder) {
  const Evaluation evaluation = of({step(1, "curl")}, {"bo", "ida"});
  EXPECT_THAT(evaluation.people, ElementsAre(PersonId{"bo"}, PersonId{"ida"}));
  EXPECT_THAT(told(evaluation), ElementsAre("- leave-out whole bo", "1 adapt bend bo", "1 adapt bend ida"));
}

TEST_F(EvaluationTest, ACautionSaysWhoWhichConditionWhichRuleAndWhy) {
  const Caution caution = of({step(1, "curl")}, {"bo"}).cautions.at(1);
  EXPECT_EQ(caution.kind, CautionKind::rule);
  EXPECT_EQ(caution.level, Level::adapt);
  EXPECT_EQ(caution.step, StepId{1});
  EXPECT_EQ(caution.rule, &knowledge_.rules.rules[0]);
  EXPECT_EQ(caution.person, 0u);
  EXPECT_EQ(caution.condition, 1u);
  EXPECT_EQ(caution.because, FeatureSet{Feature::flexLoad});
}

TEST_F(EvaluationTest, WaysGoRoundWhatSomebodyMustAvoid) {
  EXPECT_EQ(of({step(1, "curl"), step(2, "swing")}, {"cy"}).schedule.steps[1].moving, Seconds(10));
  EXPECT_EQ(of({step(1, "curl"), step(2, "swing")}, {"cy", "ida"}).schedule.steps[1].moving, Seconds(15));
}

TEST_F(EvaluationTest, WhatNoWayGoesRoundBecomesACaution) {
  EXPECT_THAT(told(of({step(1, "fold"), step(2, "swing")}, {"bo"})),
              ElementsAre("- leave-out whole bo", "2 ask-first up bo", "2 watch all *"));
  EXPECT_EQ(of({step(1, "fold"), step(2, "swing")}, {"bo"}).schedule.steps[1].way.unavoided, FeatureSet{Feature::rise});
}

TEST_F(EvaluationTest, RulesForEverybodySpeakThoughNobodyIsChosen) {
  EXPECT_THAT(told(of({step(1, "swing")})), ElementsAre("1 watch all *"));
}

TEST_F(EvaluationTest, AnUnknownMovementAsksFirst) {
  const Evaluation evaluation = of({step(1, "curl"), step(2, "handstand")});
  ASSERT_THAT(evaluation.cautions, SizeIs(1));
  EXPECT_EQ(evaluation.cautions[0].kind, CautionKind::unknownMovement);
  EXPECT_EQ(evaluation.cautions[0].level, Level::askFirst);
  EXPECT_EQ(evaluation.cautions[0].step, StepId{2});
  EXPECT_EQ(evaluation.cautions[0].name, "handstand");
}

TEST_F(EvaluationTest, AnUnknownOptionIsWatchedAndScreenedAsWritten) {
  const Evaluation evaluation = of({step(1, "curl", "gone")}, {"ida"});
  EXPECT_THAT(told(evaluation), ElementsAre("1 adapt bend ida", "1 watch gone *"));
  EXPECT_EQ(evaluation.cautions[1].kind, CautionKind::unknownOption);
}

TEST_F(EvaluationTest, AConditionThatNoRuleKnowsIsWatched) {
  const Evaluation evaluation = of({step(1, "curl")}, {"cy", "di", "ed"});
  EXPECT_THAT(told(evaluation), ElementsAre("- watch cramp di", "- watch silent ed"));
  EXPECT_EQ(evaluation.cautions[0].kind, CautionKind::unknownCondition);
  EXPECT_EQ(evaluation.cautions[0].person, 1u);
  EXPECT_EQ(evaluation.cautions[0].condition, 0u);
}

TEST_F(EvaluationTest, SomebodyWhoIsNotOnFileIsWatched) {
  const Evaluation evaluation = of({step(1, "curl")}, {"stranger", "cy"});
  EXPECT_THAT(evaluation.people, ElementsAre(PersonId{"cy"}));
  EXPECT_THAT(told(evaluation), ElementsAre("- watch stranger *"));
  EXPECT_EQ(evaluation.cautions[0].kind, CautionKind::unknownPerson);
}

TEST_F(EvaluationTest, SomebodyNamedTwiceIsScreenedOnce) {
  EXPECT_EQ(told(of({step(1, "curl")}, {"ida", "ida"})), told(of({step(1, "curl")}, {"ida"})));
}

TEST_F(EvaluationTest, WhereNoChangeLeadsOneAsksFirst) {
  knowledge_.transitions = TransitionGraph(smallPositions(), {});
  const Evaluation evaluation = of({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  EXPECT_THAT(told(evaluation), ElementsAre("2 ask-first  *", "2 watch all *", "3 ask-first  *"));
  EXPECT_EQ(evaluation.cautions[0].kind, CautionKind::noWay);
}

TEST_F(EvaluationTest, CautionsOnTheClassComeFirstThenStepsEachStrongestFirst) {
  EXPECT_THAT(told(of({step(1, "handstand"), step(2, "swing", "gone"), step(3, "curl")}, {"di", "bo", "stranger"})),
              ElementsAre("- leave-out whole bo", "- watch stranger *", "- watch cramp di", // the class
                          "1 ask-first handstand *",                                        // each step
                          "2 watch gone *", "2 watch all *",                                //
                          "3 ask-first up bo", "3 adapt bend bo"));
}

TEST_F(EvaluationTest, CountsAddUpByLevel) {
  const Evaluation evaluation = of({step(1, "fold"), step(2, "swing"), step(3, "curl")}, {"bo", "ida"});
  std::array<int, kWordCount<Level>> counts{};
  for (const Caution& each : evaluation.cautions)
    ++counts[static_cast<std::size_t>(each.level)];
  EXPECT_EQ(evaluation.cautionCounts, counts);
  EXPECT_EQ(counts[static_cast<std::size_t>(Level::leaveOut)], 1);
  EXPECT_EQ(counts[static_cast<std::size_t>(Level::adapt)], 2);
}

TEST_F(EvaluationTest, TheStrongestCautionAtAStepIsKnown) {
  const Evaluation evaluation = of({step(1, "fold"), step(2, "swing"), step(3, "curl")}, {"bo"});
  EXPECT_EQ(evaluation.strongestAt(StepId{1}), std::nullopt);
  EXPECT_EQ(evaluation.strongestAt(StepId{2}), Level::askFirst);
  EXPECT_EQ(evaluation.strongestAt(StepId{99}), std::nullopt);
}

TEST_F(EvaluationTest, TimedStepsAreFoundById) {
  const Evaluation evaluation = of({step(7, "fold"), step(3, "swing")});
  EXPECT_EQ(evaluation.timed(StepId{3}), &evaluation.schedule.steps[1]);
  EXPECT_EQ(evaluation.timed(StepId{1}), nullptr);
}

TEST_F(EvaluationTest, TheDayDecidesWeeksAndClearances) {
  knowledge_.rules.conditions[0].qualifiers = {{"weeks", "", QualifierKind::weeksSince, {}}};
  knowledge_.rules.rules[0].when = {{"weeks", {}, 6, {}, {}}};
  knowledge_.rules.rules[0].level = Level::askFirst;
  roster_[0].conditions[0].qualifiers["weeks"] = day(2026, 5, 1);
  roster_[0].conditions[0].clearances = {{day(2026, 6, 1), {}, "", {}, {}, ""}};
  ClassPlan plan = classOf({step(1, "curl")});
  plan.people = {PersonId{"ida"}};
  const auto strongestOn = [&](Date date) { return evaluate(knowledge_, plan, roster_, date).strongestAt(StepId{1}); };
  EXPECT_EQ(strongestOn(day(2026, 5, 31)), Level::askFirst);
  EXPECT_EQ(strongestOn(day(2026, 6, 1)), Level::watch);
  EXPECT_EQ(strongestOn(day(2026, 6, 12)), std::nullopt); // six weeks
}

TEST_F(EvaluationTest, AnInstructionReachesTheCautionWithThePaperItStandsOn) {
  roster_[0].conditions[0].clearances = {{kDay, {}, "", {}, {}, ""}, {kDay, {}, "", {}, Level::leaveOut, ""}};
  const Caution caution = of({step(1, "curl")}, {"ida"}).cautions.at(0);
  EXPECT_EQ(caution.level, Level::leaveOut);
  EXPECT_TRUE(caution.instructed);
  EXPECT_EQ(caution.clearance, 1u);
}

TEST_F(EvaluationTest, ACautionOnOrderNamesTheStepBefore) {
  Rule soon = rule("soon", Scope::order, Level::watch);
  soon.asks.at = {Elevation::standing};
  soon.threshold = Threshold{60, MeasureUnit::seconds, ThresholdOrigin::ours, 60};
  soon.after = Earlier{{{Feature::supine}, {}, {}, 0}, Seconds{}};
  knowledge_.rules.rules = {soon};
  // curl ends lying; over sitting to standing takes 10 s, and 2 s to settle.
  const Evaluation evaluation = of({step(8, "curl"), step(5, "swing")});
  ASSERT_THAT(evaluation.cautions, SizeIs(1));
  EXPECT_EQ(evaluation.cautions[0].step, StepId{5});
  EXPECT_EQ(evaluation.cautions[0].earlier, StepId{8});
  EXPECT_EQ(evaluation.cautions[0].measured, evaluation.schedule.steps[1].gap.value());
  EXPECT_THAT(of({step(8, "curl"), step(2, "fold"), step(5, "swing")}).cautions, SizeIs(1)); // 40 s sitting
  EXPECT_THAT(of({step(8, "curl"), dosed(step(2, "fold"), 60, DoseUnit::seconds), step(5, "swing")}).cautions,
              IsEmpty());
}

TEST_F(EvaluationTest, TheSamePlanGivesTheSameEvaluation) {
  const std::vector<Step> steps{step(1, "roll"), step(2, "swing", "gone"), step(3, "kick"), step(4, "handstand")};
  EXPECT_EQ(of(steps, {"bo", "ida", "stranger"}), of(steps, {"bo", "ida", "stranger"}));
}

TEST_F(EvaluationTest, AnEmptyClassStillSpeaksOfThePeople) {
  const Evaluation evaluation = of({}, {"bo"});
  EXPECT_THAT(told(evaluation), ElementsAre("- leave-out whole bo"));
  EXPECT_THAT(evaluation.facts, IsEmpty());
}

} // namespace
} // namespace matwright::test
