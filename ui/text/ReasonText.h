#pragma once

#include "core/compose/ComposeReasons.h"
#include "ui/text/ComposeText.h"

namespace matwright {

// One thing that speaks for a step of a composed class: "begins where the step before ends".
QString text(const ComposeReason& reason, const ComposeNames& names);

} // namespace matwright
