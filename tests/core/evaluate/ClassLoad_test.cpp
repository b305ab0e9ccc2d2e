#include "core/evaluate/ClassLoad.h"
#include "core/evaluate/Evaluation.h"
#include "tests/support/RestingPoses.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

constexpr std::size_t kHip = index(LoadedJoint::hip);
constexpr std::size_t kLowBack = index(LoadedJoint::lowBack);

// The small knowledge with legs that are lowered, by each movement to another height.
const Knowledge& lowering() {
  static const Knowledge knowledge = [] {
    Knowledge made = smallKnowledge();
    std::vector<Movement> movements = made.catalogue.movements();
    double lowest = 60;
    for (Movement& movement : movements)
      movement.poses = {faceUpLegsLifted(90, 0), faceUpLegsLifted(lowest -= 5, 0)};
    made.catalogue = Catalogue(std::move(movements));
    return made;
  }();
  return knowledge;
}

ClassLoad loadFor(const ClassPlan& plan) {
  const Knowledge& knowledge = lowering();
  const Schedule schedule =
      scheduleOf(knowledge.catalogue, knowledge.transitions, Ways(knowledge.transitions, {}), plan);
  return loadOf(*knowledge.loads, schedule, plan);
}

TEST(ClassLoad, AddsMeansOverTheTimeOfWorkAndFindsThePeak) {
  const ClassLoad load = loadFor(classOf({step(1, "curl"), step(2, "swing"), step(3, "kick"), step(4, "nothing")}));
  ASSERT_EQ(load.steps.size(), 4u);
  EXPECT_GT(load.steps[0].mean[kLowBack], 0);
  // curl 30 s, swing 36 s, kick 2 x 30 s; see Balance.OfAClassWorkedOutByHand
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    EXPECT_NEAR(load.momentSeconds[i],
                30 * load.steps[0].mean[i] + 36 * load.steps[1].mean[i] + 60 * load.steps[2].mean[i], 1e-12);
  EXPECT_EQ(load.steps[3], StepLoad{}); // not in the catalogue
  const auto heaviest = heaviestStep(load, LoadedJoint::lowBack);
  ASSERT_TRUE(heaviest);
  EXPECT_EQ(load.steps[*heaviest].peak[kLowBack], load.peak[kLowBack]);
  for (const StepLoad& each : load.steps)
    EXPECT_LE(each.peak[kLowBack], load.peak[kLowBack]);
}

TEST(ClassLoad, OfTwoStepsThatAreAlikeTheFirstIsTheHeaviest) {
  ClassLoad load;
  load.steps.resize(3);
  EXPECT_EQ(heaviestStep(load, LoadedJoint::hip), std::nullopt);
  load.steps[1].peak[kHip] = load.steps[2].peak[kHip] = 0.02;
  EXPECT_EQ(heaviestStep(load, LoadedJoint::hip), 1u);
  EXPECT_EQ(heaviestStep(load, LoadedJoint::shoulder), std::nullopt);
  EXPECT_EQ(heaviestStep({}, LoadedJoint::hip), std::nullopt);
}

TEST(ClassLoad, GoesByTheTempoOfTheStep) {
  Step held = step(1, "curl");
  const StepLoad usual = loadFor(classOf({held})).steps[0];
  held.tempo = {Seconds(0.5), {{Breath::out, 2}, {Breath::hold, 20}, {Breath::in, 2}}};
  const StepLoad holding = loadFor(classOf({held})).steps[0];
  EXPECT_GT(holding.mean[kHip], usual.mean[kHip] * 1.2); // the legs stay low
  EXPECT_NEAR(holding.peak[kHip], usual.peak[kHip], 1e-9);
  held.tempo.secondsPerCount = Seconds(2);
  EXPECT_EQ(loadFor(classOf({held})).steps[0], holding); // shares of time alone count
}

// Legs held in tabletop on the back: 49.7 N m about the low back and 10.93 about each hip for 70 kg and 1.75 m, see the
// worked examples of core/load.
Movement tabletop(std::string id = "tabletop") {
  Movement held = movement(std::move(id), "lying");
  const Pose pose = faceUpLegsLifted(90, 90);
  held.poses = {pose, pose};
  return held;
}

class ClassLoadTest : public testing::Test {
protected:
  ClassLoadTest() { knowledge_.catalogue = Catalogue({tabletop()}); }

  ClassLoad of(std::vector<Step> steps) const {
    return evaluate(knowledge_, classOf(std::move(steps)), {}, day(2026, 6, 1)).load;
  }
  Step held(int id, int repetitions) const {
    Step step = stepOf(StepId{id}, knowledge_.catalogue.movements()[0]);
    step.dose = {repetitions, DoseUnit::repetitions};
    return step;
  }

  Knowledge knowledge_ = smallKnowledge();
};

TEST_F(ClassLoadTest, AddsMomentsTimesSecondsOfWork) {
  const ClassLoad load = of({held(1, 5), held(2, 10)}); // 15 repetitions of 6 seconds
  const double unit = newtonMetres({});
  EXPECT_NEAR(load.momentSeconds[kHip] * unit, 90 * 10.93, 1);
  EXPECT_NEAR(load.momentSeconds[kLowBack] * unit, 90 * 49.72, 1);
  EXPECT_NEAR(load.peak[kLowBack] * unit, 49.72, 0.05);
  ASSERT_EQ(load.steps.size(), 2u);
  EXPECT_EQ(load.steps[0], load.steps[1]);
  EXPECT_NEAR(load.steps[0].lever, 49.72 / 111.13, 0.001);
}

TEST_F(ClassLoadTest, CountsNothingForWhatIsNotInTheCatalogue) {
  const ClassLoad load = of({step(1, "handstand")});
  ASSERT_EQ(load.steps.size(), 1u);
  EXPECT_EQ(load.steps[0], StepLoad{});
  EXPECT_EQ(load.momentSeconds, ByLoadedJoint{});
}

TEST_F(ClassLoadTest, IsByTheTableOfTheKnowledge) {
  const double winter = of({held(1, 5)}).momentSeconds[kHip];
  knowledge_.loads = std::make_shared<const Loads>(BodyTable::deLevaWomen);
  const double women = of({held(1, 5)}).momentSeconds[kHip];
  EXPECT_NEAR(women / winter, 8.88 / 9.58, 0.005); // de Leva's woman by his table and by Winter's
}

TEST(LeverPercent, IsAsItIsShown) {
  EXPECT_EQ(leverPercent(0.596), 60);
  EXPECT_EQ(leverPercent(0.594), 59);
  EXPECT_EQ(leverPercent(1.234), 123);
  EXPECT_EQ(leverPercent(0), 0);
}

} // namespace
} // namespace matwright::test
