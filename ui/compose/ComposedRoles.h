#pragma once

#include <Qt>

namespace matwright {

// What a row of a composed class carries besides its name. A heading carries its section alone.
enum ComposedRole {
  kStepRole = Qt::UserRole + 1,
  kSecondRole,    // option and dose
  kLengthRole,    // "0:50"
  kStepLevelRole, // of the strongest caution; invalid when none was raised
  kOpenRole,      // true: stays in any case
  kSectionRole,
};

} // namespace matwright
