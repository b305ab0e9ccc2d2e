// What stands under the terrain on the same scale: ruler, effort, spine.
#include "ui/text/LoadText.h"
#include "ui/text/VocabularyText.h"
#include "ui/timeline/TerrainPainter.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

struct TerrainPainterText {
  Q_DECLARE_TR_FUNCTIONS(TerrainPainterText)
};

// Whole minutes as "12", what lies between as "12:30", from an hour on as "1:05".
QString tickText(Seconds at) {
  const long whole = std::lround(at.value());
  return whole % 60 == 0 ? QString::number(whole / 60) : clock(at);
}

// What tells the line of loads from the others.
void paintLoadMark(QPainter& painter, QPointF centre, const Theme& theme) {
  constexpr qreal kHalf = 3.2;
  painter.setPen(QPen(theme.ground, 0.8));
  painter.setBrush(theme.ink);
  painter.drawPolygon(QPolygonF({centre + QPointF(-kHalf, 0), centre + QPointF(0, -kHalf), centre + QPointF(kHalf, 0),
                                 centre + QPointF(0, kHalf)}));
}

} // namespace

void TerrainPainter::paintRuler() {
  const QRectF& ruler = geometry_.ruler();
  painter_.setPen(QPen(theme_.inkSoft, 1));
  painter_.drawLine(QPointF(visible_.left(), ruler.top() + 0.5), QPointF(visible_.right(), ruler.top() + 0.5));
  painter_.setFont(typefaces_.small);

  // The planned end has its own text; ticks make room for it.
  const TextMeasure& small = geometry_.frame().fonts.small;
  const QString planned = TerrainPainterText::tr("planned end %1").arg(clock(scene_.target));
  const qreal width = small.width(planned) + 8;
  const bool near = geometry_.targetX() <= visible_.right() - 2;
  QRectF plate(0, ruler.top() + 4, width, small.line + 2);
  if (near)
    plate.moveLeft(std::clamp(geometry_.targetX() - width / 2, visible_.left(),
                              std::max(visible_.left(), visible_.right() - width - 2)));
  else
    plate.moveLeft(visible_.right() - width - 12);
  const bool platedShown = near ? geometry_.targetX() >= visible_.left() : width < visible_.width() / 2;

  for (const Tick& tick : geometry_.ticks()) {
    if (!isVisible(tick.x - 30, tick.x + 30))
      continue;
    painter_.setPen(QPen(theme_.inkSoft, 1));
    painter_.drawLine(QPointF(tick.x, ruler.top()), QPointF(tick.x, ruler.top() + (tick.major ? 5 : 3)));
    if (!tick.major)
      continue;
    const QString text = tickText(tick.at);
    const qreal half = small.width(text) / 2;
    const QRectF label(std::max(tick.x - half, tick.at.value() == 0 ? 1.0 : -1e9), ruler.top() + 5, 2 * half,
                       small.line);
    if (platedShown && label.adjusted(-5, 0, 5, 0).intersects(plate))
      continue;
    painter_.drawText(label, Qt::AlignCenter | Qt::TextDontClip, text);
  }
  if (!platedShown)
    return;
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(theme_.ground);
  painter_.drawRect(plate);
  painter_.setPen(theme_.ink);
  painter_.drawText(plate, Qt::AlignCenter | Qt::TextDontClip, planned);
  if (!near) {
    // It lies further on.
    const QPointF tip(visible_.right() - 3, plate.center().y());
    painter_.setPen(QPen(theme_.ink, 1.4));
    painter_.drawPolyline(QPolygonF({tip + QPointF(-5, -4), tip, tip + QPointF(-5, 4)}));
  }
}

void TerrainPainter::paintEffort() {
  painter_.setPen(QPen(theme_.line, 1));
  for (const int mark : {5, 10}) {
    const qreal y = std::round(geometry_.effortY(mark)) + 0.5;
    painter_.drawLine(QPointF(visible_.left(), y), QPointF(visible_.right(), y));
  }
  const qreal floor = geometry_.effortY(0);
  const QColor fill = mixed(theme_.ground, theme_.accent, theme_.dark ? 0.35 : 0.26);
  QPainterPath edge;
  for (std::size_t i = 0; i < geometry_.blocks().size(); ++i) {
    const QRectF& block = geometry_.blocks()[i].rect;
    if (!isVisible(block.left(), block.right()))
      continue;
    const qreal top = std::min(geometry_.effortY(scene_.steps[i].effort), floor - 1);
    fillUpright(block.left(), top, block.right(), floor, fill);
    edge.moveTo(block.left(), top);
    edge.lineTo(block.right(), top);
  }
  painter_.setPen(QPen(theme_.accent, 1.8));
  painter_.drawPath(edge);
  painter_.setPen(QPen(theme_.inkSoft, 1));
  painter_.drawLine(QPointF(visible_.left(), floor + 0.5), QPointF(visible_.right(), floor + 0.5));

  paintWishedEffort();
  paintLoad();
}

