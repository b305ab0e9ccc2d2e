#include "ui/controls/RowText.h"

#include "ui/controls/LevelMark.h"
#include "ui/theme/Theme.h"

#include <QFontMetrics>
#include <QGuiApplication>
#include <QWidget>
#include <algorithm>

namespace matwright {
namespace {

// The room that the mark of a line takes at its left.
int markRoom(const RowText& line) { return line.mark ? levelMarkSize(line.font) + 4 : 0; }

} // namespace

int heightOf(const RowText& line, int width) {
  if (line.text.isEmpty())
    return 0;
  return QFontMetrics(line.font)
      .boundingRect(QRect(0, 0, width - markRoom(line), 1 << 20), Qt::TextWordWrap, line.text)
      .height();
}

int heightOf(const std::vector<RowText>& lines, int width) {
  int height = 0;
  for (const RowText& line : lines)
    height += heightOf(line, width);
  return height;
}

void paint(QPainter& painter, const QRect& area, const std::vector<RowText>& lines) {
  QRect rest = area;
  for (const RowText& line : lines) {
    const int height = heightOf(line, area.width());
    if (height == 0)
      continue;
    if (line.mark) {
      const int side = levelMarkSize(line.font);
      paintLevelMark(painter, QRectF(rest.left() + 1, rest.top() + 1, side - 2, side - 2), *line.mark, rowTheme());
    }
    painter.setFont(line.font);
    painter.setPen(line.colour);
    painter.drawText(QRect(rest.left(), rest.top(), rest.width(), height).adjusted(markRoom(line), 0, 0, 0),
                     Qt::TextWordWrap, line.text);
    rest.setTop(rest.top() + height);
  }
}

const Theme& rowTheme() { return themeFor(QGuiApplication::palette()); }

void paintRowGround(QPainter& painter, const QStyleOptionViewItem& option) {
  const Theme& theme = rowTheme();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF card = QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5);
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  const bool hovered = option.state.testFlag(QStyle::State_MouseOver);
  QColor edge = hovered ? theme.line : QColor(Qt::transparent);
  if (option.state.testFlag(QStyle::State_HasFocus))
    edge = theme.accent;
  painter.setPen(QPen(edge, 1));
  painter.setBrush(selected ? theme.accentSoft : QColor(Qt::transparent));
  painter.drawRoundedRect(card, 5, 5);
  painter.restore();
}

QPixmap dragPixmap(const QString& text, const QPixmap& figure, const QWidget& from) {
  constexpr int kEdge = 8, kWidest = 220;
  const Theme& theme = rowTheme();
  const RowText line{text, from.font(), theme.ink};
  const QSize drawn = figure.isNull() ? QSize() : (QSizeF(figure.size()) / figure.devicePixelRatio()).toSize();
  const int left = kEdge + (figure.isNull() ? 0 : drawn.width() + kEdge);
  const int wide = std::min(QFontMetrics(line.font).horizontalAdvance(text) + 2, kWidest);
  const int tall = heightOf(line, wide);
  const QSize size(left + wide + kEdge, std::max(tall, figure.isNull() ? 0 : drawn.height()) + 2 * kEdge);

  QPixmap pixmap(size * from.devicePixelRatioF());
  pixmap.setDevicePixelRatio(from.devicePixelRatioF());
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.accent, 1));
  painter.setBrush(theme.panel);
  painter.drawRoundedRect(QRectF(QPointF(0.5, 0.5), QSizeF(size) - QSizeF(1, 1)), 6, 6);
  if (!figure.isNull())
    painter.drawPixmap(kEdge, (size.height() - drawn.height()) / 2, figure);
  paint(painter, QRect(left, (size.height() - tall) / 2, wide, tall), {line});
  return pixmap;
}

} // namespace matwright
