#include "core/order/Successions.h"
#include "tests/support/RandomOrder.h"
#include "tests/support/Seeds.h"

#include <gmock/gmock.h>

namespace matwright::test {
namespace {

Successions successionsOf(const OrderProblem& problem) {
  return Successions(Groundwork(problem, relationOf(problem).value()));
}

OrderProblem freeProblem(int items) {
  return problemOfMatrix(items, std::vector<OrderCost>(static_cast<std::size_t>(items) * items, 1));
}

TEST(Successions, NothingFollowsDirectlyWhereSomethingMustComeBetween) {
  OrderProblem problem = freeProblem(4);
  problem.before = {{0, 1}, {1, 2}};
  const Successions left = successionsOf(problem);
  EXPECT_TRUE(left.behind(0)[1]);
  EXPECT_TRUE(left.behind(0)[3]);
  EXPECT_FALSE(left.behind(0)[2]);
  EXPECT_FALSE(left.behind(1)[0]);
  EXPECT_FALSE(left.behind(0)[left.turn()]);
  EXPECT_FALSE(left.behind(left.turn())[2]);
  EXPECT_TRUE(left.behind(left.turn())[3]);
}

TEST(Successions, WhereNoStepsLeadBackTheOrderIsSettled) {
  Successions left = successionsOf(freeProblem(4));
  for (int item : {2, 3})
    for (int next : {0, 1})
      left.exclude(item, next);
  EXPECT_FALSE(left.areOrdered(0, 2));
  left.close();
  for (int item : {0, 1})
    for (int later : {2, 3})
      EXPECT_TRUE(left.later(item)[later]);
  EXPECT_FALSE(left.areOrdered(0, 1));
  EXPECT_FALSE(left.behind(0)[left.turn()]);
  EXPECT_FALSE(left.areNone());
}

TEST(Successions, ThereAreNoneWherePrecedencesContradict) {
  Successions left = successionsOf(freeProblem(3));
  left.precede(0, 1);
  left.precede(1, 2);
  EXPECT_FALSE(left.areNone());
  left.precede(2, 0);
  EXPECT_TRUE(left.areNone());
}

struct Taken {
  OrderDraw draw;
  OrderProblem problem;
  std::vector<std::pair<int, int>> excluded;
  explicit Taken(unsigned seed) : draw(seed), problem(freeProblem(2 + draw.below(5))) {
    const int items = static_cast<int>(problem.items.size());
    drawPrecedences(draw, problem, 0.4 * draw.share01());
    for (int step = 0; step < items * items / 2; ++step)
      excluded.emplace_back(draw.below(items + 1), draw.below(items + 1));
  }
};

TEST(Successions, WhatAnOrderNeedsIsLeft) {
  forEachSeed<Taken>(1, 300, [](const Taken& scene) {
    const Groundwork ground(scene.problem, relationOf(scene.problem).value());
    Successions left(ground);
    for (const auto& [at, next] : scene.excluded)
      left.exclude(at, next);
    left.close();
    std::vector<int> order(ground.items);
    std::iota(order.begin(), order.end(), 0);
    do {
      bool allowed = true;
      for (int b = 0; b < ground.items; ++b)
        for (int a = 0; a < b; ++a)
          allowed = allowed && !ground.relation.before(order[b], order[a]);
      std::vector<std::pair<int, int>> steps{{left.turn(), order.front()}, {order.back(), left.turn()}};
      for (int at = 0; at + 1 < ground.items; ++at)
        steps.emplace_back(order[at], order[at + 1]);
      for (const auto& step : scene.excluded)
        allowed = allowed && std::find(steps.begin(), steps.end(), step) == steps.end();
      if (!allowed)
        continue;
      EXPECT_FALSE(left.areNone());
      for (const auto& [at, next] : steps)
        EXPECT_TRUE(left.behind(at)[next]);
      for (int b = 0; b < ground.items; ++b)
        for (int a = 0; a < b; ++a)
          EXPECT_FALSE(left.later(order[b])[order[a]]);
    } while (std::next_permutation(order.begin(), order.end()));
  });
}

} // namespace
} // namespace matwright::test
