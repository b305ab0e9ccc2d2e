// Small classes worked out by hand. In all of them a repetition takes 6 s, and a set-up cue has five words: 2 s at 150
// words a minute. Unless said otherwise mobility is 1 and settling takes 2 s.
#include "core/evaluate/Schedule.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace matwright::test {
namespace {

using testing::ElementsAre;

class ScheduleTest : public testing::Test {
protected:
  Schedule of(const ClassPlan& plan, FeatureSet avoid = {}) const {
    return scheduleOf(knowledge_.catalogue, knowledge_.transitions, Ways(knowledge_.transitions, avoid), plan);
  }
  Schedule of(std::vector<Step> steps) const { return of(classOf(std::move(steps))); }
  Knowledge knowledge_ = smallKnowledge();
};

TEST_F(ScheduleTest, OneMovementIsCueSettlingAndWork) {
  // gap max(0, 2) + 2 = 4, work 5 x 6 = 30
  const Schedule schedule = of({step(1, "curl")});
  ASSERT_EQ(schedule.steps.size(), 1u);
  const TimedStep& curl = schedule.steps[0];
  EXPECT_EQ(curl.begin, Seconds(0));
  EXPECT_EQ(curl.moving, Seconds(0));
  EXPECT_EQ(curl.cue, Seconds(2));
  EXPECT_EQ(curl.gap, Seconds(4));
  EXPECT_EQ(curl.workBegin, Seconds(4));
  EXPECT_EQ(curl.finish, Seconds(34));
  EXPECT_EQ(schedule.length, Seconds(34));
  EXPECT_EQ(schedule.changes, 0);
  EXPECT_EQ(schedule.working, Seconds(30));
}

TEST_F(ScheduleTest, NobodyMovesBetweenMovementsThatMeetInOnePosition) {
  // curl      0: gap 4, work 30            ->  34, lying
  // roll     34: gap 4, work 30            ->  68, sitting
  // fold     68: gap 4, held 40 s          -> 112
  const Schedule schedule = of({step(1, "curl"), step(2, "roll"), step(3, "fold")});
  EXPECT_EQ(schedule.steps[1].finish, Seconds(68));
  EXPECT_EQ(schedule.steps[1].end.value, "sit");
  EXPECT_EQ(schedule.length, Seconds(112));
  EXPECT_EQ(schedule.changes, 0);
  EXPECT_EQ(schedule.moving, Seconds(0));
}

std::vector<Step> floorStandingSide() { return {step(1, "curl"), step(2, "swing"), step(3, "kick")}; }

TEST_F(ScheduleTest, TheTeacherTalksWhilePeopleMove) {
  // curl      0: gap 4, work 30                                                            ->  34
  // swing    34: lying -4-> sit -6-> stand 10, cue 2: gap 10 + 2 = 12; work 6 x 6 = 36     ->  82
  // kick     82: stand -2-> sit -5-> side 7, cue 2: gap 9; 30 a side, turn 6               -> 157
  const Schedule schedule = of(floorStandingSide());
  EXPECT_EQ(schedule.steps[1].gap, Seconds(12));
  EXPECT_EQ(schedule.steps[1].workBegin, Seconds(46));
  EXPECT_EQ(schedule.steps[1].finish, Seconds(82));
  EXPECT_EQ(schedule.steps[2].workBegin, Seconds(91));
  EXPECT_EQ(schedule.steps[2].turning, Seconds(6));
  EXPECT_EQ(schedule.steps[2].work, (Work{Seconds(60), Seconds(30), Seconds(30), 10}));
  EXPECT_EQ(schedule.length, Seconds(157));
  EXPECT_EQ(schedule.changes, 1 + 1 + 1); // a way counts once, and so does the turn
  EXPECT_EQ(schedule.moving, Seconds(10 + 7 + 6));
  EXPECT_EQ(schedule.working, Seconds(30 + 36 + 60));
}

TEST_F(ScheduleTest, ASlowerGroupMovesAndListensLonger) {
  // Mobility 2, 120 words a minute (cue 2.5), settling 3.
  // curl      0: gap 5.5, work 30                  ->  35.5
  // swing  35.5: way 20, gap 23, work 36           ->  94.5
  // kick   94.5: way 14, gap 17, work 60, turn 12  -> 183.5
  ClassPlan plan = classOf(floorStandingSide());
  plan.pace = {2, 120, Seconds(3)};
  const Schedule schedule = of(plan);
  EXPECT_EQ(schedule.steps[0].finish, Seconds(35.5));
  EXPECT_EQ(schedule.steps[1].finish, Seconds(94.5));
  EXPECT_EQ(schedule.steps[2].turning, Seconds(12));
  EXPECT_EQ(schedule.length, Seconds(183.5));
  EXPECT_EQ(schedule.changes, 3); // the pace changes no way
}

TEST_F(ScheduleTest, TheSameMovementAgainNeedsHalfTheCue) {
  // curl   0: gap 4, work 30                                  -> 34
  // curl  34: cue 1, gap 3; head down: 3 x 6 = 18             -> 55
  // arch  55: lying -4-> sit -3-> four 7, gap 9, work 30      -> 94
  // curl  94: four -3-> sit -3-> lying 6, cue 2, gap 8, 30    -> 132
  const Schedule schedule = of({step(1, "curl"), step(2, "curl", "low"), step(3, "arch"), step(4, "curl")});
  EXPECT_EQ(schedule.steps[1].cue, Seconds(1));
  EXPECT_EQ(schedule.steps[1].finish, Seconds(55));
  EXPECT_EQ(schedule.steps[2].finish, Seconds(94));
  EXPECT_EQ(schedule.steps[3].cue, Seconds(2));
  EXPECT_EQ(schedule.length, Seconds(132));
}

TEST_F(ScheduleTest, OnlyTheRightSideIsDoneInTheMirroredPosition) {
  // curl    0                                                             ->  34
  // kick   34: lying -4-> side-right, cue 2: gap 6, work 30, no turn      ->  70
  // swing  70: side-right -5-> sit -6-> stand 11, gap 13, work 36         -> 119
  const Schedule schedule = of({step(1, "curl"), onlySide(step(2, "kick"), Side::right), step(3, "swing")});
  EXPECT_EQ(schedule.steps[1].start.value, "side-right");
  EXPECT_EQ(schedule.steps[1].end.value, "side-right");
  EXPECT_EQ(schedule.steps[1].finish, Seconds(70));
  EXPECT_EQ(schedule.steps[1].changes, 1);
  EXPECT_EQ(schedule.length, Seconds(119));
}

TEST_F(ScheduleTest, OnlyTheLeftSideIsDoneAsWritten) {
  const TimedStep kick = of({onlySide(step(1, "kick"), Side::left)}).steps[0];
  EXPECT_EQ(kick.start.value, "side-left");
  EXPECT_EQ(kick.end.value, "side-left");
  EXPECT_EQ(kick.turning, Seconds(0));
}

TEST_F(ScheduleTest, BothSidesGoFromLeftToRight) {
  const TimedStep kick = of({step(1, "kick")}).steps[0];
  EXPECT_EQ(kick.start.value, "side-left");
  EXPECT_EQ(kick.end.value, "side-right");
  ASSERT_EQ(kick.turn.changes.size(), 1u);
  EXPECT_EQ(kick.turn.changes[0]->cue, "Roll over.");
  EXPECT_EQ(kick.changes, 1);
}

TEST_F(ScheduleTest, ASideMeansNothingToMovementsThatAlternate) {
  EXPECT_EQ(of({onlySide(step(1, "swing"), Side::right)}).length, of({step(1, "swing")}).length);
}

TEST_F(ScheduleTest, AnUnknownMovementTakesItsOwnDoseWherePeopleAre) {
  // curl        0                                                   -> 34
  // handstand  34: no cue, gap 2; 3 x (1 + 4) x 2 s = 30            -> 66, still lying
  // curl       66: gap 4, work 30                                   -> 100
  Step unknown = dosed(step(2, "handstand"), 3);
  unknown.tempo = tempo(2, {{Breath::in, 1}, {Breath::out, 4}});
  const Schedule schedule = of({step(1, "curl"), unknown, step(3, "curl")});
  const TimedStep& handstand = schedule.steps[1];
  EXPECT_EQ(handstand.movement, nullptr);
  EXPECT_EQ(handstand.start.value, "lying");
  EXPECT_EQ(handstand.end.value, "lying");
  EXPECT_EQ(handstand.cue, Seconds(0));
  EXPECT_EQ(handstand.gap, Seconds(2));
  EXPECT_EQ(handstand.finish, Seconds(66));
  EXPECT_EQ(schedule.length, Seconds(100));
  EXPECT_EQ(schedule.steps[2].cue, Seconds(2)); // another movement stood between
}

TEST_F(ScheduleTest, AfterAnUnknownFirstMovementPeopleAreWhereTheNextStarts) {
  const Schedule schedule = of({step(1, "handstand"), step(2, "swing")});
  EXPECT_TRUE(schedule.steps[0].start.empty());
  EXPECT_TRUE(schedule.steps[1].way.changes.empty());
  EXPECT_TRUE(schedule.steps[1].reachable);
}

TEST_F(ScheduleTest, AnUnknownOptionIsTakenAsWrittenWithTheStepsOwnDose) {
  const Schedule schedule = of({dosed(step(1, "curl", "gone"), 4)});
  EXPECT_EQ(schedule.steps[0].option, nullptr);
  EXPECT_EQ(schedule.length, Seconds(4 + 24));
}

TEST_F(ScheduleTest, WaysGoRoundWhatIsAvoided) {
  // lying -4-> side -5-> sit -6-> stand 15 in place of 10
  const Schedule schedule = of(classOf({step(1, "curl"), step(2, "swing")}), {Feature::flexLoad});
  EXPECT_EQ(schedule.steps[1].moving, Seconds(15));
  EXPECT_EQ(schedule.steps[1].way.changes.size(), 3u);
  EXPECT_EQ(schedule.steps[1].changes, 1);
}

TEST_F(ScheduleTest, WithoutAWayNoneIsCounted) {
  knowledge_.transitions = TransitionGraph(smallPositions(), {change("lying", "sit", 4)});
  const Schedule schedule = of({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  EXPECT_TRUE(schedule.steps[0].reachable);
  EXPECT_FALSE(schedule.steps[1].reachable);
  EXPECT_EQ(schedule.steps[1].gap, Seconds(4));
  EXPECT_EQ(schedule.steps[1].changes, 0);
  EXPECT_EQ(schedule.steps[1].start.value, "stand");
  EXPECT_FALSE(schedule.steps[2].reachable); // nor from its left to its right
  EXPECT_EQ(schedule.steps[2].turning, Seconds(0));
}

TEST_F(ScheduleTest, WithoutAWayBetweenItsSidesAStepIsNotReachable) {
  knowledge_.transitions = TransitionGraph(smallPositions(), {change("lying", "side-left", 4)});
  const Schedule schedule = of({step(1, "curl"), step(2, "kick"), onlySide(step(3, "kick"), Side::right)});
  EXPECT_FALSE(schedule.steps[1].reachable);
  EXPECT_EQ(schedule.steps[1].moving, Seconds(4)); // into the first side there is one
  EXPECT_TRUE(schedule.steps[2].reachable);        // it starts where the second side ended
}

TEST_F(ScheduleTest, SectionsBeginWithTheirFirstGapAndEmptyOnesWhereTheNextDoes) {
  ClassPlan plan;
  plan.sections = {{"A", {}}, {"B", {step(1, "curl")}}, {"C", {}}, {"D", {step(2, "curl")}}, {"E", {}}};
  const Schedule schedule = of(plan);
  EXPECT_THAT(schedule.sectionBegin, ElementsAre(Seconds(0), Seconds(0), Seconds(34), Seconds(34), Seconds(34 + 33)));
  EXPECT_EQ(schedule.steps[1].section, 3u);
  EXPECT_EQ(schedule.steps[1].cue, Seconds(1)); // sections do not part what follows each other
}

TEST_F(ScheduleTest, AnEmptyClassTakesNoTimeAndEndsInTime) {
  const Schedule schedule = of(emptyClass("None"));
  EXPECT_TRUE(schedule.steps.empty());
  EXPECT_EQ(schedule.length, Seconds(0));
  EXPECT_EQ(schedule.likelyFrom, Seconds(0));
  EXPECT_EQ(schedule.likelyTo, Seconds(0));
  EXPECT_EQ(schedule.chanceInTime, 1);
  EXPECT_EQ(schedule.sectionBegin.size(), 4u);
}

// Common practice, no source: ten breaths of five counts in and five out at half a second are one hundred beats, 50 s.
TEST_F(ScheduleTest, TheHundredTakesFiftySecondsOfWork) {
  Step hundred = dosed(step(1, "curl"), 10, DoseUnit::breaths);
  hundred.tempo = tempo(0.5, {{Breath::in, 5}, {Breath::out, 5}});
  const TimedStep timed = of({hundred}).steps[0];
  EXPECT_EQ(timed.work.whole, Seconds(50));
  EXPECT_EQ(timed.work.repetitions * 10, 100);
}

struct Spoken {
  int words;
  double wordsPerMinute, seconds;
};
class CueSeconds : public testing::TestWithParam<Spoken> {};

// seconds = words x 60 / words a minute; about 150 in conversation (National Center for Voice and Speech), slower when
// instructing. The sums are computed.
TEST_P(CueSeconds, AreWordsOverTheSpeakingRate) {
  Movement spoken = movement("spoken", "lying");
  spoken.setUp.clear();
  for (int i = 0; i < GetParam().words; ++i)
    spoken.setUp += "word ";
  Knowledge knowledge = smallKnowledge();
  knowledge.catalogue = Catalogue({spoken});
  ClassPlan plan = classOf({stepOf(StepId{1}, spoken)});
  plan.pace.wordsPerMinute = GetParam().wordsPerMinute;
  const Schedule schedule =
      scheduleOf(knowledge.catalogue, knowledge.transitions, Ways(knowledge.transitions, {}), plan);
  EXPECT_NEAR(schedule.steps[0].cue.value(), GetParam().seconds, 1e-9);
  EXPECT_NEAR(schedule.steps[0].gap.value(), GetParam().seconds + 2, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(Rates, CueSeconds,
                         testing::Values(Spoken{12, 150, 4.80}, Spoken{12, 120, 6.00}, Spoken{25, 150, 10.0},
                                         Spoken{25, 120, 12.5}, Spoken{100, 150, 40}, Spoken{100, 120, 50}));

} // namespace
} // namespace matwright::test
