#pragma once

#include "core/movement/Movement.h"

#include <unordered_map>

namespace matwright {

// All movements that can be chosen, in the order given, found by id. Ids are unique: a second movement with an
// id already there is a programmer's error (files are checked before).
class Catalogue {
public:
  Catalogue() = default;
  explicit Catalogue(std::vector<Movement> movements);

  const std::vector<Movement>& movements() const { return movements_; }
  // Null when there is none; valid as long as the catalogue.
  const Movement* find(const MovementId& id) const;

private:
  std::vector<Movement> movements_;
  std::unordered_map<MovementId, std::size_t> index_;
};

} // namespace matwright
