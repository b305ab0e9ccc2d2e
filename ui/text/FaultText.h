#pragma once

#include "core/base/Result.h"
#include "core/knowledge/Faults.h"

#include <QString>

namespace matwright {

// One sentence on a fault, to whoever writes the thing that has it: "Too short: 8 words at least, 3 are there." Where
// it is told is left to the reader, but for the poses, the phases and the entries of a list. `all` names what it is
// about.
QString text(const Fault& fault, const Knowledge& all);

// What a file needs where it refuses something, without the place: "Needs 1 to 120 bytes; there is 0."
QString needText(const Error& refusal);

// For lists of faults: "hundred: head-down: effort: An effort of 7 ...".
QString line(const Fault& fault, const Movement& movement, const Knowledge& all);

} // namespace matwright
