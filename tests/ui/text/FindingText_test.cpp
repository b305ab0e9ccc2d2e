// What a rule of each kind says, word by word.
#include "tests/support/RestingPoses.h"
#include "tests/support/SmallKnowledge.h"
#include "ui/text/CautionText.h"
#include "ui/text/FindingText.h"
#include "ui/text/VocabularyText.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

const Date kDay = day(2026, 6, 1);

// One rule, one class, and what is said of it. Curls lie, take 30 s after a gap of 4 s, and 3 s when they follow a
// curl; the swing stands.
struct Worded : testing::Test {
  Rule said = rule("r", Scope::step, Level::adapt, {Feature::flexLoad});
  std::vector<Step> steps{step(1, "curl"), step(2, "curl"), step(3, "swing")};
  std::vector<Movement> movements = smallMovements();
  std::vector<Person> roster;

  void measure(Scope scope, double amount, MeasureUnit unit) {
    said.scope = scope;
    said.threshold = Threshold{amount, unit, ThresholdOrigin::ours, amount};
  }
  CautionWords words() const {
    RuleBook book;
    book.conditions = {condition("ache")};
    book.rules = {said};
    Knowledge knowledge = smallKnowledge(book);
    knowledge.catalogue = Catalogue(movements);
    ClassPlan plan = classOf(steps);
    for (const Person& each : roster)
      plan.people.push_back(each.id);
    const Evaluation evaluation = evaluate(knowledge, plan, roster, kDay);
    EXPECT_FALSE(evaluation.cautions.empty());
    return evaluation.cautions.empty() ? CautionWords{}
                                       : wordsFor(evaluation.cautions[0], knowledge, plan, evaluation, roster);
  }
  std::string what() const { return words().what.toStdString(); }
  std::string whole() const { return words().whole.toStdString(); }
  bool tells(const std::string& line) const {
    const std::string all = whole();
    const bool there = all.find(line) != std::string::npos;
    EXPECT_TRUE(there) << line << "\n--- is not in\n" << all;
    return there;
  }
};

TEST_F(Worded, AStepNamesFeaturesHeightsAndEffort) {
  EXPECT_EQ(what(), "loaded forward bend");
  said.asks = {{Feature::flexLoad}, {}, {Elevation::faceUp, Elevation::standing}, 3};
  EXPECT_EQ(what(), "loaded forward bend, face up, effort 4");
  tells("Found: loaded forward bend, face up, effort 4 (in this step).");
  said.asks = {{}, {}, {Elevation::standing}, 0};
  EXPECT_EQ(what(), "standing");
}

TEST(DemandText, NamesALongLever) {
  EXPECT_EQ(demandText({{}, {}, {}, 0, 60}).toStdString(), "a long lever: 60 % of two straight legs or more");
}

// Curls that hold straight legs 30 degrees above the floor, and bent ones as an option: 90 and 45 % of two straight
// legs held level, see the worked examples of core/load.
std::vector<Movement> withLegsHeld(std::vector<Movement> movements) {
  const Pose straight = test::faceUpLegsLifted(30, 0), bent = test::faceUpLegsLifted(90, 90);
  movements[0].poses = {straight, straight};
  for (Option& option : movements[0].options)
    option.poses = KeyPoses{bent, bent};
  return movements;
}

TEST_F(Worded, AStepNamesItsLever) {
  movements = withLegsHeld(movements);
  said.asks = {{}, {}, {}, 0, 60};
  EXPECT_EQ(what(), "a lever of 90 % of two straight legs");
  tells("Found: a lever of 90 % of two straight legs (in this step).");
}

TEST_F(Worded, WhoDoesAStepInAnotherWayIsToldOfThatWay) {
  movements = withLegsHeld(movements);
  said.condition = ConditionId{"ache"};
  roster = {person("ida", {"ache"})};
  steps = {step(1, "curl")};
  steps[0].option = OptionId{"low"};
  steps[0].variants = {{PersonId{"ida"}, MovementId{"curl"}, OptionId{}}};
  said.asks = {{}, {}, {}, 0, 60};
  EXPECT_EQ(what(), "a lever of 90 % of two straight legs");
  said.asks = {{}, {}, {}, 3};
  EXPECT_EQ(what(), "effort 4"); // of all others 2
  steps[0].variants = {{PersonId{"ida"}, MovementId{"swing"}, OptionId{}}};
  said.asks = {{}, {}, {Elevation::standing}, 0};
  EXPECT_EQ(what(), "standing");
}

