#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace matwright::architecture {

// Lines of the form "name: word word ...". A # begins a comment.
struct Row {
  std::string name;
  std::vector<std::string> words;
};
// A line that has no colon or no name becomes a fault.
std::vector<Row> readRows(std::string_view text, std::vector<std::string>& faults);

// Stars in the pattern stand for any characters, slashes too.
bool fits(std::string_view pattern, std::string_view name);

// Which room may include from which.
class RoomTable {
public:
  explicit RoomTable(const std::vector<Row>& rows);

  // What is wrong with the table itself: a room named twice, an arrow to a room that has no row, arrows in a circle.
  const std::vector<std::string>& faults() const { return faults_; }
  const std::map<std::string, std::set<std::string>>& arrows() const { return arrows_; }

  // The row of a file or folder, given from the source root: "core/plan" for "core/plan/ClassPlan.h". Folders of tests
  // that mirror a room have that room's path behind "tests/". Empty when it stands in no room.
  std::string roomOf(std::string_view path) const;
  bool mayInclude(const std::string& from, const std::string& to) const;

private:
  void follow(const std::string& room, std::set<std::string>& reached) const;
  std::set<std::string> reachedFrom(const std::string& room) const;

  std::map<std::string, std::set<std::string>> arrows_;
  std::vector<std::string> faults_;
};

} // namespace matwright::architecture
