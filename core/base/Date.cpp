#include "core/base/Date.h"

#include <charconv>
#include <cstdio>

namespace matwright {

std::optional<Date> dateFromIso(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-')
    return std::nullopt;
  const auto number = [&](std::size_t at, std::size_t length) -> std::optional<int> {
    int value = 0;
    const char* first = text.data() + at;
    if (*first < '0' || *first > '9')
      return std::nullopt;
    const auto [end, fault] = std::from_chars(first, first + length, value);
    if (fault != std::errc{} || end != first + length)
      return std::nullopt;
    return value;
  };
  const auto year = number(0, 4);
  const auto month = number(5, 2);
  const auto day = number(8, 2);
  if (!year || !month || !day)
    return std::nullopt;
  const Date date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                  std::chrono::day{static_cast<unsigned>(*day)}};
  return date.ok() ? std::optional{date} : std::nullopt;
}

std::string isoDate(Date date) {
  char text[32];
  std::snprintf(text, sizeof text, "%04d-%02u-%02u", int{date.year()}, unsigned{date.month()}, unsigned{date.day()});
  return text;
}

int wholeWeeksBetween(Date from, Date to) {
  const auto days = (std::chrono::sys_days{to} - std::chrono::sys_days{from}).count();
  return static_cast<int>(days >= 0 ? days / 7 : -((-days + 6) / 7));
}

} // namespace matwright
