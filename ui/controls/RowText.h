// Text inside rows that a delegate paints: it wraps, so a row is as tall as its words need.
#pragma once

#include "core/screening/Rule.h"

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPixmap>
#include <QStyleOptionViewItem>
#include <optional>
#include <vector>

namespace matwright {

struct Theme;

struct RowText {
  QString text;
  QFont font;
  QColor colour;
  std::optional<Level> mark{}; // before the text, which then begins after it in all its lines
};

int heightOf(const RowText& line, int width);
// One below the other; empty ones take no room.
int heightOf(const std::vector<RowText>& lines, int width);
void paint(QPainter& painter, const QRect& area, const std::vector<RowText>& lines);

// The theme that rows are painted in: the application's, whatever palette a view has of its own.
const Theme& rowTheme();

// The ground of a row: selected, under the pointer, and a frame when it has the keyboard's attention.
void paintRowGround(QPainter& painter, const QStyleOptionViewItem& option);

// What hangs on the pointer while something is dragged: a card with its name and, where there is one, its figure.
QPixmap dragPixmap(const QString& text, const QPixmap& figure, const QWidget& from);

} // namespace matwright
