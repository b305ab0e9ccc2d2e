#pragma once

#include "core/compose/FillProblem.h"

#include <optional>
#include <random>

namespace matwright {

// Where something could be put: before the item that is at `index` now, in a section.
struct FillPlace {
  std::size_t section = 0, index = 0;
};

void putIn(Filling& filling, FillPlace place, int item);
void takeOut(Filling& filling, std::size_t index);
std::size_t sectionAt(const Filling& filling, std::size_t index);
std::size_t beginOf(const Filling& filling, std::size_t section); // place in the row of its first item

// Changes fillings at random, so that no item that is kept changes and no family is chosen twice.
class FillMoves {
public:
  FillMoves(const FillProblem& problem, std::uint64_t seed);

  // False when the change that was drawn cannot be made; the filling may then be spoilt.
  bool change(Filling& filling);
  double chance() { return static_cast<double>(random_() >> 11) * 0x1p-53; } // 0 to below 1

  // Offered items, by family.
  const std::vector<int>& choicesOf(int family) const { return byFamily_[family]; }
  bool has(const Filling& filling, int family) const;

private:
  std::size_t below(std::size_t bound) { return static_cast<std::size_t>(chance() * static_cast<double>(bound)); }
  FillPlace anyPlace(const Filling& filling, std::size_t from, std::size_t upTo);
  std::size_t earliest(const Filling& filling, int family) const;
  int drawn(const Filling& filling, FillPlace place);
  std::optional<std::size_t> anyChosen(const Filling& filling);
  bool insert(Filling& filling);
  bool insertNeeded(Filling& filling, int family, int depth);
  bool remove(Filling& filling);
  bool replace(Filling& filling);
  bool trade(Filling& filling);
  bool vary(Filling& filling);
  bool move(Filling& filling);
  bool exchange(Filling& filling);

  const FillProblem* problem_;
  std::mt19937_64 random_;
  std::vector<int> familyOf_; // by item
  std::vector<std::vector<int>> byFamily_, byStart_;
  std::vector<int> gone_;
};

} // namespace matwright
