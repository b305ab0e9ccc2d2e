#include "core/movement/Catalogue.h"

#include <cstdlib>

namespace matwright {

Catalogue::Catalogue(std::vector<Movement> movements) : movements_(std::move(movements)) {
  index_.reserve(movements_.size());
  for (std::size_t i = 0; i < movements_.size(); ++i)
    if (!index_.emplace(movements_[i].id, i).second)
      std::abort();
}

const Movement* Catalogue::find(const MovementId& id) const {
  const auto at = index_.find(id);
  return at == index_.end() ? nullptr : &movements_[at->second];
}

} // namespace matwright
