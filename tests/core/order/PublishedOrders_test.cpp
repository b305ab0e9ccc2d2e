// Instances that others have published, with the optimum published for them: ESC07 and br17.10 of TSPLIB (G. Reinelt
// 1991, TSPLIB - a traveling salesman problem library, ORSA Journal on Computing 3: 376-384), typed in; and those of a
// folder.
#include "core/order/OrderCheck.h"
#include "core/order/SolveOrder.h"
#include "core/order/SopText.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <iterator>
#include <sstream>

namespace matwright {
namespace {

// Received by Norbert Ascheuer and Laureano Escudero. Optimum 2125.
constexpr const char* kEsc07 = R"(9
    0 0 0 0 0 0 0 0 1000000
    -1 0 100 200 75 0 300 100 0
    -1 400 0 500 325 400 600 0 0
    -1 700 800 0 550 700 900 800 0
    -1 -1 250 225 0 275 525 250 0
    -1 -1 100 200 -1 0 -1 -1 0
    -1 -1 1100 1200 1075 1000 0 1100 0
    -1 -1 0 500 325 400 600 0 0
    -1 -1 -1 -1 -1 -1 -1 -1 0
)";

// br17 with precedences by Norbert Ascheuer. Optimum 55.
constexpr const char* kBr17 = R"(18
    0 3 5 48 48 8 8 5 5 3 3 0 3 5 8 8 5 1000000
    -1 0 3 48 -1 -1 8 5 5 0 0 3 0 3 8 -1 5 3
    -1 3 0 72 -1 48 48 24 24 3 3 5 3 0 48 -1 24 5
    -1 48 74 0 0 6 6 12 -1 48 48 48 48 74 6 6 12 48
    -1 48 74 0 0 6 6 12 12 48 48 48 48 74 6 6 12 48
    -1 8 50 6 6 0 0 8 8 8 8 8 8 50 0 0 8 8
    -1 8 50 6 6 0 0 8 8 8 8 8 8 50 0 0 8 8
    -1 5 26 12 12 -1 8 0 0 5 5 5 -1 26 8 8 0 5
    -1 5 26 12 12 8 8 0 0 5 5 5 5 26 8 8 0 5
    -1 0 3 48 -1 8 8 5 5 0 0 3 0 3 8 8 5 3
    -1 0 3 48 48 8 8 5 5 0 0 3 0 3 8 8 5 3
    -1 3 5 48 48 8 8 5 5 3 3 0 3 5 8 8 5 0
    -1 0 3 48 48 -1 8 5 5 0 0 3 0 3 8 8 5 3
    -1 3 0 72 -1 48 48 24 24 3 3 5 3 0 48 48 24 5
    -1 8 50 6 6 -1 0 -1 8 8 8 8 -1 50 0 0 8 8
    -1 8 50 6 -1 0 0 8 8 8 8 8 8 50 0 0 8 8
    -1 5 26 12 12 8 8 0 0 5 5 5 5 26 8 8 0 5
    -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 -1 0
)";

void expectOptimum(const std::string& text, OrderCost optimum) {
  const auto instance = readSop(text, "");
  ASSERT_TRUE(instance);
  const auto answer = solveOrder(instance->problem);
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->status, OrderStatus::optimal);
  EXPECT_EQ(answer->cost, optimum);
  EXPECT_EQ(answer->lower, optimum);
  EXPECT_EQ(checkOrder(instance->problem, answer->order), (Result<OrderCost, OrderBreach>(optimum)));
}

TEST(PublishedOrders, Esc07IsSolved) { expectOptimum(kEsc07, 2125); }

TEST(PublishedOrders, Br17With10PrecedencesIsSolved) { expectOptimum(kBr17, 55); }

std::filesystem::path folderOfInstances() {
  const char* named = std::getenv("MATWRIGHT_SOP_INSTANCES");
  return named ? named : MATWRIGHT_SOP_INSTANCES;
}

std::string textOf(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// Each row of best-known.csv: name, published lower bound (may be empty), cost of the best known order, `opt` where
// that is proven.
TEST(PublishedOrders, NoInstanceOfTheFolderContradictsWhatIsPublished) {
  const std::filesystem::path folder = folderOfInstances();
  if (folder.empty() || !std::filesystem::exists(folder / "best-known.csv"))
    GTEST_SKIP() << "MATWRIGHT_SOP_INSTANCES names no folder with best-known.csv";
  std::istringstream rows{textOf(folder / "best-known.csv")};
  std::string row;
  std::getline(rows, row);
  int instances = 0;
  while (std::getline(rows, row)) {
    std::istringstream fields{row};
    std::string name, lower, upper, status;
    std::getline(fields, name, ',');
    std::getline(fields, lower, ',');
    std::getline(fields, upper, ',');
    std::getline(fields, status);
    SCOPED_TRACE(name);
    const auto instance = readSop(textOf(folder / (name + ".sop")), name);
    ASSERT_TRUE(instance);
    OrderLimits limits;
    limits.nodes = 300'000;
    const auto answer = solveOrder(instance->problem, limits);
    ASSERT_TRUE(answer);
    const OrderCost best = std::stoll(upper);
    ASSERT_EQ(checkOrder(instance->problem, answer->order), (Result<OrderCost, OrderBreach>(answer->cost)));
    EXPECT_LE(answer->lower, best);
    if (status.starts_with("opt")) {
      EXPECT_GE(answer->cost, best);
    }
    EXPECT_LE(static_cast<double>(answer->cost), 1.05 * static_cast<double>(best));
    if (answer->status == OrderStatus::optimal) {
      EXPECT_EQ(answer->cost, best);
    }
    if (name == "rbg048a" || name == "rbg050c") { // of a stacker crane, each load between places of its own
      EXPECT_EQ(answer->status, OrderStatus::optimal);
    }
    ++instances;
  }
  EXPECT_GT(instances, 0);
}

} // namespace
} // namespace matwright