void TerrainPainter::paintWishedEffort() {
  if (scene_.length.value() <= 0)
    return;
  QPainterPath wished;
  const qreal from = std::max(0.0, visible_.left()), to = std::min(geometry_.endX(), visible_.right());
  bool drawing = false;
  for (qreal x = from; x <= to; x += 3) {
    if (geometry_.scale().isInPad(x)) { // no time passes there
      drawing = false;
      continue;
    }
    const QPointF point(x, geometry_.effortY(wishedEffort(geometry_.scale().timeOf(x), scene_.length)));
    if (drawing)
      wished.lineTo(point);
    else
      wished.moveTo(point);
    drawing = true;
  }
  painter_.setPen(QPen(theme_.ink, 1.2, Qt::DashLine));
  painter_.setBrush(Qt::NoBrush);
  painter_.drawPath(wished);
}

// The mean of each step as a line with a diamond, from which a thinner one goes up to the peak.
void TerrainPainter::paintLoad() {
  if (scene_.loadScale <= 0)
    return;
  for (std::size_t i = 0; i < geometry_.blocks().size(); ++i) {
    const QRectF& block = geometry_.blocks()[i].rect;
    const TerrainStep& step = scene_.steps[i];
    if (!step.pose || !isVisible(block.left(), block.right()))
      continue;
    const qreal mean = geometry_.loadY(step.load), peak = geometry_.loadY(step.loadPeak);
    const QPointF centre(block.center().x(), mean);
    if (mean - peak > 4) {
      painter_.setPen(QPen(theme_.inkSoft, 1));
      painter_.drawLine(centre, QPointF(centre.x(), peak));
      const qreal half = std::min(4.0, block.width() / 2);
      painter_.drawLine(QPointF(centre.x() - half, peak), QPointF(centre.x() + half, peak));
    }
    painter_.setPen(QPen(theme_.ink, 1.6));
    painter_.drawLine(QPointF(block.left(), mean), QPointF(block.right(), mean));
    paintLoadMark(painter_, centre, theme_);
  }
}

void TerrainPainter::paintStripLegend() {
  const TerrainFrame& frame = geometry_.frame();
  const QRectF& strip = geometry_.effortStrip();
  const qreal left = visible_.left() - frame.gutter + 8, line = frame.fonts.small.line;
  const bool both = scene_.loadScale > 0;
  const qreal top = strip.center().y() - (both ? line + 1 : line / 2);
  const auto say = [&](qreal x, qreal y, const QString& words) {
    paintLines(QRectF(x, y, frame.gutter - (x - left) - 30, line), {words}, typefaces_.small, theme_.inkSoft, line,
               Qt::AlignLeft);
  };
  say(left, top, TerrainPainterText::tr("Effort"));
  if (!both)
    return;
  const qreal second = top + line + 2, middle = second + line / 2;
  painter_.setPen(QPen(theme_.ink, 1.6));
  painter_.drawLine(QPointF(left - 4, middle), QPointF(left + 10, middle));
  paintLoadMark(painter_, {left + 3, middle}, theme_);
  say(left + 14, second, TerrainPainterText::tr("Low back"));
}

// At the right border, where the scale of the loads stands.
void TerrainPainter::paintLoadAxis() {
  if (scene_.loadScale <= 0)
    return;
  const TextMeasure& small = geometry_.frame().fonts.small;
  const QRectF& strip = geometry_.effortStrip();
  const bool roomy = strip.height() >= 3 * small.line;
  for (const double share : {0.5, 1.0}) {
    if (share < 1 && !roomy)
      continue;
    const QString words = share < 1 ? momentNumber(scene_.loadScale * share) : momentText(scene_.loadScale);
    const qreal y = std::max(geometry_.loadY(scene_.loadScale * share), strip.top() + small.line / 2 - 3);
    const qreal width = small.width(words) + 12;
    const QRectF plate(visible_.right() - width, y - small.line / 2, width, small.line);
    QColor ground = theme_.ground;
    ground.setAlphaF(0.85F);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(ground);
    painter_.drawRoundedRect(plate, 3, 3);
    painter_.setFont(typefaces_.small);
    painter_.setPen(theme_.ink);
    painter_.drawText(plate.adjusted(0, 0, -8, 0), Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, words);
    painter_.drawLine(QPointF(visible_.right() - 4, y), QPointF(visible_.right(), y));
  }
}

