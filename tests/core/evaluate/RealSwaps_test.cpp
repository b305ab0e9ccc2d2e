// Variants and swaps over the knowledge that comes with the program, in classes drawn at random.
#include "core/evaluate/Swaps.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

TEST(RealVariants, ThatRemoveAFeatureRemoveTheCautionsOfThePersonThatAskForIt) {
  const Knowledge& knowledge = realKnowledge();
  Draw draw(71);
  int removed = 0;
  for (int round = 0; round < 60; ++round) {
    const std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, 4, 3);
    ClassPlan plan = randomClass(draw, knowledge.catalogue, 12);
    plan.people = idsOf(people);
    const Evaluation before = evaluate(knowledge, plan, people, kDay);
    Step& step = plan.sections[1].steps[0];
    step.option = {};
    const Movement& movement = *knowledge.catalogue.find(step.movement);
    const Person& who = draw.oneOf(people);
    for (const Option& option : movement.options) {
      step.variants = {{who.id, movement.id, option.id}};
      const Evaluation after = evaluate(knowledge, plan, people, kDay);
      for (const Caution& each : after.cautions) {
        const bool hers = each.person != Finding::kNone && after.people[each.person] == who.id;
        if (!hers || each.step != step.id || !each.rule || each.rule->scope != Scope::step)
          continue;
        EXPECT_FALSE(each.because.intersects(option.removes))
            << movement.id.value << '/' << option.id.value << ' ' << each.rule->id.value;
      }
      for (const Caution& each : before.cautions)
        removed += each.step == step.id && each.because.intersects(option.removes);
    }
  }
  EXPECT_GT(removed, 20) << "the draw tests nothing";
}

// The caution still there, at its step or anywhere for a running sum, as strong as it was.
bool stands(const Evaluation& evaluation, const Caution& caution) {
  const bool runs = isRunning(caution);
  return std::any_of(evaluation.cautions.begin(), evaluation.cautions.end(), [&](const Caution& each) {
    return each.kind == caution.kind && each.rule == caution.rule && each.person == caution.person &&
           (runs || each.step == caution.step) && each.level >= caution.level;
  });
}

TEST(RealSwaps, KeepWhatTheyPromiseOnceDone) {
  const Knowledge& knowledge = realKnowledge();
  Draw draw(72);
  int done = 0, forPersons = 0;
  for (int round = 0; round < 12; ++round) {
    const std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, 3, 2);
    ClassPlan plan = randomClass(draw, knowledge.catalogue, 10);
    plan.people = idsOf(people);
    const Evaluation before = evaluate(knowledge, plan, people, kDay);
    for (int tries = 0; tries < 3 && !before.cautions.empty(); ++tries) {
      const Caution& caution = draw.oneOf(before.cautions);
      const bool personal = caution.person != Finding::kNone && draw.chance(0.5);
      const std::optional<PersonId> person = personal ? std::optional(before.people[caution.person]) : std::nullopt;
      const std::vector<Swap> swaps = swapsFor(knowledge, plan, people, kDay, caution, person);
      if (!caution.step) {
        EXPECT_TRUE(swaps.empty());
        continue;
      }
      SCOPED_TRACE("round " + std::to_string(round) + ", " + (caution.rule ? caution.rule->id.value : "no rule"));
      for (std::size_t i = 0; i < swaps.size() && i < 6; ++i) {
        const Swap& swap = swaps[i];
        ClassPlan with = plan;
        const Place place = *placeOf(plan, *caution.step);
        Step& step = with.sections[place.section].steps[place.index];
        if (personal)
          step.variants = {variantFor(*person, swap)};
        else
          step = swapped(step, swap);
        const Evaluation after = evaluate(knowledge, with, people, kDay);
        EXPECT_FALSE(stands(after, caution)) << swap.movement->id.value;
        EXPECT_NEAR((after.schedule.length - before.schedule.length).value(), swap.added.value(), 1e-6);
        EXPECT_EQ(static_cast<int>(after.cautions.size()) - static_cast<int>(before.cautions.size()),
                  static_cast<int>(swap.come.size()) - static_cast<int>(swap.gone.size()));
        if (personal)
          EXPECT_EQ(after.schedule, before.schedule);
        else
          EXPECT_EQ(after.strongestAt(*caution.step), swap.left);
        ++done;
        forPersons += personal;
      }
    }
  }
  EXPECT_GT(done, 40) << "the draw tests nothing";
  EXPECT_GT(forPersons, 10) << "the draw tests nothing";
}

} // namespace
} // namespace matwright::test
