// How long until the cheapest order is proven, over problems like classes: 15 places, precedences of which a sixth of
// all pairs follows, drawn by seed. One iteration is one problem; the counters are over all of them: the median and the
// worst processor time in milliseconds, and how many were proven. `loops` is the share, in percent, of items that end
// where they begin. To reach: a median of 1, 10, 40, 60 and 600 ms at 12, 20, 30, 40 and 60 items in one section; soft
// terms in five sections, 60 items: 100 ms. An order must be there long before its proof: `first` is how far, in
// percent, the best after 50 ms is above what the search ended with.
#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "tests/support/RandomOrder.h"

#include <benchmark/benchmark.h>
#include <ctime>

namespace matwright::test {
namespace {

// Of this process, so that what else the machine does counts for nothing.
double milliseconds() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

OrderProblem problemOf(std::uint64_t seed, const benchmark::State& state) {
  const int items = static_cast<int>(state.range(0));
  OrderProblem problem =
      classLikeProblem(seed, items, static_cast<int>(state.range(1)), static_cast<double>(state.range(2)) / 100);
  if (state.range(3) != 0)
    addSoftTerms(problem, seed);
  return problem;
}

void proveOrder(benchmark::State& state) {
  std::vector<double> times, above;
  int proven = 0, asked = 0;
  for (auto _ : state) {
    const OrderProblem problem = problemOf(static_cast<std::uint64_t>(++asked), state);
    OrderLimits limits;
    limits.nodes = std::int64_t{1} << 60;
    OrderCost soon = kNoWay;
    const double begin = milliseconds();
    limits.stop = [&] { return milliseconds() - begin > 10'000; };
    limits.progress = [&](const OrderProgress& progress, const std::vector<int>&) {
      if (soon == kNoWay || milliseconds() - begin < 50)
        soon = progress.cost;
    };
    const OrderAnswer answer = solveOrder(problem, limits).value();
    times.push_back(milliseconds() - begin);
    proven += answer.status == OrderStatus::optimal;
    above.push_back(100.0 * static_cast<double>(soon - answer.cost) / static_cast<double>(answer.cost));
    if (checkOrder(problem, answer.order) != Result<OrderCost, OrderBreach>(answer.cost))
      state.SkipWithError("an order does not cost what the search says");
  }
  std::sort(times.begin(), times.end());
  std::sort(above.begin(), above.end());
  state.counters["median_ms"] = times[times.size() / 2];
  state.counters["worst_ms"] = times.back();
  state.counters["proven"] = proven;
  state.counters["of"] = asked;
  state.counters["first"] = above.back();
}
BENCHMARK(proveOrder)
    ->ArgNames({"items", "sections", "loops", "soft"})
    ->ArgsProduct({{12, 20, 30, 40}, {1}, {60, 80, 100}, {0}})
    ->ArgsProduct({{60}, {1}, {80, 100}, {0}})
    ->ArgsProduct({{20, 40, 60}, {5}, {60}, {0, 1}})
    ->Args({20, 1, 60, 1})
    ->Iterations(20)
    ->Unit(benchmark::kMillisecond);

} // namespace
} // namespace matwright::test
