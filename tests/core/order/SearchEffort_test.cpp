// How soon a search hears that it is to stop, without a clock: by the work that passes between two questions.
#include "core/order/Blocks.h"
#include "core/order/SolveOrder.h"
#include "core/order/Sweep.h"
#include "tests/support/RandomOrder.h"

#include <gmock/gmock.h>

namespace matwright::test {
namespace {

constexpr std::int64_t kMostNodes = 64; // between two questions

OrderProblem softProblem(std::uint64_t seed, int items) {
  OrderProblem problem = classLikeProblem(seed, items, 1);
  addSoftTerms(problem, seed);
  return problem;
}

// The nodes of a search that was stopped when it asked so many times; how often it asked in the end.
std::int64_t nodesUntil(const OrderProblem& problem, int questions, int& asked) {
  asked = 0;
  OrderLimits limits;
  limits.stop = [&] { return ++asked >= questions; };
  return solveOrder(problem, limits)->nodes;
}

TEST(SearchEffort, AsksBeforeTheFirstNodeAndThenAtLeastEvery64) {
  int asked = 0;
  const std::function<bool()> stop = [&] {
    ++asked;
    return false;
  };
  SearchEffort effort(1000, stop);
  EXPECT_FALSE(effort.spend());
  EXPECT_EQ(asked, 1);
  for (int node = 0; node < 64; ++node)
    EXPECT_FALSE(effort.spend());
  EXPECT_EQ(asked, 2);
}

TEST(SearchEffort, OnceStoppedIsNotAskedAgain) {
  int asked = 0;
  const std::function<bool()> stop = [&] { return ++asked == 1; };
  SearchEffort effort(1000, stop);
  EXPECT_TRUE(effort.ask());
  EXPECT_TRUE(effort.ask());
  EXPECT_TRUE(effort.isStopped());
  EXPECT_EQ(asked, 1);
}

TEST(SearchEffort, NoPartOfASearchDoesMoreThan64NodesUnasked) {
  for (const OrderProblem& problem : {classLikeProblem(3, 40, 1), softProblem(3, 24), denseProblem(3, 30, 20, 0.5)}) {
    std::int64_t before = 0;
    int questions = 1;
    for (bool ended = false; !ended && questions <= 120; ++questions) {
      int asked = 0;
      const std::int64_t nodes = nodesUntil(problem, questions, asked);
      // A search that was stopped ends at once: a few of its parts look once more whether they may go on.
      EXPECT_LE(nodes - before, kMostNodes + 8) << "after question " << questions - 1;
      before = nodes;
      ended = asked < questions;
    }
    EXPECT_GT(questions, 20) << "the search is too short to tell anything";
  }
}

// No bound, and a level of some hundred thousand points: finding their slots, sorting out the best and counting the
// others ask though no node passes.
TEST(Sweep, AsksWhileItGoesThroughManyPoints) {
  const OrderProblem problem = denseProblem(5, 20, 1000, 0.05);
  const Groundwork ground(problem, relationOf(problem).value());
  int asked = 0;
  const std::function<bool()> stop = [&] {
    ++asked;
    return false;
  };
  SearchEffort effort(std::int64_t{1} << 50, stop);
  const SweepOutcome outcome = sweep(ground, {}, 10'000, kFar, effort);
  EXPECT_EQ(ground.costOf(outcome.order), outcome.cost);
  const auto forNodes = static_cast<int>(effort.used() / kMostNodes) + 1;
  EXPECT_GT(asked, forNodes + 10);
  RecordProperty("questions", asked);
  RecordProperty("forNodes", forNodes);
}

TEST(Sweep, StoppedAtAnyQuestionKeepsABoundThatHolds) {
  const OrderProblem problem = denseProblem(6, 13, 100, 0.1);
  const OrderCost optimum = solveOrder(problem)->cost;
  const Groundwork ground(problem, relationOf(problem).value());
  for (int questions = 1; questions <= 60; ++questions)
    for (std::size_t width : {std::size_t{1}, std::size_t{40}, std::size_t{100'000}}) {
      int asked = 0;
      const std::function<bool()> stop = [&] { return ++asked >= questions; };
      SearchEffort effort(std::int64_t{1} << 50, stop);
      const SweepOutcome outcome = sweep(ground, {}, width, kFar, effort);
      EXPECT_LE(outcome.lower, optimum) << questions << " questions, width " << width;
      EXPECT_GE(outcome.cost, optimum);
      if (outcome.complete) {
        EXPECT_EQ(outcome.cost, optimum);
      }
    }
}

TEST(Blocks, HoldWhatWasPutInWhereverABlockEnds) {
  Blocks<int> blocks;
  std::vector<int> plain;
  for (int at = 0; at < 20'000; ++at) {
    blocks.push_back(3 * at);
    plain.push_back(3 * at);
    ASSERT_EQ(blocks.size(), plain.size());
  }
  for (std::size_t size :
       {std::size_t{16'385}, std::size_t{16'384}, std::size_t{8191}, std::size_t{1}, std::size_t{0}}) {
    blocks.shrink(size);
    ASSERT_EQ(blocks.size(), size);
    for (std::size_t at = 0; at < size; ++at)
      ASSERT_EQ(blocks[at], plain[at]);
  }
  blocks.push_back(7);
  EXPECT_EQ(blocks.size(), 1U);
  EXPECT_EQ(blocks[0], 7);
}

} // namespace
} // namespace matwright::test
