#include "ui/card/CardPainter.h"

#include "ui/figure/MovementPaint.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

// The class as one line: time to the right, height how far the body is from the floor, with a ruler in minutes.
void paintTerrain(QPainter& painter, const QRectF& box, const Card& card) {
  if (card.terrain.size() < 2 || card.length <= Seconds{})
    return;
  const Theme& theme = printTheme();
  QFont font(textFamily());
  font.setPixelSize(static_cast<int>(8 * kUnitsPerPoint));
  const QFontMetricsF metrics(font);
  const QRectF ground = box.adjusted(0, 3 * kUnitsPerPoint, 0, -metrics.height() - 2 * kUnitsPerPoint);
  const auto x = [&](Seconds at) { return ground.left() + ground.width() * (at / card.length); };
  const auto y = [&](Elevation elevation) {
    return ground.bottom() - ground.height() * static_cast<double>(elevation) / (kWordCount<Elevation> - 1);
  };
  // A height holds until shortly before the next one is reached.
  QPolygonF line;
  for (std::size_t i = 0; i < card.terrain.size(); ++i) {
    const TerrainPoint& point = card.terrain[i];
    if (i > 0) {
      const Seconds ramp = std::min(Seconds(6), (point.at - card.terrain[i - 1].at) / 2);
      line << QPointF(x(point.at - ramp), y(card.terrain[i - 1].elevation));
    }
    line << QPointF(x(point.at), y(point.elevation));
  }
  painter.setPen(QPen(theme.ink, 1.4 * kUnitsPerPoint, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(line);
  painter.setFont(font);
  int stride = 1; // minutes between the marks of the ruler
  for (int wider : {1, 2, 5, 10, 15, 30, 60})
    if (stride = wider; x(minutes(wider)) - x(Seconds{}) > 40 * kUnitsPerPoint)
      break;
  for (int minute = 0; minute <= card.length.minutes(); minute += stride) {
    const qreal at = x(minutes(minute));
    painter.setPen(QPen(theme.line, 0.6 * kUnitsPerPoint));
    painter.drawLine(QPointF(at, ground.bottom() + kUnitsPerPoint), QPointF(at, ground.bottom() + 3 * kUnitsPerPoint));
    painter.setPen(theme.inkSoft);
    const QString label = QString::number(minute);
    const qreal width = metrics.horizontalAdvance(label) + 2;
    const qreal left = std::clamp(at - width / 2, box.left(), box.right() - width);
    painter.drawText(QRectF(left, box.bottom() - metrics.height(), width, metrics.height()), Qt::AlignCenter, label);
  }
}

// The end pose; with where it comes from and the way between, where that leaves it large enough to be read.
void paintStep(QPainter& painter, const QRectF& box, const KeyPoses& poses, const FigureStyle& style) {
  constexpr double kLeastHeight = 30 * kUnitsPerPoint, kLeastShare = 0.8;
  const auto picture = pictureOnce(poses);
  const Picture& body = picture->body;
  const double alone = placingOf(box, body, body.extent, style).scale;
  if (box.height() >= kLeastHeight && placingOf(box, body, picture->frame, style).scale >= kLeastShare * alone)
    paintMovement(painter, box, *picture, style);
  else
    paintFigure(painter, box, body, nullptr, body.extent, style);
}

} // namespace

void paintCard(QPainter& painter, const QRectF& target, const Card& card, const CardLayout& layout, std::size_t page) {
  const PlacedPage& placed = layout.pages.at(page);
  const Theme& theme = printTheme();
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.translate(target.topLeft());
  painter.scale(target.width() / layout.paper.width(), target.height() / layout.paper.height());
  painter.fillRect(QRectF(QPointF(), layout.paper), theme.panel);
  for (const QLineF& rule : placed.rules) {
    painter.setPen(QPen(theme.ink, 1.1 * kUnitsPerPoint));
    painter.drawLine(rule);
  }
  for (const PlacedBar& bar : placed.bars) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(bar.section % 2 == 0 ? theme.line : theme.ink);
    painter.drawRoundedRect(bar.box, bar.box.width() / 2, bar.box.width() / 2);
  }
  FigureStyle style;
  style.colours = printColours();
  style.thinnest = 1.1 * kUnitsPerPoint;
  for (const PlacedFigure& figure : placed.figures)
    if (figure.poses)
      paintStep(painter, figure.box, *figure.poses, style);
  for (const PlacedMark& mark : placed.marks)
    paintLevelMark(painter, mark.square, mark.level, theme, true);
  for (const PlacedText& text : placed.texts) {
    painter.setFont(text.font);
    painter.setPen(text.soft ? theme.inkSoft : theme.ink);
    painter.drawText(text.box, (text.toRight ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop | Qt::TextDontClip,
                     text.text);
  }
  if (!placed.terrain.isEmpty())
    paintTerrain(painter, placed.terrain, card);
  painter.restore();
}

} // namespace matwright
