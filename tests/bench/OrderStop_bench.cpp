// How long a search goes on after it was told to stop: the longest time between two asks, between the call and the
// first one, and between the one that stops and the answer. Whoever presses a button may wait for it, so it must stay
// well below 50 ms. `longest`, `first` and `after` are in milliseconds of processor time; each search gets 4 s and ends
// in the middle of something unless it is through before. One iteration is one problem, drawn by seed.
#include "core/order/SolveOrder.h"
#include "tests/support/RandomOrder.h"

#include <benchmark/benchmark.h>
#include <ctime>

namespace matwright::test {
namespace {

constexpr double kWhole = 4000; // milliseconds

double milliseconds() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

void stopSearch(benchmark::State& state, OrderProblem (*drawn)(std::uint64_t)) {
  double first = 0, longest = 0, after = 0;
  std::uint64_t seed = 0;
  for (auto _ : state) {
    const OrderProblem problem = drawn(++seed);
    OrderLimits limits;
    limits.nodes = std::int64_t{1} << 60;
    const double begin = milliseconds();
    double asked = begin;
    bool before = false;
    limits.stop = [&] {
      const double now = milliseconds();
      double& longer = before ? longest : first;
      longer = std::max(longer, now - asked);
      before = true;
      asked = now;
      return now - begin > kWhole;
    };
    benchmark::DoNotOptimize(solveOrder(problem, limits));
    after = std::max(after, milliseconds() - asked);
  }
  state.counters["first"] = first;
  state.counters["longest"] = longest;
  state.counters["after"] = after;
}

template <int Loops> OrderProblem classOf60(std::uint64_t seed) { return classLikeProblem(seed, 60, 1, Loops / 100.0); }

OrderProblem softClassOf60(std::uint64_t seed) {
  OrderProblem problem = classLikeProblem(seed, 60, 1);
  addSoftTerms(problem, seed);
  return problem;
}

OrderProblem matrixOf60(std::uint64_t seed) { return denseProblem(seed, 60, 20, 0.6); }
OrderProblem looseMatrixOf60(std::uint64_t seed) { return denseProblem(seed, 60, 1000, 0.1); }
OrderProblem matrixOf300(std::uint64_t seed) { return denseProblem(seed, 300, 1000, 0.5); }
OrderProblem matrixOfTheMost(std::uint64_t seed) { return denseProblem(seed, kMostOrderItems, 1000, 0.3); }

#define STOPPED(drawn) BENCHMARK_CAPTURE(stopSearch, drawn, drawn)->Iterations(3)->Unit(benchmark::kMillisecond)
STOPPED(classOf60<20>);
STOPPED(classOf60<60>);
STOPPED(classOf60<80>);
STOPPED(classOf60<100>);
STOPPED(softClassOf60);
STOPPED(matrixOf60);
STOPPED(looseMatrixOf60);
STOPPED(matrixOf300);
STOPPED(matrixOfTheMost);

} // namespace
} // namespace matwright::test
