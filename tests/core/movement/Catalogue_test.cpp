#include "core/movement/Catalogue.h"
#include "tests/support/SmallKnowledge.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

TEST(Catalogue, FindsEveryMovementByItsIdAndKeepsTheOrder) {
  const Catalogue catalogue(smallMovements());
  ASSERT_EQ(catalogue.movements().size(), smallMovements().size());
  for (std::size_t i = 0; i < catalogue.movements().size(); ++i) {
    EXPECT_EQ(catalogue.movements()[i].id, smallMovements()[i].id);
    EXPECT_EQ(catalogue.find(catalogue.movements()[i].id), &catalogue.movements()[i]);
  }
}

TEST(Catalogue, FindsNothingForAnUnknownId) {
  EXPECT_EQ(Catalogue(smallMovements()).find(MovementId{"handstand"}), nullptr);
  EXPECT_EQ(Catalogue{}.find(MovementId{"curl"}), nullptr);
}

TEST(Catalogue, FindsItsOwnMovementsAfterBeingCopied) {
  const Catalogue first(smallMovements());
  const Catalogue copy = first;
  EXPECT_EQ(copy.find(MovementId{"curl"}), &copy.movements().front());
}

TEST(CatalogueDeathTest, TwoMovementsWithOneIdAreAProgrammersError) {
  std::vector<Movement> twice = smallMovements();
  twice.push_back(twice.front());
  EXPECT_DEATH(Catalogue{std::move(twice)}, "");
}

} // namespace
} // namespace matwright::test
