#include "core/store/Resources.h"

namespace matwright {

std::optional<std::filesystem::path> findResources(const std::filesystem::path& executable) {
  std::error_code fault;
  const auto installed = executable.parent_path().parent_path() / "share" / "matwright";
  for (const std::filesystem::path& folder : {installed, std::filesystem::path(MATWRIGHT_SOURCE_RESOURCES)})
    if (std::filesystem::is_directory(folder / "catalogue", fault))
      return folder;
  return std::nullopt;
}

std::filesystem::path thisExecutable() {
  std::error_code fault;
  return std::filesystem::read_symlink("/proc/self/exe", fault);
}

} // namespace matwright
