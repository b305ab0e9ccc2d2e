#include "app/console/SearchLimits.h"

#include <charconv>
#include <chrono>
#include <iostream>

namespace matwright {
namespace {

using Clock = std::chrono::steady_clock;

template <class Number> std::optional<Number> numberIn(const std::string& text) {
  Number value{};
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
  return fault == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

template <class Number> std::optional<Number> positive(const std::string& option, const std::string& text) {
  const auto value = numberIn<Number>(text);
  if (value && *value > 0 && *value < Number(1e15))
    return value;
  std::cerr << "matwright-cli: " << option << ": number above 0 expected, found " << text << '\n';
  return std::nullopt;
}

} // namespace

std::function<bool()> SearchLimits::stop() const {
  if (!seconds)
    return {};
  return [begin = Clock::now(), seconds = *seconds] {
    return std::chrono::duration<double>(Clock::now() - begin).count() >= seconds;
  };
}

std::optional<SearchLimits> searchLimits(const Arguments& arguments, const std::string& counting, std::int64_t usual,
                                         std::int64_t timed) {
  SearchLimits limits;
  const auto seconds = arguments.value("--seconds"), count = arguments.value(counting);
  if (seconds && !(limits.seconds = positive<double>("--seconds", *seconds)))
    return std::nullopt;
  limits.count = seconds ? timed : usual;
  if (count) {
    const auto read = positive<std::int64_t>(counting, *count);
    if (!read)
      return std::nullopt;
    limits.count = *read;
  }
  return limits;
}

std::optional<std::int64_t> wholeNumber(const Arguments& arguments, const std::string& option, std::int64_t usual,
                                        std::int64_t least, std::int64_t most) {
  const auto text = arguments.value(option);
  if (!text)
    return usual;
  const auto value = numberIn<std::int64_t>(*text);
  if (value && *value >= least && *value <= most)
    return value;
  std::cerr << "matwright-cli: " << option << ": whole number from " << least << " to " << most << " expected, found "
            << *text << '\n';
  return std::nullopt;
}

} // namespace matwright
