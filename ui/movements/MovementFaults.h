#pragma once

#include "core/knowledge/OwnKnowledge.h"
#include "ui/movements/MovementPage.h"

namespace matwright {

// What keeps a movement from being written to the file of a studio, told by the field where it is mended. `movement` is
// one of `own`, or as it should become.
std::vector<FieldFault> faultsOf(const Movement& movement, const OwnKnowledge& own, const Knowledge& builtIn);

QString text(MovementField field);

} // namespace matwright
