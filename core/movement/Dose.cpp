#include "core/movement/Dose.h"

#include <cmath>

namespace matwright {

bool isWellFormed(const Dose& dose) { return dose.amount >= 1 && dose.amount <= Dose::kMost; }

Work workOf(const Dose& dose, const Tempo& tempo, Sides sides, std::optional<Side> only) {
  const Seconds repetition = lengthOf(tempo);
  const bool timed = dose.unit == DoseUnit::seconds;
  const Seconds once = timed ? Seconds(dose.amount) : repetition * dose.amount;
  const int passes =
      timed ? static_cast<int>(std::ceil(dose.amount / repetition.value())) : dose.amount;
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
