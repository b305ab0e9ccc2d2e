#include "core/handout/PersonSheet.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Date kDay = day(2026, 6, 1);

Clearance clearance(Date given, FeatureSet features = {}, std::optional<Level> sets = {},
                    std::optional<Date> until = {}) {
  return {given, until, "Dr Ellis", features, sets, {}};
}

// "ask-first bend kneel": the level, and the rules of each row.
std::vector<std::string> lines(const PersonSheet& sheet) {
  std::vector<std::string> all;
  for (const SheetRow& row : sheet.rows) {
    std::string line(word(row.level));
    for (const SheetRule& said : row.rules)
      line += ' ' + said.rule.id.value;
    all.push_back(line);
  }
  return all;
}

class PersonSheetTest : public testing::Test {
protected:
  PersonSheetTest() {
    Condition ache = condition("ache", {{"weeks", "Date of the operation", QualifierKind::weeksSince, {}},
                                        {"calm", "How it is", QualifierKind::choice, {{"yes", "Calm"}}},
                                        {"new", "Something new", QualifierKind::flag, {}}});
    ache.icd10 = {"M54.5"};
    knowledge_.rules.conditions = {ache, condition("other")};
    knowledge_.rules.sources = {{SourceId{"b"}, "Book B", SourceKind::study},
                                {SourceId{"a"}, "Book A", SourceKind::study}};
    add(rule("watched", Scope::step, Level::watch, {Feature::wristLoad}, "ache"));
    add(rule("asked", Scope::step, Level::askFirst, {Feature::flexLoad, Feature::flexEnd}, "ache"));
    add(rule("left", Scope::step, Level::leaveOut, {Feature::neckLift}, "ache"));
    add(rule("adapted", Scope::way, Level::adapt, {Feature::rise}, "ache"));
  }
  Rule& add(Rule made) { return knowledge_.rules.rules.emplace_back(std::move(made)); }
  Rule& named(const char* id) {
    for (Rule& each : knowledge_.rules.rules)
      if (each.id.value == id)
        return each;
    throw std::runtime_error(id);
  }
  PersonCondition& held(std::size_t place = 0) { return ida_.conditions[place]; }
  PersonSheet sheet(NameStyle style = NameStyle::initials) const {
    return personSheetOf(knowledge_, ida_, kDay, style);
  }
  PersonSheet sheetIn(ClassPlan plan) const {
    const std::vector<Person> roster{ida_};
    return personSheetOf(knowledge_, ida_, kDay, NameStyle::initials, plan, evaluate(knowledge_, plan, roster, kDay));
  }
  std::vector<SheetQuestion> asked(QuestionKind kind) const {
    std::vector<SheetQuestion> all = sheet().questions;
    std::erase_if(all, [&](const SheetQuestion& each) { return each.kind != kind; });
    return all;
  }

  Knowledge knowledge_ = smallKnowledge();
  Person ida_ = person("ida-amberley", {"ache"});
};

TEST_F(PersonSheetTest, SaysWhoItIsAbout) {
  ida_.name = "Ida Amberley";
  ida_.ageBand = AgeBand::from40;
  ida_.stature = 1.7;
  ida_.wishes = "walk far";
  const PersonSheet made = sheet();
  EXPECT_EQ(made.who, "I.A.");
  EXPECT_EQ(sheet(NameStyle::names).who, "Ida Amberley");
  EXPECT_EQ(made.ageBand, AgeBand::from40);
  EXPECT_EQ(made.stature, 1.7);
  EXPECT_FALSE(made.mass);
  EXPECT_EQ(made.wishes, "walk far");
  EXPECT_EQ(made.day, kDay);
  EXPECT_FALSE(made.className);
  EXPECT_EQ(made.movements, 6);
}

TEST_F(PersonSheetTest, StrongestRowsComeFirst) {
  EXPECT_THAT(lines(sheet()), ElementsAre("leave-out left", "ask-first asked", "adapt adapted", "watch watched"));
}

TEST_F(PersonSheetTest, RulesThatSayTheSameAreOneRowAndNameBothConditions) {
  ida_.conditions.push_back({ConditionId{"other"}, {}, {}, {}});
  Rule same = rule("same", Scope::step, Level::leaveOut, {Feature::impact}, "other");
  same.instead = named("left").instead;
  add(same);
  EXPECT_THAT(lines(sheet()), ElementsAre("leave-out left same", "ask-first asked", "adapt adapted", "watch watched"));
  EXPECT_THAT(sheet().rows[0].conditions, ElementsAre("ache", "other"));
  named("same").why = "for another reason";
  EXPECT_EQ(sheet().rows.size(), 5U);
  named("same").why.clear();
  named("same").level = Level::adapt;
  EXPECT_EQ(sheet().rows.size(), 5U);
}

