// The small knowledge folder in tests/data/knowledge, as it is and with one thing changed at a time.
#pragma once

#include "core/store/JsonText.h"
#include "core/store/Store.h"
#include "tests/core/store/ErrorWords.h"
#include "tests/core/store/TemporaryFolder.h"

#include <functional>
#include <gtest/gtest.h>

namespace matwright {

inline const std::filesystem::path kKnowledgeFolder =
    std::filesystem::path(MATWRIGHT_SOURCE_DIR) / "tests/data/knowledge";
inline const char* const kPositions = "positions/positions.json";
inline const char* const kChanges = "positions/changes.json";
inline const char* const kFaceUp = "catalogue/a-face-up.json";
inline const char* const kSideLying = "catalogue/b-side-lying.json";
inline const char* const kConditions = "screening/conditions.json";
inline const char* const kSources = "screening/sources.json";
inline const char* const kRules = "screening/rules.json";
inline const char* const kRedFlags = "screening/redflags.json";

inline const Knowledge& goodKnowledge() {
  static const Knowledge knowledge = [] {
    auto read = readKnowledge(kKnowledgeFolder);
    for (const Error& error : read ? std::vector<Error>{} : read.error())
      ADD_FAILURE() << error.file << ' ' << codeAndPath(error);
    return read ? std::move(*read) : Knowledge{};
  }();
  return knowledge;
}

// A copy of the folder that can be spoilt.
class Spoilt {
public:
  Spoilt() { std::filesystem::copy(kKnowledgeFolder, folder_.path(), std::filesystem::copy_options::recursive); }

  Spoilt& change(const char* file, const std::function<void(Json&)>& edit) {
    Json tree = Json::parse(bytesOf(folder_ / file));
    edit(tree);
    folder_.put(file, tree.dump());
    return *this;
  }
  Spoilt& set(const char* file, const char* pointer, Json value) {
    return change(file, [&](Json& tree) { tree[Json::json_pointer(pointer)] = std::move(value); });
  }
  const TemporaryFolder& folder() const { return folder_; }

  // "rules.json outOfRange /rules/0/when" for each error.
  std::vector<std::string> errors() const {
    const auto read = readKnowledge(folder_.path());
    std::vector<std::string> lines;
    for (const Error& error : read ? std::vector<Error>{} : read.error())
      lines.push_back(std::filesystem::path(error.file).filename().string() + ' ' + codeAndPath(error));
    return lines;
  }

private:
  TemporaryFolder folder_;
};

} // namespace matwright
