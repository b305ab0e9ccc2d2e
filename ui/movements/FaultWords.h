#pragma once

#include "core/knowledge/Faults.h"

#include <QString>

namespace matwright {

// One sentence on a fault of a movement, to whoever writes it. `all` names what it is about.
QString wordsFor(const Fault& fault, const Knowledge& all);

} // namespace matwright
