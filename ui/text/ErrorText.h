#pragma once

#include "core/base/Result.h"
#include "core/edit/Edit.h"

#include <QString>

namespace matwright {

// "classes/monday.json: /sections/0/steps/4/tempo: expected ..., found ..."
QString text(const Error& error);
QString text(Refusal refusal);

} // namespace matwright
