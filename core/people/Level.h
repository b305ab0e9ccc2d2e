#pragma once

#include "core/base/Words.h"

namespace matwright {

// How strong a caution is, weak to strong. No level, and no caution, means "safe".
enum class Level { watch, adapt, askFirst, leaveOut };
template <> struct Words<Level> { static constexpr auto list = wordList("watch", "adapt", "ask-first", "leave-out"); };

} // namespace matwright