TEST_F(PersonSheetTest, AConditionHeldTwiceSpeaksOnceByWhatWeighsMost) {
  ida_.conditions.push_back(held());
  held(1).clearances = {clearance(kDay)};
  EXPECT_THAT(lines(sheet()), ElementsAre("leave-out left", "ask-first asked", "adapt adapted", "watch watched"));
}

TEST_F(PersonSheetTest, RulesForEverybodyAreCountedAlone) {
  add(rule("all", Scope::step, Level::watch, {Feature::supine}));
  EXPECT_EQ(sheet().forEverybody, 1);
  EXPECT_EQ(sheet().rows.size(), 4U);
}

TEST_F(PersonSheetTest, QualifiersSayWhatTheyMeanOnTheDay) {
  held().qualifiers = {{"weeks", daysAfter(kDay, -43)}, {"calm", std::string("yes")}, {"new", std::string("no")}};
  const SheetCondition condition = sheet().conditions.at(0);
  EXPECT_THAT(condition.icd10, ElementsAre("M54.5"));
  EXPECT_EQ(condition.qualifiers[0].week, 6);
  EXPECT_EQ(condition.qualifiers[1].answer, QualifierValue{std::string("Calm")});
  EXPECT_FALSE(condition.qualifiers[2].answer) << "not the kind of answer that it takes";
  EXPECT_EQ(asked(QuestionKind::qualifier).size(), 1U);
}

TEST_F(PersonSheetTest, AnOpenQualifierSaysWhatHangsOnIt) {
  named("adapted").when = {{"new", {}, {}, {}, true, true}};
  named("left").when = {{"new", {}, {}, {}, true, false}};
  named("asked").when = {{"new", {}, {}, {}, true, false}, {"calm", {}, {}, {"yes"}, {}, true}};
  const PersonSheet open = sheet();
  EXPECT_THAT(lines(open), ElementsAre("adapt adapted", "watch watched"));
  EXPECT_TRUE(open.rows[0].rules[0].assumed);
  EXPECT_FALSE(open.rows[1].rules[0].assumed);
  const std::vector<SheetQuestion> questions = asked(QuestionKind::qualifier);
  ASSERT_EQ(questions.size(), 3U);
  EXPECT_EQ(questions[0].speaking.count + questions[0].silent.count, 0);
  EXPECT_EQ(questions[1].speaking.count + questions[1].silent.count, 0) << "it holds while it is open";
  EXPECT_EQ(questions[2].asked->spec.id, "new");
  EXPECT_EQ(questions[2].speaking, (Hanging{1, Level::adapt}));
  EXPECT_EQ(questions[2].silent, (Hanging{2, Level::leaveOut}));
  held().qualifiers["calm"] = std::string("gone");
  held().qualifiers["new"] = false;
  EXPECT_THAT(lines(sheet()), ElementsAre("watch watched"));
  for (const SheetQuestion& question : asked(QuestionKind::qualifier))
    EXPECT_EQ(question.speaking.count + question.silent.count, 0) << "another answer speaks against them";
}

TEST_F(PersonSheetTest, AClearanceLowersAskFirstAndIsNamed) {
  held().clearances = {clearance(day(2026, 5, 1))};
  const PersonSheet made = sheet();
  EXPECT_THAT(lines(made), ElementsAre("leave-out left", "adapt adapted", "watch watched", "watch asked"));
  EXPECT_EQ(made.rows[3].paper, held().clearances[0]);
  EXPECT_FALSE(made.rows[0].paper);
  EXPECT_FALSE(made.rows[3].rules[0].partly);
  EXPECT_THAT(asked(QuestionKind::permission), IsEmpty());
}

TEST_F(PersonSheetTest, AClearanceOfSomeFeaturesSplitsTheRule) {
  held().clearances = {clearance(day(2026, 5, 1), {Feature::flexEnd})};
  const PersonSheet made = sheet();
  EXPECT_THAT(lines(made),
              ElementsAre("leave-out left", "ask-first asked", "adapt adapted", "watch watched", "watch asked"));
  EXPECT_EQ(made.rows[1].rules[0].asks.any, FeatureSet{Feature::flexLoad});
  EXPECT_EQ(made.rows[4].rules[0].asks.any, FeatureSet{Feature::flexEnd});
  EXPECT_TRUE(made.rows[4].rules[0].partly);
  // curl and roll bend under load, fold goes to the end
  EXPECT_EQ(made.rows[1].rules[0].movements, 2);
  EXPECT_EQ(made.rows[4].rules[0].movements, 1);
}

