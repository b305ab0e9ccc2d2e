#include "tests/architecture/RoomTable.h"

#include <algorithm>
#include <sstream>

namespace matwright::architecture {
namespace {

constexpr std::string_view kTests = "tests/";
constexpr const char* kSupport = "tests/support";

bool isMirror(std::string_view room) {
  for (const std::string_view mirrored : {"tests/core/", "tests/ui/", "tests/app/"})
    if (room.starts_with(mirrored))
      return true;
  return false;
}

// The first `count` parts of a path; empty when there are fewer, not counting the file itself.
std::string firstParts(std::string_view path, int count) {
  std::size_t end = 0;
  for (int part = 0; part < count; ++part) {
    end = path.find('/', part == 0 ? 0 : end + 1);
    if (end == std::string_view::npos)
      return {};
  }
  return std::string(path.substr(0, end));
}

} // namespace

std::vector<Row> readRows(std::string_view text, std::vector<std::string>& faults) {
  std::vector<Row> rows;
  std::istringstream lines{std::string(text)};
  for (std::string line; std::getline(lines, line);) {
    line.resize(std::min(line.size(), line.find('#')));
    if (line.find_first_not_of(" \t\r") == std::string::npos)
      continue;
    const std::size_t colon = line.find(':');
    std::istringstream before{line.substr(0, colon)};
    Row row;
    if (colon == std::string::npos || !(before >> row.name)) {
      faults.push_back("not a row: " + line);
      continue;
    }
    std::istringstream after{line.substr(colon + 1)};
    for (std::string word; after >> word;)
      row.words.push_back(word);
    rows.push_back(std::move(row));
  }
  return rows;
}

bool fits(std::string_view pattern, std::string_view name) {
  if (pattern.empty())
    return name.empty();
  if (pattern.front() != '*')
    return !name.empty() && pattern.front() == name.front() && fits(pattern.substr(1), name.substr(1));
  for (std::size_t skipped = 0; skipped <= name.size(); ++skipped)
    if (fits(pattern.substr(1), name.substr(skipped)))
      return true;
  return false;
}

RoomTable::RoomTable(const std::vector<Row>& rows) {
  for (const Row& row : rows)
    if (!arrows_.emplace(row.name, std::set<std::string>{}).second)
      faults_.push_back(row.name + " has two rows");
  for (const Row& row : rows)
    for (const std::string& pattern : row.words) {
      bool found = false;
      for (const auto& entry : arrows_)
        if (fits(pattern, entry.first)) {
          found = true;
          if (entry.first != row.name)
            arrows_[row.name].insert(entry.first);
        }
      if (!found)
        faults_.push_back(row.name + " -> " + pattern + ": no such room");
    }
  for (const auto& [room, targets] : arrows_) {
    std::set<std::string> reached;
    for (const std::string& target : targets)
      follow(target, reached);
    if (reached.contains(room))
      faults_.push_back(room + " comes back to itself");
  }
}

std::string RoomTable::roomOf(std::string_view path) const {
  if (path.starts_with(kTests)) {
    std::string mirror = firstParts(path, 3);
    if (isMirror(mirror) && arrows_.contains(mirror.substr(kTests.size())))
      return mirror;
  }
  std::string room = firstParts(path, 2);
  return arrows_.contains(room) ? room : std::string();
}

bool RoomTable::mayInclude(const std::string& from, const std::string& to) const {
  return from == to || reachedFrom(from).contains(to);
}

void RoomTable::follow(const std::string& room, std::set<std::string>& reached) const {
  if (!reached.insert(room).second)
    return;
  if (const auto row = arrows_.find(room); row != arrows_.end())
    for (const std::string& target : row->second)
      follow(target, reached);
}

std::set<std::string> RoomTable::reachedFrom(const std::string& room) const {
  std::set<std::string> reached;
  follow(room, reached);
  if (isMirror(room)) {
    follow(room.substr(kTests.size()), reached);
    reached.insert(kSupport); // the folder alone: what it stands on is not lent to those who use it
  }
  return reached;
}

} // namespace matwright::architecture
