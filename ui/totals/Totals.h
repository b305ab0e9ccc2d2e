#pragma once

#include "ui/document/PlanDocument.h"

#include <QString>
#include <array>

namespace matwright {

// One figure of a class, with what it is under it, and how it differs from the class as it stands (empty: not at all).
struct Total {
  QString value;
  QString beside; // small, after the value
  QString under;
  QString difference;
  friend bool operator==(const Total&, const Total&) = default;
};

// What stands above the timeline, in words.
struct Totals {
  Total length, changes, moving, sides;
  std::array<int, kWordCount<Level>> cautions{};
  std::array<int, kWordCount<Level>> moreCautions{}; // than in the class as it stands
  QString people;                                    // for whom the cautions are
  friend bool operator==(const Totals&, const Totals&) = default;
};

Totals totalsOf(const Snapshot& snapshot);
// Of a class that would be, against the class as it stands.
Totals totalsOf(const Snapshot& snapshot, const Snapshot& standing);

} // namespace matwright
