#pragma once

#include <functional>
#include <string>
#include <string_view>

namespace matwright {

// The most that a name or a note may hold, in bytes.
inline constexpr std::size_t kLongestName = 120;
inline constexpr std::size_t kLongestNote = 4000;

// Words separated by white space; a dash or sign alone is no word.
int countWords(std::string_view text);

// True for "single-leg-stretch": lower-case letters, digits and single hyphens, starting with a letter.
bool isIdText(std::string_view text);

// `text` made into an id: lower case, anything else than letters and digits becomes one hyphen.
// May be empty when nothing is left.
std::string idTextFrom(std::string_view text);

// `stem` when it is not taken, else "stem-2", "stem-3" and so on, the first that is not.
std::string untakenId(const std::string& stem, const std::function<bool(const std::string&)>& taken);

} // namespace matwright
