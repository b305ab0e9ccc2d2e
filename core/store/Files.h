// Reading and writing files safely; nothing here knows what is in them.
#pragma once

#include "core/base/Result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace matwright {

// What a file held when it was last read or written, to notice that somebody else wrote it.
struct Fingerprint {
  std::uint64_t size = 0;
  std::uint64_t hash = 0; // FNV-1a, 64 bits, of the bytes
  friend bool operator==(const Fingerprint&, const Fingerprint&) = default;
};

Fingerprint fingerprintOf(std::string_view bytes);

inline constexpr std::uintmax_t kLargestFile = 16u << 20; // bytes

// The whole file. Refuses folders, devices and files over `kLargestFile`.
Result<std::string> readFile(const std::filesystem::path& file);

enum class Privacy { ordinary, personal }; // personal: readable by the owner alone (0600)

// Replaces the file as a whole or leaves it untouched: temporary file in the same folder, loop on write, fsync, close,
// rename, fsync of the folder; the mode of an existing file is kept (and narrowed for `personal`), symbolic links are
// followed. With `expected`, a file that no longer has that fingerprint (or is gone) is not replaced: changedOnDisk.
// Missing parent folders are an error. Returns the fingerprint of what was written.
Result<Fingerprint> writeFile(const std::filesystem::path& file, std::string_view bytes,
                              Privacy privacy = Privacy::ordinary, const Fingerprint* expected = nullptr);

} // namespace matwright
