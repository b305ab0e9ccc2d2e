#pragma once

#include <QString>

namespace matwright {

struct Theme;

// How the classes of a text look, on paper and on screen: the style sheet of a QTextDocument, lengths in CSS pixels.
//
//   soft    secondary text            level   words that weigh
//   band    a heading on a ground     ruled   a cell of a table with a line above
QString textStyleOf(const Theme& theme);
inline constexpr int kTextIndent = 14; // of lists

} // namespace matwright
