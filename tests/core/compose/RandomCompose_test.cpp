// What composing promises, for wishes and people drawn at random over the knowledge that comes with the program and a
// few rules of a studio's own: such as can be met, and such as cannot.
#include "core/compose/ComposeCheck.h"
#include "tests/support/ComposeRecount.h"
#include "tests/support/ObstacleTruth.h"
#include "tests/support/RandomWishes.h"
#include "tests/support/RealKnowledge.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <ctime>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);
constexpr std::int64_t kEvaluations = 20'000;

Rule limit(std::string id, Scope scope, FeatureSet any, double amount, MeasureUnit unit) {
  Rule made = rule(std::move(id), scope, Level::leaveOut, any, "own-limits");
  made.threshold = Threshold{amount, unit, ThresholdOrigin::ours, amount};
  return made;
}

// With rules that only a whole class shows.
const Knowledge& knowledge() {
  static const Knowledge made = [] {
    Knowledge more = realKnowledge();
    more.rules.conditions.push_back(condition("own-limits"));
    auto& rules = more.rules.rules;
    rules.push_back(limit("own-flexion", Scope::total, {Feature::flexLoad}, 180, MeasureUnit::seconds));
    rules.push_back(limit("own-wrists", Scope::stretch, {Feature::wristLoad}, 60, MeasureUnit::seconds));
    rules.push_back(limit("own-rises", Scope::total, {Feature::rise}, 2, MeasureUnit::changes));
    rules.push_back(limit("own-first", Scope::early, {Feature::flexEnd}, 240, MeasureUnit::seconds));
    rules.push_back(limit("own-last", Scope::late, {Feature::inverted}, 300, MeasureUnit::seconds));
    Rule order = limit("own-order", Scope::order, {Feature::extEnd}, 30, MeasureUnit::seconds);
    order.after = Earlier{{{Feature::flexEnd}, {}, {}, 0, 0}, {}};
    rules.push_back(order);
    return more;
  }();
  return made;
}

struct Scene {
  std::vector<Person> roster;
  ClassWishes wishes;
  ClassPlan kept;
  std::vector<MovementId> unlike;

  explicit Scene(unsigned seed) {
    Draw draw(seed);
    const Catalogue& catalogue = knowledge().catalogue;
    roster = randomPeople(draw, realKnowledge().rules, kDay, draw.from(0, 4), draw.from(0, 2));
    for (Person& each : roster)
      for (PersonCondition& held : each.conditions)
        if (draw.chance(0.1)) // a written instruction
          held.clearances.push_back(
              {kDay, std::nullopt, "clinician", randomSet<Feature>(draw, 0.1), static_cast<Level>(draw.below(4)), ""});
    if (!roster.empty() && draw.chance(0.4))
      roster[0].conditions.push_back({ConditionId{"own-limits"}, {}, {}, ""});
    wishes = randomWishes(draw, catalogue, roster);
    wishes.fewerRises = draw.chance(0.3);
    if (draw.chance(0.6)) // else most would have far too much or far too little to choose from
      wishes.include.resize(std::min<std::size_t>(wishes.include.size(), 2));
    kept = blankClass(wishes);
    if (draw.chance(0.3)) {
      std::int64_t id = 0;
      for (int steps = draw.from(1, 8); steps > 0; --steps)
        kept.sections[draw.below(kept.sections.size())].steps.push_back(randomStep(draw, catalogue, StepId{++id}));
      for (Section& section : kept.sections)
        if (!section.steps.empty() && draw.chance(0.2))
          section.steps.push_back(step(++id, "moonwalk"));
    }
    if (draw.chance(0.2))
      unlike = randomMovements(draw, catalogue, 15);
  }

  ComposeResult compose(const ClassWishes& by, std::int64_t evaluations) const {
    ComposeLimits limits;
    limits.evaluations = evaluations;
    ClassPlan plan = kept;
    return composed(knowledge(), by, roster, kDay, plan, limits, unlike).value();
  }
};

std::string kindsOf(const std::vector<ComposeBreachAt>& breaches) {
  std::string kinds;
  for (const ComposeBreachAt& each : breaches)
    kinds += std::to_string(static_cast<int>(each.breach)) +
             (each.step ? " at " + std::to_string(each.step->value) : "") + "; ";
  return kinds;
}

void expectKept(const Scene& scene, const ComposeResult& result) {
  EXPECT_EQ(kindsOf(breachesOf(knowledge(), scene.wishes, scene.roster, kDay, scene.kept, result.plan)), "");
  std::vector<StepId> chosen;
  forEachStep(result.plan, [&](const Step& each) {
    if (!findStep(scene.kept, each.id)) {
      chosen.push_back(each.id);
      EXPECT_GT(each.id, highestStepId(scene.kept));
    }
  });
  EXPECT_EQ(result.chosen, chosen);
  EXPECT_EQ(std::set<StepId>(chosen.begin(), chosen.end()).size(), chosen.size());
  EXPECT_EQ(result.plan.target, scene.wishes.length);
  EXPECT_EQ(result.plan.people, scene.wishes.people);
  EXPECT_EQ(result.plan.pace, scene.wishes.pace);
  EXPECT_TRUE(result.obstacles.empty());
  EXPECT_FALSE(result.stopped);
}

