// Red flags and stop signs as a text to read and to print.
#pragma once

#include "core/knowledge/Knowledge.h"

#include <QString>
#include <span>

namespace matwright {

QString redFlagTitle();
// In the classes of textStyleOf(), in ui/paper. What must be acted on soonest comes first; within one urgency first
// what belongs to a condition that somebody of `inClass` has, which is said, but not of whom.
QString redFlagHtml(const Knowledge& knowledge, std::span<const Person> inClass);

} // namespace matwright
