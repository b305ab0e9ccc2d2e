// The files of the project as texts, and what the checks need to know of a text.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace matwright::architecture {

struct SourceFile {
  std::string path; // from the source root
  std::string text;
};

// All text files below `root`, ordered by path; build folders, caches, pictures and what git keeps are left out.
std::vector<SourceFile> readTree(const std::filesystem::path& root);

bool isCpp(std::string_view path);   // a header or a source
bool isCMake(std::string_view path); // a CMakeLists.txt

struct Include {
  std::string target;
  int line = 0;
  bool quoted = false; // "..." and not <...>
};

std::vector<Include> includesOf(std::string_view text);

// A call of matwright_room(): "core/plan" with the rooms it links.
struct LinkedRoom {
  std::string room;
  std::vector<std::string> depends;
};

std::vector<LinkedRoom> linkedRoomsOf(std::string_view cmake);

int countLines(std::string_view text);

} // namespace matwright::architecture
