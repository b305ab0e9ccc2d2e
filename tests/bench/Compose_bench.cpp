// How well and how fast a class is composed. All times are of the processor, in milliseconds.
//
//   fillAgainstExact   problems of 16 to 18 families, drawn by seed, with about a tenth of a second each: how far, in
//                      percent, the cost is above the exact optimum. To reach: a median of 0, 3 at the 95th percentile
//   firstFilling       until there is a first class of so many minutes from the catalogue that comes with the program.
//                      To reach: 10 ms
//   tenthOfASecond     how far, in percent, what is found in a tenth of a second is above the best of five chains of a
//                      second each. To reach: 10
//   composeDemo        all of composed(), for the wishes and the people of the demo studio
//   offerOnly          of it what is chosen from, for so many people
//   askToStop          the longest time between two questions whether to stop, and until the first. To reach: 50 ms
#include "core/compose/Compose.h"
#include "core/compose/FillSearch.h"
#include "core/compose/Offer.h"
#include "tests/support/ExactFill.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RandomFill.h"
#include "tests/support/RealKnowledge.h"

#include <benchmark/benchmark.h>
#include <ctime>
#include <filesystem>

namespace matwright::test {
namespace {

constexpr Date kDay{std::chrono::year{2026}, std::chrono::month{6}, std::chrono::day{1}};

double milliseconds() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

double percentile(std::vector<double> values, double part) {
  if (values.empty())
    return -1;
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1, static_cast<std::size_t>(part * static_cast<double>(values.size())))];
}

FillAnswer solved(const FillProblem& problem, std::int64_t evaluations, std::uint64_t seed) {
  FillLimits limits;
  limits.evaluations = evaluations;
  limits.seed = seed;
  return solveFill(problem, limits);
}

// So many evaluations as take about that long.
std::int64_t evaluationsIn(const FillProblem& problem, double time) {
  constexpr std::int64_t few = 20'000;
  const double begin = milliseconds();
  const FillAnswer answer = solved(problem, few, 99);
  const double each = (milliseconds() - begin) / static_cast<double>(few);
  return std::max<std::int64_t>(few, static_cast<std::int64_t>(time / std::max(each, 1e-5)));
}

double percentAbove(std::int64_t cost, std::int64_t least) {
  return 100.0 * static_cast<double>(cost - least) / static_cast<double>(std::max<std::int64_t>(least, 1));
}

void fillAgainstExact(benchmark::State& state) {
  std::vector<double> gaps, times, exactTimes;
  int missed = 0, impossible = 0;
  std::uint64_t seed = 0;
  for (auto _ : state) {
    ++seed;
    FillSize size;
    size.families = 16 + static_cast<int>(seed % 3);
    size.dosed = static_cast<int>(seed % 5);
    size.sections = state.range(0);
    size.arc = seed % 4 == 0;
    const FillProblem problem = RandomFill(10'000 + seed, size).problem();
    const std::int64_t evaluations = evaluationsIn(problem, 100);
    double begin = milliseconds();
    const FillAnswer answer = solved(problem, evaluations, 1);
    times.push_back(milliseconds() - begin);
    begin = milliseconds();
    ExactFill exact(problem);
    const auto cheaper = answer.filling ? exact.cheapest(answer.weight.cost()) : exact.cheapest();
    exactTimes.push_back(milliseconds() - begin);
    missed += !answer.filling && cheaper;
    impossible += !answer.filling && !cheaper;
    if (answer.filling)
      gaps.push_back(percentAbove(answer.weight.cost(), cheaper.value_or(answer.weight.cost())));
  }
  state.counters["median"] = percentile(gaps, 0.5);
  state.counters["p95"] = percentile(gaps, 0.95);
  state.counters["worst"] = percentile(gaps, 1);
  state.counters["missed"] = missed;
  state.counters["impossible"] = impossible;
  state.counters["of"] = static_cast<double>(seed);
  state.counters["search_ms"] = percentile(times, 0.5);
  state.counters["exact_ms"] = percentile(exactTimes, 0.5);
}
BENCHMARK(fillAgainstExact)->ArgName("sections")->Arg(1)->Arg(2)->Iterations(40)->Unit(benchmark::kMillisecond);

bool readable(benchmark::State& state) {
  if (readRealKnowledge())
    return true;
  state.SkipWithError(whatIsWrongWithRealKnowledge().c_str());
  return false;
}

ClassWishes wishesOf(std::int64_t length) {
  ClassWishes wishes;
  wishes.length = minutes(static_cast<double>(length));
  wishes.sections = usualSections(wishes.length);
  wishes.props = {Prop::ring, Prop::ball};
  wishes.focus.regions = {Region::abdominals, Region::hips};
  return wishes;
}

Offer offerOf(const ClassWishes& wishes, const std::vector<Person>& roster) {
  const Group group(realKnowledge(), wishes.people, roster, kDay);
  return offerFor(realKnowledge(), wishes, group, blankClass(wishes), {}, {});
}

void firstFilling(benchmark::State& state) {
  if (!readable(state))
    return;
  const FillProblem problem = offerOf(wishesOf(state.range(0)), {}).problem;
  std::vector<double> times;
  int missed = 0;
  std::uint64_t seed = 0;
  for (auto _ : state) {
    FillLimits limits;
    limits.evaluations = 600'000;
    limits.seed = ++seed;
    limits.firstOnly = true;
    const double begin = milliseconds();
    missed += !solveFill(problem, limits).filling;
    times.push_back(milliseconds() - begin);
  }
  state.counters["median_ms"] = percentile(times, 0.5);
  state.counters["worst_ms"] = percentile(times, 1);
  state.counters["missed"] = missed;
}
BENCHMARK(firstFilling)->ArgName("minutes")->Arg(30)->Arg(50)->Arg(60)->Iterations(30)->Unit(benchmark::kMillisecond);

void tenthOfASecond(benchmark::State& state) {
  if (!readable(state))
    return;
  const FillProblem problem = offerOf(wishesOf(state.range(0)), {}).problem;
  const std::int64_t evaluations = evaluationsIn(problem, 100);
  std::optional<std::int64_t> least;
  for (std::uint64_t seed = 101; seed <= 105; ++seed)
    if (const FillAnswer answer = solved(problem, 10 * evaluations, seed); answer.filling)
      least = std::min(least.value_or(answer.weight.cost()), answer.weight.cost());
  if (!least) {
    state.SkipWithError("nothing was found");
    return;
  }
  std::vector<double> gaps, times;
  int missed = 0;
  std::uint64_t seed = 0;
  for (auto _ : state) {
    const double begin = milliseconds();
    const FillAnswer answer = solved(problem, evaluations, ++seed);
    times.push_back(milliseconds() - begin);
    missed += !answer.filling;
    if (answer.filling)
      gaps.push_back(percentAbove(answer.weight.cost(), *least));
  }
  state.counters["median"] = percentile(gaps, 0.5);
  state.counters["worst"] = percentile(gaps, 1);
  state.counters["missed"] = missed;
  state.counters["search_ms"] = percentile(times, 0.5);
  state.counters["reference_s"] = static_cast<double>(*least) / 1000;
}
BENCHMARK(tenthOfASecond)->ArgName("minutes")->Arg(30)->Arg(50)->Arg(60)->Iterations(20)->Unit(benchmark::kMillisecond);

struct Demo {
  std::vector<Person> people;
  std::vector<ClassWishes> wishes;
};

Demo demo() {
  const std::string folder = MATWRIGHT_SOURCE_DIR "/resources/demo/";
  Demo demo;
  for (const Stored<Person>& each : readPeople(folder + "people").people)
    demo.people.push_back(each.value);
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder + "wishes"))
    names.push_back(entry.path().string());
  std::sort(names.begin(), names.end());
  for (const std::string& name : names)
    if (const auto read = readWishes(name))
      demo.wishes.push_back(read->value);
  return demo;
}

