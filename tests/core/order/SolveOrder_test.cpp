#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "tests/support/RandomOrder.h"

#include <chrono>
#include <gmock/gmock.h>

namespace matwright::test {
namespace {

using Clock = std::chrono::steady_clock;
using Checked = Result<OrderCost, OrderBreach>;

// Loose and without any help of places: far too much for a proof.
OrderProblem looseProblem(int items, std::uint64_t seed) {
  OrderDraw draw(seed);
  std::vector<OrderCost> costs;
  for (int i = 0; i < items; ++i)
    for (int j = 0; j < items; ++j)
      costs.push_back(j == 0 && i > 0 ? kNoWay : draw.below(1000));
  return problemOfMatrix(items, costs);
}

TEST(SolveOrder, NothingToOrderCostsNothing) {
  OrderProblem problem;
  const auto answer = solveOrder(problem);
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->status, OrderStatus::optimal);
  EXPECT_EQ(answer->cost, 0);
}

TEST(SolveOrder, RefusesAProblemThatContradictsItself) {
  OrderProblem problem = looseProblem(4, 1);
  problem.before = {{1, 2}, {2, 1}};
  EXPECT_EQ(solveOrder(problem), (Result<OrderAnswer, OrderFault>(failure(OrderFault::cycle))));
}

TEST(SolveOrder, SaysWhenNoOrderKeepsThePins) {
  OrderProblem problem = looseProblem(4, 1);
  problem.before = {{1, 2}};
  problem.pinned = {{2, 1}};
  const auto answer = solveOrder(problem);
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->status, OrderStatus::infeasible);
  EXPECT_EQ(answer->stop, OrderStop::proven);
  EXPECT_TRUE(answer->order.empty());
  EXPECT_EQ(answer->cost, kNoWay);
}

TEST(SolveOrder, SaysWhenNoWayLeadsThrough) {
  OrderProblem problem = classLikeProblem(3, 10, 1);
  for (int place = 0; place < problem.places; ++place) // nothing leads to where the last item begins, but itself
    if (place != problem.items[9].start)
      problem.ways[static_cast<std::size_t>(place) * problem.places + problem.items[9].start] = kNoWay;
  problem.origin = (problem.items[9].start + 1) % problem.places;
  for (OrderItem& item : problem.items)
    if (&item != &problem.items[9])
      item = {*problem.origin, *problem.origin};
  EXPECT_EQ(solveOrder(problem)->status, OrderStatus::infeasible);
}

TEST(SolveOrder, AClassIsProven) {
  for (int items : {12, 20, 30})
    for (int sections : {1, 5}) {
      const OrderProblem problem = classLikeProblem(7, items, sections);
      const auto answer = solveOrder(problem);
      ASSERT_TRUE(answer);
      EXPECT_EQ(answer->status, OrderStatus::optimal) << items;
      EXPECT_EQ(answer->lower, answer->cost);
      EXPECT_EQ(checkOrder(problem, answer->order), Checked(answer->cost));
    }
}

TEST(SolveOrder, WhereEachItemHasItsOwnPlacesItIsProvenByWhatMayFollowWhat) {
  for (unsigned seed : {2, 10}) { // without it 460'000 nodes and more
    const OrderProblem problem = craneLikeProblem(seed, 35, 0.3);
    OrderLimits limits;
    limits.nodes = 50'000;
    const auto answer = solveOrder(problem, limits);
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->status, OrderStatus::optimal) << seed;
    EXPECT_EQ(checkOrder(problem, answer->order), Checked(answer->cost));
  }
}

TEST(SolveOrder, WhatMayFollowWhatIsAskedAgainForEachBetterOrder) {
  for (unsigned seed : {5, 63}) { // asked only once: more than 300'000 nodes
    OrderLimits limits;
    limits.nodes = 100'000;
    EXPECT_EQ(solveOrder(craneLikeProblem(seed, 32, 0.3), limits)->status, OrderStatus::optimal) << seed;
  }
}

TEST(SolveOrder, MoreItemsThanAWordHasBitsAreProven) {
  OrderProblem problem = classLikeProblem(1, 150, 30); // sets of more than one word
  const auto answer = solveOrder(problem);
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->status, OrderStatus::optimal);
  EXPECT_EQ(checkOrder(problem, answer->order), Checked(answer->cost));
}

