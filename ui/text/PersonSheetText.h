// A person's sheet in sentences, for her and her clinician.
#pragma once

#include "core/handout/PersonSheet.h"

#include <QString>

namespace matwright {

QString personSheetTitle(const PersonSheet& sheet);
// In the classes of textStyleOf(), in ui/paper.
QString personSheetHtml(const PersonSheet& sheet);
// Under every page.
QString personSheetFoot(const PersonSheet& sheet);

} // namespace matwright
