// What could stand in the place of a step, in words.
#pragma once

#include "core/evaluate/Swaps.h"

#include <QString>
#include <QStringList>
#include <span>
#include <vector>

namespace matwright {

// "Saw (knees bent)"; of the movement that is there already "Knees bent" or "As written".
QString swapName(const Swap& swap);
// All in one line: "Head down - 2 cautions gone, +0:20".
QString swapText(const Swap& swap);

// "Length +0:12, 1 change of position fewer, moving -0:08, needs: ring"; also where nothing of it changes.
QString disturbanceText(const Swap& swap);
// What they have in common: "Like it: abdominals, neck, bend". `own` may be null, for a movement that nobody knows.
QString likenessText(const Movement* own, const Swap& swap);
// "Roll up would not come before Saw, Open leg rocker, which it prepares", one line for each that prepares.
QStringList unpreparedText(std::span<const Unprepared> unprepared);
// What every one of them leaves unprepared, because the step itself prepares it; worth saying once.
std::vector<Unprepared> unpreparedByAll(std::span<const Swap> swaps);
std::vector<Unprepared> without(std::vector<Unprepared> all, std::span<const Unprepared> others);

// A line with the mark that belongs beside it, if any.
struct SwapLine {
  QString words;
  std::optional<Level> level;
  friend bool operator==(const SwapLine&, const SwapLine&) = default;
};
// What it does to the cautions on the class, strongest first: "Takes away ask first: Rosa, Imre (2)", then what it
// brings, then what is left at the step where that is not said already. Never empty, and never that something is safe.
// `evaluation` is of the class as it is.
std::vector<SwapLine> cautionLines(const Swap& swap, StepId step, const Evaluation& evaluation,
                                   std::span<const Person> roster);
// The same one by one, with what was found. `after` is the class with the swap done.
QStringList cautionDetails(const Swap& swap, const Knowledge& knowledge, const ClassPlan& before,
                           const ClassPlan& after, const Evaluation& evaluation, std::span<const Person> roster);

} // namespace matwright
