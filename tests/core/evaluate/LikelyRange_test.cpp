// The likely range and the chance to end in time, held against draws of the stated model: every term of the schedule
// drawn on its own, the larger of moving and talking taken, all multiplied by the pace of the day.
#include "core/evaluate/Schedule.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace matwright::test {
namespace {

Schedule scheduled(const Knowledge& knowledge, const ClassPlan& plan) {
  return scheduleOf(knowledge.catalogue, knowledge.transitions, Ways(knowledge.transitions, {}), plan);
}

// One curl: gap 4 (cue 2), work 30 in five repetitions. Variances: work (30 x 0.208 / sqrt 5)^2 = 7.7875, cue 0.3^2 =
// 0.09; day: 7.8775 x 1.0016 + 34^2 x 0.0016 = 7.8901 + 1.8496 = 9.7397, of which the root is 3.1208.
TEST(LikelyRange, OfOneMovementIsAsWorkedOutByHand) {
  const Knowledge knowledge = smallKnowledge();
  ClassPlan plan = classOf({step(1, "curl")});
  plan.target = Seconds(34 + 3.1208);
  const Schedule schedule = scheduled(knowledge, plan);
  EXPECT_NEAR(schedule.deviation, 3.1208, 1e-3);
  EXPECT_NEAR(schedule.likelyFrom.value(), 34 - 1.28155 * 3.1208, 1e-3);
  EXPECT_NEAR(schedule.likelyTo.value(), 34 + 1.28155 * 3.1208, 1e-3);
  EXPECT_NEAR(schedule.chanceInTime, 0.8413, 1e-3); // one deviation to spare
}

TEST(LikelyRange, ChancesFallAsTheTargetComesNearer) {
  const Knowledge knowledge = smallKnowledge();
  ClassPlan plan = classOf({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  double before = 1.1;
  for (int seconds : {400, 180, 165, 158, 150, 130, 60}) {
    plan.target = Seconds(seconds);
    const double chance = scheduled(knowledge, plan).chanceInTime;
    EXPECT_LT(chance, before);
    before = chance;
  }
  EXPECT_LT(before, 1e-6);
}

// Breaths differ from one another by 20.8 % (Tobin et al. 1988, J Appl Physiol, n = 65): of more repetitions in the
// same time the sum is surer.
TEST(LikelyRange, ManyShortRepetitionsAreSurerThanFewLongOnes) {
  const Knowledge knowledge = smallKnowledge();
  Step few = dosed(step(1, "curl"), 2), many = dosed(step(1, "curl"), 20);
  few.tempo = tempo(5, {{Breath::in, 3}, {Breath::out, 3}});
  many.tempo = tempo(0.5, {{Breath::in, 3}, {Breath::out, 3}});
  const Schedule slow = scheduled(knowledge, classOf({few})), quick = scheduled(knowledge, classOf({many}));
  EXPECT_EQ(slow.length, quick.length);
  EXPECT_GT(slow.deviation, quick.deviation);
}

// Where moving and talking take equally long, waiting for the slower of the two makes the class late on average.
TEST(LikelyRange, LiesLaterThanThePlainLengthWhereMovingAndTalkingVie) {
  Knowledge knowledge = smallKnowledge();
  std::vector<Movement> movements = smallMovements();
  for (Movement& each : movements)
    each.setUp = "a b c d e f g h i j k l m n o p q r s t"; // 20 words, 8 s
  knowledge.catalogue = Catalogue(movements);
  std::vector<Step> steps;
  for (int i = 0; i < 10; ++i)
    steps.push_back(step(i + 1, i % 2 == 0 ? "curl" : "swing"));
  const Schedule schedule = scheduled(knowledge, classOf(steps));
  const double middle = (schedule.likelyFrom + schedule.likelyTo).value() / 2;
  EXPECT_GT(middle, schedule.length.value() + 1);
}

double drawnLength(const Schedule& schedule, const Pace& pace, std::mt19937_64& engine) {
  std::normal_distribution<double> normal;
  const auto vary = [&](Seconds mean, double variation) { return mean.value() * (1 + variation * normal(engine)); };
  double length = 0;
  for (const TimedStep& each : schedule.steps) {
    length += std::max(vary(each.moving, 0.25), vary(each.cue, 0.15)) + pace.settle.value();
    for (int i = 0; i < each.work.repetitions; ++i)
      length += vary(each.work.whole / each.work.repetitions, 0.208);
    length += vary(each.turning, 0.25);
  }
  return length * (1 + 0.04 * normal(engine));
}

TEST(DrawnClasses, TakeAsLongAndAreInTimeAsOftenAsSaid) {
  forEachSeed<Draw>(1, 12, [](Draw& draw) {
    const Knowledge knowledge = smallKnowledge();
    ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(1, 30));
    plan.pace.mobility = draw.from(5, 40) / 10.0;
    plan.target = scheduled(knowledge, plan).length * (0.96 + 0.01 * draw.from(0, 10));
    const Schedule schedule = scheduled(knowledge, plan);

    constexpr int kDraws = 8000;
    std::mt19937_64 engine(draw.below(1000000));
    std::vector<double> lengths;
    for (int i = 0; i < kDraws; ++i)
      lengths.push_back(drawnLength(schedule, plan.pace, engine));
    std::sort(lengths.begin(), lengths.end());
    double sum = 0, squares = 0;
    for (double length : lengths) {
      sum += length;
      squares += length * length;
    }
    const double mean = sum / kDraws, deviation = std::sqrt(squares / kDraws - mean * mean);
    const auto share = [&](double below) {
      return static_cast<double>(std::lower_bound(lengths.begin(), lengths.end(), below) - lengths.begin()) / kDraws;
    };
    // The deviation of a deviation is about 1 / sqrt(2 n) = 0.8 %, that of a share of one half 0.56 %; four of them,
    // and a little for lengths that are not quite normal.
    EXPECT_NEAR((schedule.likelyFrom + schedule.likelyTo).value() / 2, mean, 4 * deviation / std::sqrt(kDraws));
    EXPECT_NEAR(schedule.deviation, deviation, 0.04 * deviation);
    EXPECT_NEAR(share(schedule.likelyTo.value()) - share(schedule.likelyFrom.value()), 0.8, 0.025);
    EXPECT_NEAR(schedule.chanceInTime, share(plan.target.value()), 0.03);
  });
}

} // namespace
} // namespace matwright::test
