// A class as a table of its steps against its people: where in it whom a caution concerns.
#pragma once

#include "core/evaluate/Evaluation.h"

namespace matwright {

struct GroupCell {
  std::optional<Level> strongest; // nothing when no caution was raised, which does not mean that it is safe
  int cautions = 0;
  bool varied = false; // the person does the step in a way of her own
  friend bool operator==(const GroupCell&, const GroupCell&) = default;
};

struct GroupRow {
  std::optional<StepId> step; // none: the class as a whole
  std::size_t section = 0;    // that the step is in
  GroupCell everybody;        // what is about nobody in particular
  std::vector<GroupCell> of;  // by person
  friend bool operator==(const GroupRow&, const GroupRow&) = default;
};

struct GroupTable {
  std::vector<PersonId> people; // as Evaluation::people
  std::vector<GroupRow> rows;   // the class as a whole first, then one a step, in order
  GroupRow sums;                // of all rows; has no step
  friend bool operator==(const GroupTable&, const GroupTable&) = default;
};

GroupTable groupTableOf(const ClassPlan& plan, const Evaluation& evaluation);

} // namespace matwright
