// What tidying promises, over the knowledge that comes with the program.
#include "core/evaluate/Group.h"
#include "core/tidy/Tidy.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

int remarksOf(const Evaluation& evaluation, RemarkKind kind) {
  return static_cast<int>(std::count_if(evaluation.remarks.begin(), evaluation.remarks.end(),
                                        [&](const Remark& remark) { return remark.kind == kind; }));
}

std::vector<StepId> sortedIds(const Section& section) {
  std::vector<StepId> ids;
  for (const Step& each : section.steps)
    ids.push_back(each.id);
  std::sort(ids.begin(), ids.end());
  return ids;
}

// All orders of one section of different movements, by the schedule alone.
TEST(RealTidy, IsTheShortestOfAllOrders) {
  const Knowledge& knowledge = realKnowledge();
  Draw draw(11);
  int better = 0;
  for (int round = 0; round < 12; ++round) {
    ClassPlan plan = classOf({});
    while (plan.sections[0].steps.size() < 5) {
      const Step drawn = randomStep(draw, knowledge.catalogue, StepId{static_cast<int>(countSteps(plan)) + 1});
      const auto& steps = plan.sections[0].steps;
      if (std::none_of(steps.begin(), steps.end(), [&](const Step& each) { return each.movement == drawn.movement; }))
        plan.sections[0].steps.push_back(drawn);
    }
    const TidyResult result = tidied(knowledge, plan, {}, kDay).value();
    const Group group(knowledge, {}, {}, kDay);
    ClassPlan order = plan;
    auto& steps = order.sections[0].steps;
    std::optional<Seconds> least;
    const auto byId = [](const Step& a, const Step& b) { return a.id < b.id; };
    std::sort(steps.begin(), steps.end(), byId);
    do {
      const Evaluation all = evaluate(knowledge, order, {}, kDay);
      if (remarksOf(all, RemarkKind::beforePrerequisite) > 0)
        continue;
      if (!least || all.schedule.moving < *least)
        least = all.schedule.moving;
    } while (std::next_permutation(steps.begin(), steps.end(), byId));
    ASSERT_TRUE(least);
    EXPECT_NEAR(result.after.moving.value(), least->value(), 0.01) << "round " << round;
    EXPECT_NEAR(result.lower.value(), least->value(), 0.01);
    better += result.status == TidyStatus::shortest;
  }
  EXPECT_GT(better, 6) << "the draw tests nothing";
}