TEST_F(PersonSheetTest, AnInstructionSetsTheLevelUpOrDown) {
  held().clearances = {clearance(day(2026, 5, 1), {Feature::neckLift}, Level::watch),
                       clearance(day(2026, 5, 1), {Feature::wristLoad}, Level::leaveOut)};
  const PersonSheet made = sheet();
  EXPECT_THAT(lines(made), ElementsAre("leave-out watched", "ask-first asked", "adapt adapted", "watch left"));
  EXPECT_EQ(made.rows[0].paper, held().clearances[1]);
  EXPECT_EQ(made.rows[3].paper, held().clearances[0]);
}

TEST_F(PersonSheetTest, AnExpiredPaperDoesNothingAndItsRenewalIsAsked) {
  held().clearances = {clearance(day(2026, 1, 1), {}, {}, day(2026, 5, 31))};
  const PersonSheet made = sheet();
  EXPECT_EQ(made.conditions[0].papers[0].state, PaperState::expired);
  EXPECT_EQ(made.rows[1].level, Level::askFirst);
  ASSERT_EQ(asked(QuestionKind::renewal).size(), 1U);
  EXPECT_EQ(asked(QuestionKind::renewal)[0].paper->clearance, held().clearances[0]);
  held().clearances[0].until = kDay;
  EXPECT_EQ(sheet().conditions[0].papers[0].state, PaperState::holds);
  EXPECT_THAT(asked(QuestionKind::renewal), IsEmpty());
  held().clearances[0].given = day(2026, 6, 2);
  held().clearances[0].until.reset();
  EXPECT_EQ(sheet().conditions[0].papers[0].state, PaperState::toCome);
}

TEST_F(PersonSheetTest, ANewerPaperStandsInForAnExpiredOneWhereItCoversTheSame) {
  held().clearances = {clearance(day(2026, 1, 1), {Feature::flexEnd}, {}, day(2026, 5, 1)),
                       clearance(day(2026, 5, 2), {Feature::flexEnd, Feature::flexLoad})};
  EXPECT_THAT(asked(QuestionKind::renewal), IsEmpty());
  held().clearances[1].features = {Feature::flexLoad};
  EXPECT_EQ(asked(QuestionKind::renewal).size(), 1U);
}

TEST_F(PersonSheetTest, EachRowToAskFirstIsAQuestion) {
  const std::vector<SheetQuestion> questions = asked(QuestionKind::permission);
  ASSERT_EQ(questions.size(), 1U);
  EXPECT_EQ(sheet().rows[questions[0].row].rules[0].rule.id.value, "asked");
}

TEST_F(PersonSheetTest, AConditionThatNoRuleKnowsIsAskedAbout) {
  ida_.conditions.push_back({ConditionId{"gout"}, {}, {}, {}});
  EXPECT_FALSE(sheet().conditions[1].screened);
  EXPECT_EQ(sheet().conditions[1].name, "gout");
  ASSERT_EQ(asked(QuestionKind::unscreened).size(), 1U);
  EXPECT_EQ(asked(QuestionKind::unscreened)[0].condition, "gout");
}

TEST_F(PersonSheetTest, TheAgeIsAskedWhereRulesSpeakByIt) {
  EXPECT_THAT(asked(QuestionKind::age), IsEmpty());
  add(rule("old", Scope::step, Level::adapt, {Feature::balance})).ages = {AgeBand::from80};
  ASSERT_EQ(asked(QuestionKind::age).size(), 1U);
  EXPECT_EQ(asked(QuestionKind::age)[0].silent, (Hanging{1, Level::adapt}));
  ida_.ageBand = AgeBand::from80;
  EXPECT_THAT(asked(QuestionKind::age), IsEmpty());
  EXPECT_THAT(sheet().rows[1 + 1].conditions, ElementsAre("ache"));
  EXPECT_EQ(lines(sheet())[3], "adapt old");
  EXPECT_THAT(sheet().rows[3].conditions, IsEmpty());
}

TEST_F(PersonSheetTest, SourcesAreThoseCitedInTheOrderOfTheRows) {
  named("watched").sources = {SourceId{"b"}};
  named("left").sources = {SourceId{"a"}};
  named("asked").sources = {SourceId{"a"}, SourceId{"b"}};
  const PersonSheet made = sheet();
  ASSERT_EQ(made.sources.size(), 2U);
  EXPECT_EQ(made.sources[0].cite, "Book A");
  ida_.conditions.clear();
  EXPECT_THAT(sheet().sources, IsEmpty());
}