void expectCost(const Scene& scene, const ComposeResult& result) {
  const Evaluation all = evaluate(knowledge(), result.plan, scene.roster, kDay);
  const ComposeRecount recount(knowledge(), scene.wishes, all, result.plan, result.chosen, scene.unlike);
  const auto expect = [&](ComposePart part, Seconds seconds, double near = 0.2) {
    EXPECT_NEAR(result.cost.of(part).value(), seconds.value(), near) << word(part);
  };
  expect(ComposePart::moving, recount.moving());
  expect(ComposePart::counterMovement, recount.counterMovement());
  expect(ComposePart::otherRegion, recount.otherRegion());
  expect(ComposePart::fewerRises, recount.fewerRises());
  expect(ComposePart::effortArc, recount.effortArc(), 0.02 * result.cost.of(ComposePart::effortArc).value() + 1);
  expect(ComposePart::warmFirst, recount.warmFirst());
  expect(ComposePart::focus, recount.focus());
  expect(ComposePart::variety, recount.variety());
  expect(ComposePart::asWritten, recount.asWritten());
  expect(ComposePart::fetching, recount.fetching());
  const auto [least, most] = recount.roundness();
  EXPECT_GE(result.cost.of(ComposePart::roundness).value(), least.value() - 0.2);
  EXPECT_LE(result.cost.of(ComposePart::roundness).value(), most.value() + 0.2);
  double shorts = 0;
  for (const Shortfall& each : result.shortfalls)
    shorts += (each.wished - each.given).value() / 2;
  EXPECT_NEAR(shorts, result.cost.of(ComposePart::focus).value(), 0.2);
}

void expectUnchanged(const Scene& scene, const ComposeResult& result) {
  EXPECT_EQ(result.plan.sections, scene.kept.sections);
  EXPECT_TRUE(result.chosen.empty());
}

std::string told(const Obstacle& obstacle) {
  return std::to_string(static_cast<int>(obstacle.kind)) + ' ' + obstacle.movement.value + " for " +
         obstacle.neededFor.value + (obstacle.rule ? " by " + obstacle.rule->id.value : "") + ' ' +
         std::string(word(obstacle.wish)) + ' ' + std::to_string(obstacle.least.value()) + ' ' +
         std::to_string(obstacle.most.value()) + ' ' + std::to_string(obstacle.wished.value());
}

struct Tally {
  std::map<std::string, int> counts;
  ~Tally() {
    for (const auto& [what, count] : counts)
      testing::Test::RecordProperty(what, count);
  }
};

TEST(RandomCompose, EveryPromiseIsKept) {
  Tally tally;
  auto& counts = tally.counts;
  forEachSeed<Scene>(1, 40, [&](const Scene& scene) {
    ASSERT_EQ(faultIn(scene.wishes), std::nullopt);
    const std::clock_t begin = std::clock();
    const ComposeResult result = scene.compose(scene.wishes, kEvaluations);
    const int milliseconds = static_cast<int>(1000.0 * static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC);
    counts["longest-ms"] = std::max(counts["longest-ms"], milliseconds);
    counts["all-ms"] += milliseconds;
    ObstacleTruth truth(knowledge(), scene.wishes, scene.roster, kDay, scene.kept);
    switch (result.status) {
    case ComposeStatus::composed:
      ++counts["composed"];
      counts["composed-with-kept"] += countSteps(scene.kept) > 0;
      counts["composed-for-people"] += !scene.wishes.people.empty();
      expectKept(scene, result);
      expectCost(scene, result);
      break;
    case ComposeStatus::impossible:
      ++counts["impossible"];
      expectUnchanged(scene, result);
      EXPECT_FALSE(result.obstacles.empty());
      for (const Obstacle& obstacle : result.obstacles) {
        ++counts["impossible-" + std::to_string(static_cast<int>(obstacle.kind))];
        EXPECT_TRUE(truth.holds(obstacle)) << told(obstacle);
      }
      break;
    case ComposeStatus::notFound:
      ++counts["not-found"];
      expectUnchanged(scene, result);
      for (const Obstacle& obstacle : result.obstacles) {
        if (obstacle.kind != ObstacleKind::onlyWithout) { // only a whole class shows that somebody is to leave it out
          ++counts["not-found-" + std::to_string(static_cast<int>(obstacle.kind))];
          EXPECT_TRUE(obstacle.rule != nullptr || obstacle.kind == ObstacleKind::tooLittle) << told(obstacle);
          continue;
        }
        ++counts["only-without"];
        const ComposeResult relaxed = scene.compose(truth.without(obstacle), kEvaluations);
        EXPECT_NE(relaxed.status, ComposeStatus::impossible) << told(obstacle);
        counts["only-without-found"] += relaxed.status == ComposeStatus::composed;
      }
      counts["not-found-untold"] += result.obstacles.empty();
      break;
    case ComposeStatus::cancelled:
      ADD_FAILURE() << "nobody said so";
    }
  });
  EXPECT_GT(counts["composed"], 5) << "the draw tests nothing";
  EXPECT_GT(counts["impossible"], 3) << "the draw tests nothing";
  EXPECT_GE(counts["only-without-found"], 0.4 * counts["only-without"]) << "of " << counts["only-without"];
}

} // namespace
} // namespace matwright::test
