#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace matwright {

using Date = std::chrono::year_month_day;

// "2026-11-26"; nothing for any other form and for days that the calendar does not have.
std::optional<Date> dateFromIso(std::string_view text);
std::string isoDate(Date date);

// Whole weeks from `from` to `to`, rounded down; negative when `to` is earlier.
int wholeWeeksBetween(Date from, Date to);

} // namespace matwright
