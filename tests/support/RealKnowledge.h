#pragma once

#include "core/store/Store.h"

#include <string>

namespace matwright::test {

// The knowledge that comes with the program, read once; or all that is wrong with it.
inline const Result<Knowledge, std::vector<Error>>& readRealKnowledge() {
  static const auto knowledge = readKnowledge(MATWRIGHT_SOURCE_DIR "/resources");
  return knowledge;
}

// One line an error; empty when there is none.
inline std::string whatIsWrongWithRealKnowledge() {
  std::string lines;
  if (!readRealKnowledge())
    for (const Error& error : readRealKnowledge().error())
      lines += error.file + error.path + ": expected " + error.expected + ", found " + error.found + '\n';
  return lines;
}

// Only where readRealKnowledge() succeeded.
inline const Knowledge& realKnowledge() { return readRealKnowledge().value(); }

} // namespace matwright::test