void composeDemo(benchmark::State& state) {
  if (!readable(state))
    return;
  const Demo scene = demo();
  const auto at = static_cast<std::size_t>(state.range(0));
  if (at >= scene.wishes.size()) {
    state.SkipWithError("the demo studio has fewer wishes");
    return;
  }
  const ClassWishes& wishes = scene.wishes[at];
  ComposeResult result;
  for (auto _ : state)
    result = composed(realKnowledge(), wishes, scene.people, wishes.date.value_or(kDay), blankClass(wishes)).value();
  state.SetLabel(wishes.name);
  state.counters["composed"] = result.status == ComposeStatus::composed;
  state.counters["cost_s"] = result.cost.total().value();
  state.counters["steps"] = static_cast<double>(result.chosen.size());
}
BENCHMARK(composeDemo)->ArgName("wishes")->Arg(0)->Arg(1)->Arg(2)->Iterations(2)->Unit(benchmark::kMillisecond);

void offerOnly(benchmark::State& state) {
  if (!readable(state))
    return;
  Draw draw(7);
  const std::vector<Person> people =
      randomPeople(draw, realKnowledge().rules, kDay, static_cast<int>(state.range(0)), 2);
  ClassWishes wishes = wishesOf(50);
  wishes.people = idsOf(people);
  std::size_t items = 0;
  for (auto _ : state)
    items = offerOf(wishes, people).problem.offered.size();
  state.counters["items"] = static_cast<double>(items);
}
BENCHMARK(offerOnly)->ArgName("people")->Arg(0)->Arg(6)->Arg(30)->Unit(benchmark::kMillisecond);

void askToStop(benchmark::State& state) {
  if (!readable(state))
    return;
  Draw draw(7);
  const std::vector<Person> people = randomPeople(draw, realKnowledge().rules, kDay, 30, 1);
  ClassWishes wishes = wishesOf(60);
  wishes.people = idsOf(people);
  double longest = 0, first = 0;
  for (auto _ : state) {
    std::optional<double> before;
    const double begin = milliseconds();
    ComposeLimits limits;
    limits.evaluations = 100'000;
    limits.stop = [&] {
      const double now = milliseconds();
      (before ? longest : first) = std::max(before ? longest : first, now - before.value_or(begin));
      before = now;
      return false;
    };
    benchmark::DoNotOptimize(
        composed(realKnowledge(), wishes, people, kDay, blankClass(wishes), limits).value().evaluations);
  }
  state.counters["longest_ms"] = longest;
  state.counters["first_ms"] = first;
}
BENCHMARK(askToStop)->Iterations(2)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace matwright::test
