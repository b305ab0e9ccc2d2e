// The checks on Matwright itself. The tables they use lie beside this file.
#include "tests/architecture/Checks.h"

#include <fstream>
#include <gmock/gmock.h>
#include <iterator>
#include <sstream>

namespace matwright::architecture {
namespace {

namespace fs = std::filesystem;
using testing::Contains;
using testing::Field;
using testing::IsEmpty;

const fs::path kRoot = MATWRIGHT_SOURCE_DIR;
const std::string kTables = "tests/architecture/";

std::string contentOf(const std::string& path) {
  std::ifstream stream(kRoot / path, std::ios::binary);
  EXPECT_TRUE(stream.is_open()) << path;
  return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<Row> rowsOf(const std::string& name) {
  Faults faults;
  auto rows = readRows(contentOf(kTables + name), faults);
  EXPECT_THAT(faults, IsEmpty()) << name;
  return rows;
}

std::set<std::string> namesIn(const std::string& folder) {
  std::set<std::string> names;
  for (const auto& entry : fs::directory_iterator(kRoot / folder))
    names.insert(entry.path().filename().string());
  return names;
}

class Project : public testing::Test {
protected:
  static void SetUpTestSuite() { files_ = readTree(kRoot); }
  static void TearDownTestSuite() { files_ = {}; }

  inline static std::vector<SourceFile> files_;
  const RoomTable table_{rowsOf("rooms.txt")};
};

// A check that looks at nothing finds nothing wrong: these files stand for those of every kind.
TEST_F(Project, IsReadInFull) {
  for (const char* path : {"CMakeLists.txt", ".clang-format", "core/plan/ClassPlan.h", "core/plan/CMakeLists.txt",
                           "ui/text/ErrorText.cpp", "resources/FORMAT.md", "tests/architecture/Checks.cpp"})
    EXPECT_THAT(files_, Contains(Field(&SourceFile::path, path)));
}

TEST_F(Project, HasATableWithoutFaults) { EXPECT_THAT(table_.faults(), IsEmpty()); }

TEST_F(Project, IncludesAlongTheArrows) { EXPECT_THAT(brokenArrows(table_, files_), IsEmpty()); }

TEST_F(Project, LinksAlongTheArrows) { EXPECT_THAT(brokenLinks(table_, files_), IsEmpty()); }

TEST_F(Project, LinksWhatItIncludes) { EXPECT_THAT(missingLinks(table_, files_), IsEmpty()); }

TEST_F(Project, KeepsHeadersOfOthersWhereTheyBelong) {
  EXPECT_THAT(strangeHeaders(rowsOf("headers.txt"), table_, files_), IsEmpty());
}

TEST_F(Project, HasARowForEachRoomAndARoomForEachRow) {
  std::set<std::string> folders;
  for (const std::string top : {"core", "ui", "app"})
    for (const std::string& name : namesIn(top))
      if (fs::is_directory(kRoot / top / name))
        folders.insert(top + "/" + name);
  EXPECT_THAT(unmatchedRooms(table_, folders), IsEmpty());
}

TEST_F(Project, HasNoLongFiles) { EXPECT_THAT(longFiles(rowsOf("long-files.txt"), files_), IsEmpty()); }

TEST_F(Project, HasNoStopWords) {
  std::vector<std::string> words;
  std::istringstream lines{contentOf(kTables + "stopwords.txt")};
  for (std::string line; std::getline(lines, line);)
    if (!line.empty() && !line.starts_with('#'))
      words.push_back(line);
  ASSERT_FALSE(words.empty());
  std::erase_if(files_, [](const SourceFile& file) { return file.path == kTables + "stopwords.txt"; });
  EXPECT_THAT(stopWords(words, files_), IsEmpty());
}

TEST_F(Project, HasNothingElseAtItsTop) {
  EXPECT_THAT(strayNames({"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "app", "core", "ui",
                          "resources", "tests", "packaging"},
                         namesIn(".")),
              IsEmpty());
}

} // namespace
} // namespace matwright::architecture
