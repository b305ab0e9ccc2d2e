#pragma once

#include "app/console/Arguments.h"

#include <cstdint>
#include <functional>
#include <limits>

namespace matwright {

// How long a search goes on, as the command line says.
struct SearchLimits {
  static constexpr std::int64_t kAny = std::int64_t{1} << 60;

  std::int64_t count = kAny;     // of what is looked at
  std::optional<double> seconds; // none: as long as it takes

  // True once the seconds are over, counted from this call on. Empty where there are none.
  std::function<bool()> stop() const;
};

// By --seconds and the option that counts: `usual` where it is not given, and `timed` where seconds are given alone.
// Nothing, and it was complained of, when a value is not a number above 0.
std::optional<SearchLimits> searchLimits(const Arguments& arguments, const std::string& counting, std::int64_t usual,
                                         std::int64_t timed = SearchLimits::kAny);

// The value of the option as a whole number within these bounds, or `usual`. Nothing, and it was complained of, when it
// is none.
std::optional<std::int64_t> wholeNumber(const Arguments& arguments, const std::string& option, std::int64_t usual,
                                        std::int64_t least,
                                        std::int64_t most = std::numeric_limits<std::int64_t>::max());

} // namespace matwright
