#pragma once

#include "core/order/OrderProblem.h"
#include "core/tidy/TidyItems.h"
#include "core/transition/TransitionGraph.h"

namespace matwright {

// One thing that an order costs, in milliseconds, on its own and for any order of the items.
struct TidyPart {
  TidyReason reason{};
  OrderProblem problem;
  OrderCost costOf(const std::vector<int>& order) const;
};

// The parts that the wishes ask for; moving comes first and is always there. Ways that are not charted are a part
// without a reason of their own: withOthers.
std::vector<TidyPart> partsOf(const ClassPlan& plan, const Schedule& schedule, const Ways& ways, const TidyItems& items,
                              const TidyWishes& wishes);

// All parts at once, with sections, pins and precedences; those that are to be mended too, if wanted.
OrderProblem problemOf(const std::vector<TidyPart>& parts, const TidyItems& items, bool mending);

} // namespace matwright
