#include "tests/architecture/SourceFiles.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <regex>
#include <sstream>

namespace matwright::architecture {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t kLargest = 4u << 20; // bytes

bool isLeftOut(const fs::path& entry, bool atTop) {
  const std::string name = entry.filename().string();
  if (name == "__pycache__" || name == ".git" || name == ".cache")
    return true;
  return atTop && name.starts_with("build");
}

// "core_plan" is the target of "core/plan".
std::string roomOfTarget(std::string target) {
  if (const std::size_t under = target.find('_'); under != std::string::npos)
    target[under] = '/';
  return target;
}

} // namespace

std::vector<SourceFile> readTree(const fs::path& root) {
  std::vector<SourceFile> files;
  for (auto entry = fs::recursive_directory_iterator(root); entry != fs::recursive_directory_iterator(); ++entry) {
    if (isLeftOut(entry->path(), entry.depth() == 0)) {
      entry.disable_recursion_pending();
      continue;
    }
    if (!entry->is_regular_file() || entry->file_size() > kLargest)
      continue;
    std::ifstream stream(entry->path(), std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(stream), {}};
    if (text.find('\0') == std::string::npos)
      files.push_back({entry->path().lexically_relative(root).generic_string(), std::move(text)});
  }
  std::sort(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
  return files;
}

bool isCpp(std::string_view path) { return path.ends_with(".h") || path.ends_with(".cpp"); }
bool isCMake(std::string_view path) { return path.ends_with("/CMakeLists.txt"); }

std::vector<Include> includesOf(std::string_view text) {
  static const std::regex pattern(R"rx(^[ \t]*#[ \t]*include[ \t]*(["<])([^">]+)[">])rx");
  std::vector<Include> includes;
  std::istringstream lines{std::string(text)};
  int number = 0;
  for (std::string line; std::getline(lines, line);) {
    ++number;
    std::smatch match;
    if (line.find('#') != std::string::npos && std::regex_search(line, match, pattern))
      includes.push_back({match[2], number, match[1] == "\""});
  }
  return includes;
}

std::vector<LinkedRoom> linkedRoomsOf(std::string_view cmake) {
  std::vector<LinkedRoom> rooms;
  static const std::regex call(R"rx(matwright_room\(([^)]*)\))rx");
  const std::string text(cmake);
  for (std::sregex_iterator match(text.begin(), text.end(), call); match != std::sregex_iterator(); ++match) {
    std::istringstream words{(*match)[1].str()};
    LinkedRoom linked;
    words >> linked.room;
    linked.room = roomOfTarget(linked.room);
    std::string part;
    for (std::string word; words >> word;) {
      if (word == "SOURCES" || word == "DEPENDS" || word == "LINKS" || word == "QT")
        part = word;
      else if (part == "DEPENDS")
        linked.depends.push_back(roomOfTarget(word));
    }
    rooms.push_back(std::move(linked));
  }
  return rooms;
}

int countLines(std::string_view text) {
  const auto ends = std::count(text.begin(), text.end(), '\n');
  return static_cast<int>(ends) + (!text.empty() && text.back() != '\n' ? 1 : 0);
}

} // namespace matwright::architecture
