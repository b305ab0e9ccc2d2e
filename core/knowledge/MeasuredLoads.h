// What others measured or modelled of the low back in tasks that a class may hold. No number of ours stands here, and
// none of these is worked out from, or held against, our own: they are outputs of models that are driven by the
// activity of muscles, ours are moments of weight.
#pragma once

#include "core/movement/Movement.h"
#include "core/screening/Rule.h"

#include <optional>
#include <string>
#include <vector>

namespace matwright {

struct MeasuredValue {
  double value = 0;
  bool about = false;   // rounded where it was found
  Verification check{}; // how far this number was held against its source
  friend bool operator==(const MeasuredValue&, const MeasuredValue&) = default;
};

struct MeasuredTask {
  std::string id;
  std::string task;                         // "Curl-up, feet free"
  std::vector<MovementId> movements;        // of the catalogue, that are the same task or nearly so
  std::optional<MeasuredValue> moment;      // about the lumbar spine, newton metres
  std::optional<MeasuredValue> compression; // of the lumbar spine, newtons
  std::string finding;                      // in words, where no number is on file; else may be empty
  std::vector<SourceId> sources;            // never empty
  Verification check{};                     // of the finding, and of there being such a number
  friend bool operator==(const MeasuredTask&, const MeasuredTask&) = default;
};

struct MeasuredLoads {
  std::vector<MeasuredTask> tasks;
  std::vector<std::string> closing; // sentences that belong under any list of them
  friend bool operator==(const MeasuredLoads&, const MeasuredLoads&) = default;

  std::vector<const MeasuredTask*> of(const MovementId& movement) const;
};

} // namespace matwright
