// Conditions, sources and rules as entries of their lists in a file. What is written reads back as the same value, but
// for Threshold::usual: a file knows one amount.
#pragma once

#include "core/screening/Rule.h"
#include "core/store/JsonText.h"

namespace matwright {

Json conditionJson(const Condition& condition);
Json sourceJson(const Source& source);
Json ruleJson(const Rule& rule);

} // namespace matwright
