// Ordering problems drawn by seed.
#pragma once

#include "core/order/OrderProblem.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace matwright::test {

class OrderDraw {
public:
  explicit OrderDraw(std::uint64_t seed) : random_(seed * 0x9e3779b97f4a7c15U + 1) {}
  int below(int end) { return static_cast<int>(random_() % static_cast<std::uint64_t>(end)); }
  bool chance(double share) { return share01() < share; }
  double share01() { return static_cast<double>(random_() >> 11) * 0x1p-53; }
  std::vector<int> shuffled(int count) {
    std::vector<int> all(count);
    std::iota(all.begin(), all.end(), 0);
    for (int i = count - 1; i > 0; --i)
      std::swap(all[i], all[below(i + 1)]);
    return all;
  }

private:
  std::mt19937_64 random_;
};

// Ways between places spread at random in a square: no way round is shorter. Milliseconds.
inline std::vector<OrderCost> metricWays(OrderDraw& draw, int places) {
  std::vector<std::pair<double, double>> points;
  for (int place = 0; place < places; ++place)
    points.emplace_back(draw.share01(), draw.share01());
  std::vector<OrderCost> ways(static_cast<std::size_t>(places) * places);
  const auto at = [&](int p, int q) -> OrderCost& { return ways[static_cast<std::size_t>(p) * places + q]; };
  for (int p = 0; p < places; ++p)
    for (int q = 0; q < places; ++q)
      if (p != q)
        at(p, q) = 1000 + static_cast<OrderCost>(
                              6000 * (0.7 + 0.6 * draw.share01()) *
                              std::hypot(points[p].first - points[q].first, points[p].second - points[q].second));
  for (int k = 0; k < places; ++k)
    for (int p = 0; p < places; ++p)
      for (int q = 0; q < places; ++q)
        at(p, q) = std::min(at(p, q), at(p, k) + at(k, q));
  return ways;
}

// Pairs along one order, until so great a share of all pairs follows from them. With sections, only within sections.
inline void drawPrecedences(OrderDraw& draw, OrderProblem& problem, double share) {
  const int items = static_cast<int>(problem.items.size());
  const std::vector<int> rank = draw.shuffled(items);
  OrderRelation relation(items);
  const auto density = [&] {
    int pairs = 0;
    for (int a = 0; a < items; ++a)
      for (int b = 0; b < items; ++b)
        pairs += relation.before(a, b);
    return pairs / (items * (items - 1) / 2.0);
  };
  for (int tries = 0; density() < share && tries < 100 * items; ++tries) {
    int a = draw.below(items), b = draw.below(items);
    if (rank[a] > rank[b])
      std::swap(a, b);
    if (a == b || relation.before(a, b) || (!problem.sections.empty() && problem.sections[a] != problem.sections[b]))
      continue;
    relation.add(a, b);
    problem.before.emplace_back(a, b);
  }
}

// Like a class: 15 places, precedences of which a sixth of all pairs follows, and this share of items that end where
// they begin.
inline OrderProblem classLikeProblem(std::uint64_t seed, int items, int sections, double loops = 0.6) {
  OrderDraw draw(seed * 1000 + static_cast<std::uint64_t>(items) * 10 + static_cast<std::uint64_t>(sections));
  OrderProblem problem;
  problem.places = 15;
  problem.ways = metricWays(draw, problem.places);
  problem.origin = 0;
  for (int item = 0; item < items; ++item) {
    const int start = draw.below(problem.places);
    problem.items.push_back({start, draw.chance(loops) ? start : draw.below(problem.places)});
    if (sections > 1)
      problem.sections.push_back(item * sections / items);
  }
  drawPrecedences(draw, problem, sections > 1 ? 0.165 / sections : 0.165);
  return problem;
}

// Like the published matrices: each item a place of its own, so many different costs, precedences of which so great a
// share of all pairs follows.
inline OrderProblem denseProblem(std::uint64_t seed, int items, int costs, double share) {
  OrderDraw draw(seed);
  std::vector<OrderCost> matrix;
  for (int cell = 0; cell < items * items; ++cell)
    matrix.push_back(draw.below(costs));
  OrderProblem problem = problemOfMatrix(items, matrix);
  drawPrecedences(draw, problem, share);
  return problem;
}

// Like the tasks of a crane in front of shelves: it carries each load from one field of 10 x 10 to another, moves both
// ways at a time, and some loads come in or go out at the corner where it begins. Each end of a task is a place of its
// own.
inline OrderProblem craneLikeProblem(std::uint64_t seed, int items, double share) {
  OrderDraw draw(seed);
  const auto field = [&](bool corner) { return corner ? std::pair{0, 0} : std::pair{draw.below(10), draw.below(10)}; };
  OrderProblem problem;
  std::vector<std::pair<int, int>> fields{{0, 0}};
  for (int item = 0; item < items; ++item) {
    const bool in = draw.chance(0.3), out = !in && draw.chance(0.4);
    fields.push_back(field(in));
    fields.push_back(field(out));
    problem.items.push_back({2 * item + 1, 2 * item + 2});
  }
  for (const auto& [x, y] : fields)
    for (const auto& [toX, toY] : fields)
      problem.ways.push_back(std::max(std::abs(x - toX), std::abs(y - toY)));
  problem.places = 2 * items + 1;
  problem.origin = 0;
  drawPrecedences(draw, problem, share);
  return problem;
}

// A machine that asks for something else than twice the same kind running: of `kinds` kinds, with this extra.
inline OrderAutomaton dislikeOfRepetition(OrderDraw& draw, int items, int kinds, OrderCost extra) {
  OrderAutomaton machine{kinds + 1, kinds, {}, {}};
  std::vector<int> kindOf;
  for (int item = 0; item < items; ++item)
    kindOf.push_back(draw.below(kinds));
  for (int state = 0; state <= kinds; ++state)
    for (int item = 0; item < items; ++item) {
      machine.next.push_back(kindOf[item]);
      machine.extra.push_back(kindOf[item] == state ? extra : 0);
    }
  return machine;
}

// Soft terms: of six regions not one twice running; a bend wants its counter-movement; an arc of effort.
inline void addSoftTerms(OrderProblem& problem, std::uint64_t seed) {
  OrderDraw draw(seed);
  const int items = static_cast<int>(problem.items.size());
  problem.automaton =
      combined(dislikeOfRepetition(draw, items, 6, 2000), dislikeOfRepetition(draw, items, 2, 700), items);
  problem.arc.sliceLength = 300'000;
  problem.arc.slices = 10;
  for (int item = 0; item < items; ++item) {
    problem.arc.lengths.push_back(30'000 + draw.below(60'000));
    const int effort = draw.below(10);
    for (int slice = 0; slice < 10; ++slice)
      problem.arc.extra.push_back(100 * std::abs(effort - (slice < 5 ? 2 * slice : 18 - 2 * slice)));
  }
}

} // namespace matwright::test
