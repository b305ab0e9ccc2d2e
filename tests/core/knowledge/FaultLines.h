// Faults as short lines, for tests to compare.
#pragma once

#include "core/knowledge/Faults.h"

#include <string>
#include <vector>

namespace matwright {

// "small shown-only features: rot", "tooFewWords setUp".
inline std::string lineOf(const Fault& fault, const Movement* movement = nullptr) {
  std::string line;
  if (fault.option)
    line += (movement ? movement->options[*fault.option].id.value : std::to_string(*fault.option)) + ' ';
  line += std::string(word(fault.kind)) + ' ' + std::string(word(fault.field));
  if (fault.place)
    line += '/' + std::to_string(*fault.place);
  if (fault.within)
    line += '/' + std::to_string(*fault.within);
  std::string names = fault.what;
  fault.features.forEach([&](Feature feature) { names += (names.empty() ? "" : " ") + std::string(word(feature)); });
  if (fault.joint)
    names += word(*fault.joint);
  if (!names.empty())
    line += ": " + names;
  return line;
}

inline std::vector<std::string> linesOf(const std::vector<Fault>& faults, const Movement* movement = nullptr) {
  std::vector<std::string> lines;
  for (const Fault& fault : faults)
    lines.push_back(lineOf(fault, movement));
  return lines;
}

} // namespace matwright
