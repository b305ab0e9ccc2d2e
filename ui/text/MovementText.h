// The words for what a movement is made of, where it is written.
#pragma once

#include "core/movement/Movement.h"

#include <QString>

namespace matwright {

QString text(Prop prop);         // "soft ball"
QString text(DoseUnit unit);     // "repetitions"
QString text(Effort effort);     // "moderate"
QString listText(PropSet props); // "ring, band"; empty for none

} // namespace matwright
