#include "core/evaluate/ClassLoad.h"
#include "core/evaluate/Evaluation.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>

namespace matwright::test {
namespace {

constexpr auto kLowBack = static_cast<std::size_t>(LoadedJoint::lowBack);
constexpr auto kHip = static_cast<std::size_t>(LoadedJoint::hip);

// Legs held in tabletop on the back: 49.7 N m about the low back and 10.93 about each hip for 70 kg and 1.75 m, see the
// worked examples of core/load.
Movement tabletop(std::string id = "tabletop") {
  Movement held = movement(std::move(id), "lying");
  Pose pose;
  pose.lean = -90;
  pose.on = {Contact::back, Contact::head};
  for (LegAngles& leg : pose.legs)
    leg = {.hip = 90, .knee = 90};
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
