#pragma once

#include "core/order/Groundwork.h"

namespace matwright {

// One price a place, so that no way costs less than the difference from the price where it leads to the price where it
// begins (way(from, to) >= price[from] - price[to]). What ways cost beyond that difference is counted along an order;
// the differences add up to what the items alone decide. Of all such prices those that let the items alone decide the
// most: the dual of the cheapest flow from where items end to where items begin.
std::vector<OrderCost> placePrices(const Groundwork& ground);

} // namespace matwright
