#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>

namespace matwright {

// Cells of a large table that are filled between two questions: a few megabytes.
inline constexpr std::size_t kCellsAtOnce = std::size_t{1} << 20;

// How far a search may go. Asks its caller often whether to stop; once stopped it stays so.
class SearchEffort {
public:
  SearchEffort(std::int64_t nodes, const std::function<bool()>& stop) : limit_(nodes), stop_(&stop) {}
  // Takes `nodes` as done. True when the search has to end.
  bool spend(std::int64_t nodes = 1) {
    used_ += nodes;
    unasked_ += nodes;
    return unasked_ >= kBetweenQuestions ? ask() : isOver();
  }
  // Before and after a piece of work that is longer than usual.
  bool ask() {
    unasked_ = 0;
    if (!stopped_ && *stop_ && (*stop_)())
      stopped_ = true;
    return isOver();
  }
  bool isOver() const { return stopped_ || used_ >= limit_; }
  bool isStopped() const { return stopped_; }
  std::int64_t used() const { return used_; }
  std::int64_t left() const { return used_ >= limit_ ? 0 : limit_ - used_; }

private:
  static constexpr std::int64_t kBetweenQuestions = 64;
  std::int64_t limit_, used_ = 0, unasked_ = kBetweenQuestions;
  const std::function<bool()>* stop_;
  bool stopped_ = false;
};

} // namespace matwright
