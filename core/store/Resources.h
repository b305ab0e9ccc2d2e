#pragma once

#include <filesystem>
#include <optional>

namespace matwright {

// The folder with positions/, catalogue/, screening/ and demo/ that belongs to a program: share/matwright beside its
// bin folder when installed, else resources/ of the source tree it was built from. Nothing when neither is there.
std::optional<std::filesystem::path> findResources(const std::filesystem::path& executable);

// The running program's own file.
std::filesystem::path thisExecutable();

} // namespace matwright
