#pragma once

#include "core/plan/ClassWishes.h"
#include "core/store/Kept.h"

namespace matwright {

// From the tree that openTree gave; what is wrong stands in the reading. Where nothing is, faultIn() finds nothing.
ClassWishes readWishesTree(const Json& tree, Reading& reading);

} // namespace matwright
