#include "tests/fuzz/StoreInvariants.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (const char* broken = matwright::brokenInvariantOfWishes({reinterpret_cast<const char*>(data), size})) {
    std::fputs(broken, stderr);
    std::abort();
  }
  return 0;
}
