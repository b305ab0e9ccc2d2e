// What could stand in the place of a step, in classes worked by hand.
#include "core/evaluate/Swaps.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

const Date kDay = day(2026, 6, 1);

class ReplacementsTest : public testing::Test {
protected:
  ReplacementsTest() {
    knowledge_.rules.conditions = {condition("ache")};
    knowledge_.rules.rules = {rule("bend", Scope::step, Level::adapt, {Feature::flexLoad}, "ache"),
                              rule("sway", Scope::step, Level::watch, {Feature::balance}, "ache")};
    put({step(1, "curl"), step(2, "fold")});
  }

  void put(std::vector<Step> steps) {
    plan_ = classOf(std::move(steps));
    plan_.people = {PersonId{"ida"}, PersonId{"bo"}};
  }
  std::vector<Swap> replacements(std::int64_t step, std::size_t most = kMostReplacements) const {
    return replacementsFor(knowledge_, plan_, roster_, kDay, StepId{step}, most);
  }
  static std::string name(const Swap& swap) {
    return swap.movement->id.value + (swap.option ? '/' + swap.option->id.value : "");
  }
  static std::vector<std::string> names(const std::vector<Swap>& swaps) {
    std::vector<std::string> all;
    for (const Swap& each : swaps)
      all.push_back(name(each));
    return all;
  }
  std::vector<std::string> unpreparedBy(std::int64_t step, const std::string& movement) const {
    for (const Swap& swap : replacements(step))
      if (swap.movement->id.value == movement) {
        std::vector<std::string> all;
        for (const Unprepared& each : swap.unprepared)
          all.push_back(each.movement->id.value + " without " + each.prerequisite->id.value);
        return all;
      }
    ADD_FAILURE() << movement << " is not offered";
    return {};
  }
  // Works as curl does, and bends too unless its option is chosen.
  void addPress(std::vector<Region> regions = {Region::abdominals, Region::neck}) {
    std::vector<Movement> movements = smallMovements();
    Movement press = movement("press", "lying");
    press.regions = std::move(regions);
    press.spine = {SpineAction::flexion};
    press.features = {Feature::flexLoad};
    Option ring;
    ring.id = OptionId{"ring"};
    ring.name = "With a ring";
    ring.props = PropSet{Prop::ring};
    press.options = {ring};
    movements.push_back(press);
    knowledge_.catalogue = Catalogue(std::move(movements));
  }

  Knowledge knowledge_ = smallKnowledge();
  std::vector<Person> roster_{person("ida", {"ache"}), person("bo")};
  ClassPlan plan_;
};

// In place of fold, 40 s after a way of 4 s and 2 s to settle. None of the four shares a region with it, so what counts
// is disturbance (each works 5 times 6 s, swing 6 times):
//
//   roll   no way, gap 4, work 30: 12 s saved, 4 s of moving and a change fewer, half of (40 + 30) / 2:  15.5
//   arch   way 4 + 3, gap 9, work 30: 7 s saved, 3 s of moving, half of (40 + 30) / 2 shifted:           27.5
//   swing  way 4 + 6, gap 12, work 36: 2 s added, 6 s of moving, half of (40 + 36 + 18 + 18) / 2:        36
//   kick   way 4, turn 6, gap 6, work 60: 26 s added, 6 s of moving, a change, half of (40 + 60) / 2:    67
TEST_F(ReplacementsTest, AreInTheOrderOfWhatTheyDisturb) {
  knowledge_.rules.rules.clear();
  const auto found = replacements(2);
  ASSERT_THAT(names(found), ElementsAre("roll", "arch", "swing", "kick"));
  EXPECT_EQ(found[0].added, Seconds(-12));
  EXPECT_EQ(found[0].addedMoving, Seconds(-4));
  EXPECT_EQ(found[0].addedChanges, -1);
  EXPECT_EQ(found[0].shifted, Seconds(35));
  EXPECT_EQ(found[1].added, Seconds(-7));
  EXPECT_EQ(found[1].addedMoving, Seconds(3));
  EXPECT_EQ(found[1].addedChanges, 0);
  EXPECT_EQ(found[1].shifted, Seconds(35));
  EXPECT_EQ(found[2].added, Seconds(2));
  EXPECT_EQ(found[2].addedMoving, Seconds(6));
  EXPECT_EQ(found[2].shifted, Seconds(56));
  EXPECT_EQ(found[3].added, Seconds(26));
  EXPECT_EQ(found[3].addedMoving, Seconds(6));
  EXPECT_EQ(found[3].addedChanges, 1);
  EXPECT_EQ(found[3].shifted, Seconds(50));
}

