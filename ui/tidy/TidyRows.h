#pragma once

#include "ui/tidy/TidySearch.h"

#include <QString>

namespace matwright {

// One thing that is said of an order that was found.
struct TidyRow {
  std::optional<Level> level; // of a caution
  std::optional<StepId> step; // none: about the class
  QString title, body, instead;
};

struct TidyRowGroup {
  QString title;
  std::vector<TidyRow> rows;
};

// The cautions that the order brings, then what moves and why, then the cautions that it takes away; groups without
// rows are left out.
std::vector<TidyRowGroup> rowsOf(const TidyFound& found, std::span<const Person> roster);

} // namespace matwright
