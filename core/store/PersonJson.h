#pragma once

#include "core/people/Person.h"
#include "core/store/Kept.h"

namespace matwright {

// From the tree that openTree gave; what is wrong stands in the reading.
Person readPersonTree(const Json& tree, Reading& reading);

} // namespace matwright