void TerrainPainter::paintSpine() {
  const QRectF& strip = geometry_.spineStrip();
  const TextMeasure& small = geometry_.frame().fonts.small;
  const auto& blocks = geometry_.blocks();
  for (std::size_t i = 0; i < blocks.size();) {
    // Neighbours that do the same are one span.
    std::size_t last = i;
    while (last + 1 < blocks.size() && scene_.steps[last + 1].spine == scene_.steps[i].spine &&
           (scene_.steps[last + 1].pose != nullptr) == (scene_.steps[i].pose != nullptr))
      ++last;
    const QRectF span(blocks[i].rect.left(), strip.top(), blocks[last].rect.right() - blocks[i].rect.left(),
                      strip.height());
    const SpineAction action = scene_.steps[i].spine;
    const bool known = scene_.steps[i].pose != nullptr;
    i = last + 1;
    if (!isVisible(span.left(), span.right()))
      continue;
    painter_.setPen(known ? QPen(Qt::NoPen) : QPen(theme_.inkSoft, 1, Qt::DashLine));
    painter_.setBrush(known ? QBrush(theme_.spine[static_cast<std::size_t>(action)]) : QBrush(Qt::NoBrush));
    painter_.drawRoundedRect(span, 3, 3);
    if (!known)
      continue;
    const QString word = shortText(action);
    const qreal glyph = std::min(strip.height() - 4, 14.0);
    if (small.width(word) + glyph + 10 <= span.width()) {
      const qreal left = span.center().x() - (small.width(word) + glyph + 3) / 2;
      paintSpineGlyph(painter_, QRectF(left, span.center().y() - glyph / 2, glyph, glyph), action, theme_.onSpine);
      painter_.setFont(typefaces_.small);
      painter_.setPen(theme_.onSpine);
      painter_.drawText(QRectF(left + glyph + 3, span.top(), small.width(word), span.height()),
                        Qt::AlignCenter | Qt::TextDontClip, word);
    } else if (small.width(word) + 4 <= span.width()) {
      painter_.setFont(typefaces_.small);
      painter_.setPen(theme_.onSpine);
      painter_.drawText(span, Qt::AlignCenter | Qt::TextDontClip, word);
    } else {
      const qreal size = std::min(glyph, span.width() - 1);
      paintSpineGlyph(painter_, QRectF(span.center().x() - size / 2, span.center().y() - size / 2, size, size), action,
                      theme_.onSpine);
    }
  }
}

void paintSpineGlyph(QPainter& painter, const QRectF& square, SpineAction action, const QColor& colour) {
  const qreal w = square.width(), h = square.height();
  const auto at = [&](double x, double y) { return QPointF(square.left() + x * w, square.top() + y * h); };
  QPainterPath path;
  switch (action) {
  case SpineAction::neutral: // level
    path.moveTo(at(0.1, 0.5));
    path.lineTo(at(0.9, 0.5));
    break;
  case SpineAction::flexion: // a back that rounds
    path.moveTo(at(0.1, 0.75));
    path.quadTo(at(0.5, -0.15), at(0.9, 0.75));
    break;
  case SpineAction::extension: // a back that hollows
    path.moveTo(at(0.1, 0.25));
    path.quadTo(at(0.5, 1.15), at(0.9, 0.25));
    break;
  case SpineAction::sideBend: // leaning over
    path.moveTo(at(0.3, 0.95));
    path.quadTo(at(0.25, 0.35), at(0.8, 0.1));
    break;
  case SpineAction::rotation: { // about itself
    path.arcMoveTo(QRectF(at(0.18, 0.18), QSizeF(w * 0.64, h * 0.64)), 30);
    path.arcTo(QRectF(at(0.18, 0.18), QSizeF(w * 0.64, h * 0.64)), 30, 285);
    const QPointF tip = path.currentPosition();
    path.moveTo(tip + QPointF(-w * 0.24, -h * 0.02));
    path.lineTo(tip);
    path.lineTo(tip + QPointF(w * 0.04, h * 0.24));
    break;
  }
  }
  painter.setPen(QPen(colour, std::clamp(w * 0.13, 1.0, 1.8), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);
}

} // namespace matwright
