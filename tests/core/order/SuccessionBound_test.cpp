#include "core/order/OrderCheck.h"
#include "core/order/SuccessionBound.h"
#include "tests/support/RandomOrder.h"
#include "tests/support/Seeds.h"

#include <gmock/gmock.h>

namespace matwright::test {
namespace {

struct Raised {
  Groundwork ground;
  SuccessionBound bound;
  std::function<bool()> stop;
  SearchEffort effort;
  explicit Raised(const OrderProblem& problem, std::int64_t nodes = 1'000'000)
      : ground(problem, relationOf(problem).value()), bound(ground), effort(nodes, stop) {}
  OrderCost lowerFor(OrderCost upper) {
    bound.raise(upper, effort);
    return bound.lower();
  }
};

TEST(SuccessionBound, KnowsThatACircleIsNoOrder) {
  OrderProblem problem = problemOfMatrix(4, {0, 1, 9, 9, //
                                             1, 0, 9, 9, //
                                             9, 9, 0, 1, //
                                             9, 9, 1, 0});
  EXPECT_EQ(Raised(problem).lowerFor(11), 11);
  EXPECT_EQ(Raised(problem).lowerFor(12), 11);
}

// The cheapest successors are 0 2 3 1 4, where 1 comes behind 3.
TEST(SuccessionBound, KnowsThatWhatComesEarlierIsNotMetLater) {
  OrderProblem problem = problemOfMatrix(5, {0,      9,      1, 9, 9, //
                                             9,      0,      9, 9, 1, //
                                             9,      9,      0, 1, 9, //
                                             9,      1,      9, 0, 9, //
                                             kNoWay, kNoWay, 9, 9, 0});
  problem.before.emplace_back(1, 3);
  EXPECT_EQ(Raised(problem).lowerFor(30), 20); // 1 0 2 3 4
}

struct SmallProblem {
  OrderProblem problem;
  int above; // how far the known cost is above the cheapest
  explicit SmallProblem(unsigned seed) {
    OrderDraw draw(seed);
    const int items = 2 + draw.below(6);
    if (draw.chance(0.5)) {
      std::vector<OrderCost> costs;
      for (int cell = 0; cell < items * items; ++cell)
        costs.push_back(draw.below(draw.chance(0.5) ? 3 : 40));
      problem = problemOfMatrix(items, costs);
    } else {
      problem.places = 2 + draw.below(5);
      for (int cell = 0; cell < problem.places * problem.places; ++cell)
        problem.ways.push_back(draw.chance(0.1) ? kNoWay : draw.below(50));
      for (int item = 0; item < items; ++item)
        problem.items.push_back({draw.below(problem.places), draw.below(problem.places)});
      if (draw.chance(0.5))
        problem.origin = draw.below(problem.places);
      if (draw.chance(0.5))
        problem.goal = draw.below(problem.places);
    }
    drawPrecedences(draw, problem, draw.chance(0.3) ? 0 : 0.6 * draw.share01());
    above = draw.chance(0.4) ? 0 : draw.chance(0.5) ? 1 : draw.below(20);
  }
};

// Orders that keep what the groundwork has added to the precedences, and what they cost.
std::vector<std::pair<std::vector<int>, OrderCost>> ordersOf(const OrderProblem& problem, const Groundwork& ground) {
  std::vector<std::pair<std::vector<int>, OrderCost>> orders;
  std::vector<int> order(ground.items);
  std::iota(order.begin(), order.end(), 0);
  do {
    bool kept = true;
    for (int b = 0; b < ground.items; ++b)
      for (int a = 0; a < b; ++a)
        kept = kept && !ground.relation.before(order[b], order[a]);
    if (const auto cost = checkOrder(problem, order); cost && kept)
      orders.emplace_back(order, *cost);
  } while (std::next_permutation(order.begin(), order.end()));
  return orders;
}

TEST(SuccessionBound, LosesNoOrderThatIsCheaperThanTheKnownCost) {
  int proven = 0, asked = 0;
  forEachSeed<SmallProblem>(1, 400, [&](const SmallProblem& scene) {
    Raised raised(scene.problem);
    const auto orders = ordersOf(scene.problem, raised.ground);
    OrderCost cheapest = kFar;
    for (const auto& [order, cost] : orders)
      cheapest = std::min(cheapest, cost);
    if (cheapest == kFar)
      return;
    const OrderCost upper = cheapest + scene.above;
    const OrderCost lower = raised.lowerFor(upper);
    EXPECT_LE(lower, cheapest);
    ++asked;
    proven += lower == cheapest;
    const Successions& left = raised.bound.successions();
    for (const auto& [order, cost] : orders) {
      if (cost >= upper)
        continue;
      EXPECT_FALSE(left.areNone());
      EXPECT_TRUE(left.behind(left.turn())[order.front()]);
      EXPECT_TRUE(left.behind(order.back())[left.turn()]);
      for (int b = 0; b < raised.ground.items; ++b) {
        if (b > 0) {
          EXPECT_TRUE(left.behind(order[b - 1])[order[b]]);
        }
        for (int a = 0; a < b; ++a)
          EXPECT_FALSE(left.later(order[b])[order[a]]);
      }
    }
  });
  EXPECT_GT(proven, asked / 2);
}

// It is asked again for each better order.
TEST(SuccessionBound, LosesNoOrderWhenTheKnownCostFalls) {
  forEachSeed<SmallProblem>(1001, 1200, [](const SmallProblem& scene) {
    Raised raised(scene.problem);
    OrderCost cheapest = kFar;
    for (const auto& [order, cost] : ordersOf(scene.problem, raised.ground))
      cheapest = std::min(cheapest, cost);
    if (cheapest == kFar)
      return;
    for (OrderCost upper : {cheapest + 10, cheapest + 3, cheapest})
      EXPECT_LE(raised.lowerFor(upper), cheapest);
  });
}

TEST(SuccessionBound, EndsWithTheEffort) {
  Raised raised(craneLikeProblem(10, 35, 0.3), 500);
  EXPECT_LT(raised.lowerFor(92), 92);
  EXPECT_TRUE(raised.effort.isOver());
  EXPECT_LT(raised.effort.used(), 700);
}

} // namespace
} // namespace matwright::test
