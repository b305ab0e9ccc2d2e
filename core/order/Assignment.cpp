#include "core/order/Assignment.h"

#include <algorithm>
#include <limits>

namespace matwright {

Assignment::Assignment(int size)
    : size_(size), rowPrices_(size), columnPrices_(size), columnOf_(size, -1), rowOf_(size, -1), least_(size),
      cameFrom_(size), reached_(size) {}

std::int64_t Assignment::solve(const std::vector<std::int64_t>& costs) {
  keepTight(costs);
  for (int row = 0; row < size_; ++row)
    if (columnOf_[row] < 0)
      augment(costs, row);
  std::int64_t sum = 0;
  for (int row = 0; row < size_; ++row)
    sum += costs[static_cast<std::size_t>(row) * size_ + columnOf_[row]];
  return sum;
}

// The dearest price for each row under which no cell is below the prices, and as much of the last answer as they allow.
void Assignment::keepTight(const std::vector<std::int64_t>& costs) {
  for (int row = 0; row < size_; ++row) {
    const std::int64_t* mine = costs.data() + static_cast<std::size_t>(row) * size_;
    std::int64_t least = mine[0] - columnPrices_[0];
    for (int column = 1; column < size_; ++column)
      least = std::min(least, mine[column] - columnPrices_[column]);
    rowPrices_[row] = least;
    const int last = columnOf_[row];
    if (last >= 0 && excess(row, last, mine[last]) != 0) {
      columnOf_[row] = -1;
      rowOf_[last] = -1;
    }
  }
  for (int row = 0; row < size_; ++row)
    for (int column = 0; column < size_ && columnOf_[row] < 0; ++column)
      if (rowOf_[column] < 0 && excess(row, column, costs[static_cast<std::size_t>(row) * size_ + column]) == 0) {
        columnOf_[row] = column;
        rowOf_[column] = row;
      }
}

void Assignment::augment(const std::vector<std::int64_t>& costs, int row) {
  std::fill(least_.begin(), least_.end(), std::numeric_limits<std::int64_t>::max());
  std::fill(reached_.begin(), reached_.end(), 0);
  reachedColumns_.clear();
  std::int64_t distance = 0;
  int last = -1;
  for (int from = row; last < 0;) {
    const std::int64_t* mine = costs.data() + static_cast<std::size_t>(from) * size_;
    int nearest = -1;
    for (int column = 0; column < size_; ++column) {
      if (reached_[column])
        continue;
      if (const std::int64_t found = distance + excess(from, column, mine[column]); found < least_[column]) {
        least_[column] = found;
        cameFrom_[column] = from;
      }
      if (nearest < 0 || least_[column] < least_[nearest])
        nearest = column;
    }
    distance = least_[nearest];
    reached_[nearest] = 1;
    if (rowOf_[nearest] < 0)
      last = nearest;
    else {
      reachedColumns_.push_back(nearest);
      from = rowOf_[nearest];
    }
  }
  rowPrices_[row] += distance;
  for (int column : reachedColumns_) {
    rowPrices_[rowOf_[column]] += distance - least_[column];
    columnPrices_[column] -= distance - least_[column];
  }
  for (int from = -1; from != row;) {
    from = cameFrom_[last];
    rowOf_[last] = from;
    std::swap(columnOf_[from], last);
  }
}

} // namespace matwright
