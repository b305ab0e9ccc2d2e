// How long the arithmetic behind one gesture takes, over the knowledge that comes with the program. A gesture has about
// 16 ms until the next picture; evaluate() is to use at most 1 ms of them, candidatesFor() well under 100 ms, and
// replacementsFor() under 50 ms, since it answers a click.
#include "core/evaluate/Evaluation.h"
#include "core/evaluate/Swaps.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"

#include <benchmark/benchmark.h>

namespace matwright::test {
namespace {

constexpr Date kDay{std::chrono::year{2026}, std::chrono::month{6}, std::chrono::day{1}};

struct Scene {
  std::vector<Person> people;
  ClassPlan plan;
};

Scene sceneOf(int steps, int people) {
  const Knowledge& knowledge = realKnowledge();
  Draw draw(20260601);
  Scene scene{randomPeople(draw, knowledge.rules, kDay, people, 2), randomClass(draw, knowledge.catalogue, steps)};
  scene.plan.people = idsOf(scene.people);
  return scene;
}

// False, and the benchmark is skipped, when the knowledge cannot be read.
bool readable(benchmark::State& state) {
  if (readRealKnowledge())
    return true;
  state.SkipWithError(whatIsWrongWithRealKnowledge().c_str());
  return false;
}

void evaluateClass(benchmark::State& state) {
  if (!readable(state))
    return;
  const Scene scene = sceneOf(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
  std::size_t cautions = 0;
  for (auto _ : state) {
    const Evaluation evaluation = evaluate(realKnowledge(), scene.plan, scene.people, kDay);
    benchmark::DoNotOptimize(evaluation.schedule.length);
    cautions = evaluation.cautions.size();
  }
  state.counters["cautions"] = static_cast<double>(cautions);
}
BENCHMARK(evaluateClass)->ArgNames({"steps", "people"})->Args({20, 6})->Args({60, 0})->Args({60, 30});

void findCandidates(benchmark::State& state) {
  if (!readable(state))
    return;
  const Scene scene = sceneOf(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
  for (auto _ : state)
    benchmark::DoNotOptimize(candidatesFor(realKnowledge(), scene.plan, scene.people, kDay, Place{2, 1}));
  state.counters["movements"] = static_cast<double>(realKnowledge().catalogue.movements().size());
}
BENCHMARK(findCandidates)->ArgNames({"steps", "people"})->Args({20, 6})->Args({60, 30})->Unit(benchmark::kMillisecond);

void findReplacements(benchmark::State& state) {
  if (!readable(state))
    return;
  const Scene scene = sceneOf(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
  std::size_t found = 0;
  for (auto _ : state)
    found = replacementsFor(realKnowledge(), scene.plan, scene.people, kDay, StepId{state.range(2)}).size();
  state.counters["found"] = static_cast<double>(found);
}
BENCHMARK(findReplacements)
    ->ArgNames({"steps", "people", "step"})
    ->ArgsProduct({{60}, {6}, benchmark::CreateDenseRange(1, 60, 6)})
    ->Args({60, 30, 25})
    ->Unit(benchmark::kMillisecond);

void findWays(benchmark::State& state) {
  if (!readable(state))
    return;
  for (auto _ : state)
    benchmark::DoNotOptimize(Ways(realKnowledge().transitions, {Feature::wristLoad, Feature::flexLoad}));
}
BENCHMARK(findWays);

} // namespace
} // namespace matwright::test
