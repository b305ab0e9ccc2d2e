#include "core/compose/Compose.h"

namespace matwright {

// Runs of new steps go in from front to back: what stands before each is in its place by then.
Edit editOf(const ClassPlan& before, const ComposeResult& result) {
  EditGroup group;
  if (result.plan.target != before.target)
    group.edits.push_back(SetTarget{result.plan.target});
  if (result.plan.pace != before.pace)
    group.edits.push_back(SetPace{result.plan.pace});
  if (result.plan.people != before.people)
    group.edits.push_back(SetPeople{result.plan.people});
  for (std::size_t section = 0; section < result.plan.sections.size(); ++section) {
    const std::vector<Step>& steps = result.plan.sections[section].steps;
    bool continues = false;
    for (std::size_t index = 0; index < steps.size(); ++index) {
      if (findStep(before, steps[index].id)) {
        continues = false;
        continue;
      }
      if (!continues)
        group.edits.push_back(InsertSteps{{section, index}, {}});
      std::get<InsertSteps>(group.edits.back()).steps.push_back(steps[index]);
      continues = true;
    }
  }
  return group;
}

} // namespace matwright
