#pragma once

#include "core/plan/ClassWishes.h"

#include <QString>
#include <optional>
#include <vector>

namespace matwright {

// A class in the folder of a studio.
struct ClassOnFile {
  QString file;
  RecentClass recent;
  Date date; // its own, or the day it was last written
  friend bool operator==(const ClassOnFile&, const ClassOnFile&) = default;
};

// The classes of a studio that have steps, the last one first; as many as can be wished to vary from. One file can be
// left out: that of the open class. What cannot be read is passed over, and of very many those written last are read.
std::vector<ClassOnFile> classesOnFile(const QString& studio, const QString& but);

} // namespace matwright
