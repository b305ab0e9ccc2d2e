#pragma once

#include "core/movement/Movement.h"
#include "ui/controls/RowText.h"

namespace matwright {

// A movement as a row of a list: its figure, lines of text beside it and `below` it, and where `keepsLevel` room for
// the mark of a level at the right.
struct MovementRow {
  static constexpr QSize kFigure{66, 50};

  const Movement* movement = nullptr;
  const Option* option = nullptr; // null: as written
  std::vector<RowText> lines, below{};
  bool keepsLevel = false;
  std::optional<Level> level{};
};

void paint(QPainter& painter, const QStyleOptionViewItem& option, const MovementRow& row, const QWidget& on);
// How high the row is at a width.
int heightOf(const MovementRow& row, const QFont& font, int width);

// The end pose of a movement as a small picture, remembered from one painting to the next.
QPixmap movementPixmap(const Movement& movement, const Option* option, const QSize& size, const QWidget& on);

} // namespace matwright
