// JSON as text: reading with limits, and the one canonical form that is written.
#pragma once

#include "core/base/Result.h"

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

namespace matwright {

using Json = nlohmann::json;

inline constexpr std::size_t kDeepestNesting = 64;

// The tree of the text. Errors of syntax (which includes text that is not UTF-8, numbers that are not finite and
// brackets nested deeper than `kDeepestNesting`) have their line and column, counted from 1 in characters, as `path`. A
// key that stands twice in one object is a duplicateId at its pointer.
Result<Json> parseJson(std::string_view text, const std::string& file);

// Keys sorted by their bytes, two spaces a level, shortest numbers that read back as the same value, "\n" at the end.
std::string canonicalText(const Json& tree);

// The pointer to a key or index of the thing at `pointer` (RFC 6901).
std::string pointerTo(const std::string& pointer, std::string_view key);
std::string pointerTo(const std::string& pointer, std::size_t index);

// A short piece of what was found, for Error::found: valid UTF-8 without control characters.
std::string extractOf(std::string_view text);
std::string extractOfValue(const Json& value);

// The shortest digits that read back as the same number.
std::string numberText(double value);

} // namespace matwright
