#pragma once

#include <string>
#include <string_view>

namespace matwright {

// The text with the whole words left and right exchanged, each in the case it is written in ("Left" gives "Right").
// Parts of longer words stay as they are.
std::string mirroredText(std::string_view text);

} // namespace matwright
