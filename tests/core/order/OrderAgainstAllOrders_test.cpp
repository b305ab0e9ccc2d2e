// Small problems of every kind, whose cheapest order is known because all orders were tried.
#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "tests/support/RandomOrder.h"
#include "tests/support/Seeds.h"

#include <gmock/gmock.h>

namespace matwright::test {
namespace {

// The cheapest of all orders, by trying them; kNoWay when none is allowed.
OrderCost cheapestOfAll(const OrderProblem& problem) {
  std::vector<int> order(problem.items.size());
  std::iota(order.begin(), order.end(), 0);
  OrderCost least = kNoWay;
  do
    if (const auto cost = checkOrder(problem, order); cost && (least == kNoWay || *cost < least))
      least = *cost;
  while (std::next_permutation(order.begin(), order.end()));
  return least;
}

struct SmallProblem {
  OrderProblem problem;

  explicit SmallProblem(unsigned seed) {
    OrderDraw draw(seed);
    const int items = 1 + draw.below(7);
    problem.places = 1 + draw.below(6);
    problem.ways = draw.chance(0.6) ? metricWays(draw, problem.places) : roughWays(draw);
    for (int item = 0; item < items; ++item) {
      const int start = draw.below(problem.places);
      problem.items.push_back({start, draw.chance(0.6) ? start : draw.below(problem.places)});
    }
    if (draw.chance(0.7))
      problem.origin = draw.below(problem.places);
    if (draw.chance(0.3))
      problem.goal = draw.below(problem.places);
    if (draw.chance(0.3))
      for (int item = 0; item < items; ++item)
        problem.sections.push_back(draw.below(3));
    if (items > 1)
      drawPrecedences(draw, problem, draw.chance(0.3) ? 0 : 0.4 * draw.share01());
    if (draw.chance(0.2))
      problem.first = draw.below(items);
    if (draw.chance(0.2))
      problem.last = draw.below(items);
    if (draw.chance(0.25))
      for (int pins = 1 + draw.below(std::min(items, 2)), slots = 0; slots < pins; ++slots)
        problem.pinned.emplace_back((slots * 3 + 1) % items, slots * (items - 1));
    if (problem.pinned.size() == 2 && problem.pinned[0].first == problem.pinned[1].first)
      problem.pinned.pop_back();
    if (draw.chance(0.35))
      problem.automaton = dislikeOfRepetition(draw, items, 2, 1500);
    if (draw.chance(0.15))
      problem.automaton = combined(problem.automaton, forbidding(draw, items), items);
    if (draw.chance(0.25))
      drawArc(draw, items);
  }

private:
  std::vector<OrderCost> roughWays(OrderDraw& draw) const {
    std::vector<OrderCost> ways;
    for (int cell = 0; cell < problem.places * problem.places; ++cell)
      ways.push_back(draw.chance(0.1) ? kNoWay : draw.below(50));
    return ways;
  }
  // After an odd item no even one.
  static OrderAutomaton forbidding(OrderDraw& draw, int items) {
    OrderAutomaton machine{2, 0, {}, {}};
    const int forbidden = draw.below(items);
    for (int state = 0; state < 2; ++state)
      for (int item = 0; item < items; ++item) {
        machine.next.push_back(item % 2);
        machine.extra.push_back(state == 1 && item == forbidden ? kNoWay : draw.below(300));
      }
    return machine;
  }
  void drawArc(OrderDraw& draw, int items) {
    problem.arc.sliceLength = 60;
    problem.arc.slices = 4;
    for (int item = 0; item < items; ++item) {
      problem.arc.lengths.push_back(draw.below(100));
      for (int slice = 0; slice < 4; ++slice)
        problem.arc.extra.push_back(draw.below(2000));
    }
  }
};

void expectCheapest(const OrderProblem& problem, const OrderLimits& limits = {}) {
  const auto answer = solveOrder(problem, limits);
  const auto relation = relationOf(problem);
  ASSERT_EQ(answer.has_value(), relation.has_value());
  if (!answer)
    return;
  const OrderCost cheapest = cheapestOfAll(problem);
  EXPECT_EQ(answer->cost, cheapest);
  if (cheapest == kNoWay) {
    EXPECT_EQ(answer->status, OrderStatus::infeasible);
    return;
  }
  EXPECT_EQ(answer->status, OrderStatus::optimal);
  EXPECT_EQ(answer->lower, cheapest);
  EXPECT_EQ(checkOrder(problem, answer->order), (Result<OrderCost, OrderBreach>(cheapest)));
}

TEST(OrderAgainstAllOrders, IsTheCheapestOfAll) {
  forEachSeed<SmallProblem>(1, 600, [](const SmallProblem& scene) { expectCheapest(scene.problem); });
}

struct ClassLike {
  OrderProblem problem;
  explicit ClassLike(unsigned seed) : problem(classLikeProblem(seed, 7, 1, 0.6)) {
    OrderDraw draw(seed);
    for (OrderItem& item : problem.items) // few places, so that loops meet
      item = {item.start % 4, item.start == item.end ? item.start % 4 : item.end % 4};
  }
};

TEST(OrderAgainstAllOrders, IsTheCheapestWhereLoopsAreDoneAtOnce) {
  forEachSeed<ClassLike>(1, 150, [](const ClassLike& scene) { expectCheapest(scene.problem); });
}

struct Matrix {
  OrderProblem problem;
  explicit Matrix(unsigned seed) {
    OrderDraw draw(seed);
    const int items = 2 + draw.below(6);
    std::vector<OrderCost> costs;
    for (int i = 0; i < items; ++i)
      for (int j = 0; j < items; ++j)
        costs.push_back(j < i && draw.chance(0.3) ? kNoWay : draw.below(draw.chance(0.5) ? 3 : 40));
    problem = problemOfMatrix(items, costs);
  }
};

TEST(OrderAgainstAllOrders, IsTheCheapestOfAMatrix) {
  forEachSeed<Matrix>(1, 200, [](const Matrix& scene) { expectCheapest(scene.problem); });
}

} // namespace
} // namespace matwright::test
