// Figures as scalable drawings for other programs: vectors alone, on no ground of their own.
#pragma once

#include "ui/figure/FigurePaint.h"
#include "ui/figure/MovementPaint.h"

#include <QByteArray>
#include <QString>

namespace matwright {

// For those who hear a drawing instead of seeing it.
struct FigureCaption {
  QString title;       // such as the movement with its option
  QString description; // what is drawn, in sentences
};

enum class FigureEnds { start, end, both };
template <> struct Words<FigureEnds> { static constexpr auto list = wordList("start", "end", "both"); };

// A drawing as large as it needs to be: its view box is in units of a thousandth of the stature, and it has no other
// size. `both` shows the end pose before the start pose, with the arrows of the way between them.
QByteArray figureSvg(const KeyPoses& poses, FigureEnds ends, const FigureCaption& caption, const FigureStyle& style);

// On white.
FigureStyle svgStyle(EnumSet<Region> regions);

} // namespace matwright
