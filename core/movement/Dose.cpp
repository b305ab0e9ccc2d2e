#include "core/movement/Dose.h"

#include <cmath>

namespace matwright {

bool isWellFormed(const Dose& dose) { return dose.amount >= 1 && dose.amount <= Dose::kMost; }

namespace {

// Passes that begin within a time; a pass that would begin at its very end does not. The tolerance keeps rounding of
// lengths such as 3 x 0.2 s from beginning one more.
int passesBegun(Seconds time, Seconds repetition) {
  return repetition > Seconds{} ? static_cast<int>(std::ceil(time / repetition - 1e-9)) : 1;
}

} // namespace

Work workOf(const Dose& dose, const Tempo& tempo, Sides sides, std::optional<Side> only) {
  const Seconds repetition = lengthOf(tempo);
  const bool timed = dose.unit == DoseUnit::seconds;
  const Seconds once = timed ? Seconds(dose.amount) : repetition * dose.amount;
  const int passes = timed ? passesBegun(once, repetition) : dose.amount;
  switch (sides) {
  case Sides::together:
    return {once, once, once, passes};
  case Sides::alternating: {
    if (timed)
      return {once, once / 2, once / 2, passes};
    const int left = (dose.amount + 1) / 2;
    return {once, repetition * left, repetition * (dose.amount - left), passes};
  }
  case Sides::each:
    break;
  }
  if (only == Side::left)
    return {once, once, Seconds{}, passes};
  if (only == Side::right)
    return {once, Seconds{}, once, passes};
  return {once * 2, once, once, passes * 2};
}

} // namespace matwright
