// How long it takes to put a class into order, over the knowledge that comes with the program: Thursday's class of the
// demo studio with its people, and a class of 60 steps drawn by seed. `wishes` asks for all of them. It happens while
// somebody waits for it, so Thursday's class is to be there at once (100 ms), and a long one before anybody wonders
// (1 s). `proven` says whether no order is shorter; the rest is what the order saves, in seconds of moving.
#include "core/tidy/Tidy.h"
#include "tests/support/RandomClass.h"
#include "tests/support/RealKnowledge.h"

#include <benchmark/benchmark.h>

namespace matwright::test {
namespace {

constexpr Date kDay{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{26}};

void tidyClass(benchmark::State& state, const ClassPlan& plan, const std::vector<Person>& people) {
  TidyRequest request;
  if (state.range(0) != 0)
    request.wishes = {true, true, true, true};
  TidyResult result;
  for (auto _ : state) {
    auto tidy = tidied(realKnowledge(), plan, people, kDay, request);
    if (!tidy) {
      state.SkipWithError("the class was refused");
      return;
    }
    result = *std::move(tidy);
  }
  state.counters["steps"] = static_cast<double>(countSteps(plan));
  state.counters["proven"] = result.status == TidyStatus::shortest || result.status == TidyStatus::nothingToDo;
  state.counters["saved"] = (result.before.moving - result.after.moving).value();
  state.counters["nodes"] = static_cast<double>(result.nodes);
}

// False, and the benchmark is skipped, when the knowledge cannot be read.
bool readable(benchmark::State& state) {
  if (readRealKnowledge())
    return true;
  state.SkipWithError(whatIsWrongWithRealKnowledge().c_str());
  return false;
}

void tidyThursday(benchmark::State& state) {
  if (!readable(state))
    return;
  const std::string demo = MATWRIGHT_SOURCE_DIR "/resources/demo/";
  const auto read = readClass(demo + "classes/thursday-mixed-level.json");
  if (!read) {
    state.SkipWithError("the class cannot be read");
    return;
  }
  std::vector<Person> people;
  for (const Stored<Person>& each : readPeople(demo + "people").people)
    people.push_back(each.value);
  tidyClass(state, read->value, people);
}
BENCHMARK(tidyThursday)->ArgName("wishes")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

void tidy60Steps(benchmark::State& state) {
  if (!readable(state))
    return;
  Draw draw(20261126);
  tidyClass(state, randomClass(draw, realKnowledge().catalogue, 60), {});
}
BENCHMARK(tidy60Steps)->ArgName("wishes")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace matwright::test
