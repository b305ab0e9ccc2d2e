#pragma once

#include "core/knowledge/OwnKnowledge.h"
#include "ui/movements/MovementPage.h"

namespace matwright {

// What is wrong with a movement, told by the field where it is mended: what is not right in itself, then what else
// keeps it from being written to the file of a studio. `movement` is one of `own`, or as it should become.
std::vector<FieldFault> faultsOf(const Movement& movement, const OwnKnowledge& own, const Knowledge& builtIn);

QString text(MovementField field);

} // namespace matwright
