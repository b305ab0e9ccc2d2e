// What fillings weigh, against a count that is slow and shares nothing with it.
#include "core/compose/FillProblem.h"
#include "tests/support/FillRecount.h"
#include "tests/support/RandomFill.h"
#include "tests/support/Seeds.h"

#include <gtest/gtest.h>

namespace matwright::test {
namespace {

struct Scene {
  RandomFill random;
  std::vector<Filling> fillings;

  explicit Scene(unsigned seed) : random(seed, sizeFor(seed)) {
    for (int i = 0; i < 20; ++i)
      fillings.push_back(random.filling());
  }

  static FillSize sizeFor(unsigned seed) {
    FillSize size;
    size.families = 4 + static_cast<int>(seed % 7);
    size.sections = 1 + static_cast<int>(seed % 3);
    size.kept = static_cast<int>(seed % 5);
    size.part = seed % 2 == 0 ? 0.5 : 0.9;
    return size;
  }
};

TEST(FillScale, WeighsAsTheSlowCountDoes) {
  std::array<int, kWordCount<ComposePart>> seen{};
  int tooLong = 0, missing = 0, late = 0, closed = 0;
  forEachSeed<Scene>(1, 80, [&](Scene& scene) {
    FillScale scale(scene.random.problem());
    for (const Filling& filling : scene.fillings) {
      FillRecount recount(scene.random.problem(), filling);
      const FillWeight weight = recount.weight();
      EXPECT_EQ(scale.weigh(filling), weight);
      EXPECT_EQ(scale.given(), recount.given());
      for (std::size_t part = 0; part < seen.size(); ++part)
        seen[part] += weight.parts[part] > 0;
      tooLong += weight.breach.time > 0;
      missing += weight.breach.missing > 0;
      late += weight.breach.late > 0;
      closed += weight.breach.closed > 0;
    }
  });
  for (std::size_t part = 0; part < seen.size(); ++part)
    EXPECT_GT(seen[part], 20) << "the draw tests nothing of " << word(static_cast<ComposePart>(part));
  EXPECT_GT(std::min({tooLong, missing, late, closed}), 20) << "the draw tests nothing";
}

TEST(FillScale, GivesNothingExactlyWhereThePriceIsAboveTheDearest) {
  forEachSeed<Scene>(1, 80, [](Scene& scene) {
    FillScale scale(scene.random.problem());
    for (const Filling& filling : scene.fillings) {
      const std::int64_t price = priceOf(scale.weigh(filling));
      for (std::int64_t dearest : {price - 1, price / 2, price - 20'000, std::int64_t{0}})
        EXPECT_EQ(scale.weigh(filling, dearest) == nullptr, price > dearest) << price << " and " << dearest;
      for (std::int64_t dearest : {price, price + 1, 2 * price}) {
        const FillWeight* weight = scale.weigh(filling, dearest);
        ASSERT_NE(weight, nullptr) << price << " and " << dearest;
        EXPECT_EQ(priceOf(*weight), price);
      }
    }
  });
}

TEST(FillScale, EveryBreachMakesAFillingDearer) {
  const FillWeight none;
  for (auto spoil : {+[](FillBreach& breach) { breach.time = 1; }, +[](FillBreach& breach) { breach.lengths = 1; },
                     +[](FillBreach& breach) { breach.missing = 1; }, +[](FillBreach& breach) { breach.late = 1; },
                     +[](FillBreach& breach) { breach.closed = 1; }}) {
    FillWeight spoilt;
    spoil(spoilt.breach);
    EXPECT_GT(priceOf(spoilt), priceOf(none));
    EXPECT_EQ(spoilt.cost(), none.cost());
  }
}

TEST(FillScale, WhatIsKeptIsAFillingOfItsOwn) {
  forEachSeed<Scene>(1, 20, [](Scene& scene) {
    const FillProblem& problem = scene.random.problem();
    const Filling kept = keptIn(problem);
    std::size_t from = 0;
    for (std::size_t section = 0; section < problem.kept.size(); ++section) {
      EXPECT_EQ(std::vector<int>(kept.items.begin() + static_cast<std::ptrdiff_t>(from),
                                 kept.items.begin() + static_cast<std::ptrdiff_t>(kept.ends[section])),
                problem.kept[section]);
      from = kept.ends[section];
    }
    EXPECT_EQ(kept.kept, std::vector<char>(kept.items.size(), 1));
  });
}

} // namespace
} // namespace matwright::test
