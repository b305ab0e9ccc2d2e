#include "core/order/OrderCheck.h"

#include <gmock/gmock.h>

namespace matwright {
namespace {

using Checked = Result<OrderCost, OrderBreach>;

// Places 0, 1, 2; from p to q costs 10 p + q.
OrderProblem threeItems() {
  OrderProblem problem;
  problem.places = 3;
  for (int p = 0; p < 3; ++p)
    for (int q = 0; q < 3; ++q)
      problem.ways.push_back(10 * p + q);
  problem.items = {{0, 1}, {1, 1}, {2, 0}};
  return problem;
}

TEST(OrderCheck, AddsTheWaysBetweenNeighbours) {
  OrderProblem problem = threeItems();
  EXPECT_EQ(checkOrder(problem, {0, 1, 2}), Checked(11 + 12));
  problem.origin = 2;
  EXPECT_EQ(checkOrder(problem, {0, 1, 2}), Checked(20 + 11 + 12));
  problem.goal = 2;
  EXPECT_EQ(checkOrder(problem, {0, 1, 2}), Checked(20 + 11 + 12 + 2));
}

TEST(OrderCheck, AddsWhatTheAutomatonAndTheArcAsk) {
  OrderProblem problem = threeItems();
  problem.automaton = {2, 0, {1, 1, 1, 0, 0, 0}, {100, 200, 300, 400, 500, 600}};
  EXPECT_EQ(checkOrder(problem, {0, 1, 2}), Checked(11 + 12 + 100 + 500 + 300));
  problem.arc = {{5, 10, 1}, 10, 2, {1000, 2000, 3000, 4000, 5000, 6000}};
  EXPECT_EQ(checkOrder(problem, {0, 1, 2}), Checked(11 + 12 + 900 + 1000 + 3000 + 6000));
}

TEST(OrderCheck, NamesWhatIsBroken) {
  OrderProblem problem = threeItems();
  const auto breach = [&](const std::vector<int>& order) { return checkOrder(problem, order).error(); };
  EXPECT_EQ(breach({0, 1}), OrderBreach::notEachItemOnce);
  EXPECT_EQ(breach({0, 1, 1}), OrderBreach::notEachItemOnce);
  EXPECT_EQ(breach({0, 1, 3}), OrderBreach::notEachItemOnce);
  problem.before = {{2, 0}};
  EXPECT_EQ(breach({0, 1, 2}), OrderBreach::precedence);
  problem.before = {};
  problem.first = 1;
  EXPECT_EQ(breach({0, 1, 2}), OrderBreach::precedence);
  problem.first = std::nullopt;
  problem.last = 1;
  EXPECT_EQ(breach({0, 1, 2}), OrderBreach::precedence);
  problem.last = std::nullopt;
  problem.sections = {1, 0, 1};
  EXPECT_EQ(breach({0, 1, 2}), OrderBreach::precedence);
  problem.sections = {};
  problem.pinned = {{2, 1}};
  EXPECT_EQ(breach({0, 1, 2}), OrderBreach::pin);
  problem.pinned = {};
  problem.ways[1 * 3 + 2] = kNoWay;
  EXPECT_EQ(breach({0, 1, 2}), OrderBreach::noWay);
}

} // namespace
} // namespace matwright
