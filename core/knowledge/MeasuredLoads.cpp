#include "core/knowledge/MeasuredLoads.h"

#include <algorithm>

namespace matwright {

std::vector<const MeasuredTask*> MeasuredLoads::of(const MovementId& movement) const {
  std::vector<const MeasuredTask*> found;
  for (const MeasuredTask& task : tasks)
    if (std::find(task.movements.begin(), task.movements.end(), movement) != task.movements.end())
      found.push_back(&task);
  return found;
}

} // namespace matwright
