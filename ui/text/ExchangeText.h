#pragma once

#include "core/base/Result.h"
#include "core/knowledge/Exchange.h"

#include <QString>
#include <vector>

namespace matwright {

// What came of an import: what was taken, what was here, what has another id now, and which thresholds stay.
QString importedText(const Merged& merged);
QString notImportedText(const std::vector<Error>& errors); // the first of them

// How many things of each kind: "2 rules, 1 source". Empty for nothing.
QString countedText(const OwnKnowledge& own);

} // namespace matwright
