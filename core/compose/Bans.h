#pragma once

#include "core/compose/Offer.h"

namespace matwright {

// What is no longer to be chosen because of the `leave out` cautions that only the whole class shows (a running sum,
// two movements too close together) and that what was kept did not have. For each of them one choice that has a part in
// it, in this dose and in larger ones: rather one that is not to be there in any case than one that is, and of those
// rather one that can be done in several ways. Empty where nothing that was chosen has a part in it.
std::vector<Ban> bansAfter(const Knowledge& knowledge, const ClassWishes& wishes, const Group& group,
                           const ClassPlan& kept, const ClassPlan& plan);

} // namespace matwright