TEST_F(ReplacementsTest, ComeAfterThoseThatLeaveFewerCautions) {
  const auto found = replacements(2);
  ASSERT_THAT(names(found), ElementsAre("arch", "kick", "swing", "roll"));
  EXPECT_THAT(found[1].come, IsEmpty());
  EXPECT_EQ(countLevels(found[2].come), (LevelCounts{1, 0, 0, 0}));
  EXPECT_EQ(found[2].left, Level::watch);
  EXPECT_EQ(countLevels(found[3].come), (LevelCounts{0, 1, 0, 0}));
  EXPECT_EQ(found[3].come[0].step, StepId{2});
  EXPECT_EQ(found[3].come[0].rule->id.value, "bend");
}

TEST_F(ReplacementsTest, DoNotSayAskFirstWhereNothingDidAsStrongly) {
  knowledge_.rules.rules[1].level = Level::askFirst;
  EXPECT_THAT(names(replacements(2)), Not(Contains("swing")));
  EXPECT_THAT(names(replacements(1)), Not(Contains("swing"))) << "adapt at the step is weaker";
  knowledge_.rules.rules[0].level = Level::askFirst;
  EXPECT_THAT(names(replacements(1)), Contains("swing"));
  EXPECT_THAT(names(replacements(2)), Not(Contains("swing"))) << "what another step says does not count";
}

TEST_F(ReplacementsTest, NeverBringALeaveOut) {
  knowledge_.rules.rules[0].level = Level::leaveOut;
  knowledge_.rules.rules[1].level = Level::leaveOut;
  EXPECT_THAT(names(replacements(1)), Not(Contains("swing")));
  EXPECT_THAT(names(replacements(1)), Contains("roll")) << "what the step says already does not come";
  EXPECT_THAT(names(replacements(2)), ElementsAre("arch", "kick"));
}

TEST_F(ReplacementsTest, AreEachInTheBestOption) {
  put({step(1, "kick"), step(2, "fold")});
  addPress();
  const auto found = names(replacements(2));
  EXPECT_THAT(found, Contains("curl/low")) << "the one that does not bend";
  EXPECT_THAT(found, Contains("press")) << "the one without the ring";
}

TEST_F(ReplacementsTest, OfLikePurposeComeBeforeThoseThatLeaveFewerCautions) {
  addPress();
  const auto found = replacements(1);
  ASSERT_EQ(found.size(), 5u);
  EXPECT_EQ(name(found[0]), "press");
  EXPECT_EQ(found[0].likeness, 1);
  EXPECT_EQ(found[0].left, Level::adapt);
  EXPECT_EQ(name(found[1]), "roll");
  EXPECT_EQ(found[2].left, std::nullopt);
}

TEST_F(ReplacementsTest, BelowLikePurposeComeByTenthsOfLikeness) {
  // To curl (abdominals 2, neck 1; flexion; effort 4): roll has 2 / 3 x 0.8 = 0.53. Press shares the neck alone, 1 of
  // 2 + 1 + 2 parts: 0.2; it leaves the bend, and is before all that share nothing and leave no caution.
  addPress({Region::hips, Region::neck});
  const auto found = replacements(1);
  ASSERT_EQ(found.size(), 5u);
  EXPECT_THAT(names({found[0], found[1]}), ElementsAre("roll", "press"));
  EXPECT_DOUBLE_EQ(found[1].likeness, 0.2);
}