TEST_F(PersonSheetTest, AClassNamesTheStepsThatRaiseARow) {
  ClassPlan plan = classOf({step(5, "arch"), step(6, "curl", "low"), step(7, "curl")});
  plan.people = {ida_.id};
  const PersonSheet made = sheetIn(plan);
  EXPECT_EQ(made.className, "Small");
  EXPECT_THAT(lines(made), ElementsAre("leave-out left", "ask-first asked", "adapt adapted", "watch watched"));
  EXPECT_THAT(made.rows[0].rules[0].steps, ElementsAre(SheetStep{3, "curl", ""}));
  EXPECT_THAT(made.rows[3].rules[0].steps, ElementsAre(SheetStep{1, "arch", ""}));
  EXPECT_THAT(made.rows[2].rules[0].steps, IsEmpty());
  EXPECT_EQ(made.rows[3].rules[0].movements, 1);
  EXPECT_FALSE(made.rows[2].rules[0].movements) << "it looks at ways";
}

TEST_F(PersonSheetTest, AClassNamesWhatSheDoesInHerOwnWay) {
  ClassPlan plan = classOf({step(7, "arch")});
  plan.people = {ida_.id};
  plan.sections[0].steps[0].variants = {{ida_.id, MovementId{"curl"}, OptionId{"hard"}}};
  const PersonSheet made = sheetIn(plan);
  EXPECT_THAT(made.rows[0].rules[0].steps, ElementsAre(SheetStep{1, "curl", "Legs long"}));
  EXPECT_THAT(made.rows[3].rules[0].steps, IsEmpty());
}

TEST_F(PersonSheetTest, WhatComesTogetherAndNoPaperCoversIsARowOfItsOwn) {
  held().clearances = {clearance(day(2026, 5, 1), {Feature::flexEnd}),
                       clearance(day(2026, 5, 1), {Feature::flexLoad}, Level::watch)};
  Movement both = movement("both", "lying");
  both.features = {Feature::flexEnd, Feature::flexLoad};
  knowledge_.catalogue = Catalogue({both});
  ClassPlan plan = classOf({stepOf(StepId{1}, both)});
  plan.people = {ida_.id};
  EXPECT_THAT(lines(sheet()), testing::Not(testing::Contains("ask-first asked")));
  const PersonSheet made = sheetIn(plan);
  EXPECT_EQ(lines(made)[1], "ask-first asked");
  EXPECT_EQ(made.rows[1].rules[0].asks.all, both.features);
  EXPECT_EQ(made.rows[1].rules[0].steps.size(), 1U);
}

TEST_F(PersonSheetTest, WhatIsMissingIsSaidOnlyOfAClassThatLacksIt) {
  add(rule("lacking", Scope::missing, Level::adapt, {Feature::balance}, "ache"));
  const auto contains = testing::Contains("adapt lacking");
  EXPECT_THAT(lines(sheet()), testing::Not(contains));
  ClassPlan plan = classOf({step(1, "curl")});
  plan.people = {ida_.id};
  EXPECT_THAT(lines(sheetIn(plan)), contains);
  plan.sections[0].steps.push_back(step(2, "swing"));
  EXPECT_THAT(lines(sheetIn(plan)), testing::Not(contains));
}

TEST_F(PersonSheetTest, AClassThatDoesNotNameHerChangesNothing) {
  EXPECT_EQ(sheetIn(classOf({step(1, "curl")})), sheet());
}

// Whatever the class, each caution about her is under a row of its level, and no other step is named.
TEST_F(PersonSheetTest, EachCautionOfAClassIsUnderARowOfItsLevel) {
  held().clearances = {clearance(day(2026, 5, 1), {Feature::flexEnd}, Level::leaveOut),
                       clearance(day(2026, 5, 1), {Feature::neckLift}, Level::adapt)};
  for (unsigned seed = 1; seed <= 40; ++seed) {
    Draw draw(seed);
    ClassPlan plan = randomClass(draw, knowledge_.catalogue, 8);
    plan.people = {ida_.id};
    const std::vector<Person> roster{ida_};
    const Evaluation evaluation = evaluate(knowledge_, plan, roster, kDay);
    std::array<int, kWordCount<Level>> cautions{}, steps{};
    for (const Caution& caution : evaluation.cautions)
      if (caution.rule && caution.person == 0)
        ++cautions[static_cast<std::size_t>(caution.level)];
    for (const SheetRow& row : personSheetOf(knowledge_, ida_, kDay, NameStyle::initials, plan, evaluation).rows)
      for (const SheetRule& said : row.rules)
        steps[static_cast<std::size_t>(row.level)] += static_cast<int>(said.steps.size());
    EXPECT_EQ(cautions, steps) << "seed " << seed;
  }
}

} // namespace
} // namespace matwright::test
