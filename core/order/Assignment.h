#pragma once

#include <cstdint>
#include <vector>

namespace matwright {

// Gives each row of a square table a column of its own so that the sum is least, by shortest augmenting paths, with the
// prices of rows and columns that prove it. Prices are kept from one table to the next: tables that differ little are
// soon solved.
class Assignment {
public:
  static constexpr std::int64_t kForbidden = std::int64_t{1} << 54; // in a table: not allowed

  explicit Assignment(int size);
  // The least sum; at least kForbidden / 2 when a forbidden cell is needed. `costs`: size x size, others below 2^44.
  std::int64_t solve(const std::vector<std::int64_t>& costs);

  int columnOf(int row) const { return columnOf_[row]; }
  int rowOf(int column) const { return rowOf_[column]; }
  // How much more at least the sum is when it takes a cell of this cost.
  std::int64_t excess(int row, int column, std::int64_t cost) const {
    return cost - rowPrices_[row] - columnPrices_[column];
  }

private:
  void keepTight(const std::vector<std::int64_t>& costs);
  void augment(const std::vector<std::int64_t>& costs, int row);

  int size_;
  std::vector<std::int64_t> rowPrices_, columnPrices_;
  std::vector<int> columnOf_, rowOf_; // -1: none yet
  std::vector<std::int64_t> least_;   // by column, of one augmentation
  std::vector<int> cameFrom_;         // row
  std::vector<char> reached_;
  std::vector<int> reachedColumns_;
};

} // namespace matwright
