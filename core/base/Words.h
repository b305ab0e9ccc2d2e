// The words by which enumerations are written in files. A closed enumeration gives its list once:
//
//   template <> struct Words<Side> { static constexpr auto list = wordList("left", "right"); };
//
// in the order of its values, which run from 0 without gaps.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace matwright {

template <class... Text> constexpr std::array<std::string_view, sizeof...(Text)> wordList(Text... text) {
  return {std::string_view{text}...};
}

template <class Enum> struct Words;

// How many values the enumeration has.
template <class Enum> constexpr std::size_t kWordCount = Words<Enum>::list.size();

// The word for a value; the value must be one of the enumeration's.
template <class Enum> constexpr std::string_view word(Enum value) {
  return Words<Enum>::list[static_cast<std::size_t>(value)];
}

// The value for a word; nothing when no value has that word.
template <class Enum> constexpr std::optional<Enum> fromWord(std::string_view text) {
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    if (Words<Enum>::list[i] == text)
      return static_cast<Enum>(i);
  return std::nullopt;
}

} // namespace matwright
