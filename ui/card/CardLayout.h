// Where everything stands on the card, found by measuring. Lengths are in units of paper, so that half points are whole
// pixels of a font.
#pragma once

#include "ui/card/CardWords.h"
#include "ui/paper/Pdf.h"

#include <QFont>
#include <QLineF>
#include <QRectF>
#include <QSizeF>
#include <optional>
#include <vector>

namespace matwright {

inline constexpr qreal kSmallestPoints = 7.0; // below it a card is no longer legible at arm's length
inline constexpr qreal kLargestPoints = 12.5;

struct PlacedText {
  QRectF box;
  QString text; // with its line breaks
  QFont font;
  bool soft = false;    // secondary text
  bool toRight = false; // aligned to the right edge of the box
};

struct PlacedMark {
  QRectF square;
  Level level{};
};

struct PlacedFigure {
  QRectF box;
  std::optional<KeyPoses> poses; // none for a movement that is not in the catalogue
};

struct PlacedBar { // beside the rows of a section
  QRectF box;
  std::size_t section = 0;
};

struct PlacedPage {
  std::vector<PlacedText> texts;
  std::vector<PlacedMark> marks;
  std::vector<PlacedFigure> figures;
  std::vector<PlacedBar> bars;
  std::vector<QLineF> rules;
  QRectF terrain;
};

struct CardLayout {
  QSizeF paper; // units
  std::vector<PlacedPage> pages;
  qreal points = 0; // size of the names of movements
  int columns = 1;
  Density density{};
  bool legible = true; // false: smaller than kSmallestPoints, a second page should be offered
};

// The layout with the largest type that fits the pages: sizes are scanned downwards in half points for one to three
// columns and three densities. One page always fits, however long the class. `paperMillimetres`: A4 is 210 x 297.
CardLayout layOut(const Card& card, QSizeF paperMillimetres, int pages = 1);

} // namespace matwright
