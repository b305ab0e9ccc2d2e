// What is said of a handle while a pose is changed by it.
#pragma once

#include "core/figure/Handle.h"

#include <QString>

namespace matwright {

bool isFar(Handle handle); // of the limb on the other side

// Which keys turn what, and how far it is turned.
QString handleHint(Handle handle, const Pose& pose);
// That joints go no further.
QString limitHint(EnumSet<Joint> atLimit, const Pose& pose);
// What rests of the limb, and so is put back on the floor wherever the handle is drawn to; empty for none.
QString heldHint(Handle handle, const Pose& pose);

} // namespace matwright
