#include "core/store/Files.h"
#include "tests/core/store/TemporaryFolder.h"

#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace matwright {
namespace {

namespace fs = std::filesystem;
using testing::UnorderedElementsAre;

mode_t modeOf(const fs::path& file) {
  struct stat state {};
  return ::stat(file.c_str(), &state) == 0 ? state.st_mode & 07777 : 0;
}

// The mask of the process for the length of a test.
class Mask {
public:
  explicit Mask(mode_t mask) : old_(::umask(mask)) {}
  ~Mask() { ::umask(old_); }

private:
  mode_t old_;
};

// FNV-1a, 64 bits: the offset basis for the empty text, and values from the test vectors of its authors (Fowler, Noll,
// Vo; draft-eastlake-fnv; cited from memory).
TEST(Fingerprint, IsFnv1a) {
  EXPECT_EQ(fingerprintOf("").hash, 0xcbf29ce484222325u);
  EXPECT_EQ(fingerprintOf("a").hash, 0xaf63dc4c8601ec8cu);
  EXPECT_EQ(fingerprintOf("foobar").hash, 0x85944171f73967e8u);
  EXPECT_EQ(fingerprintOf("foobar").size, 6u);
}

TEST(ReadFile, GivesEveryByte) {
  const TemporaryFolder folder;
  const std::string bytes("a\0\r\n\xff z", 7);
  EXPECT_EQ(readFile(folder.put("a", bytes)), bytes);
  EXPECT_EQ(readFile(folder.put("empty", "")), "");
}

TEST(ReadFile, ReadsFilesWhoseSizeTheSystemDoesNotTell) {
  const auto text = readFile("/proc/self/status");
  ASSERT_TRUE(text);
  EXPECT_NE(text->find("Pid:"), std::string::npos);
}

TEST(ReadFile, RefusesWhatIsNoPlainFile) {
  const TemporaryFolder folder;
  ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
  for (const fs::path& path : {folder.path(), folder / "missing", folder / "pipe", fs::path("/dev/zero"), fs::path()}) {
    const auto read = readFile(path);
    ASSERT_FALSE(read) << path;
    EXPECT_EQ(read.error().code, ErrorCode::cannotRead) << path;
    EXPECT_EQ(read.error().file, path.string());
  }
}

TEST(ReadFile, RefusesWhatIsTooLarge) {
  const TemporaryFolder folder;
  const fs::path file = folder.put("large", "");
  fs::resize_file(file, kLargestFile);
  EXPECT_TRUE(readFile(file));
  fs::resize_file(file, kLargestFile + 1);
  ASSERT_FALSE(readFile(file));
  EXPECT_EQ(readFile(file).error().code, ErrorCode::tooLarge);
}

TEST(WriteFile, MakesAFileAndGivesItsFingerprint) {
  const TemporaryFolder folder;
  EXPECT_EQ(writeFile(folder / "a", "text\n"), fingerprintOf("text\n"));
  EXPECT_EQ(bytesOf(folder / "a"), "text\n");
  EXPECT_THAT(folder.names(), UnorderedElementsAre("a"));
}

TEST(WriteFile, ReplacesTheWhole) {
  const TemporaryFolder folder;
  const fs::path file = folder.put("a", "a long text that was there before");
  ASSERT_TRUE(writeFile(file, ""));
  EXPECT_EQ(bytesOf(file), "");
  ASSERT_TRUE(writeFile(file, std::string(3 << 20, 'x')));
  EXPECT_EQ(bytesOf(file), std::string(3 << 20, 'x'));
}

TEST(WriteFile, TakesNamesAsLongAsTheSystemDoes) {
  const TemporaryFolder folder;
  const std::string name(255, 'n');
  ASSERT_TRUE(writeFile(folder / name, "x"));
  EXPECT_THAT(folder.names(), UnorderedElementsAre(name));
}

TEST(WriteFile, WritesBesideTheWorkingFolder) {
  const TemporaryFolder folder;
  const fs::path before = fs::current_path();
  fs::current_path(folder.path());
  const auto written = writeFile("a", "x");
  fs::current_path(before);
  EXPECT_TRUE(written);
  EXPECT_EQ(bytesOf(folder / "a"), "x");
}

TEST(WriteFile, KeepsTheModeOfTheFile) {
  const TemporaryFolder folder;
  const Mask mask(022);
  const fs::path file = folder.put("a", "old");
  for (const mode_t mode : {0600u, 0640u, 0664u, 0777u}) {
    ASSERT_EQ(::chmod(file.c_str(), mode), 0);
    ASSERT_TRUE(writeFile(file, "new"));
    EXPECT_EQ(modeOf(file), mode);
  }
}

TEST(WriteFile, GivesNewFilesTheModeThatTheMaskLeaves) {
  const TemporaryFolder folder;
  {
    const Mask mask(027);
    ASSERT_TRUE(writeFile(folder / "a", "x"));
  }
  EXPECT_EQ(modeOf(folder / "a"), 0640u);
}

TEST(WriteFile, KeepsPersonalDataToTheOwner) {
  const TemporaryFolder folder;
  const Mask mask(0);
  ASSERT_TRUE(writeFile(folder / "new", "x", Privacy::personal));
  EXPECT_EQ(modeOf(folder / "new"), 0600u);
  const fs::path wide = folder.put("wide", "x");
  ASSERT_EQ(::chmod(wide.c_str(), 0664), 0);
  ASSERT_TRUE(writeFile(wide, "y", Privacy::personal));
  EXPECT_EQ(modeOf(wide), 0600u);
}

TEST(WriteFile, FollowsLinksAndLeavesThemLinks) {
  const TemporaryFolder folder;
  folder.put("there/real", "old");
  fs::create_symlink("there/real", folder / "relative");
  fs::create_symlink(folder / "relative", folder / "absolute");
  ASSERT_TRUE(writeFile(folder / "absolute", "new"));
  EXPECT_EQ(bytesOf(folder / "there/real"), "new");
  EXPECT_TRUE(fs::is_symlink(folder / "relative"));
  EXPECT_TRUE(fs::is_symlink(folder / "absolute"));
}

TEST(WriteFile, MakesTheFileThatALinkPromises) {
  const TemporaryFolder folder;
  fs::create_symlink("later", folder / "link");
  ASSERT_TRUE(writeFile(folder / "link", "x"));
  EXPECT_TRUE(fs::is_symlink(folder / "link"));
  EXPECT_EQ(bytesOf(folder / "later"), "x");
}

TEST(WriteFile, RefusesLinksInACircle) {
  const TemporaryFolder folder;
  fs::create_symlink("b", folder / "a");
  fs::create_symlink("a", folder / "b");
  const auto written = writeFile(folder / "a", "x");
  ASSERT_FALSE(written);
  EXPECT_EQ(written.error().code, ErrorCode::cannotWrite);
}

TEST(WriteFile, RefusesFoldersThatAreNotThere) {
  const TemporaryFolder folder;
  folder.put("file", "x");
  for (const char* name : {"missing/a", "file/a"}) {
    const auto written = writeFile(folder / name, "x");
    ASSERT_FALSE(written) << name;
    EXPECT_EQ(written.error().code, ErrorCode::cannotWrite);
    EXPECT_EQ(written.error().file, (folder / name).string());
    EXPECT_FALSE(written.error().found.empty());
  }
  EXPECT_THAT(folder.names(), UnorderedElementsAre("file"));
}

TEST(WriteFile, RefusesWhatIsNoPlainFile) {
  const TemporaryFolder folder;
  ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
  for (const fs::path& path : {folder.path(), folder / "pipe"}) {
    ASSERT_FALSE(writeFile(path, "x")) << path;
    EXPECT_EQ(writeFile(path, "x").error().code, ErrorCode::cannotWrite);
  }
}

TEST(WriteFile, RefusesMoreThanCanBeReadBack) {
  const TemporaryFolder folder;
  EXPECT_TRUE(writeFile(folder / "a", std::string(kLargestFile, ' ')));
  const auto written = writeFile(folder / "a", std::string(kLargestFile + 1, ' '));
  ASSERT_FALSE(written);
  EXPECT_EQ(written.error().code, ErrorCode::cannotWrite);
  EXPECT_EQ(fs::file_size(folder / "a"), kLargestFile);
}

TEST(WriteFile, NoticesThatSomebodyElseWrote) {
  const TemporaryFolder folder;
  const fs::path file = folder.put("a", "mine");
  const Fingerprint mine = fingerprintOf("mine");
  folder.put("a", "hers");
  const auto written = writeFile(file, "new", Privacy::ordinary, &mine);
  ASSERT_FALSE(written);
  EXPECT_EQ(written.error().code, ErrorCode::changedOnDisk);
  EXPECT_EQ(bytesOf(file), "hers");
  EXPECT_THAT(folder.names(), UnorderedElementsAre("a"));
}

TEST(WriteFile, NoticesThatTheFileIsGone) {
  const TemporaryFolder folder;
  const Fingerprint mine = fingerprintOf("mine");
  const auto written = writeFile(folder / "a", "new", Privacy::ordinary, &mine);
  ASSERT_FALSE(written);
  EXPECT_EQ(written.error().code, ErrorCode::changedOnDisk);
  EXPECT_FALSE(fs::exists(folder / "a"));
}

TEST(WriteFile, GoesOnFromItsOwnFingerprint) {
  const TemporaryFolder folder;
  const auto first = writeFile(folder / "a", "one");
  ASSERT_TRUE(first);
  const auto second = writeFile(folder / "a", "two", Privacy::ordinary, &*first);
  ASSERT_TRUE(second);
  EXPECT_TRUE(writeFile(folder / "a", "three", Privacy::ordinary, &*second));
  EXPECT_FALSE(writeFile(folder / "a", "four", Privacy::ordinary, &*first));
  EXPECT_EQ(bytesOf(folder / "a"), "three");
}

TEST(WriteFile, SweepsWhatDeadWritersLeft) {
  const TemporaryFolder folder;
  folder.put(".matwright-1234-1.part", "half of a cla");
  folder.put("other.part", "not ours");
  folder.put(".matwright-notes", "not ours");
  ASSERT_TRUE(writeFile(folder / "a", "x"));
  EXPECT_THAT(folder.names(), UnorderedElementsAre("a", "other.part", ".matwright-notes"));
}

TEST(WriteFile, LeavesTheWorkOfLivingWritersAlone) {
  const TemporaryFolder folder;
  const fs::path part = folder.put(".matwright-1234-1.part", "half of a cla");
  const int writer = ::open(part.c_str(), O_WRONLY | O_CLOEXEC);
  ASSERT_EQ(::flock(writer, LOCK_EX | LOCK_NB), 0);
  ASSERT_TRUE(writeFile(folder / "a", "x"));
  EXPECT_TRUE(fs::exists(part));
  ::close(writer);
  ASSERT_TRUE(writeFile(folder / "a", "y"));
  EXPECT_FALSE(fs::exists(part));
}

} // namespace
} // namespace matwright
