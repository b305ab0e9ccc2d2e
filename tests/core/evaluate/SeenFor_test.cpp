// A class as some of its people see it, and as a table of steps against people.
#include "core/evaluate/Evaluation.h"
#include "core/evaluate/GroupTable.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;

const Date kDay = day(2026, 6, 1);
const PersonId kIda{"ida"}, kBo{"bo"}, kCy{"cy"};

Knowledge seenKnowledge() {
  RuleBook book;
  book.conditions = {condition("ache"), condition("pang")};
  book.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                rule("hands", Scope::step, Level::leaveOut, {Feature::wristLoad}, "pang"),
                rule("lying", Scope::step, Level::watch, {Feature::supine})};
  return smallKnowledge(std::move(book));
}

class SeenForTest : public testing::Test {
protected:
  SeenForTest() { plan_.people = {kIda, kBo, kCy}; }

  Evaluation whole() const { return evaluate(knowledge_, plan_, roster_, kDay); }
  Evaluation seen(std::vector<PersonId> people) const { return seenFor(whole(), people); }
  static std::vector<std::string> rules(const Evaluation& evaluation) {
    std::vector<std::string> ids;
    for (const Caution& caution : evaluation.cautions)
      ids.push_back(caution.rule->id.value);
    return ids;
  }

  Knowledge knowledge_ = seenKnowledge();
  std::vector<Person> roster_{person("ida", {"ache"}), person("bo", {"pang"}), person("cy")};
  ClassPlan plan_ = classOf({step(1, "curl"), step(2, "arch")});
};

TEST_F(SeenForTest, LeavesTheCautionsOfTheChosenAndOfEverybody) {
  EXPECT_THAT(rules(whole()), ElementsAre("bend", "lying", "hands"));
  EXPECT_THAT(rules(seen({kIda})), ElementsAre("bend", "lying"));
  EXPECT_THAT(rules(seen({kBo})), ElementsAre("lying", "hands"));
  EXPECT_THAT(rules(seen({kIda, kBo})), ElementsAre("bend", "lying", "hands"));
  EXPECT_THAT(rules(seen({kCy})), ElementsAre("lying"));
}

TEST_F(SeenForTest, CountsWhatItLeaves) {
  EXPECT_THAT(whole().cautionCounts, ElementsAre(1, 1, 0, 1));
  EXPECT_THAT(seen({kIda}).cautionCounts, ElementsAre(1, 1, 0, 0));
}

TEST_F(SeenForTest, NobodyOrOnlyStrangersMeansEverybody) {
  EXPECT_EQ(seen({}), whole());
  EXPECT_EQ(seen({PersonId{"stranger"}}), whole());
  EXPECT_THAT(rules(seen({kBo, PersonId{"stranger"}})), ElementsAre("lying", "hands"));
}

TEST_F(SeenForTest, ChangesNothingButTheCautions) {
  Evaluation whole = this->whole();
  Evaluation seen = this->seen({kIda});
  seen.cautions = whole.cautions;
  seen.cautionCounts = whole.cautionCounts;
  EXPECT_EQ(seen, whole);
}

TEST_F(SeenForTest, CandidatesCountTheCautionsOfTheChosen) {
  const auto strongest = [this](const std::string& id, std::vector<PersonId> people) {
    for (const Candidate& each : candidatesFor(knowledge_, plan_, roster_, kDay, {0, 2}, people))
      if (each.movement->id.value == id)
        return each.strongest;
    return std::optional<Level>();
  };
  EXPECT_EQ(strongest("arch", {}), Level::leaveOut);
  EXPECT_EQ(strongest("arch", {kBo}), Level::leaveOut);
  EXPECT_EQ(strongest("arch", {kIda}), std::nullopt);
  EXPECT_EQ(strongest("curl", {kIda}), Level::adapt);
  EXPECT_EQ(strongest("curl", {kBo}), Level::watch); // what is for everybody stays
  EXPECT_EQ(strongest("curl", {kBo, kIda}), Level::adapt);
}

