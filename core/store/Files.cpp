#include "core/store/Files.h"

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace matwright {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kPartPrefix = ".matwright-";
constexpr std::string_view kPartSuffix = ".part";
constexpr int kMostLinks = 40;

// An open file of the system, closed with it.
class Descriptor {
public:
  explicit Descriptor(int number = -1) : number_(number) {}
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  ~Descriptor() {
    if (number_ >= 0)
      ::close(number_);
  }

  explicit operator bool() const { return number_ >= 0; }
  int number() const { return number_; }
  // What close() says: on some file systems the last errors of writing come only here.
  int closeNow() { return ::close(std::exchange(number_, -1)); }

private:
  int number_;
};

template <class Call> auto unlessInterrupted(Call call) {
  auto result = call();
  while (result < 0 && errno == EINTR)
    result = call();
  return result;
}

Descriptor openFile(const fs::path& file, int flags, mode_t mode = 0) {
  return Descriptor(unlessInterrupted([&] { return ::open(file.c_str(), flags | O_CLOEXEC, mode); }));
}

Error fault(ErrorCode code, const fs::path& file, std::string expected, int number) {
  return {code, file.string(), {}, std::move(expected), number ? std::generic_category().message(number) : ""};
}

// The file that a chain of symbolic links ends in, which need not exist.
Result<fs::path> followed(const fs::path& named) {
  fs::path file = named;
  for (int links = 0; links < kMostLinks; ++links) {
    std::error_code none;
    if (!fs::is_symlink(fs::symlink_status(file, none)))
      return file;
    std::error_code broken;
    const fs::path target = fs::read_symlink(file, broken);
    if (broken)
      return failure(fault(ErrorCode::cannotWrite, named, "a link that can be followed", broken.value()));
    file = target.is_absolute() ? target : file.parent_path() / target;
  }
  return failure(fault(ErrorCode::cannotWrite, named, "a link that can be followed", ELOOP));
}

// Removes what writers that were killed left in the folder. A writer at work holds the lock of its part.
void sweepParts(const fs::path& folder) {
  std::error_code broken;
  for (fs::directory_iterator at(folder, broken), end; !broken && at != end; at.increment(broken)) {
    const std::string name = at->path().filename().string();
    if (!name.starts_with(kPartPrefix) || !name.ends_with(kPartSuffix))
      continue;
    const Descriptor part = openFile(at->path(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK);
    if (part && ::flock(part.number(), LOCK_EX | LOCK_NB) == 0)
      ::unlink(at->path().c_str());
  }
}

// The new content on its way: a locked file beside the one to be replaced, gone again unless it takes its place.
class Part {
public:
  // False, with errno set, when no part can be made in the folder. The mode is as the mask of the process leaves it.
  bool open(const fs::path& folder, mode_t mode) {
    static std::atomic<unsigned> counter{0};
    for (int attempts = 0; attempts < 100; ++attempts) {
      path_ = folder / (std::string(kPartPrefix) + std::to_string(::getpid()) + '-' + std::to_string(++counter) +
                        std::string(kPartSuffix));
      file_ = openFile(path_, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW, mode);
      if (!file_ && errno == EEXIST)
        continue;
      if (!file_) {
        path_.clear();
        return false;
      }
      // Between making and locking, another writer may have taken it for a stale one and removed it. Where the file
      // system knows no locks, nobody sweeps.
      // It holds the lock for as long as that takes, so whoever waits for the lock knows.
      unlessInterrupted([&] { return ::flock(file_.number(), LOCK_EX); });
      struct stat state {};
      if (::fstat(file_.number(), &state) == 0 && state.st_nlink > 0)
        return true;
      file_ = Descriptor();
    }
    path_.clear();
    errno = EEXIST;
    return false;
  }
  ~Part() {
    if (!path_.empty())
      ::unlink(path_.c_str());
  }

  bool write(std::string_view bytes) {
    while (!bytes.empty()) {
      const ssize_t written = unlessInterrupted([&] { return ::write(file_.number(), bytes.data(), bytes.size()); });
      if (written <= 0)
        return false;
      bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
  }
  // Owner and group can be kept only where the system allows it; the permission bits always.
  bool takeOver(const struct stat& old, mode_t mode) {
    if (old.st_uid != ::geteuid() || old.st_gid != ::getegid())
      if (::fchown(file_.number(), old.st_uid, old.st_gid) != 0 && errno != EPERM)
        return false;
    return ::fchmod(file_.number(), mode) == 0;
  }
  bool sync() {
    return unlessInterrupted([&] { return ::fsync(file_.number()); }) == 0;
  }
  // The lock must last until the part has its new name, and close() must be heard before: so a second descriptor
  // holds the lock on.
  bool replace(const fs::path& target) {
    const Descriptor lock(::fcntl(file_.number(), F_DUPFD_CLOEXEC, 0));
    if (!lock || file_.closeNow() != 0 || ::rename(path_.c_str(), target.c_str()) != 0)
      return false;
    path_.clear();
    return true;
  }

private:
  fs::path path_;
  Descriptor file_;
};

bool holds(const fs::path& file, const Fingerprint& expected) {
  const auto bytes = readFile(file);
  return bytes && fingerprintOf(*bytes) == expected;
}

} // namespace

Fingerprint fingerprintOf(std::string_view bytes) {
  std::uint64_t hash = 0xcbf29ce484222325u;
  for (const char byte : bytes) {
    hash ^= static_cast<unsigned char>(byte);
    hash *= 0x100000001b3u;
  }
  return {bytes.size(), hash};
}

Result<std::string> readFile(const fs::path& named) {
  const char* const plain = "a plain file that can be read";
  const Descriptor file = openFile(named, O_RDONLY | O_NONBLOCK | O_NOCTTY);
  if (!file)
    return failure(fault(ErrorCode::cannotRead, named, plain, errno));
  struct stat state {};
  if (::fstat(file.number(), &state) != 0)
    return failure(fault(ErrorCode::cannotRead, named, plain, errno));
  if (!S_ISREG(state.st_mode))
    return failure(fault(ErrorCode::cannotRead, named, plain, S_ISDIR(state.st_mode) ? EISDIR : 0));
  const auto tooLarge = [&] {
    return failure(
        Error{ErrorCode::tooLarge, named.string(), {}, "at most " + std::to_string(kLargestFile) + " bytes", {}});
  };
  if (static_cast<std::uintmax_t>(state.st_size) > kLargestFile)
    return tooLarge();

  // The size is only a hint: a file may grow while it is read, or (below /proc) claim to be empty.
  std::string bytes;
  bytes.resize(static_cast<std::size_t>(state.st_size) + 1);
  std::size_t length = 0;
  for (;;) {
    if (length == bytes.size())
      bytes.resize(bytes.size() * 2);
    const ssize_t count =
        unlessInterrupted([&] { return ::read(file.number(), bytes.data() + length, bytes.size() - length); });
    if (count < 0)
      return failure(fault(ErrorCode::cannotRead, named, plain, errno));
    if (count == 0)
      break;
    length += static_cast<std::size_t>(count);
    if (length > kLargestFile)
      return tooLarge();
  }
  bytes.resize(length);
  return bytes;
}

Result<Fingerprint> writeFile(const fs::path& named, std::string_view bytes, Privacy privacy,
                              const Fingerprint* expected) {
  const auto cannot = [&](std::string wanted, int number) {
    return failure(fault(ErrorCode::cannotWrite, named, std::move(wanted), number));
  };
  if (bytes.size() > kLargestFile)
    return cannot("at most " + std::to_string(kLargestFile) + " bytes", EFBIG);
  const auto target = followed(named);
  if (!target)
    return failure(target.error());

  struct stat old {};
  const bool exists = ::stat(target->c_str(), &old) == 0;
  if (!exists && errno != ENOENT)
    return cannot("a folder that is there", errno);
  if (exists && !S_ISREG(old.st_mode))
    return cannot("a plain file", S_ISDIR(old.st_mode) ? EISDIR : 0);
  if (exists && ::faccessat(AT_FDCWD, target->c_str(), W_OK, AT_EACCESS) != 0)
    return cannot("a file that may be written", errno);
  const auto changed = [&] {
    return failure(Error{ErrorCode::changedOnDisk, named.string(), {}, "the file as it was read", {}});
  };
  if (expected && !holds(*target, *expected))
    return changed();

  const fs::path folder = target->has_parent_path() ? target->parent_path() : fs::path(".");
  const Descriptor opened = openFile(folder, O_RDONLY | O_DIRECTORY);
  if (!opened)
    return cannot("a folder that is there", errno);
  sweepParts(folder);
  const mode_t ownerAlone = S_IRUSR | S_IWUSR;
  const mode_t everybody = ownerAlone | S_IRGRP | S_IWGRP | S_IROTH | S_IWOTH; // before the mask of the process
  const bool personal = privacy == Privacy::personal;

  Part part;
  if (!part.open(folder, exists || personal ? ownerAlone : everybody))
    return cannot("a folder that can be written", errno);
  if (exists && !part.takeOver(old, old.st_mode & (personal ? ownerAlone : mode_t{07777})))
    return cannot("a file whose mode can be kept", errno);
  if (!part.write(bytes) || !part.sync())
    return cannot("room for the file", errno);
  // Looked at again, because writing can take long.
  if (expected && !holds(*target, *expected))
    return changed();
  if (!part.replace(*target))
    return cannot("a folder that can be written", errno);
  // The new file is in place whatever this says; it only makes the name last through a loss of power.
  unlessInterrupted([&] { return ::fsync(opened.number()); });
  return fingerprintOf(bytes);
}

} // namespace matwright
