#pragma once

#include "ui/document/PlanDocument.h"

#include <QString>
#include <optional>
#include <vector>

namespace matwright {

// A caution, or a remark, as one row.
struct CautionRow {
  QString key;                // the same while the same thing is found again
  std::optional<Level> level; // none: a remark
  std::optional<StepId> step; // none: about the class
  std::size_t index = 0;      // in the cautions, or the remarks, of the evaluation
  QString title, body, instead;
};

struct CautionGroup {
  QString key, title;
  std::optional<Level> level;
  std::vector<CautionRow> rows;
};

// What the document is seen for: one group a level, strongest first, then the remarks; groups without rows are left
// out. Remarks are about nobody, and are left out while the class is not seen for everybody.
std::vector<CautionGroup> cautionGroups(const PlanDocument& document);

// The whole reason of a row, to be read in full.
QString wholeReason(const PlanDocument& document, const CautionRow& row);

} // namespace matwright
