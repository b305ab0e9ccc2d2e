#include "core/store/Kept.h"

namespace matwright {

void SourceTree::putBack(const std::string& place, Json& object) const {
  const auto at = leftovers_.find(place);
  if (at == leftovers_.end())
    return;
  for (const auto& [key, value] : at->second.items())
    object.emplace(key, value);
}

void putBack(const SourceTree* kept, const std::string& place, Json& object) {
  if (kept)
    kept->putBack(place, object);
}

} // namespace matwright
