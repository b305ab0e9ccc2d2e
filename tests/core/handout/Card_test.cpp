#include "core/handout/Card.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const Date kDay = day(2026, 6, 1);

class CardTest : public testing::Test {
protected:
  CardTest() {
    knowledge_.rules.conditions = {condition("ache")};
    knowledge_.rules.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                              rule("whole", Scope::wholeClass, Level::watch, {}, "ache")};
    roster_[1].initials = "Bo";
  }
  Card of(const ClassPlan& plan, NameStyle style = NameStyle::initials) const {
    return cardOf(knowledge_, plan, evaluate(knowledge_, plan, roster_, kDay), roster_, style);
  }
  Card of(std::vector<Step> steps) const { return of(classOf(std::move(steps))); }

  Knowledge knowledge_ = smallKnowledge();
  std::vector<Person> roster_{person("ida-amberley", {"ache"}), person("bo", {"ache"}), person("cy")};
};

ClassPlan withPeople(ClassPlan plan, std::vector<std::string> people) {
  for (std::string& name : people)
    plan.people.push_back(PersonId{std::move(name)});
  return plan;
}

TEST_F(CardTest, SaysWhatTheClassIs) {
  ClassPlan plan = classOf({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  plan.name = "Monday";
  plan.date = kDay;
  plan.note = "bring belts";
  const Card card = of(plan);
  EXPECT_EQ(card.title, "Monday");
  EXPECT_EQ(card.date, kDay);
  EXPECT_EQ(card.note, "bring belts");
  EXPECT_EQ(card.length, Seconds(157));
  EXPECT_EQ(card.changes, 3);
  EXPECT_LT(card.likelyFrom, card.length);
  EXPECT_GT(card.likelyTo, card.length);
}

TEST_F(CardTest, ARowSaysWhenWhatAndHow) {
  Step made = dosed(step(1, "curl", "hard"), 4);
  made.note = "slowly";
  const CardRow row = of({made}).sections.at(0).rows.at(0);
  EXPECT_EQ(row.step, StepId{1});
  EXPECT_EQ(row.at, Seconds(4));
  EXPECT_EQ(row.name, "curl");
  EXPECT_EQ(row.option, "Legs long");
  EXPECT_EQ(row.action, "out: lift");
  EXPECT_EQ(row.note, "slowly");
  EXPECT_EQ(row.dose, (Dose{4, DoseUnit::repetitions}));
  EXPECT_EQ(row.tempo.secondsPerCount, Seconds(2));
  EXPECT_EQ(row.sides, Sides::together);
  EXPECT_EQ(row.elevation, Elevation::faceUp);
  EXPECT_THAT(row.wayCue, IsEmpty());
}

TEST_F(CardTest, TheWayInIsSaidChangeByChange) {
  const Card card = of({step(1, "curl"), step(2, "swing"), onlySide(step(3, "kick"), Side::right)});
  EXPECT_EQ(card.sections[0].rows[0].wayTo, "");
  EXPECT_EQ(card.sections[0].rows[1].wayTo, knowledge_.transitions.find(PositionId{"stand"})->name);
  EXPECT_EQ(card.sections[0].rows[1].wayCue, "Sit straight up. Rise slowly.");
  EXPECT_EQ(card.sections[0].rows[1].elevation, Elevation::standing);
  EXPECT_EQ(card.sections[0].rows[2].wayCue, "Sit down on the mat. Lower to the right side.");
  EXPECT_EQ(card.sections[0].rows[2].onlySide, Side::right);
  EXPECT_EQ(card.sections[0].rows[2].sides, Sides::each);
}

TEST_F(CardTest, ASideIsPrintedOnlyWhereItMeansSomething) {
  EXPECT_EQ(of({onlySide(step(1, "swing"), Side::right)}).sections[0].rows[0].onlySide, std::nullopt);
}

TEST_F(CardTest, ThePoseIsTheOneATeacherWouldRecognise) {
  std::vector<Movement> movements = smallMovements();
  movements[0].poses.start.lean = -90;
  movements[0].poses.end.lean = -45;
  KeyPoses low;
  low.end.lean = -80;
  movements[0].options[0].poses = low;
  knowledge_.catalogue = Catalogue(movements);
  const Card card = of({step(1, "curl"), step(2, "curl", "low")});
  EXPECT_EQ(card.sections[0].rows[0].poses->end.lean, -45);
  EXPECT_EQ(card.sections[0].rows[1].poses->end.lean, -80);
}

TEST_F(CardTest, AMovementThatIsNotInTheCatalogueKeepsItsRow) {
  const CardRow row = of({step(1, "curl"), dosed(step(2, "handstand"), 3)}).sections[0].rows[1];
  EXPECT_EQ(row.name, "handstand");
  EXPECT_EQ(row.poses, std::nullopt);
  EXPECT_EQ(row.elevation, Elevation::faceUp);
  EXPECT_EQ(row.dose.amount, 3);
  EXPECT_THAT(row.cautions, ElementsAre(CardCaution{Level::askFirst, {}, ""}));
}

TEST_F(CardTest, AnUnknownOptionIsPrintedAsWrittenWithItsCaution) {
  const CardRow row = of({step(1, "curl", "gone")}).sections[0].rows[0];
  EXPECT_EQ(row.option, "");
  EXPECT_THAT(row.cautions, ElementsAre(CardCaution{Level::watch, {}, ""}));
}

TEST_F(CardTest, EmptySectionsAreNotPrinted) {
  ClassPlan plan = emptyClass("Monday");
  plan.sections[1].steps = {step(1, "curl")};
  plan.sections[3].steps = {step(2, "curl")};
  const Card card = of(plan);
  ASSERT_EQ(card.sections.size(), 2u);
  EXPECT_EQ(card.sections[0].name, "Warm");
  EXPECT_EQ(card.sections[0].begin, Seconds(0));
  EXPECT_EQ(card.sections[1].name, "Settle");
  EXPECT_EQ(card.sections[1].begin, Seconds(34));
}

TEST_F(CardTest, PeopleAreInitialsUnlessNamesAreWished) {
  const ClassPlan plan = withPeople(classOf({step(1, "curl")}), {"cy", "ida-amberley", "bo"});
  EXPECT_THAT(of(plan).people, ElementsAre("C.", "I.A.", "Bo"));
  EXPECT_THAT(of(plan, NameStyle::names).people, ElementsAre("cy", "ida-amberley", "bo"));
}

TEST_F(CardTest, CautionsNameThoseConcerned) {
  const Card card = of(withPeople(classOf({step(1, "curl"), step(2, "swing")}), {"bo", "cy", "ida-amberley"}));
  EXPECT_THAT(card.sections[0].rows[0].cautions,
              ElementsAre(CardCaution{Level::adapt, {"Bo", "I.A."}, "another way: bend"}));
  EXPECT_THAT(card.sections[0].rows[1].cautions, IsEmpty());
  EXPECT_THAT(card.wholeClass, ElementsAre(CardCaution{Level::watch, {"Bo", "I.A."}, "another way: whole"}));
}

TEST_F(CardTest, ARowHasTheStrongestCautionOfEachPersonAlone) {
  knowledge_.rules.rules.push_back(rule("lift", Scope::step, Level::leaveOut, {Feature::flexLoad}, "ache"));
  knowledge_.rules.rules.push_back(rule("anybody", Scope::step, Level::watch, {Feature::flexLoad}));
  const Card card = of(withPeople(classOf({step(1, "curl")}), {"bo"}));
  EXPECT_THAT(card.sections[0].rows[0].cautions, ElementsAre(CardCaution{Level::leaveOut, {"Bo"}, "another way: lift"},
                                                             CardCaution{Level::watch, {}, "another way: anybody"}));
}

TEST_F(CardTest, SaysWhatSinglePeopleDoInstead) {
  Step curl = step(1, "curl");
  curl.variants = {{PersonId{"bo"}, MovementId{"curl"}, OptionId{"low"}},
                   {PersonId{"cy"}, MovementId{"fold"}, {}},
                   {PersonId{"ida-amberley"}, MovementId{"handstand"}, {}}};
  const Card card = of(withPeople(classOf({curl, step(2, "curl")}), {"ida-amberley", "bo"}));
  const CardRow& row = card.sections.at(0).rows.at(0);
  EXPECT_THAT(row.variants, ElementsAre(CardVariant{{"I.A."}, "handstand", ""}, CardVariant{{"Bo"}, "", "Head down"}))
      << "cy is not in the class";
  EXPECT_THAT(card.sections[0].rows[1].variants, IsEmpty());
}

TEST_F(CardTest, NamesTogetherWhoDoesTheSame) {
  Step curl = step(1, "curl");
  curl.variants = {{PersonId{"bo"}, MovementId{"fold"}, {}}, {PersonId{"ida-amberley"}, MovementId{"fold"}, {}}};
  const Card card = of(withPeople(classOf({curl}), {"ida-amberley", "bo"}));
  ASSERT_EQ(card.sections.at(0).rows.at(0).variants.size(), 1u);
  EXPECT_THAT(card.sections[0].rows[0].variants[0].initials, ElementsAre("I.A.", "Bo"));
}

TEST_F(CardTest, SaysWhenNobodyWasScreened) {
  EXPECT_FALSE(of({step(1, "curl")}).screened);
  EXPECT_TRUE(of(withPeople(classOf({step(1, "curl")}), {"cy"})).screened);
  const Card card = of(withPeople(classOf({step(1, "curl")}), {"stranger"}));
  EXPECT_FALSE(card.screened);
  EXPECT_THAT(card.people, IsEmpty());
  EXPECT_THAT(card.wholeClass, ElementsAre(CardCaution{Level::watch, {"S."}, ""}));
}

TEST_F(CardTest, SomebodyTakenFromTheFilesMeanwhileIsStillNamed) {
  const ClassPlan plan = withPeople(classOf({step(1, "curl")}), {"ida-amberley"});
  const Evaluation evaluation = evaluate(knowledge_, plan, roster_, kDay);
  const Card card = cardOf(knowledge_, plan, evaluation, {}, NameStyle::names);
  EXPECT_THAT(card.people, ElementsAre("I.A."));
  EXPECT_THAT(card.sections[0].rows[0].cautions[0].initials, ElementsAre("I.A."));
}

// curl lies 0-34; lying -4-> sit (38) -6-> stand (44), at work 46-82; stand -2-> sit (84) -5-> side (89), 91-121; the
// turn stays on the side; 157.
TEST_F(CardTest, TheTerrainFollowsWorkAndWays) {
  EXPECT_THAT(of({step(1, "curl"), step(2, "swing"), step(3, "kick")}).terrain,
              ElementsAre(TerrainPoint{Seconds(0), Elevation::faceUp}, TerrainPoint{Seconds(38), Elevation::sitting},
                          TerrainPoint{Seconds(44), Elevation::standing}, TerrainPoint{Seconds(84), Elevation::sitting},
                          TerrainPoint{Seconds(89), Elevation::sideLying},
                          TerrainPoint{Seconds(157), Elevation::sideLying}));
}

// Twice as slow: the curl ends at 34, sitting at 42.
TEST_F(CardTest, TheTerrainIsAsSlowAsTheGroup) {
  ClassPlan plan = classOf({step(1, "curl"), step(2, "fold")});
  plan.pace.mobility = 2;
  EXPECT_THAT(of(plan).terrain,
              ElementsAre(TerrainPoint{Seconds(0), Elevation::faceUp}, TerrainPoint{Seconds(42), Elevation::sitting},
                          TerrainPoint{Seconds(34 + 8 + 2 + 40), Elevation::sitting}));
}

TEST_F(CardTest, TheTerrainRisesAtTheEndOfAMovementThatEndsHigher) {
  EXPECT_THAT(of({step(1, "roll")}).terrain,
              ElementsAre(TerrainPoint{Seconds(0), Elevation::faceUp}, TerrainPoint{Seconds(34), Elevation::sitting}));
}

TEST_F(CardTest, TheTerrainGoesOverATurn) {
  // Left and right with a sit between.
  knowledge_.transitions =
      TransitionGraph(smallPositions(), {change("side-left", "sit", 5), change("sit", "side-right", 4)});
  EXPECT_THAT(of({step(1, "kick")}).terrain, ElementsAre(TerrainPoint{Seconds(0), Elevation::sideLying},
                                                         TerrainPoint{Seconds(34 + 5), Elevation::sitting},
                                                         TerrainPoint{Seconds(34 + 9), Elevation::sideLying},
                                                         TerrainPoint{Seconds(34 + 9 + 30), Elevation::sideLying}));
}

TEST_F(CardTest, AnEmptyClassHasNeitherRowsNorTerrain) {
  const Card card = of(emptyClass("None"));
  EXPECT_THAT(card.sections, IsEmpty());
  EXPECT_THAT(card.terrain, IsEmpty());
  EXPECT_EQ(card.length, Seconds(0));
}

TEST(DrawnCard, HasARowForEachStepAndATerrainThatRunsForward) {
  forEachSeed<Draw>(1, 30, [](Draw& draw) {
    const Knowledge knowledge = smallKnowledge();
    const ClassPlan plan = randomClass(draw, knowledge.catalogue, draw.from(1, 30));
    const Evaluation evaluation = evaluate(knowledge, plan, {}, kDay);
    const Card card = cardOf(knowledge, plan, evaluation, {}, NameStyle::initials);
    std::vector<StepId> printed, planned;
    for (const CardSection& section : card.sections)
      for (const CardRow& row : section.rows) {
        printed.push_back(row.step);
        EXPECT_EQ(row.at, evaluation.timed(row.step)->workBegin);
      }
    forEachStep(plan, [&](const Step& each) { planned.push_back(each.id); });
    EXPECT_EQ(printed, planned);
    ASSERT_FALSE(card.terrain.empty());
    EXPECT_EQ(card.terrain.front().at, Seconds(0));
    EXPECT_EQ(card.terrain.back().at, card.length);
    for (std::size_t i = 1; i < card.terrain.size(); ++i)
      EXPECT_LT(card.terrain[i - 1].at, card.terrain[i].at);
    // While a step is at work the terrain is at its height.
    for (const TimedStep& each : evaluation.schedule.steps) {
      Elevation height = card.terrain.front().elevation;
      for (const TerrainPoint& point : card.terrain)
        if (point.at <= each.workBegin)
          height = point.elevation;
      EXPECT_EQ(height, knowledge.transitions.find(each.start)->elevation);
    }
  });
}

} // namespace
} // namespace matwright::test
