#pragma once

#include "core/base/Result.h"
#include "core/base/Words.h"

#include <string>

namespace matwright {

template <> struct Words<ErrorCode> {
  static constexpr auto list = wordList("cannotRead", "tooLarge", "notJson", "wrongFormat", "newerVersion",
                                        "missingKey", "unknownKey", "wrongType", "outOfRange", "unknownWord",
                                        "duplicateId", "unknownReference", "cannotWrite", "changedOnDisk");
};

// "missingKey /sections/0/name": what a failed expectation shows.
inline std::string codeAndPath(const Error& error) { return std::string(word(error.code)) + ' ' + error.path; }

} // namespace matwright
