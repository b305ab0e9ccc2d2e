#include "core/tidy/Tidy.h"

namespace matwright {

// Each step that moves goes right behind the one that it follows in the end; so those before it are in place.
Edit editOf(const ClassPlan& before, const TidyResult& result) {
  EditGroup group;
  std::vector<std::vector<StepId>> sections;
  for (const Section& section : before.sections) {
    std::vector<StepId>& ids = sections.emplace_back();
    for (const Step& step : section.steps)
      ids.push_back(step.id);
  }
  for (const TidyMove& move : result.moves) {
    std::vector<StepId>& ids = sections[move.to.section];
    const auto& steps = result.plan.sections[move.to.section].steps;
    std::size_t index = 0;
    if (move.to.index > 0)
      while (ids[index++] != steps[move.to.index - 1].id) {
      }
    group.edits.push_back(MoveSteps{{move.step}, {move.to.section, index}});
    std::size_t from = 0;
    while (ids[from] != move.step)
      ++from;
    ids.erase(ids.begin() + static_cast<std::ptrdiff_t>(from));
    if (from < index)
      --index;
    ids.insert(ids.begin() + static_cast<std::ptrdiff_t>(index), move.step);
  }
  return group;
}

} // namespace matwright
