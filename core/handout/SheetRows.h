#pragma once

#include "core/handout/PersonSheet.h"

namespace matwright {

// The rows of a person's sheet. `active` are the rules that speak for her alone, in the order of activeRules() for a
// list with nobody else in it. `cautions` are hers in the class, with `plan`; none without a class.
std::vector<SheetRow> sheetRows(const Knowledge& knowledge, const Person& person, std::span<const ActiveRule> active,
                                Date day, const ClassPlan& plan, const std::vector<const Caution*>& cautions);

std::string conditionName(const RuleBook& book, const ConditionId& id); // the id of one that is not on the list

} // namespace matwright
