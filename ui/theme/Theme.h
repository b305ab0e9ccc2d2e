// Colours and marks shared by every view. Each caution level has a shape and a word of its own, so that colour is
// never the only sign.
#pragma once

#include "core/body/Body.h"
#include "core/screening/Rule.h"

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPalette>
#include <array>

namespace matwright {

struct Theme {
  bool dark = false;
  QColor ground;     // behind everything
  QColor panel;      // cards, blocks, fields
  QColor ink;        // text
  QColor inkSoft;    // secondary text, still at least 4.5:1 on ground and panel
  QColor line;       // hairlines and borders
  QColor accent;     // what is selected or acts
  QColor accentSoft; // ground of what is selected
  QColor onAccent;   // text on accent
  QColor bodyNear, bodyFar, bodyAccent, floor;
  QColor ghost;                   // outline of what would be
  std::array<QColor, 4> sections; // grounds of the sections, in turn
  std::array<QColor, kWordCount<Level>> levels;
  std::array<QColor, kWordCount<SpineAction>> spine; // with ink as their text
  QColor onSpine;
};

// The theme that belongs to a palette: dark when its text is light. The text alone decides,
// because a style sheet may make the base of a view transparent.
const Theme& themeFor(const QPalette& palette);
const Theme& lightTheme();
const Theme& darkTheme();
// For paper: black, white and greys.
const Theme& printTheme();

// The palette for Qt's own widgets that goes with a theme.
QPalette paletteOf(const Theme& theme);

// Small corrections to Qt's own style (Fusion): fields, buttons, scroll bars, tool tips.
QString styleSheetOf(const Theme& theme);

// Paints the mark of a level to fill a square: a crossed square, a diamond with a question mark, a triangle, a ring.
// `outlined`: for paper, where only `leave out` is filled.
void paintLevelMark(QPainter& painter, const QRectF& square, Level level, const Theme& theme, bool outlined = false);
// WCAG 2.2 contrast ratio, 1 to 21.
double contrast(const QColor& one, const QColor& other);

// The family bundled with the program. loadFonts() must have been called once.
QString textFamily();
void loadFonts();

} // namespace matwright
