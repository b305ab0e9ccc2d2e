// Strong types for the quantities of a class, with literals.
#pragma once

#include <algorithm>
#include <compare>

namespace matwright {

// A length of time or a moment measured from the start of the class.
class Seconds {
public:
  constexpr Seconds() = default;
  constexpr explicit Seconds(double value) : value_(value) {}

  constexpr double value() const { return value_; }
  constexpr double minutes() const { return value_ / 60.0; }

  constexpr Seconds operator+(Seconds other) const { return Seconds(value_ + other.value_); }
  constexpr Seconds operator-(Seconds other) const { return Seconds(value_ - other.value_); }
  constexpr Seconds operator-() const { return Seconds(-value_); }
  constexpr Seconds operator*(double factor) const { return Seconds(value_ * factor); }
  constexpr Seconds operator/(double divisor) const { return Seconds(value_ / divisor); }
  constexpr double operator/(Seconds other) const { return value_ / other.value_; }
  constexpr Seconds& operator+=(Seconds other) {
    value_ += other.value_;
    return *this;
  }
  friend constexpr bool operator==(Seconds, Seconds) = default;
  friend constexpr auto operator<=>(Seconds, Seconds) = default;

private:
  double value_ = 0.0;
};

constexpr Seconds operator*(double factor, Seconds seconds) { return seconds * factor; }
constexpr Seconds minutes(double value) { return Seconds(value * 60.0); }

// Perceived effort, 0 (rest) to 10 (the most one can do), in the project's own wording.
class Effort {
public:
  static constexpr int kHighest = 10;

  constexpr Effort() = default;
  // Values outside 0..10 are a programmer's error and are brought to the nearest bound.
  constexpr explicit Effort(int value) : value_(std::clamp(value, 0, kHighest)) {}

  constexpr int value() const { return value_; }
  friend constexpr bool operator==(Effort, Effort) = default;
  friend constexpr auto operator<=>(Effort, Effort) = default;

private:
  int value_ = 0;
};

namespace literals {
constexpr Seconds operator""_s(long double value) { return Seconds(static_cast<double>(value)); }
constexpr Seconds operator""_s(unsigned long long value) { return Seconds(static_cast<double>(value)); }
constexpr Seconds operator""_min(unsigned long long value) { return minutes(static_cast<double>(value)); }
} // namespace literals

} // namespace matwright
