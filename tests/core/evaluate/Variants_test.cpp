// What one person does instead of a step counts for her, and for nobody else.
#include "core/evaluate/Evaluation.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;

const Date kDay = day(2026, 6, 1);

class VariantsTest : public testing::Test {
protected:
  VariantsTest() {
    RuleBook book;
    book.conditions = {condition("ache")};
    book.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                  rule("hands", Scope::way, Level::watch, {Feature::wristLoad}, "ache")};
    knowledge_ = smallKnowledge(std::move(book));
  }

  // "1 ida bend", a line a caution.
  std::vector<std::string> cautionsOn(const ClassPlan& plan) const {
    const Evaluation evaluation = evaluate(knowledge_, plan, roster_, kDay);
    std::vector<std::string> said;
    for (const Caution& each : evaluation.cautions)
      said.push_back((each.step ? std::to_string(each.step->value) : "class") + ' ' +
                     (each.person == Finding::kNone ? "all" : evaluation.people[each.person].value) + ' ' +
                     (each.rule ? each.rule->id.value : each.name));
    return said;
  }

  ClassPlan twoCurls(std::vector<Variant> ofFirst) const {
    ClassPlan plan = classOf({step(1, "curl"), step(2, "curl")});
    plan.people = {PersonId{"ida"}, PersonId{"bo"}};
    plan.sections[0].steps[0].variants = std::move(ofFirst);
    return plan;
  }

  Knowledge knowledge_;
  std::vector<Person> roster_{person("ida", {"ache"}), person("bo", {"ache"})};
};

TEST_F(VariantsTest, AreScreenedForTheOneWhoDoesThem) {
  EXPECT_THAT(cautionsOn(twoCurls({})), ElementsAre("1 ida bend", "1 bo bend", "2 ida bend", "2 bo bend"));
  const Variant low{PersonId{"ida"}, MovementId{"curl"}, OptionId{"low"}};
  EXPECT_THAT(cautionsOn(twoCurls({low})), ElementsAre("1 bo bend", "2 ida bend", "2 bo bend"));
}

TEST_F(VariantsTest, OfSomebodyElseOrNobodyOnFileChangeNothing) {
  const Variant stranger{PersonId{"cy"}, MovementId{"curl"}, OptionId{"low"}};
  EXPECT_THAT(cautionsOn(twoCurls({stranger})), ElementsAre("1 ida bend", "1 bo bend", "2 ida bend", "2 bo bend"));
}

TEST_F(VariantsTest, BringTheirOwnWay) {
  // From hands and knees to lying she comes by a sitting that loads the wrists.
  const Variant arch{PersonId{"ida"}, MovementId{"arch"}, {}};
  EXPECT_THAT(cautionsOn(twoCurls({arch})), ElementsAre("1 bo bend", "2 ida bend", "2 bo bend", "2 ida hands"));
}

TEST_F(VariantsTest, LeaveTheTimesOfTheClassAlone) {
  const Variant fold{PersonId{"ida"}, MovementId{"fold"}, {}};
  EXPECT_EQ(evaluate(knowledge_, twoCurls({fold}), roster_, kDay).schedule,
            evaluate(knowledge_, twoCurls({}), roster_, kDay).schedule);
}

TEST_F(VariantsTest, ThatNobodyKnowsAreSaidOfThePerson) {
  const Variant handstand{PersonId{"ida"}, MovementId{"handstand"}, {}};
  const Variant gone{PersonId{"bo"}, MovementId{"curl"}, OptionId{"gone"}};
  EXPECT_THAT(cautionsOn(twoCurls({gone, handstand})),
              ElementsAre("1 ida handstand", "1 bo bend", "1 bo gone", "2 ida bend", "2 bo bend"));
}

} // namespace
} // namespace matwright::test