TEST(RealTidy, KeepsWhatItPromises) {
  const Knowledge& knowledge = realKnowledge();
  Draw draw(12);
  int moved = 0, avoiding = 0, coming = 0;
  for (int round = 0; round < 25; ++round) {
    SCOPED_TRACE("round " + std::to_string(round));
    const std::vector<Person> people = randomPeople(draw, knowledge.rules, kDay, 3, 2);
    ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(4, 24));
    plan.people = idsOf(people);
    plan.pace.mobility = draw.oneOf(std::vector<double>{0.5, 1.0, 1.7});
    TidyRequest request;
    request.wishes = {draw.chance(0.3), draw.chance(0.3), draw.chance(0.3), draw.chance(0.3)};
    forEachStep(plan, [&](const Step& each) {
      if (draw.chance(0.1))
        request.pinned.push_back(each.id);
    });
    if (draw.chance(0.3))
      request.section = draw.below(4);
    TidyLimits limits;
    limits.nodes = 20'000;
    const TidyResult result = tidied(knowledge, plan, people, kDay, request, limits).value();
    EXPECT_EQ(tidied(knowledge, plan, people, kDay, request, limits).value(), result);

    const auto edited = applyEdit(plan, editOf(plan, result));
    ASSERT_TRUE(edited);
    EXPECT_EQ(*edited, result.plan);
    for (std::size_t section = 0; section < plan.sections.size(); ++section) {
      EXPECT_EQ(sortedIds(result.plan.sections[section]), sortedIds(plan.sections[section]));
      if (request.section && *request.section != section) {
        EXPECT_EQ(result.plan.sections[section], plan.sections[section]);
      }
    }
    for (StepId pinned : request.pinned)
      for (const TidyMove& move : result.moves)
        EXPECT_NE(move.step, pinned);
    const Evaluation before = evaluate(knowledge, plan, people, kDay);
    const Evaluation after = evaluate(knowledge, result.plan, people, kDay);
    EXPECT_EQ(result.before.moving, before.schedule.moving);
    EXPECT_EQ(result.after.moving, after.schedule.moving);
    EXPECT_EQ(result.after.changes, after.schedule.changes);
    const int late = remarksOf(before, RemarkKind::beforePrerequisite);
    EXPECT_LE(remarksOf(after, RemarkKind::beforePrerequisite), late);
    if (late == 0) {
      EXPECT_LE(result.after.total(), result.before.total());
    }
    EXPECT_LE(result.lower.value(), result.after.total().value() + 0.05);
    if (result.status == TidyStatus::shortest) {
      EXPECT_NEAR(result.lower.value(), result.after.total().value(), 0.05);
    }
    const auto total = [](const auto& counts) { return std::accumulate(counts.begin(), counts.end(), 0); };
    EXPECT_EQ(static_cast<int>(after.cautions.size()) - static_cast<int>(before.cautions.size()),
              total(result.come) - total(result.gone));
    coming += total(result.come);
    moved += !result.moves.empty();
    avoiding += before.people.size() > 0;
  }
  EXPECT_GT(moved, 10) << "the draw tests nothing";
  EXPECT_GT(coming, 0) << "the draw tests nothing";
  EXPECT_GT(avoiding, 10) << "the draw tests nothing";
}

TEST(RealTidy, NothingAtEndRangeComesForwardInTheWarmUp) {
  const Knowledge& knowledge = realKnowledge();
  const FeatureSet endRange{Feature::flexEnd, Feature::extEnd,  Feature::stretchEnd,
                            Feature::rot,     Feature::flexRot, Feature::extRot};
  Draw draw(13);
  int checked = 0;
  for (int round = 0; round < 30; ++round) {
    const ClassPlan plan = randomClass(draw, knowledge.catalogue, 20);
    const TidyResult result = tidied(knowledge, plan, {}, kDay).value();
    const Evaluation before = evaluate(knowledge, plan, {}, kDay);
    for (std::size_t a = 0; a < plan.sections[0].steps.size(); ++a)
      for (std::size_t b = a + 1; b < plan.sections[0].steps.size(); ++b) {
        if (before.facts[a].features.intersects(endRange) || !before.facts[b].features.intersects(endRange))
          continue;
        const StepId plain = plan.sections[0].steps[a].id, far = plan.sections[0].steps[b].id;
        EXPECT_LT(*placeOf(result.plan, plain), *placeOf(result.plan, far)) << "round " << round;
        ++checked;
      }
  }
  EXPECT_GT(checked, 10) << "the draw tests nothing";
}

TEST(RealTidy, TheClassesOfTheDemoGetNoWorse) {
  for (const char* name : {"thursday-mixed-level", "wall-monday-expecting", "wednesday-back-care"}) {
    const std::string demo = MATWRIGHT_SOURCE_DIR "/resources/demo/";
    const ClassPlan plan = readClass(demo + "classes/" + name + ".json").value().value;
    std::vector<Person> people;
    for (const Stored<Person>& each : readPeople(demo + "people").people)
      people.push_back(each.value);
    const TidyResult result = tidied(realKnowledge(), plan, people, plan.date.value_or(kDay)).value();
    EXPECT_LE(result.after.moving, result.before.moving) << name;
    EXPECT_NE(result.status, TidyStatus::bounded) << name;
    RecordProperty(name, std::to_string(result.before.moving.value()) + " s, " + std::to_string(result.before.changes) +
                             " -> " + std::to_string(result.after.moving.value()) + " s, " +
                             std::to_string(result.after.changes));
  }
}

} // namespace
} // namespace matwright::test
