#include "tests/support/RealKnowledge.h"
#include "ui/text/CautionText.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

struct Said : testing::Test {
  const Knowledge& knowledge = test::realKnowledge();
  ClassPlan plan = emptyClass("Monday");
  std::vector<Person> roster;
  Evaluation evaluation;

  void screen(const char* movement, Person person) {
    plan.sections[0].steps = {stepOf(StepId{1}, *knowledge.catalogue.find(MovementId{movement}))};
    plan.people = {person.id};
    roster = {std::move(person)};
    evaluation =
        evaluate(knowledge, plan, roster, Date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{26}});
  }
  CautionWords of(const Caution& caution) { return wordsFor(caution, knowledge, plan, evaluation, roster); }
  const Caution& first(const char* rule) {
    for (const Caution& caution : evaluation.cautions)
      if (caution.rule && caution.rule->id.value == rule)
        return caution;
    throw std::runtime_error(std::string("silent: ") + rule);
  }
  static Person with(const char* condition) {
    Person person;
    person.id.value = "ida";
    person.name = "Ida";
    person.conditions.push_back({ConditionId{condition}, {}, {}, {}});
    return person;
  }
};

// Design: every caution can show its whole reason: person, condition, feature, rule, source, strength.
TEST_F(Said, AWholeReasonNamesPersonConditionFeatureSourceStrengthAndDispute) {
  screen("hundred", with("osteoporosis"));
  for (const Caution& caution : evaluation.cautions) {
    if (!caution.rule || caution.person == Finding::kNone)
      continue;
    const QString whole = of(caution).whole;
    EXPECT_TRUE(whole.contains(QStringLiteral("Ida"))) << whole.toStdString();
    EXPECT_TRUE(whole.contains(QStringLiteral("Osteoporosis")));
    EXPECT_TRUE(whole.contains(QString::fromStdString(caution.rule->why)));
    EXPECT_TRUE(whole.contains(QStringLiteral("Rests on")));
    for (const SourceId& source : caution.rule->sources)
      EXPECT_TRUE(whole.contains(QString::fromStdString(knowledge.rules.findSource(source)->cite)));
    EXPECT_EQ(whole.contains(QStringLiteral("Disputed")), !caution.rule->contested.empty());
    EXPECT_TRUE(whole.contains(standingNotice()));
  }
  EXPECT_FALSE(evaluation.cautions.empty());
}

TEST_F(Said, WhatWasAssumedAndWhatWasClearedIsSaid) {
  Person person = with("glaucoma");
  person.conditions[0].qualifiers["unsettled"] = false;
  screen("shoulder-bridge", person);
  const Caution& asked = evaluation.cautions.front();
  EXPECT_EQ(asked.level, Level::askFirst);
  EXPECT_FALSE(of(asked).whole.contains(QStringLiteral("clearance on file")));
  person.conditions[0].clearances = {
      {Date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{1}}, {}, "clinic", {}, {}, {}}};
  screen("shoulder-bridge", person);
  EXPECT_EQ(evaluation.cautions.front().level, Level::watch);
  EXPECT_TRUE(of(evaluation.cautions.front()).whole.contains(QStringLiteral("clearance on file")));
  screen("shoulder-bridge", with("glaucoma"));
  EXPECT_TRUE(of(evaluation.cautions.front()).whole.contains(QStringLiteral("has not been filled in")));
}

TEST(Notices, NeverSaySafeWithoutNot) {
  for (const QString& text : {standingNotice(), noCautionText(true), noCautionText(false)}) {
    const QString lower = text.toLower();
    EXPECT_EQ(lower.count(QStringLiteral("safe")), lower.count(QStringLiteral("not mean safe"))) << text.toStdString();
  }
  EXPECT_TRUE(noCautionText(true).contains(QStringLiteral("not a clearance")));
}

} // namespace
} // namespace matwright
