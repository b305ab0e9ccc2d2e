#pragma once

#include "core/units/Units.h"

namespace matwright {

// An uncertain time, taken as normally distributed.
struct Spread {
  double mean = 0;     // seconds
  double variance = 0; // seconds squared

  Spread operator+(const Spread& other) const { return {mean + other.mean, variance + other.variance}; } // independent
  friend bool operator==(const Spread&, const Spread&) = default;
};

// With a coefficient of variation, e.g. 0.25.
Spread spreadOf(Seconds mean, double variation);

// The greater of two independent ones: its true mean and variance (Clark 1961, Operations Research 9: 145-162).
Spread greaterOf(const Spread& a, const Spread& b);

// Multiplied by an independent factor of mean 1 with that coefficient of variation.
Spread scaled(const Spread& spread, double variation);

// The chance that a standard normal variable is not above z.
double normalChance(double z);

} // namespace matwright