TEST_F(SeenForTest, TheTableHasARowAStepAndTheClassAsAWholeFirst) {
  plan_.sections.push_back({"Later", {step(3, "curl")}});
  const GroupTable table = groupTableOf(plan_, whole());
  ASSERT_EQ(table.rows.size(), 4u);
  EXPECT_EQ(table.people, (std::vector{kIda, kBo, kCy}));
  EXPECT_EQ(table.rows[0].step, std::nullopt);
  EXPECT_EQ(table.rows[1].step, StepId{1});
  EXPECT_EQ(table.rows[3].step, StepId{3});
  EXPECT_EQ(table.rows[2].section, 0u);
  EXPECT_EQ(table.rows[3].section, 1u);
}

TEST_F(SeenForTest, TheTablePutsEachCautionWhereItBelongs) {
  const GroupTable table = groupTableOf(plan_, whole());
  const GroupCell none, adapt{Level::adapt, 1}, leaveOut{Level::leaveOut, 1}, watch{Level::watch, 1};
  EXPECT_EQ(table.rows[0], (GroupRow{std::nullopt, 0, none, {none, none, none}}));
  EXPECT_EQ(table.rows[1], (GroupRow{StepId{1}, 0, watch, {adapt, none, none}}));
  EXPECT_EQ(table.rows[2], (GroupRow{StepId{2}, 0, none, {none, leaveOut, none}}));
  EXPECT_EQ(table.sums, (GroupRow{std::nullopt, 0, watch, {adapt, leaveOut, none}}));
}

TEST_F(SeenForTest, TheTableSaysWhoDoesAStepInAWayOfHerOwn) {
  plan_.sections[0].steps[0].variants = {{kIda, MovementId{"curl"}, OptionId{"low"}}};
  const GroupTable table = groupTableOf(plan_, whole());
  EXPECT_EQ(table.rows[1].of[0], (GroupCell{std::nullopt, 0, true}));
  EXPECT_FALSE(table.rows[1].of[1].varied);
  EXPECT_TRUE(table.sums.of[0].varied);
}

TEST_F(SeenForTest, WhatIsAboutTheClassStandsInTheFirstRow) {
  plan_.people.push_back(PersonId{"stranger"});
  const GroupTable table = groupTableOf(plan_, whole());
  EXPECT_EQ(table.rows[0].everybody, (GroupCell{Level::watch, 1}));
}

struct DrawnGroup {
  explicit DrawnGroup(unsigned seed) : draw(seed) { plan.people = idsOf(people); }

  Knowledge knowledge = seenKnowledge();
  Draw draw;
  std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, draw.from(0, 6), 1);
  ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(0, 25));
};

TEST(DrawnGroup, TheTableCountsEveryCautionOnceAndNamesTheStrongest) {
  forEachSeed<DrawnGroup>(1, 60, [](DrawnGroup& scene) {
    const Evaluation evaluation = evaluate(scene.knowledge, scene.plan, scene.people, kDay);
    const GroupTable table = groupTableOf(scene.plan, evaluation);
    std::size_t counted = 0;
    for (const GroupRow& row : table.rows) {
      std::optional<Level> strongest = row.everybody.strongest;
      counted += static_cast<std::size_t>(row.everybody.cautions);
      for (const GroupCell& cell : row.of) {
        counted += static_cast<std::size_t>(cell.cautions);
        EXPECT_EQ(cell.strongest.has_value(), cell.cautions > 0);
        strongest = std::max(strongest, cell.strongest);
      }
      if (row.step) {
        EXPECT_EQ(strongest, evaluation.strongestAt(*row.step));
      }
    }
    EXPECT_EQ(counted, evaluation.cautions.size());
  });
}

TEST(DrawnGroup, WhatTwoSeeIsWhatEitherSees) {
  forEachSeed<DrawnGroup>(1, 60, [](DrawnGroup& scene) {
    const Evaluation whole = evaluate(scene.knowledge, scene.plan, scene.people, kDay);
    if (whole.people.size() < 2)
      return;
    const std::vector both(whole.people.begin(), whole.people.begin() + 2);
    const auto of = [&](std::size_t from, std::size_t count) {
      return seenFor(whole, std::span(both).subspan(from, count)).cautions;
    };
    const std::vector<Caution> first = of(0, 1), second = of(1, 1);
    for (const Caution& caution : whole.cautions) {
      const auto sees = [&](const std::vector<Caution>& cautions) {
        return std::find(cautions.begin(), cautions.end(), caution) != cautions.end();
      };
      EXPECT_EQ(sees(of(0, 2)), sees(first) || sees(second));
    }
  });
}

} // namespace
} // namespace matwright::test
