// Blocks of the terrain, and the chip that says what a gesture would do.
#include "ui/timeline/StepFigure.h"
#include "ui/timeline/TerrainPainter.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

qreal widest(const QStringList& lines, const TextMeasure& measure) {
  qreal width = 0;
  for (const QString& line : lines)
    width = std::max(width, measure.width(line));
  return width;
}

} // namespace

void TerrainPainter::paintLines(const QRectF& rect, const QStringList& lines, const QFont& font, const QColor& colour,
                                qreal line, Qt::Alignment alignment) {
  painter_.setFont(font);
  painter_.setPen(colour);
  for (int i = 0; i < lines.size(); ++i)
    painter_.drawText(QRectF(rect.left(), rect.top() + i * line, rect.width(), line),
                      static_cast<int>(alignment | Qt::AlignVCenter) | Qt::TextDontClip | Qt::TextSingleLine, lines[i]);
}

void TerrainPainter::paintBlock(std::size_t index) {
  const Block& block = geometry_.blocks()[index];
  const TerrainStep& step = scene_.steps[index];
  if (!isVisible(block.rect.left() - 4, block.rect.right() + 4))
    return;
  const bool selected = accent_.isSelected(block.id);
  const bool ghost = accent_.isGhost(block.id);
  const bool current = accent_.current == block.id;
  const qreal radius = std::min(5.0, block.rect.width() / 3);
  QColor fill = theme_.panel;
  if (ghost)
    fill = mixed(theme_.panel, theme_.accentSoft, 0.75);
  else if (selected)
    fill = theme_.accentSoft;
  QPen border(mixed(theme_.line, theme_.inkSoft, 0.45), 1);
  if (ghost)
    border = QPen(theme_.ghost, 1.6, Qt::DashLine);
  else if (selected)
    border = QPen(theme_.accent, current ? 2.2 : 1.6);
  painter_.setPen(border);
  painter_.setBrush(fill);
  const qreal inset = border.widthF() / 2;
  painter_.drawRoundedRect(block.rect.adjusted(inset, inset, -inset, -inset), radius, radius);

  if (current) {
    // A foot under the block: the one that the inspector shows.
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(theme_.accent);
    painter_.drawRect(QRectF(block.rect.left(), block.rect.bottom(), block.rect.width(), 3));
    if (accent_.focused) {
      painter_.setBrush(Qt::NoBrush);
      painter_.setPen(QPen(theme_.ink, 1.2, Qt::DotLine));
      painter_.drawRoundedRect(block.rect.adjusted(-3, -3, 3, 4), radius + 2, radius + 2);
    }
  }

  const BlockFace& face = block.face;
  const TerrainFonts& fonts = geometry_.frame().fonts;
  figures_.paint(painter_, face.figure, step.pose, step.region, theme_, fill);
  const bool beside = face.showsName() && face.name.left() > face.figure.right() - 1;
  const bool stacked = face.showsName() && !beside;
  if (block.sideChange && block.rect.width() > 14) {
    // Where one side hands over to the other: a notch in the border, on the side without text.
    const qreal edge = face.showsName() ? block.rect.bottom() - 1 : block.rect.top() + 1;
    painter_.setPen(QPen(theme_.inkSoft, 1.2));
    painter_.drawLine(QPointF(*block.sideChange, edge), QPointF(*block.sideChange, edge + (face.showsName() ? -4 : 4)));
  }
  if (face.showsName()) {
    // A name stays in sight as long as its block has room for it; at the border of the view it is whole or not there.
    QRectF name = face.name;
    const qreal width = widest(face.nameLines, fonts.name);
    if (stacked && name.left() < visible_.left() + 4)
      name.moveLeft(std::clamp(visible_.left() + 4, name.left(), std::max(name.left(), face.name.right() - width)));
    if (name.left() >= visible_.left() && name.left() + width <= visible_.right())
      paintLines(name, face.nameLines, typefaces_.name, theme_.ink, fonts.name.line, Qt::AlignLeft);
  }
  paintLines(face.dose, face.doseLines, typefaces_.small, theme_.inkSoft, fonts.small.line,
             beside || stacked ? Qt::AlignLeft : Qt::AlignHCenter);
  if (step.caution && !face.mark.isNull())
    paintLevelMark(painter_, face.mark, *step.caution, theme_);
}

void paintChip(QPainter& painter, QPointF pointer, const QRectF& within, const QString& text,
               std::optional<Level> level, const QFont& font, const Theme& theme) {
  const QFontMetricsF metrics(font);
  const qreal mark = level ? metrics.height() + 5 : 0;
  const QSizeF wanted(metrics.horizontalAdvance(text) + mark + 20, metrics.height() + 12);
  // In two lines when the view is narrower than the text.
  const bool narrow = wanted.width() > within.width() - 8;
  QRectF textBox(0, 0, std::min(wanted.width() - mark - 20, within.width() - mark - 28), metrics.height());
  if (narrow)
    textBox = metrics.boundingRect(QRectF(0, 0, textBox.width(), 1000), Qt::TextWordWrap, text);
  const QSizeF size(textBox.width() + mark + 20, textBox.height() + 12);
  QPointF corner = pointer + QPointF(16, 18);
  if (corner.x() + size.width() > within.right() - 4)
    corner.setX(std::max(within.left() + 4, within.right() - 4 - size.width()));
  if (corner.y() + size.height() > within.bottom() - 4)
    corner.setY(std::max(within.top() + 4, pointer.y() - 12 - size.height()));
  const QRectF chip(corner, size);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.accent, 1.2));
  painter.setBrush(theme.panel);
  painter.drawRoundedRect(chip, 6, 6);
  if (level)
    paintLevelMark(
        painter, QRectF(chip.left() + 9, chip.center().y() - metrics.height() / 2, metrics.height(), metrics.height()),
        *level, theme);
  painter.setFont(font);
  painter.setPen(theme.ink);
  painter.drawText(
      chip.adjusted(10 + mark, 6, -10, -6),
      static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter) | (narrow ? Qt::TextWordWrap : Qt::TextSingleLine), text);
}

} // namespace matwright