TEST(SolveOrder, TheSameSeedAndNodesGiveTheSameAnswer) {
  for (const OrderProblem& problem : {looseProblem(40, 5), classLikeProblem(2, 40, 1)}) {
    OrderLimits limits;
    limits.nodes = 8'000;
    limits.seed = 9;
    const auto once = solveOrder(problem, limits);
    ASSERT_TRUE(once);
    EXPECT_EQ(solveOrder(problem, limits), once);
    EXPECT_EQ(checkOrder(problem, once->order), Checked(once->cost));
  }
}

TEST(SolveOrder, EndsWithItsNodesAndABoundThatHolds) {
  const OrderProblem problem = looseProblem(35, 2);
  OrderLimits limits;
  limits.nodes = 5'000;
  const auto few = solveOrder(problem, limits);
  limits.nodes = 30'000;
  const auto more = solveOrder(problem, limits);
  ASSERT_TRUE(few && more);
  EXPECT_EQ(few->status, OrderStatus::bounded);
  EXPECT_EQ(few->stop, OrderStop::nodes);
  EXPECT_LT(few->nodes, 10'000);
  EXPECT_LE(more->cost, few->cost);
  EXPECT_LE(few->lower, more->cost);
  EXPECT_GE(more->lower, few->lower);
  EXPECT_EQ(checkOrder(problem, few->order), Checked(few->cost));
}

TEST(SolveOrder, StopsWhenItIsToldToAndKeepsTheBest) {
  for (const OrderProblem& problem : {looseProblem(120, 3), classLikeProblem(5, 100, 1, 0.2)}) {
    OrderLimits limits;
    limits.nodes = std::int64_t{1} << 50;
    const auto begin = Clock::now();
    auto asked = begin;
    double longest = 0;
    limits.stop = [&] {
      const auto now = Clock::now();
      longest = std::max(longest, std::chrono::duration<double>(now - asked).count());
      asked = now;
      return now - begin > std::chrono::milliseconds(300);
    };
    const auto answer = solveOrder(problem, limits);
    const double after = std::chrono::duration<double>(Clock::now() - asked).count();
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->status, OrderStatus::cancelled);
    EXPECT_EQ(answer->stop, OrderStop::stopped);
    EXPECT_EQ(checkOrder(problem, answer->order), Checked(answer->cost));
    EXPECT_LE(answer->lower, answer->cost);
    EXPECT_LT(longest, 0.5); // 0.05 on a machine of one's own
    EXPECT_LT(after, 0.5);
  }
}

TEST(SolveOrder, TellsOfEachStepForward) {
  OrderLimits limits;
  limits.nodes = 20'000;
  const OrderProblem problem = looseProblem(30, 4);
  OrderProgress before{kNoWay, 0, 0};
  int told = 0;
  limits.progress = [&](const OrderProgress& now, const std::vector<int>& order) {
    ++told;
    EXPECT_TRUE(before.cost == kNoWay || now.cost <= before.cost);
    EXPECT_GE(now.lower, before.lower);
    EXPECT_GE(now.nodes, before.nodes);
    if (now.cost != kNoWay) {
      EXPECT_EQ(checkOrder(problem, order), Checked(now.cost));
    }
    before = now;
  };
  const auto answer = solveOrder(problem, limits);
  EXPECT_GT(told, 1);
  EXPECT_EQ(answer->cost, before.cost);
}

// What soft terms ask is part of the proof: an order that is cheapest without them is not when they count.
TEST(SolveOrder, SoftTermsAreProvenToo) {
  OrderDraw draw(4);
  OrderProblem problem = classLikeProblem(4, 14, 1);
  const auto plain = solveOrder(problem);
  problem.automaton = dislikeOfRepetition(draw, 14, 3, 2500);
  const auto soft = solveOrder(problem);
  ASSERT_TRUE(plain && soft);
  EXPECT_EQ(soft->status, OrderStatus::optimal);
  EXPECT_EQ(checkOrder(problem, soft->order), Checked(soft->cost));
  EXPECT_LE(soft->cost, checkOrder(problem, plain->order).value());
  EXPECT_GE(soft->cost, plain->cost);
}

} // namespace
} // namespace matwright::test
