#include "tests/ui/timeline/Terrains.h"
#include "ui/timeline/EditEffect.h"

namespace matwright {
namespace {

using namespace literals;
using testing::HasSubstr;

Evaluation evaluationOf(Seconds length, int changes, std::vector<Caution> cautions) {
  Evaluation evaluation;
  evaluation.schedule.length = length;
  evaluation.schedule.changes = changes;
  evaluation.cautions = std::move(cautions);
  return evaluation;
}

Caution cautionAt(std::int64_t step, Level level, const Rule* rule = nullptr) {
  Caution caution;
  caution.kind = rule ? CautionKind::rule : CautionKind::unknownMovement;
  caution.level = level;
  caution.step = StepId{step};
  caution.rule = rule;
  return caution;
}

std::string words(const Evaluation& before, const Evaluation& after) {
  return effectText(effectBetween(before, after)).toStdString();
}

TEST(EditEffect, SaysLengthChangesAndNewCautions) {
  const Evaluation before = evaluationOf(600_s, 5, {cautionAt(1, Level::watch)});
  const Evaluation after = evaluationOf(676_s, 7, {cautionAt(1, Level::watch), cautionAt(2, Level::askFirst)});
  EXPECT_EQ(words(before, after), "+1:16 \u00b7 2 more changes \u00b7 1 new caution (ask first)");
}

TEST(EditEffect, NamesTheStrongestOfSeveral) {
  const Evaluation before = evaluationOf(600_s, 5, {});
  const Evaluation after =
      evaluationOf(600_s, 4, {cautionAt(2, Level::adapt), cautionAt(2, Level::leaveOut), cautionAt(3, Level::watch)});
  EXPECT_EQ(words(before, after), "same length \u00b7 1 change fewer \u00b7 3 new cautions (strongest: leave out)");
}

TEST(EditEffect, NothingNewIsNeverCalledSafe) {
  const Evaluation same = evaluationOf(600_s, 5, {cautionAt(1, Level::adapt)});
  const std::string text = words(same, same);
  EXPECT_THAT(text, HasSubstr("no new caution raised"));
  EXPECT_THAT(text, testing::Not(HasSubstr("safe")));
}

TEST(EditEffect, ASumThatPassesItsMarkElsewhereIsNotNew) {
  Rule total;
  total.scope = Scope::total;
  Rule step;
  step.scope = Scope::step;
  EXPECT_EQ(effectBetween(evaluationOf({}, 0, {cautionAt(4, Level::adapt, &total)}),
                          evaluationOf({}, 0, {cautionAt(3, Level::adapt, &total)}))
                .newCautions,
            0);
  const EditEffect moved = effectBetween(evaluationOf({}, 0, {cautionAt(4, Level::adapt, &step)}),
                                         evaluationOf({}, 0, {cautionAt(3, Level::adapt, &step)}));
  EXPECT_EQ(moved.newCautions, 1);
  EXPECT_EQ(moved.goneCautions, 1);
}

// The chip and the catalogue must not tell two stories about the same insertion.
TEST(EditEffect, AgreesWithTheCandidatesOfTheCatalogue) {
  OpenClass open;
  Person person;
  person.id = PersonId{"ilo"};
  person.name = "Ilo";
  person.conditions.push_back({ConditionId{"osteoporosis"}, {}, {}, {}});
  open.document.setRoster({person});
  test::Draw draw(4);
  ClassPlan plan = test::randomClass(draw, open.document.knowledge().catalogue, 12);
  plan.people = {person.id};
  open.document.load(plan);
  const Place place{1, 1};
  for (const Candidate& candidate : candidatesFor(open.document.knowledge(), open.document.plan(),
                                                  open.document.roster(), open.document.day(), place)) {
    const auto edit = open.commands.insertion(candidate.movement->id, place);
    ASSERT_TRUE(edit);
    const auto would = open.document.preview(*edit);
    ASSERT_TRUE(would);
    const EditEffect effect = effectBetween(open.document.evaluation(), *would->evaluation);
    EXPECT_NEAR(effect.added.value(), candidate.added.value(), 1e-6) << candidate.movement->id.value;
    EXPECT_EQ(effect.addedChanges, candidate.addedChanges) << candidate.movement->id.value;
    EXPECT_EQ(effect.strongest, candidate.strongest) << candidate.movement->id.value;
  }
}

} // namespace
} // namespace matwright
