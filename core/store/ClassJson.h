#pragma once

#include "core/plan/ClassPlan.h"
#include "core/store/Kept.h"

namespace matwright {

// From the tree that openTree gave; what is wrong stands in the reading.
ClassPlan readClassTree(const Json& tree, Reading& reading);

} // namespace matwright
