#pragma once

#include "core/order/OrderProblem.h"

#include <string>
#include <string_view>

namespace matwright {

struct SopInstance {
  std::string name; // empty where the text names none
  OrderProblem problem;
};

// Reads a sequential ordering problem as the libraries TSPLIB (a header of keywords, EDGE_WEIGHT_SECTION, the
// dimension, the full matrix) and SOPLIB (the dimension, the full matrix) publish them. The first node is first in
// every order and the last is last. Anything that does not fit is refused; the error's `path` is "/line/12".
Result<SopInstance> readSop(std::string_view text, const std::string& file);

} // namespace matwright