TEST_F(Worded, AStepThatIsTooLongNamesItsTime) {
  measure(Scope::step, 20, MeasureUnit::seconds);
  EXPECT_EQ(what(), "loaded forward bend: 0:30 in one go, the mark is 0:20");
}

TEST_F(Worded, SumsNameTheirUnit) {
  measure(Scope::total, 50, MeasureUnit::seconds);
  EXPECT_EQ(what(), "loaded forward bend: 1:00 reached, the mark is 0:50");
  measure(Scope::total, 7, MeasureUnit::repetitions);
  EXPECT_EQ(what(), "loaded forward bend: 10 repetitions reached, the mark is 7 repetitions");
  measure(Scope::stretch, 1, MeasureUnit::steps);
  EXPECT_EQ(what(), "loaded forward bend: 2 steps reached, the mark is 1 step");
  tells("(in a row without a break)");
  measure(Scope::total, 0, MeasureUnit::changes);
  said.asks.any = {Feature::rise};
  EXPECT_EQ(what(), "up from or down to the floor: 1 change of position reached, the mark is 0 changes of position");
  tells("(on the ways into steps, added up over the class)");
}

TEST_F(Worded, EarlyTellsWhenItBegins) {
  measure(Scope::early, 60, MeasureUnit::seconds);
  EXPECT_EQ(what(), "loaded forward bend: begins 0:04 into the class, the mark is 1:00");
  steps = {step(1, "curl")}; // 4 of 34 s: 11.8 %
  measure(Scope::early, 20, MeasureUnit::percent);
  EXPECT_EQ(what(), "loaded forward bend: begins when 11 % of the class has passed, the mark is 20 %");
  tells("(early in the class)");
}

TEST_F(Worded, LateTellsHowMuchIsLeft) {
  steps = {step(1, "curl"), step(2, "curl")}; // 34 + 33 s; the first ends 33 s before the end
  measure(Scope::late, 40, MeasureUnit::seconds);
  EXPECT_EQ(what(), "loaded forward bend: ends 0:33 before the end of the class, the mark is 0:40");
  measure(Scope::late, 50, MeasureUnit::percent);
  EXPECT_EQ(what(), "loaded forward bend: ends with 49 % of the class left, the mark is 50 %");
  tells("(late in the class)");
}

TEST_F(Worded, WhatIsLessThanItsMarkIsNotRoundedUpToIt) {
  steps = {step(1, "curl")};
  measure(Scope::early, 4.4, MeasureUnit::seconds); // begins at 4
  EXPECT_EQ(what(), "loaded forward bend: begins 0:04 into the class, the mark is 0:04");
  measure(Scope::early, 12, MeasureUnit::percent); // 11.76 %
  EXPECT_EQ(what(), "loaded forward bend: begins when 11 % of the class has passed, the mark is 12 %");
}

TEST_F(Worded, OrderNamesTheStepBefore) {
  measure(Scope::order, 60, MeasureUnit::seconds);
  said.asks = {{}, {}, {Elevation::standing}, 0};
  said.after = Earlier{{{Feature::supine, Feature::prone}, {}, {}, 0}, Seconds(50)};
  EXPECT_EQ(what(), "standing: 0:12 after curl, the mark is 1:00");
  tells("Found: standing (soon after another step).");
  tells("Before it: flat on the back or face down, for more than 0:50 without a break.");
  said.after->lasting = Seconds{};
  tells("Before it: flat on the back or face down.");
  measure(Scope::order, 1, MeasureUnit::steps);
  EXPECT_EQ(what(), "standing: right after curl, the mark is 1 step between");
  steps = {step(1, "curl"), step(2, "fold"), step(3, "swing")};
  measure(Scope::order, 3, MeasureUnit::steps);
  EXPECT_EQ(what(), "standing: 1 step between it and curl, the mark is 3 steps");
}

