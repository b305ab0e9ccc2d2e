#pragma once

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

namespace matwright::test {

// The cases of a corpus that keeps one folder a case, in the order of their names.
inline std::vector<std::string> caseNames(const std::filesystem::path& corpus) {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(corpus))
    names.push_back(entry.path().filename().string());
  std::sort(names.begin(), names.end());
  return names;
}

} // namespace matwright::test
