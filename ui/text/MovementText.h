// The words for what a movement is made of, where it is written.
#pragma once

#include "core/knowledge/Knowledge.h"

#include <QString>

namespace matwright {

QString text(Prop prop);         // "soft ball"
QString text(DoseUnit unit);     // "repetitions"
QString text(Effort effort);     // "moderate"
QString listText(PropSet props); // "ring, band"; empty for none
QString listText(const std::vector<Region>& regions);
QString listText(const std::vector<SpineAction>& actions);
QString listText(const Knowledge& knowledge, const std::vector<MovementId>& movements); // by name
// "Head down (easier): Keep the head on the mat. Takes away: head held off the mat."
QString optionText(const Option& option);

} // namespace matwright
