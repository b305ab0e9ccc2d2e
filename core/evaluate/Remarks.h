#pragma once

#include "core/evaluate/Evaluation.h"

namespace matwright {

// What is worth a look in a class, from its schedule and balance.
std::vector<Remark> remarksOn(const ClassPlan& plan, const Schedule& schedule, const Balance& balance);

} // namespace matwright
