// Why a step of a composed class was chosen: by what is asked of the class, and by what the best other movement in its
// place would cost more.
#pragma once

#include "core/compose/Compose.h"

namespace matwright {

struct ReasonShare {
  ComposePart part{};
  Seconds seconds; // above 0: the class is better by that with this step; below: worse
  friend bool operator==(const ReasonShare&, const ReasonShare&) = default;
};

struct Reasons {
  bool kept = false;                 // nobody chose it: it was there. Nothing else is said of it
  bool included = false;             // it is wished for
  std::vector<MovementId> neededBy;  // movements of the class that are chosen and need it before them
  int others = 0;                    // movements that could stand in its place, so that the class keeps all it must
  const Movement* instead = nullptr; // the best of them; null: there is none
  const Option* option = nullptr;    // of it; null: as written
  std::vector<ReasonShare> shares;   // against it: parts that differ, the largest gain first
  Seconds worse;                     // the class would be by it, all together
  friend bool operator==(const Reasons&, const Reasons&) = default;
};

// `plan` is a class composed by these wishes, of which the steps in `chosen` were chosen and all others kept; a chosen
// step that has been changed since counts as kept. Nothing for a step that the class does not have. Movements and
// options are owned by the knowledge.
std::optional<Reasons> reasonsFor(const Knowledge& knowledge, const ClassWishes& wishes, std::span<const Person> roster,
                                  Date day, const ClassPlan& plan, std::span<const StepId> chosen, StepId step,
                                  std::span<const MovementId> unlike = {});

} // namespace matwright
