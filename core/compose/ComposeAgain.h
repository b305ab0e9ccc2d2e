// Composing a part of a class anew, while the rest stays.
#pragma once

#include "core/compose/Compose.h"

namespace matwright {

// The class with no other steps than these, and those that their movements need before them.
ClassPlan keptWith(const Catalogue& catalogue, const ClassPlan& plan, std::span<const StepId> steps);

// What `plan` has in steps that `kept` has not, each once.
std::vector<MovementId> movementsBeyond(const ClassPlan& plan, const ClassPlan& kept);

// A composed class with other steps in one section. Those of the other sections stay, and those that others need before
// them. `base` is the part of `plan` that nobody chose: all else must keep the wishes, as when it was composed at once,
// and is in `chosen`. Where no section has a length, all but this one take what they take now. A search that chooses
// something elsewhere, or brings about what the whole class must not have, is begun again with the next seed, at the
// most kSectionTries times in all; then nothing was found.
inline constexpr int kSectionTries = 4;
Result<ComposeResult, WishesFault> sectionComposedAgain(const Knowledge& knowledge, const ClassWishes& wishes,
                                                        std::span<const Person> roster, Date day, const ClassPlan& base,
                                                        const ClassPlan& plan, std::size_t section,
                                                        const ComposeLimits& limits = {},
                                                        std::span<const MovementId> unlike = {});

} // namespace matwright
