#pragma once

#include <functional>
#include <vector>

namespace matwright {

// The items 0, 1, 2 ... in another order: those that need not move, as many as can be, with all that are fixed. By
// item. The fixed ones must come in their own order.
std::vector<char> stayingIn(const std::vector<int>& order, const std::vector<char>& fixed);

// An order nearer to 0, 1, 2 ... that `isAsGood` says is no worse: one item at a time goes to where fewer pairs are
// turned round.
std::vector<int> nearer(std::vector<int> order, const std::function<bool(const std::vector<int>&)>& isAsGood);

} // namespace matwright
