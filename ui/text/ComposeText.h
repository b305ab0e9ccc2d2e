// Composing a class from wishes, in words.
#pragma once

#include "core/compose/Reasons.h"

#include <QString>

namespace matwright {

QString text(Challenge challenge);  // "gentle"
QString text(ComposePart part);     // of what a class costs: "moving about"
QString text(ComposeStatus status); // "Composed"
QString text(WishesFault fault);    // a sentence
QString text(Wish wish);            // "the lengths of the sections"

// Whom and what sentences are about.
struct ComposeNames {
  const Knowledge& knowledge;
  std::span<const Person> roster;
  const ClassWishes& wishes;
};

// Why wishes cannot be met, one sentence: "Roll-up is to be left out, and Teaser needs it before."
QString text(const Obstacle& obstacle, const ComposeNames& names);
// "Hips: 4:10 of 6:40".
QString text(const Shortfall& shortfall);
// "Moving about 3:20, cautions 1:15"; what costs most first, and what costs nothing left out. Empty for nothing.
QString text(const ComposeCost& cost);

// Why a step was chosen: "wished for; needed before Teaser; Dead bug in its place would be worse by 14 s (effort off
// the arc 12 s, moving about 2 s)".
QString text(const Reasons& reasons, const ComposeNames& names);
// The last part of it.
QString comparedText(const Reasons& reasons, const ComposeNames& names);

// Composed classes and their sections have names, as files ask for: these where the wishes give none.
void nameWhatHasNone(ClassPlan& plan);

} // namespace matwright
