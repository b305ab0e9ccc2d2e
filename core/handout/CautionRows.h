#pragma once

#include "core/handout/Card.h"

#include <functional>

namespace matwright {

// Cautions as the card says them: the strongest for each person alone (the first of equals), what says the same (level
// and words) put together, strongest first. Cautions that hold for everybody name nobody. `initialsOf` gives those of a
// person by index in the evaluation.
std::vector<CardCaution> cardCautions(const std::vector<const Caution*>& cautions,
                                      const std::function<std::string(std::size_t)>& initialsOf);

} // namespace matwright
