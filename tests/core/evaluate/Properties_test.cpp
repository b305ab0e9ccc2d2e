// What must be true of an evaluation whatever the class.
#include "core/evaluate/Evaluation.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

// Rules on steps alone, so that ways play no part: somebody new may send everybody on a gentler way.
Knowledge stepRules() {
  RuleBook book;
  book.conditions = {condition("ache"), condition("pang")};
  for (Feature feature :
       {Feature::flexLoad, Feature::neckLift, Feature::supine, Feature::wristLoad, Feature::balance, Feature::legsLong})
    for (const Condition& each : book.conditions) {
      const auto level = static_cast<Level>(book.rules.size() % kWordCount<Level>);
      book.rules.push_back(
          rule("rule-" + std::to_string(book.rules.size()), Scope::step, level, {feature}, each.id.value));
    }
  return smallKnowledge(std::move(book));
}

struct DrawnClass {
  explicit DrawnClass(unsigned seed) : draw(seed) { plan.people = idsOf(people); }
  Evaluation evaluated() const { return evaluate(knowledge, plan, people, kDay); }

  Knowledge knowledge = stepRules();
  Draw draw;
  std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, draw.from(0, 5), 1);
  ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(1, 25));
};

using Raised = std::map<std::tuple<std::string, std::string, std::int64_t>, Level>;

Raised raised(const Evaluation& evaluation) {
  Raised all;
  for (const Caution& each : evaluation.cautions)
    all[{evaluation.people.at(each.person).value, each.rule->id.value, each.step.value_or(StepId{}).value}] =
        each.level;
  return all;
}

TEST(DrawnClass, TheOrderOfPeopleAndOfTheRosterChangesNoCaution) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    const Raised before = raised(scene.evaluated());
    std::reverse(scene.people.begin(), scene.people.end());
    EXPECT_EQ(raised(scene.evaluated()), before);
    std::reverse(scene.plan.people.begin(), scene.plan.people.end());
    EXPECT_EQ(raised(scene.evaluated()), before);
  });
}

TEST(DrawnClass, OnePersonMoreTakesNoCautionAway) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    const Raised before = raised(scene.evaluated());
    scene.people.push_back(randomPerson(scene.draw, scene.knowledge.rules, kDay, 2, "newcomer"));
    scene.plan.people.push_back(PersonId{"newcomer"});
    const Raised after = raised(scene.evaluated());
    EXPECT_TRUE(std::includes(after.begin(), after.end(), before.begin(), before.end()));
  });
}

TEST(DrawnClass, AnOptionThatTakesAFeatureAwayTakesItsCautionsAway) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    for (Section& section : scene.plan.sections)
      for (Step& each : section.steps)
        if (each.movement.value == "curl")
          each.option = OptionId{"low"};
    const Evaluation evaluation = scene.evaluated();
    for (const Caution& each : evaluation.cautions)
      if (findStep(scene.plan, *each.step)->movement.value == "curl") {
        EXPECT_FALSE(each.because.intersects({Feature::flexLoad, Feature::neckLift}));
      }
  });
}

TEST(DrawnClass, EveryPartIsAccountedFor) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    const Schedule schedule = scene.evaluated().schedule;
    double parts = 0;
    for (const TimedStep& each : schedule.steps)
      parts += (each.gap + each.work.whole + each.turning).value();
    EXPECT_NEAR(schedule.length.value(), parts, 1e-6);
  });
}

TEST(DrawnClass, ASlowerGroupTakesNoLessTime) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    const Seconds before = scene.evaluated().schedule.length;
    scene.plan.pace.mobility = 1.7;
    EXPECT_GE(scene.evaluated().schedule.length, before);
    scene.plan.pace.wordsPerMinute = 110;
    EXPECT_GE(scene.evaluated().schedule.length, before);
  });
}

TEST(DrawnClass, AStepMoreTakesMoreTimeThanItsWork) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    const Seconds before = scene.evaluated().schedule.length;
    Section& last = scene.plan.sections.back();
    last.steps.push_back(step(1000, "fold"));
    EXPECT_GE(scene.evaluated().schedule.length, before + Seconds(40));
  });
}

TEST(DrawnClass, BothSidesOfTheClassAreTheSameLength) {
  forEachSeed<DrawnClass>(1, 60, [](DrawnClass& scene) {
    // One side only: the right takes as long as the left.
    const auto withSide = [&](Side side) {
      for (Section& section : scene.plan.sections)
        for (Step& each : section.steps)
          each.onlySide = side;
      return scene.evaluated().schedule;
    };
    const Schedule left = withSide(Side::left), right = withSide(Side::right);
    EXPECT_NEAR(left.length.value(), right.length.value(), 1e-9);
    EXPECT_EQ(left.changes, right.changes);
  });
}

} // namespace
} // namespace matwright::test
