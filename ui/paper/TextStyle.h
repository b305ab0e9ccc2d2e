#pragma once

#include <QString>

namespace matwright {

struct Theme;

// How the classes of a text look, on paper and on screen: the style sheet of a QTextDocument, lengths in CSS pixels.
//
//   soft    secondary text        level   a word that weighs, in capitals
//   box     a table as a frame
inline constexpr int kTextIndent = 14; // of lists
QString textStyleOf(const Theme& theme);

} // namespace matwright