TEST_F(Worded, WhatIsMissingIsNamed) {
  said.scope = Scope::missing;
  said.asks = {{Feature::extLoad, Feature::extEnd}, {}, {}, 0};
  EXPECT_EQ(what(), "nowhere in the class: " + text(Feature::extLoad).toStdString() + " or " +
                        text(Feature::extEnd).toStdString());
  EXPECT_EQ(words().headline.count(QStringLiteral("the whole class")), 1);
}

TEST_F(Worded, AClassRuleSaysWhy) {
  said.scope = Scope::wholeClass;
  said.asks = {};
  said.why = "Because.";
  EXPECT_EQ(what(), "Because.");
}

TEST_F(Worded, TheMarkSaysWhoseItIs) {
  measure(Scope::total, 50, MeasureUnit::seconds);
  tells("1:00 reached, the mark is 0:50. The mark is this program's own: no published threshold is known.");
  said.threshold->origin = ThresholdOrigin::published;
  tells("The mark is a published one.");
  said.threshold->usual = 180;
  tells("The mark is set by you; the published one is 3:00.");
  said.threshold->origin = ThresholdOrigin::ours;
  tells("The mark is set by you; the program's own is 3:00, and no published threshold is known.");
}

TEST_F(Worded, ARuleForSomeAgesNamesThem) {
  said.ages = {AgeBand::from65, AgeBand::from80};
  roster = {person("ida")};
  roster[0].ageBand = AgeBand::from80;
  tells("For people aged 65 to 79, 80 and over.");
  EXPECT_EQ(words().who.toStdString(), "ida");
}

TEST_F(Worded, AWrittenInstructionComesFirst) {
  said.condition = ConditionId{"ache"};
  roster = {person("ida", {"ache"})};
  roster[0].conditions[0].clearances = {{kDay, {}, "the surgeon", {}, Level::leaveOut, "By letter."}};
  const std::string date = dateText(kDay).toStdString();
  EXPECT_EQ(what(), "by written instruction of the surgeon, " + date + ": loaded forward bend");
  EXPECT_TRUE(words().headline.contains(QStringLiteral("leave out")));
  tells("By written instruction of the surgeon, " + date + ": leave out. The rule itself says adapt.");
  tells("Noted there: By letter.");
  roster[0].conditions[0].clearances[0].by.clear();
  EXPECT_EQ(what(), "by written instruction of " + date + ": loaded forward bend");
}

TEST_F(Worded, AClearanceNamesWhoGaveIt) {
  said.condition = ConditionId{"ache"};
  said.level = Level::askFirst;
  roster = {person("ida", {"ache"})};
  roster[0].conditions[0].clearances = {{kDay, {}, "the clinic", {}, {}, ""}};
  tells("A clearance on file, of the clinic, " + dateText(kDay).toStdString() + ", lowers \"ask first\" to \"watch\".");
  EXPECT_EQ(what(), "loaded forward bend");
}

TEST(DemandText, JoinsWhatItNames) {
  const Demand demand{
      {Feature::flexLoad, Feature::balance}, {Feature::supine, Feature::neckLift}, {Elevation::sitting}, 7};
  EXPECT_EQ(demandText(demand).toStdString(), "loaded forward bend or balance, " +
                                                  text(Feature::neckLift).toStdString() + " and " +
                                                  text(Feature::supine).toStdString() + ", sitting, effort 7 or more");
}

TEST(AgeText, NamesEveryBand) {
  EXPECT_EQ(text(AgeBand::under18), QStringLiteral("under 18"));
  EXPECT_EQ(text(AgeBand::from18), QStringLiteral("18 to 39"));
  EXPECT_EQ(text(AgeBand::from40), QStringLiteral("40 to 64"));
  EXPECT_EQ(text(AgeBand::from65), QStringLiteral("65 to 79"));
  EXPECT_EQ(text(AgeBand::from80), QStringLiteral("80 and over"));
}

} // namespace
} // namespace matwright::test
