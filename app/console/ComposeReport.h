#pragma once

#include "core/compose/ComposeReasons.h"
#include "core/store/Tree.h"

namespace matwright {

// A class that was composed, or what stood in the way.
struct ComposeReport {
  const Knowledge& knowledge;
  const ClassWishes& wishes;
  std::span<const Person> roster;
  Date day;
  const ComposeResult& result;
};

// What `compose --json` prints; described in app/console/OUTPUT.md.
Tree composeTree(const ComposeReport& report);

// The same for people to read; with `explained` it says why each step was chosen.
std::string composeText(const ComposeReport& report, bool explained);

// Why there is no class, a sentence each. Empty for a composed one.
std::vector<std::string> obstacleTexts(const ComposeReport& report);

} // namespace matwright
