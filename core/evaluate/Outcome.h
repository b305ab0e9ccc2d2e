// What of a class two ways to compose it are compared by.
#pragma once

#include "core/evaluate/Group.h"

#include <vector>

namespace matwright {

struct Outcome {
  Schedule schedule;
  std::vector<Caution> cautions; // in an order by which two outcomes can be told apart
};

Outcome outcomeOf(const Knowledge& knowledge, const Group& group, const ClassPlan& plan);

// Whether the caution is about a running sum, which has no place of its own: it may pass its threshold elsewhere
// without being another one.
bool isRunning(const Caution& caution);

// The cautions of `with` that are not there in `without`. One that moves along with a running total is not new, nor one
// that stays with its step while the step is done otherwise.
std::vector<Caution> newCautions(const Outcome& without, const Outcome& with);

// Some of the people of a class, by their places in Evaluation::people.
class Chosen {
public:
  // Nobody of `wanted` in the class, or nobody wanted: everybody is chosen.
  Chosen(std::span<const PersonId> inClass, std::span<const PersonId> wanted);
  // One that is for everybody concerns the chosen too.
  bool concernedBy(const Caution& caution) const;

private:
  std::vector<bool> chosen_; // by person; empty: everybody
};

using LevelCounts = std::array<int, kWordCount<Level>>; // by level, how many cautions

LevelCounts countLevels(std::span<const Caution> cautions);
std::optional<Level> strongestOf(const LevelCounts& counts);

} // namespace matwright
