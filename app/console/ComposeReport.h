#pragma once

#include "core/compose/Reasons.h"
#include "core/store/Tree.h"

namespace matwright {

// A class that was composed, or what stood in the way.
struct ComposeReport {
  const Knowledge& knowledge;
  const ClassWishes& wishes;
  std::span<const Person> roster;
  Date day;
  const ComposeResult& result;
  std::span<const MovementId> unlike; // as for composed()
  bool explained = false;             // say why each step was chosen
};

// What `compose --json` prints; described in app/console/OUTPUT.md.
Tree composeTree(const ComposeReport& report);

// The same for people to read.
std::string composeText(const ComposeReport& report);

// Why there is no class, a sentence each. Empty for a composed one.
std::vector<std::string> obstacleTexts(const ComposeReport& report);

} // namespace matwright
