#pragma once

#include "core/store/Kept.h"

namespace matwright {

// From the tree that openTree gave; what is wrong stands in the reading.
Studio readStudioTree(const Json& tree, Reading& reading);

} // namespace matwright
