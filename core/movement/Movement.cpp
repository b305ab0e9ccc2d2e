#include "core/movement/Movement.h"

#include <algorithm>

namespace matwright {

const Option* findOption(const Movement& movement, const OptionId& option) {
  const auto at = std::find_if(movement.options.begin(), movement.options.end(),
                               [&](const Option& candidate) { return candidate.id == option; });
  return at == movement.options.end() ? nullptr : &*at;
}

const Dose& doseOf(const Movement& movement, const Option* option) {
  return option && option->dose ? *option->dose : movement.dose;
}

const Tempo& tempoOf(const Movement& movement, const Option* option) {
  return option && option->tempo ? *option->tempo : movement.tempo;
}

Effort effortOf(const Movement& movement, const Option* option) {
  return option && option->effort ? *option->effort : movement.effort;
}

PropSet propsOf(const Movement& movement, const Option* option) {
  return option && option->props ? *option->props : movement.props;
}

const KeyPoses& posesOf(const Movement& movement, const Option* option) {
  return option && option->poses ? *option->poses : movement.poses;
}

} // namespace matwright