TEST_F(ReplacementsTest, ThatComeBeforeTheirPrerequisiteAreLast) {
  put({step(1, "kick"), step(2, "curl")});
  knowledge_.rules.rules.clear();
  EXPECT_THAT(names(replacements(1)).back(), "roll");
  EXPECT_THAT(unpreparedBy(1, "roll"), ElementsAre("roll without curl"));
  EXPECT_THAT(unpreparedBy(1, "arch"), IsEmpty());
  put({step(1, "curl"), step(2, "kick")});
  EXPECT_THAT(unpreparedBy(2, "roll"), IsEmpty());
  put({step(1, "kick"), step(2, "fold")});
  EXPECT_THAT(unpreparedBy(1, "roll"), IsEmpty()) << "the class does without curl altogether";
}

TEST_F(ReplacementsTest, ThatPrepareWhatIsOverAreLast) {
  put({step(1, "roll"), step(2, "kick")});
  knowledge_.rules.rules.clear();
  EXPECT_EQ(replacements(2).back().movement->id.value, "curl");
  EXPECT_THAT(unpreparedBy(2, "curl"), ElementsAre("roll without curl"));
}

TEST_F(ReplacementsTest, SayWhatLosesItsPrerequisite) {
  put({step(1, "curl"), step(2, "roll")});
  EXPECT_THAT(unpreparedBy(1, "kick"), ElementsAre("roll without curl"));
  put({step(1, "curl"), step(2, "curl"), step(3, "roll")});
  EXPECT_THAT(unpreparedBy(1, "kick"), IsEmpty()) << "the second time is soon enough";
  EXPECT_THAT(unpreparedBy(2, "kick"), IsEmpty()) << "the first time is still there";
  put({step(1, "curl"), step(2, "roll"), step(3, "curl")});
  EXPECT_THAT(unpreparedBy(1, "kick"), ElementsAre("roll without curl"));
  EXPECT_THAT(unpreparedBy(3, "kick"), IsEmpty());
  put({step(1, "roll"), step(2, "curl")});
  EXPECT_THAT(unpreparedBy(2, "kick"), IsEmpty()) << "it prepares nothing today";
}

TEST_F(ReplacementsTest, ComeWithTheirUsualDose) {
  knowledge_.rules.rules.clear();
  plan_.sections[0].steps[1].dose.amount = 50;
  EXPECT_EQ(replacements(2)[0].movement->id.value, "roll");
  EXPECT_EQ(replacements(2)[0].added, Seconds(-22));
}

TEST_F(ReplacementsTest, CountWhatTheVariantOfSomebodySpared) {
  addPress();
  plan_.sections[0].steps[0].variants = {{PersonId{"ida"}, MovementId{"curl"}, OptionId{"low"}}};
  const Swap press = replacements(1).at(0);
  EXPECT_EQ(name(press), "press");
  EXPECT_EQ(countLevels(press.come), (LevelCounts{0, 1, 0, 0})) << "curl with the head down does not bend";
}

TEST_F(ReplacementsTest, AreNoMoreThanAskedFor) {
  const auto all = names(replacements(2));
  EXPECT_EQ(names(replacements(2, 2)), std::vector<std::string>(all.begin(), all.begin() + 2));
  EXPECT_THAT(replacements(2, 0), IsEmpty());
}

TEST_F(ReplacementsTest, AreNoneForAStepThatIsNotThere) { EXPECT_THAT(replacements(7), IsEmpty()); }

TEST_F(ReplacementsTest, StandInForAMovementThatNobodyKnows) {
  put({step(1, "curl"), step(2, "handstand")});
  const auto found = replacements(2);
  ASSERT_EQ(found.size(), 5u);
  for (const Swap& each : found) {
    EXPECT_EQ(each.likeness, 0);
    ASSERT_EQ(countLevels(each.gone), (LevelCounts{0, 0, 1, 0})) << each.movement->id.value;
    EXPECT_EQ(each.gone[0].kind, CautionKind::unknownMovement);
  }
}

} // namespace
} // namespace matwright::test
