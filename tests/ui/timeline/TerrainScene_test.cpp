#include "tests/ui/timeline/Terrains.h"

namespace matwright {
namespace {

struct Scenes : testing::Test {
  OpenClass open;
  ClassPlan plan = emptyClass("Scene");

  void put(std::size_t section, const char* movement) {
    plan.sections[section].steps.push_back(
        stepOf(StepId{highestStepId(plan).value + 1}, *open.document.knowledge().catalogue.find(MovementId{movement})));
  }
  TerrainScene scene() {
    open.document.load(plan);
    return sceneOf(open.document.snapshot());
  }
};

TEST_F(Scenes, StepsAndSectionsAreThoseOfTheSchedule) {
  put(1, "hundred");
  put(1, "saw");
  put(3, "clam");
  const TerrainScene shown = scene();
  const Schedule& schedule = open.document.evaluation().schedule;
  ASSERT_EQ(shown.steps.size(), 3u);
  EXPECT_EQ(shown.steps[2].place, (Place{3, 0}));
  EXPECT_EQ(shown.length, schedule.length);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_EQ(shown.steps[i].workBegin, schedule.steps[i].workBegin);
    EXPECT_EQ(shown.steps[i].finish, schedule.steps[i].finish);
  }
  EXPECT_EQ(shown.steps[0].name, QStringLiteral("The hundred"));
  EXPECT_EQ(shown.steps[0].elevation, Elevation::faceUp);
  EXPECT_EQ(shown.steps[1].elevation, Elevation::sitting);
  EXPECT_EQ(shown.steps[2].elevation, Elevation::sideLying);
  ASSERT_EQ(shown.sections.size(), 4u);
  EXPECT_EQ(shown.sections[0].steps, 0u);
  EXPECT_EQ(shown.sections[0].begin, shown.sections[0].end);
  EXPECT_EQ(shown.sections[1].end, shown.steps[1].finish);
}

TEST_F(Scenes, LoadsOfTheLowBackAreInNewtonMetresOfTheBody) {
  constexpr std::size_t kLowBack = index(LoadedJoint::lowBack);
  put(1, "hundred");
  put(1, "lying-rest");
  TerrainScene shown = scene();
  const StepLoad& load = open.document.evaluation().load.steps[0];
  EXPECT_NEAR(shown.steps[0].load, load.mean[kLowBack] * newtonMetres({}), 1e-9);
  EXPECT_NEAR(shown.steps[0].loadPeak, load.peak[kLowBack] * newtonMetres({}), 1e-9);
  EXPECT_GE(shown.loadScale, shown.steps[0].loadPeak);
  EXPECT_GT(shown.steps[0].load, shown.steps[1].load);
  const double before = shown.steps[0].load;
  open.document.setBody({.mass = 140, .stature = 1.75});
  shown = sceneOf(open.document.snapshot());
  EXPECT_NEAR(shown.steps[0].load, 2 * before, 1e-9);
  EXPECT_GE(shown.loadScale, shown.steps[0].loadPeak);
}

TEST_F(Scenes, TheWayInBeginsWhereTheStepBeforeEnds) {
  put(0, "hundred");
  put(0, "saw");
  const TerrainScene shown = scene();
  EXPECT_TRUE(shown.steps[0].way.empty());
  ASSERT_GE(shown.steps[1].way.size(), 2u);
  EXPECT_EQ(shown.steps[1].way.front().elevation, Elevation::faceUp);
  EXPECT_EQ(shown.steps[1].way.back().elevation, Elevation::sitting);
  EXPECT_EQ(shown.steps[1].way.back().share, 1);
  EXPECT_GT(shown.steps[1].changes, 0);
}

TEST_F(Scenes, AnUnknownMovementKeepsItsPlace) {
  put(0, "hundred");
  Step lost = plan.sections[0].steps.front();
  lost.id = StepId{2};
  lost.movement = MovementId{"no-longer-there"};
  plan.sections[0].steps.push_back(lost);
  const TerrainScene shown = scene();
  EXPECT_EQ(shown.steps[1].pose, nullptr);
  EXPECT_EQ(shown.steps[1].name, QStringLiteral("no-longer-there"));
  EXPECT_EQ(shown.steps[1].elevation, Elevation::faceUp); // as before it
  EXPECT_TRUE(shown.steps[1].caution);
}

TEST_F(Scenes, AWayCautionIsTheWaysAndAStepCautionIsNot) {
  Person person;
  person.id = PersonId{"ilo"};
  person.name = "Ilo";
  person.conditions.push_back({ConditionId{"knee-osteoarthritis"}, {}, {}, {}});
  open.document.setRoster({person});
  plan.people = {person.id};
  test::Draw draw(11);
  bool onWay = false, onStepAlone = false;
  for (int round = 0; round < 20; ++round) {
    ClassPlan drawn = test::randomClass(draw, open.document.knowledge().catalogue, 20);
    drawn.people = plan.people;
    open.document.load(drawn);
    const TerrainScene shown = sceneOf(open.document.snapshot());
    for (const TerrainStep& step : shown.steps) {
      if (step.wayCaution) {
        ASSERT_TRUE(step.caution);
        EXPECT_GE(*step.caution, *step.wayCaution);
        onWay = true;
      }
      EXPECT_EQ(step.caution, open.document.evaluation().strongestAt(step.id));
      onStepAlone = onStepAlone || (step.caution && !step.wayCaution);
    }
  }
  EXPECT_TRUE(onWay);
  EXPECT_TRUE(onStepAlone);
}

TEST_F(Scenes, BothSidesAreSaidInTheShortDose) {
  put(0, "clam");
  TerrainScene shown = scene();
  const QString amount = QString::number(plan.sections[0].steps[0].dose.amount);
  EXPECT_EQ(shown.steps[0].shortDose, QStringLiteral("%1+%1").arg(amount));
  EXPECT_TRUE(shown.steps[0].sideChange);
  plan.sections[0].steps[0].onlySide = Side::left;
  shown = scene();
  EXPECT_EQ(shown.steps[0].shortDose, amount);
  EXPECT_FALSE(shown.steps[0].sideChange);
}

} // namespace
} // namespace matwright
