#include "core/order/Assignment.h"
#include "tests/support/RandomOrder.h"
#include "tests/support/Seeds.h"

#include <gmock/gmock.h>
#include <limits>

namespace matwright::test {
namespace {

using Costs = std::vector<std::int64_t>;

// Of all, by trying them; with one cell given where `row` is not negative.
std::int64_t leastSum(const Costs& costs, int size, int row = -1, int column = -1) {
  std::vector<int> columns(size);
  std::iota(columns.begin(), columns.end(), 0);
  std::int64_t least = std::numeric_limits<std::int64_t>::max();
  do {
    if (row >= 0 && columns[row] != column)
      continue;
    std::int64_t sum = 0;
    for (int at = 0; at < size; ++at)
      sum += costs[static_cast<std::size_t>(at) * size + columns[at]];
    least = std::min(least, sum);
  } while (std::next_permutation(columns.begin(), columns.end()));
  return least;
}

struct Table {
  OrderDraw draw;
  int size;
  Costs costs;
  explicit Table(unsigned seed) : draw(seed), size(1 + draw.below(6)) {
    for (int cell = 0; cell < size * size; ++cell)
      costs.push_back(cost());
  }
  std::int64_t cost() { return draw.chance(0.2) ? Assignment::kForbidden : draw.below(30) - 5; }
  void changeSome() {
    for (std::int64_t& cell : costs)
      if (draw.chance(0.3))
        cell = cost();
  }
};

TEST(Assignment, IsTheCheapestOfAllAlsoAfterChanges) {
  forEachSeed<Table>(1, 300, [](Table& table) {
    Assignment assignment(table.size);
    for (int change = 0; change < 4; ++change, table.changeSome()) {
      const std::int64_t least = leastSum(table.costs, table.size), sum = assignment.solve(table.costs);
      if (least >= Assignment::kForbidden / 2) {
        EXPECT_GE(sum, Assignment::kForbidden / 2);
        return;
      }
      EXPECT_EQ(sum, least);
      std::int64_t counted = 0;
      for (int row = 0; row < table.size; ++row) {
        counted += table.costs[static_cast<std::size_t>(row) * table.size + assignment.columnOf(row)];
        EXPECT_EQ(assignment.rowOf(assignment.columnOf(row)), row);
      }
      EXPECT_EQ(counted, least);
    }
  });
}

TEST(Assignment, NoCellMakesItCheaperThanItsExcessSays) {
  forEachSeed<Table>(1, 100, [](Table& table) {
    Assignment assignment(table.size);
    const std::int64_t sum = assignment.solve(table.costs);
    if (sum >= Assignment::kForbidden / 2)
      return;
    for (int row = 0; row < table.size; ++row)
      for (int column = 0; column < table.size; ++column) {
        const std::int64_t cost = table.costs[static_cast<std::size_t>(row) * table.size + column];
        EXPECT_GE(assignment.excess(row, column, cost), 0);
        EXPECT_LE(sum + assignment.excess(row, column, cost), leastSum(table.costs, table.size, row, column));
      }
    for (int row = 0; row < table.size; ++row) {
      const int column = assignment.columnOf(row);
      EXPECT_EQ(assignment.excess(row, column, table.costs[static_cast<std::size_t>(row) * table.size + column]), 0);
    }
  });
}

} // namespace
} // namespace matwright::test
