#pragma once

#include <gtest/gtest.h>

namespace matwright::test {

// Builds a Scene of each seed from `first` to `last` and calls check(scene); a failure names the seed. Stops at the
// first seed that fails.
template <class Scene, class Check> void forEachSeed(unsigned first, unsigned last, Check check) {
  for (unsigned seed = first; seed <= last; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Scene scene(seed);
    check(scene);
    if (testing::Test::HasFailure())
      return;
  }
}

} // namespace matwright::test
