#include "core/evaluate/Balance.h"
#include "tests/support/RandomClass.h"
#include "tests/support/Seeds.h"
#include "tests/support/SmallKnowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numeric>

namespace matwright::test {
namespace {

using testing::ElementsAre;

struct Weighed {
  Schedule schedule;
  Balance balance;
};

Weighed weigh(const Knowledge& knowledge, const ClassPlan& plan) {
  Weighed weighed;
  weighed.schedule = scheduleOf(knowledge.catalogue, knowledge.transitions, Ways(knowledge.transitions, {}), plan);
  weighed.balance = balanceOf(knowledge.transitions, weighed.schedule);
  return weighed;
}

Balance balanceFor(std::vector<Step> steps) { return weigh(smallKnowledge(), classOf(std::move(steps))).balance; }

const Share& at(const Balance& balance, Region region) { return balance.regions[static_cast<std::size_t>(region)]; }
const Share& at(const Balance& balance, SpineAction spine) { return balance.spine[static_cast<std::size_t>(spine)]; }
const Share& at(const Balance& balance, Elevation height) {
  return balance.elevations[static_cast<std::size_t>(height)];
}
Share share(double seconds, double effortSeconds) { return {Seconds(seconds), effortSeconds}; }

// curl 30 s at effort 4, swing 36 s at 4, kick 2 x 30 s at 3; 157 s in all.
TEST(Balance, OfAClassWorkedOutByHand) {
  const Balance balance = balanceFor({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  EXPECT_EQ(at(balance, Region::abdominals), share(30, 120));
  EXPECT_EQ(at(balance, Region::neck), share(15, 60));
  EXPECT_EQ(at(balance, Region::hips), share(36 + 60, 144 + 180));
  EXPECT_EQ(at(balance, Region::lowerLeg), share(18, 72));
  EXPECT_EQ(at(balance, Region::waist), share(18, 72));
  EXPECT_EQ(at(balance, Region::wrists), Share{});
  EXPECT_EQ(at(balance, SpineAction::flexion), share(30, 120));
  EXPECT_EQ(at(balance, SpineAction::neutral), share(36 + 60, 144 + 180));
  EXPECT_EQ(at(balance, Elevation::faceUp), share(30, 120));
  EXPECT_EQ(at(balance, Elevation::standing), share(36, 144));
  EXPECT_EQ(at(balance, Elevation::sideLying), share(60, 180));
  EXPECT_EQ(balance.left, Seconds(18 + 30));
  EXPECT_EQ(balance.right, Seconds(18 + 30));
  EXPECT_NEAR(balance.meanEffort, (120 + 144 + 180) / 157.0, 1e-12);
  EXPECT_TRUE(sidesMatch(balance));
}

TEST(Balance, AMovementThatEndsHigherSharesItsTimeBetweenBothHeights) {
  const Balance balance = balanceFor({step(1, "roll")});
  EXPECT_EQ(at(balance, Elevation::faceUp), share(15, 90));
  EXPECT_EQ(at(balance, Elevation::sitting), share(15, 90));
  EXPECT_EQ(at(balance, SpineAction::flexion), share(30, 180));
  EXPECT_EQ(at(balance, SpineAction::extension), share(15, 90));
}

TEST(Balance, AnOptionBringsItsEffort) {
  EXPECT_EQ(at(balanceFor({step(1, "curl", "low")}), Region::abdominals), share(18, 36));
  EXPECT_EQ(at(balanceFor({step(1, "curl", "hard")}), Region::abdominals), share(60, 420));
}

TEST(Balance, EffortSpansCoverWorkAloneAndPartAtTheTurn) {
  const Balance balance = balanceFor({step(1, "curl"), step(2, "swing"), step(3, "kick")});
  EXPECT_THAT(balance.effort, ElementsAre(EffortSpan{Seconds(4), Seconds(34), Effort(4), 0},
                                          EffortSpan{Seconds(46), Seconds(82), Effort(4), 1},
                                          EffortSpan{Seconds(91), Seconds(121), Effort(3), 2},
                                          EffortSpan{Seconds(127), Seconds(157), Effort(3), 2}));
}

TEST(Balance, OneSideAloneDoesNotMatch) {
  const Balance balance = balanceFor({onlySide(step(1, "kick"), Side::right)});
  EXPECT_EQ(balance.left, Seconds(0));
  EXPECT_EQ(balance.right, Seconds(30));
  EXPECT_FALSE(sidesMatch(balance));
}

TEST(Balance, SidesMatchUpToASecond) {
  Balance balance;
  balance.left = Seconds(60);
  balance.right = Seconds(60.99);
  EXPECT_TRUE(sidesMatch(balance));
  balance.right = Seconds(59);
  EXPECT_FALSE(sidesMatch(balance));
}

TEST(Balance, MovementsThatDoBothSidesTogetherHaveNoSides) {
  const Balance balance = balanceFor({step(1, "curl")});
  EXPECT_EQ(balance.left, Seconds(0));
  EXPECT_EQ(balance.right, Seconds(0));
}

TEST(Balance, AnUnknownMovementCountsForItsHeightAlone) {
  const Balance balance = balanceFor({step(1, "curl"), dosed(step(2, "handstand"), 7)});
  EXPECT_EQ(at(balance, Elevation::faceUp), share(30 + 7, 120));
  EXPECT_EQ(balance.effort.size(), 1u);
  EXPECT_EQ(at(balance, Region::abdominals), share(30, 120));
}

TEST(Balance, OfAnEmptyClassIsNothing) { EXPECT_EQ(balanceFor({}), Balance{}); }

template <class Shares> double seconds(const Shares& shares) {
  return std::accumulate(shares.begin(), shares.end(), 0.0,
                         [](double sum, const Share& each) { return sum + each.time.value(); });
}

TEST(DrawnBalance, SharesAddUpToWhatTheSharingSays) {
  forEachSeed<Draw>(1, 30, [](Draw& draw) {
    const Knowledge knowledge = smallKnowledge();
    const auto [schedule, balance] = weigh(knowledge, randomClass(draw, knowledge.catalogue, draw.from(1, 40)));
    double regions = 0, spine = 0, effort = 0, sided = 0, spans = 0;
    for (const TimedStep& each : schedule.steps) {
      const double work = each.work.whole.value();
      regions += work * (1 + (static_cast<double>(each.movement->regions.size()) - 1) / 2);
      spine += work * (1 + (static_cast<double>(each.movement->spine.size()) - 1) / 2);
      effort += work * effortOf(*each.movement, each.option).value();
      if (each.movement->sides != Sides::together)
        sided += work;
    }
    for (const EffortSpan& each : balance.effort)
      spans += (each.to - each.from).value() * each.effort.value();
    EXPECT_NEAR(seconds(balance.regions), regions, 1e-6);
    EXPECT_NEAR(seconds(balance.spine), spine, 1e-6);
    EXPECT_NEAR(seconds(balance.elevations), schedule.working.value(), 1e-6);
    EXPECT_NEAR((balance.left + balance.right).value(), sided, 1e-6);
    EXPECT_NEAR(spans, effort, 1e-6);
    EXPECT_NEAR(balance.meanEffort, effort / schedule.length.value(), 1e-9);
  });
}

// Common practice, no source: up from 2 to 6 over the first third, there until three quarters, down to 1.
TEST(WishedEffort, RisesStaysAndFalls) {
  const Seconds length = minutes(60);
  EXPECT_NEAR(wishedEffort(minutes(0), length), 2, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(10), length), 4, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(20), length), 6, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(33), length), 6, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(45), length), 6, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(52.5), length), 3.5, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(60), length), 1, 1e-9);
}

TEST(WishedEffort, OutsideTheClassIsThatOfItsEnds) {
  EXPECT_NEAR(wishedEffort(Seconds(-5), minutes(60)), 2, 1e-9);
  EXPECT_NEAR(wishedEffort(minutes(61), minutes(60)), 1, 1e-9);
  EXPECT_NEAR(wishedEffort(Seconds(0), Seconds(0)), 2, 1e-9);
}

} // namespace
} // namespace matwright::test
