#pragma once

#include "core/compose/Compose.h"

#include <QString>
#include <functional>
#include <vector>

namespace matwright {

// One thing that can be changed about wishes so that an obstacle is gone.
struct Remedy {
  QString words; // on a button: "Leave the roll-up in"
  std::function<void(ClassWishes&)> apply;
};

// What is simple and harms nobody; may be none. That people come is never wished away but for those whom the whole
// class is to be left out by: they cannot come in any case.
std::vector<Remedy> remediesFor(const Obstacle& obstacle, const Knowledge& knowledge, std::span<const Person> roster,
                                const ClassWishes& wishes);

} // namespace matwright
