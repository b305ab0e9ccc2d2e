#pragma once

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>
#include <string>

namespace matwright::test {

// MATWRIGHT_SEEDS in the environment asks for so many times as many seeds as usual.
inline unsigned seedFactor() {
  const char* wanted = std::getenv("MATWRIGHT_SEEDS");
  return wanted ? static_cast<unsigned>(std::clamp(std::atoi(wanted), 1, 10000)) : 1;
}

// Builds a Scene of each seed from `first` to `last` and calls check(scene); a failure names the seed. Stops at the
// first seed that fails.
template <class Scene, class Check> void forEachSeed(unsigned first, unsigned last, Check check) {
  const unsigned end = first + (last - first + 1) * seedFactor();
  for (unsigned seed = first; seed < end; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Scene scene(seed);
    check(scene);
    if (::testing::Test::HasFailure())
      return;
  }
}

} // namespace matwright::test
