#pragma once

#include "core/evaluate/Schedule.h"
#include "core/tidy/Tidy.h"

#include <utility>

namespace matwright {

// Steps that stay together, by their places in the schedule: from `first` to before `end`.
struct TidyItem {
  std::size_t first = 0, end = 0;
  std::size_t section = 0; // of the last step
  bool fixed = false;      // keeps its place
  friend bool operator==(const TidyItem&, const TidyItem&) = default;
};

using TidyPair = std::pair<int, int>; // items: the first comes before the second

// What is put in order: everything from the first item that may move to the last one.
struct TidyItems {
  std::vector<TidyItem> items;         // in the order of today
  bool closed = false;                 // the last item comes after the last one that may move, to see what follows
  std::vector<TidyPair> prerequisites; // that hold today
  std::vector<TidyPair> mended;        // prerequisites that do not
  std::vector<TidyPair> warmFirst;     // that hold today
  int movable = 0;
};

TidyItems itemsOf(const Knowledge& knowledge, const ClassPlan& plan, const Schedule& schedule,
                  const TidyRequest& request);

} // namespace matwright
