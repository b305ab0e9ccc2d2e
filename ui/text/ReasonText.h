// What another movement in the place of a composed step would cost, in words.
#pragma once

#include "core/compose/Reasons.h"

#include <QString>

namespace matwright {

// "The best of 12 others in its place: Swan. The class would cost 14 s more with it (moving about 9 s, ...)."; for a
// step that was kept, that.
QString comparisonText(const Reasons& reasons, const Knowledge& knowledge);

} // namespace matwright
