// The words for poses: what turns, what rests, where it is taken hold of.
#pragma once

#include "core/figure/Handle.h"
#include "core/movement/Movement.h"

#include <QString>

namespace matwright {

QString text(View view);       // "from the side"
QString text(Contact contact); // "near hand", "seat"
QString text(WallContact contact);
QString text(Support support); // "seat of a chair"
QString text(Held held);
QString text(HeldAt at);         // "between the knees"
QString text(Handle handle);     // "near knee"
QString text(Joint joint);       // "near hip, bend"
QString directions(Joint joint); // which way + and - go, one sentence

// What a drawing shows, in sentences; `both` when the start pose stands behind the end pose.
QString figureDescription(const KeyPoses& poses, bool both);

QString degreesText(double degrees); // "12.5 degrees"

} // namespace matwright
