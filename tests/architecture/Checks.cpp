#include "tests/architecture/Checks.h"

#include <algorithm>

namespace matwright::architecture {
namespace {

bool isProduct(std::string_view path) {
  return path.starts_with("core/") || path.starts_with("ui/") || path.starts_with("app/");
}

bool isSource(const SourceFile& file) {
  return isCpp(file.path) && (isProduct(file.path) || file.path.starts_with("tests/"));
}

std::string at(const SourceFile& file, const Include& include) {
  return file.path + ":" + std::to_string(include.line) + ": ";
}

} // namespace

Faults brokenArrows(const RoomTable& table, const std::vector<SourceFile>& files) {
  Faults faults;
  for (const SourceFile& file : files) {
    if (!isSource(file))
      continue;
    const std::string from = table.roomOf(file.path);
    if (from.empty()) {
      faults.push_back(file.path + ": stands in no room");
      continue;
    }
    for (const Include& include : includesOf(file.text)) {
      if (!include.quoted || include.target.ends_with(".moc"))
        continue;
      const std::string to = table.roomOf(include.target);
      if (to.empty())
        faults.push_back(at(file, include) + include.target + " is not in a room, or not written from the source root");
      else if (!table.mayInclude(from, to))
        faults.push_back(at(file, include) + from + " -> " + to + " (" + include.target + ") is no arrow of the table");
    }
  }
  return faults;
}

Faults strangeHeaders(const std::vector<Row>& headers, const RoomTable& table, const std::vector<SourceFile>& files) {
  Faults faults;
  for (const SourceFile& file : files) {
    if (!isSource(file))
      continue;
    const std::string room = table.roomOf(file.path);
    for (const Include& include : includesOf(file.text)) {
      const Row* row = nullptr;
      for (const Row& candidate : headers)
        if (fits(candidate.name, include.target) && (!row || candidate.name.size() > row->name.size()))
          row = &candidate;
      if (include.quoted || !row)
        continue;
      const auto admits = [&room](const std::string& pattern) { return fits(pattern, room); };
      if (std::none_of(row->words.begin(), row->words.end(), admits))
        faults.push_back(at(file, include) + "<" + include.target + "> is not for " + room);
    }
  }
  return faults;
}

Faults brokenLinks(const RoomTable& table, const std::vector<SourceFile>& files) {
  Faults faults;
  for (const SourceFile& file : files) {
    if (!isCMake(file.path) || !isProduct(file.path))
      continue;
    for (const LinkedRoom& linked : linkedRoomsOf(file.text)) {
      if (linked.room + "/CMakeLists.txt" != file.path)
        faults.push_back(file.path + ": declares " + linked.room);
      for (const std::string& target : linked.depends)
        if (!table.mayInclude(linked.room, target))
          faults.push_back(file.path + ": " + linked.room + " -> " + target + " is no arrow of the table");
    }
  }
  return faults;
}

Faults missingLinks(const RoomTable& table, const std::vector<SourceFile>& files) {
  std::vector<Row> linked;
  for (const SourceFile& file : files)
    if (isCMake(file.path) && isProduct(file.path))
      for (const LinkedRoom& room : linkedRoomsOf(file.text))
        linked.push_back({room.room, room.depends});
  const RoomTable links(linked);
  std::set<std::string> faults;
  for (const SourceFile& file : files) {
    const std::string from = table.roomOf(file.path);
    if (!isSource(file) || !links.arrows().contains(from))
      continue;
    for (const Include& include : includesOf(file.text)) {
      const std::string to = table.roomOf(include.target);
      if (include.quoted && !to.empty() && !links.mayInclude(from, to))
        faults.insert(from + "/CMakeLists.txt: does not link " + to + ", which " + file.path + " includes from");
    }
  }
  return {faults.begin(), faults.end()};
}

Faults unmatchedRooms(const RoomTable& table, const std::set<std::string>& folders) {
  Faults faults;
  for (const std::string& folder : folders)
    if (isProduct(folder) && !table.arrows().contains(folder))
      faults.push_back(folder + " has no row in the table");
  for (const auto& entry : table.arrows())
    if (isProduct(entry.first) && !folders.contains(entry.first))
      faults.push_back(entry.first + " has a row in the table and no folder");
  return faults;
}

Faults longFiles(const std::vector<Row>& exceptions, const std::vector<SourceFile>& files) {
  std::set<std::string> excepted, needed;
  Faults faults;
  for (const Row& row : exceptions) {
    excepted.insert(row.name);
    if (row.words.empty())
      faults.push_back(row.name + ": excepted without a reason");
  }
  for (const SourceFile& file : files) {
    const int lines = countLines(file.text);
    if (!isCpp(file.path) || !isProduct(file.path) || lines <= kLongestFile)
      continue;
    if (excepted.contains(file.path))
      needed.insert(file.path);
    else
      faults.push_back(file.path + ": " + std::to_string(lines) + " lines");
  }
  for (const std::string& path : excepted)
    if (!needed.contains(path))
      faults.push_back(path + ": excepted, and not too long");
  return faults;
}

Faults stopWords(const std::vector<std::string>& words, const std::vector<SourceFile>& files) {
  Faults faults;
  for (const SourceFile& file : files)
    for (const std::string& word : words)
      if (const std::size_t place = file.text.find(word); place != std::string::npos)
        faults.push_back(file.path + ":" + std::to_string(countLines(file.text.substr(0, place + 1))) + ": " + word);
  return faults;
}

Faults strayNames(const std::set<std::string>& expected, const std::set<std::string>& found) {
  Faults faults;
  for (const std::string& name : found)
    if (!expected.contains(name) && !name.starts_with('.') && !name.starts_with("build"))
      faults.push_back(name + " does not belong there");
  for (const std::string& name : expected)
    if (!found.contains(name))
      faults.push_back(name + " is missing");
  return faults;
}

} // namespace matwright::architecture
