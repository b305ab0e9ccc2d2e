// What becomes of files when writers are killed, run out of room, or may not write. Each writer is a process of its
// own.
#include "core/store/Files.h"
#include "tests/core/store/TemporaryFolder.h"

#include <csignal>
#include <gmock/gmock.h>
#include <random>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace matwright {
namespace {

namespace fs = std::filesystem;
using testing::UnorderedElementsAre;

// Runs `work` in a child of this process and gives its exit status, or -1 when it did not end by itself.
template <class Work> int inChild(Work work) {
  const pid_t child = ::fork();
  if (child == 0)
    ::_exit(work());
  int status = 0;
  if (child < 0 || ::waitpid(child, &status, 0) != child || !WIFEXITED(status))
    return -1;
  return WEXITSTATUS(status);
}

enum Outcome { written = 10, refused = 11, otherwise = 12 };

Outcome outcomeOf(const Result<Fingerprint>& result) {
  if (result)
    return written;
  return result.error().code == ErrorCode::cannotWrite ? refused : otherwise;
}

TEST(WriteFileUnderStress, KeepsTheOldFileWhenThereIsNoRoom) {
  const TemporaryFolder folder;
  const fs::path file = folder.put("a", "old");
  const auto write = [&](std::size_t bytes) {
    return inChild([&] {
      ::signal(SIGXFSZ, SIG_IGN);
      const rlimit room{64 << 10, 64 << 10};
      if (::setrlimit(RLIMIT_FSIZE, &room) != 0)
        return static_cast<int>(otherwise);
      return static_cast<int>(outcomeOf(writeFile(file, std::string(bytes, 'n'))));
    });
  };
  EXPECT_EQ(write(1 << 20), refused);
  EXPECT_EQ(write((64 << 10) + 1), refused); // all but one byte can be written
  EXPECT_EQ(bytesOf(file), "old");
  EXPECT_THAT(folder.names(), UnorderedElementsAre("a"));
  EXPECT_EQ(write(64 << 10), written);
  EXPECT_EQ(bytesOf(file), std::string(64 << 10, 'n'));
}

// As a user to whom modes apply, which the superuser is not.
template <class Work> int asOrdinaryUser(Work work) {
  return inChild([&] {
    constexpr uid_t kNobody = 65534; // as the Linux kernel has it
    if (::geteuid() == 0 && ::seteuid(kNobody) != 0)
      return static_cast<int>(otherwise);
    return static_cast<int>(work());
  });
}

TEST(WriteFileUnderStress, RefusesFilesThatAreReadOnly) {
  const TemporaryFolder folder;
  const fs::path file = folder.put("a", "old");
  ASSERT_EQ(::chmod(folder.path().c_str(), 0777), 0);
  ASSERT_EQ(::chmod(file.c_str(), 0444), 0);
  EXPECT_EQ(asOrdinaryUser([&] { return outcomeOf(writeFile(file, "new")); }), refused);
  EXPECT_EQ(bytesOf(file), "old");
  ASSERT_EQ(::chmod(file.c_str(), 0666), 0);
  EXPECT_EQ(asOrdinaryUser([&] { return outcomeOf(writeFile(file, "new")); }), written);
  EXPECT_EQ(bytesOf(file), "new");
}

TEST(WriteFileUnderStress, RefusesFoldersThatAreReadOnly) {
  const TemporaryFolder folder;
  const fs::path file = folder.put("a", "old");
  ASSERT_EQ(::chmod(file.c_str(), 0666), 0);
  ASSERT_EQ(::chmod(folder.path().c_str(), 0555), 0);
  EXPECT_EQ(asOrdinaryUser([&] { return outcomeOf(writeFile(file, "new")); }), refused);
  EXPECT_EQ(bytesOf(file), "old");
  ASSERT_EQ(::chmod(folder.path().c_str(), 0777), 0);
}

TEST(WriteFileUnderStress, LeavesTheOldOrTheNewFileWhenKilled) {
  const TemporaryFolder folder;
  const std::string one(300'000, '1'), two(200'000, '2');
  const fs::path file = folder.put("a", one);
  std::mt19937 random(20261126);
  std::uniform_int_distribution<int> moment(0, 12'000); // microseconds
  bool sawOne = false, sawTwo = false;
  for (int kills = 0; kills < 60; ++kills) {
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0)
      for (bool first = kills % 2;; first = !first)
        if (!writeFile(file, first ? one : two))
          ::_exit(1);
    std::this_thread::sleep_for(std::chrono::microseconds(moment(random)));
    ASSERT_EQ(::kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the writer gave up by itself";
    const std::string bytes = bytesOf(file);
    ASSERT_TRUE(bytes == one || bytes == two) << bytes.size() << " bytes after kill " << kills;
    (bytes == one ? sawOne : sawTwo) = true;
  }
  EXPECT_TRUE(sawOne && sawTwo) << "no writer ever got through";
  ASSERT_TRUE(writeFile(file, "end"));
  EXPECT_THAT(folder.names(), UnorderedElementsAre("a"));
}

TEST(WriteFileUnderStress, LetsManyWriteAtOnce) {
  const TemporaryFolder folder;
  std::vector<std::thread> writers;
  std::atomic<int> failures{0};
  for (int writer = 0; writer < 4; ++writer)
    writers.emplace_back([&, writer] {
      for (int round = 0; round < 25; ++round)
        if (!writeFile(folder / "a",
                       std::string(static_cast<std::size_t>(1000 + writer), static_cast<char>('a' + writer))))
          ++failures;
    });
  for (std::thread& writer : writers)
    writer.join();
  EXPECT_EQ(failures, 0);
  const std::string bytes = bytesOf(folder / "a");
  ASSERT_GE(bytes.size(), 1000u);
  EXPECT_EQ(bytes, std::string(bytes.size(), static_cast<char>('a' + bytes.size() - 1000)));
  EXPECT_THAT(folder.names(), UnorderedElementsAre("a"));
}

} // namespace
} // namespace matwright
