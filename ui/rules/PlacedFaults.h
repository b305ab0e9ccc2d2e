// What is wrong with a rule, a condition or a source of one's own, told by the field where it is mended: what is not
// right in itself, then what else keeps it from being written to the file of a studio.
#pragma once

#include "core/knowledge/Faults.h"
#include "core/knowledge/OwnKnowledge.h"
#include "ui/controls/FaultMarks.h"

#include <map>

namespace matwright {

struct PlacedFault : FaultLine {
  Field field{};
  friend bool operator==(const PlacedFault&, const PlacedFault&) = default;
};

// The thing is one of `own`, or as it should become. Hints come last.
std::vector<PlacedFault> placedFaults(const Rule& rule, const OwnKnowledge& own, const Knowledge& builtIn);
std::vector<PlacedFault> placedFaults(const Condition& condition, const OwnKnowledge& own, const Knowledge& builtIn);
std::vector<PlacedFault> placedFaults(const Source& source, const OwnKnowledge& own, const Knowledge& builtIn);

// By the number of the field, for FaultMarks.
std::multimap<int, FaultLine> byField(const std::vector<PlacedFault>& faults);
// With the name of the field before them, for FaultList.
std::vector<FaultLine> withFieldNames(const std::vector<PlacedFault>& faults);

} // namespace matwright
