#include "ui/timeline/TerrainPainter.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

struct TerrainPainterText {
  Q_DECLARE_TR_FUNCTIONS(TerrainPainterText)
};

QFont scaled(QFont font, double factor) {
  if (font.pixelSize() > 0)
    font.setPixelSize(std::max(9, static_cast<int>(std::lround(font.pixelSize() * factor))));
  else
    font.setPointSizeF(std::max(7.0, font.pointSizeF() * factor));
  return font;
}

TextMeasure measureOf(const QFont& font) {
  const QFontMetricsF metrics(font);
  return {[metrics](const QString& text) { return metrics.horizontalAdvance(text); },
          std::ceil(metrics.ascent() + metrics.descent())};
}

QColor faded(QColor colour, double alpha) {
  colour.setAlphaF(static_cast<float>(alpha));
  return colour;
}

QPainterPath pathThrough(const std::vector<QPointF>& points) {
  QPainterPath path(points.front());
  for (std::size_t i = 1; i < points.size(); ++i)
    path.lineTo(points[i]);
  return path;
}

} // namespace

QColor mixed(const QColor& one, const QColor& other, double share) {
  const auto channel = [share](float a, float b) { return static_cast<float>(a * (1 - share) + b * share); };
  return QColor::fromRgbF(channel(one.redF(), other.redF()), channel(one.greenF(), other.greenF()),
                          channel(one.blueF(), other.blueF()));
}

TerrainTypefaces typefacesFrom(const QFont& font) {
  TerrainTypefaces typefaces{scaled(font, 0.9), scaled(font, 0.96), scaled(font, 0.82)};
  typefaces.name.setWeight(QFont::Medium);
  typefaces.heading.setWeight(QFont::DemiBold);
  return typefaces;
}

TerrainFonts measuresOf(const TerrainTypefaces& typefaces) {
  return {measureOf(typefaces.name), measureOf(typefaces.heading), measureOf(typefaces.small)};
}

bool TerrainAccent::isSelected(StepId step) const {
  return std::find(selected.begin(), selected.end(), step) != selected.end();
}

bool TerrainAccent::isGhost(StepId step) const { return std::find(ghosts.begin(), ghosts.end(), step) != ghosts.end(); }

TerrainPainter::TerrainPainter(QPainter& painter, const TerrainScene& scene, const TerrainGeometry& geometry,
                               const Theme& theme, const TerrainTypefaces& typefaces, const TerrainAccent& accent,
                               FigurePictures& figures, const QRectF& visible)
    : painter_(painter), scene_(scene), geometry_(geometry), theme_(theme), typefaces_(typefaces), accent_(accent),
      figures_(figures), visible_(visible) {}

void TerrainPainter::paintContent() {
  painter_.setRenderHint(QPainter::Antialiasing);
  paintGround();
  paintLandscape();
  paintHeader();
  paintOver();
  paintConnectors();
  paintGap();
  for (std::size_t i = 0; i < geometry_.blocks().size(); ++i)
    paintBlock(i);
  paintNames();
  const TerrainFoot foot = geometry_.frame().foot;
  if (foot != TerrainFoot::none)
    paintRuler();
  if (foot == TerrainFoot::all) {
    paintEffort();
    paintSpine();
  }
  if (!accent_.rubberBand.isEmpty()) {
    painter_.setPen(QPen(theme_.accent, 1));
    painter_.setBrush(faded(theme_.accent, 0.12));
    painter_.drawRect(accent_.rubberBand);
  }
}

void TerrainPainter::fillUpright(qreal left, qreal top, qreal right, qreal bottom, const QColor& colour) {
  painter_.setRenderHint(QPainter::Antialiasing, false);
  painter_.fillRect(QRect(QPoint(qRound(left), qRound(top)), QPoint(qRound(right) - 1, qRound(bottom) - 1)), colour);
  painter_.setRenderHint(QPainter::Antialiasing);
}

void TerrainPainter::paintGround() {
  const QRectF& terrain = geometry_.terrain();
  for (std::size_t i = 0; i < geometry_.sections().size(); ++i) {
    const SectionBand& band = geometry_.sections()[i];
    if (!isVisible(band.left, band.right))
      continue;
    fillUpright(band.left, 0, band.right, terrain.bottom(), sectionGround(i));
    if (band.empty) {
      painter_.setPen(QPen(theme_.inkSoft, 1, Qt::DashLine));
      painter_.setBrush(Qt::NoBrush);
      painter_.drawRoundedRect(
          QRectF(band.left + 5, terrain.top() + 6, band.right - band.left - 10, terrain.height() - 12), 6, 6);
      paintLines(QRectF(band.left + 8, terrain.top() + 12, band.right - band.left - 16, 40),
                 {TerrainPainterText::tr("empty")}, typefaces_.small, theme_.inkSoft,
                 geometry_.frame().fonts.small.line, Qt::AlignHCenter);
    }
  }
}

// The ground that the bodies lie and stand on, so that the outline of the class shows at a glance.
void TerrainPainter::paintLandscape() {
  const auto& blocks = geometry_.blocks();
  if (blocks.empty()) {
    paintFloors();
    return;
  }
  // In solid colours and, but for the slopes, in rectangles on whole pixels: blending one large path takes longer than
  // all the rest.
  const qreal bottom = geometry_.terrain().bottom();
  const auto groundOf = [&](const Block& block) {
    return mixed(sectionGround(block.place.section), theme_.ink, theme_.dark ? 0.08 : 0.055);
  };
  QPainterPath outline;
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    const Block& block = blocks[i];
    const qreal left = std::round(block.rect.left()), right = std::round(block.rect.right());
    const qreal floor = std::round(geometry_.lane(block.elevation).bottom);
    if (i > 0) {
      // The slope from the block before, which belongs to the section that it leads into.
      const QPointF from(std::round(blocks[i - 1].rect.right()),
                         std::round(geometry_.lane(blocks[i - 1].elevation).bottom));
      const qreal middle = (from.x() + left) / 2;
      if (isVisible(from.x(), left)) {
        const qreal lower = std::max(from.y(), floor);
        QPainterPath slope(from);
        slope.cubicTo(QPointF(middle, from.y()), QPointF(middle, floor), QPointF(left, floor));
        slope.lineTo(left, lower);
        slope.lineTo(from.x(), lower);
        painter_.fillPath(slope, groundOf(block));
        fillUpright(from.x(), lower, left, bottom, groundOf(block));
      }
      outline.cubicTo(QPointF(middle, from.y()), QPointF(middle, floor), QPointF(left, floor));
    } else {
      outline.moveTo(left, floor);
    }
    outline.lineTo(right, floor);
    if (isVisible(left, right))
      fillUpright(left, floor, right, bottom, groundOf(block));
  }
  paintFloors();
  painter_.setBrush(Qt::NoBrush);
  painter_.setPen(QPen(faded(theme_.floor, 0.75), 1.5));
  painter_.drawPath(outline);
}

void TerrainPainter::paintFloors() {
  for (const Lane& lane : geometry_.lanes()) {
    painter_.setPen(QPen(lane.used ? theme_.line : faded(theme_.line, 0.55), 1));
    const qreal y = std::round(lane.bottom) - 0.5;
    painter_.drawLine(QPointF(visible_.left(), y), QPointF(visible_.right(), y));
  }
}

void TerrainPainter::paintHeader() {
  const TerrainFonts& fonts = geometry_.frame().fonts;
  for (const SectionBand& band : geometry_.sections()) {
    painter_.setPen(QPen(theme_.line, 1));
    painter_.drawLine(QPointF(std::round(band.left) + 0.5, 0),
                      QPointF(std::round(band.left) + 0.5, geometry_.terrain().bottom()));
    if (band.label.isNull())
      continue;
    // The name stays in sight while its section is.
    const qreal length = band.length.isEmpty() ? 0 : 8 + fonts.small.width(band.length);
    const qreal furthest = band.right - 6 - band.label.width() - length;
    QRectF label = band.label;
    if (label.left() < visible_.left() + 6 && furthest > label.left())
      label.moveLeft(std::min(visible_.left() + 6, furthest));
    if (!isVisible(label.left(), label.right() + length))
      continue;
    painter_.setFont(typefaces_.heading);
    painter_.setPen(theme_.ink);
    painter_.drawText(label, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, band.name);
    if (!band.length.isEmpty()) {
      painter_.setFont(typefaces_.small);
      painter_.setPen(theme_.inkSoft);
      painter_.drawText(QRectF(label.right() + 7, label.top(), length, label.height()),
                        Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, band.length);
    }
  }
  if (scene_.steps.empty()) {
    const QRectF free(geometry_.endX() + 12, geometry_.terrain().top(),
                      std::max(0.0, visible_.right() - geometry_.endX() - 24), geometry_.terrain().height());
    painter_.setFont(typefaces_.heading);
    painter_.setPen(theme_.inkSoft);
    painter_.drawText(free, Qt::AlignCenter | Qt::TextWordWrap,
                      TerrainPainterText::tr("Drag a movement here to begin"));
  }
}

// What runs over the planned end, and the planned end itself.
void TerrainPainter::paintOver() {
  const QRectF& terrain = geometry_.terrain();
  const qreal target = geometry_.targetX();
  if (geometry_.endX() > target + 0.5) {
    const QRectF over(target, 0, geometry_.endX() - target, geometry_.ruler().bottom());
    painter_.fillRect(over, faded(theme_.ink, theme_.dark ? 0.10 : 0.06));
    painter_.fillRect(over, QBrush(faded(theme_.inkSoft, 0.28), Qt::BDiagPattern));
  }
  if (target > geometry_.contentSize().width())
    return;
  painter_.setPen(QPen(theme_.ink, 1.5, Qt::DashLine));
  painter_.drawLine(QPointF(target, geometry_.header().bottom()), QPointF(target, terrain.bottom()));
}

void TerrainPainter::paintConnectors() {
  for (const Connector& connector : geometry_.connectors()) {
    const qreal left = connector.points.front().x(), right = connector.points.back().x();
    if (!isVisible(left - 60, right + 60))
      continue;
    QColor colour = connector.change ? theme_.inkSoft : faded(theme_.inkSoft, 0.5);
    qreal width = 1.4;
    if (connector.caution) {
      colour = theme_.levels[static_cast<std::size_t>(*connector.caution)];
      width = 2.2;
    }
    QPen pen(colour, width, Qt::CustomDashLine, Qt::FlatCap, Qt::BevelJoin); // far cheaper than round dots
    pen.setDashPattern({1.1, 1.6});
    painter_.setPen(pen);
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPath(pathThrough(connector.points));
  }
  for (const Connector& connector : geometry_.connectors()) {
    if (connector.caution && !connector.mark.isNull())
      paintLevelMark(painter_, connector.mark, *connector.caution, theme_);
    if (!connector.label.isNull()) {
      painter_.setFont(typefaces_.small);
      painter_.setPen(connector.caution ? theme_.levels[static_cast<std::size_t>(*connector.caution)] : theme_.inkSoft);
      painter_.drawText(connector.label, Qt::AlignCenter | Qt::TextDontClip, connector.text);
    }
  }
}

// A label at the border of the view moves along as far as it still stands over its block and meets no other.
NameLabel TerrainPainter::inSight(std::size_t index) const {
  const Block& block = geometry_.blocks()[index];
  NameLabel label = *block.label;
  const QRectF view(visible_.left() + 2, 0, visible_.width() - 4, geometry_.contentSize().height());
  const qreal shift = label.rect.left() < view.left()     ? view.left() - label.rect.left()
                      : label.rect.right() > view.right() ? view.right() - label.rect.right()
                                                          : 0;
  if (shift == 0)
    return label;
  const QRectF moved = label.rect.translated(shift, 0);
  const qreal pole = std::clamp(label.from.x(), moved.left() + 2, moved.right() - 2);
  if (pole < block.rect.left() || pole > block.rect.right())
    return label;
  for (std::size_t i = 0; i < geometry_.blocks().size(); ++i) {
    const Block& other = geometry_.blocks()[i];
    if (i != index && (other.rect.intersects(moved) || (other.label && other.label->rect.intersects(moved))))
      return label;
  }
  label.rect = moved;
  label.from.setX(pole);
  label.to.setX(pole);
  return label;
}

void TerrainPainter::paintNames() {
  const qreal line = geometry_.frame().fonts.name.line;
  std::optional<qreal> gapLine;
  if (const GapSlot* gap = accent_.gap && accent_.ownGap ? geometry_.gap(*accent_.gap) : nullptr)
    gapLine = gap->x;
  for (std::size_t i = 0; i < geometry_.blocks().size(); ++i) {
    const Block& block = geometry_.blocks()[i];
    if (!block.label || !isVisible(block.label->rect.left(), block.label->rect.right()))
      continue;
    const NameLabel label = inSight(i);
    if (label.rect.left() < visible_.left() || label.rect.right() > visible_.right())
      continue; // whole or not at all
    const bool selected = accent_.isSelected(block.id) || accent_.isGhost(block.id);
    const QColor ground = selected ? theme_.accentSoft : sectionGround(block.place.section);
    if (label.hasLeader()) {
      painter_.setPen(QPen(selected ? theme_.accent : theme_.inkSoft, 1));
      painter_.drawLine(label.from, label.to);
      painter_.setBrush(selected ? theme_.accent : theme_.inkSoft);
      painter_.setPen(Qt::NoPen);
      painter_.drawEllipse(label.to, 1.8, 1.8);
    }
    if (selected || block.labelCoversLine ||
        (gapLine && std::abs(*gapLine - label.rect.center().x()) < label.rect.width() / 2 + 3)) {
      painter_.setPen(Qt::NoPen);
      painter_.setBrush(faded(ground, selected ? 1.0 : 0.85));
      painter_.drawRoundedRect(label.rect.adjusted(-1, 0, 1, 0), 3, 3);
    }
    paintLines(label.rect, label.lines, typefaces_.name, theme_.ink, line, Qt::AlignHCenter);
  }
}

void TerrainPainter::paintGap() {
  if (!accent_.gap)
    return;
  const GapSlot* gap = geometry_.gap(*accent_.gap);
  if (!gap || !isVisible(gap->x - 8, gap->x + 8))
    return;
  const QRectF& terrain = geometry_.terrain();
  const qreal top = terrain.top() + 2, bottom = terrain.bottom() - 2;
  // Behind the current step it is only marked at the borders; chosen on its own it goes all the way.
  const QColor colour = accent_.ownGap ? theme_.accent : faded(theme_.accent, 0.7);
  painter_.setPen(QPen(colour, accent_.ownGap ? 2 : 1.2));
  if (accent_.ownGap) {
    painter_.drawLine(QPointF(gap->x, top), QPointF(gap->x, bottom));
  } else {
    painter_.drawLine(QPointF(gap->x, top), QPointF(gap->x, top + 12));
    painter_.drawLine(QPointF(gap->x, bottom - 12), QPointF(gap->x, bottom));
  }
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(colour);
  const qreal size = accent_.ownGap ? 5.5 : 4;
  const QPointF upper(gap->x, top + size), lower(gap->x, bottom - size);
  painter_.drawPolygon(QPolygonF({upper, upper + QPointF(-size, -size), upper + QPointF(size, -size)}));
  painter_.drawPolygon(QPolygonF({lower, lower + QPointF(-size, size), lower + QPointF(size, size)}));
}

void TerrainPainter::paintGutter() {
  const TerrainFrame& frame = geometry_.frame();
  const qreal left = visible_.left() - frame.gutter;
  painter_.fillRect(QRectF(left, 0, frame.gutter, geometry_.contentSize().height()), theme_.ground);
  for (const Lane& lane : geometry_.lanes()) {
    const bool roomy = lane.height() >= 2 * frame.fonts.name.line + 2;
    const QFont& font = lane.used && roomy ? typefaces_.name : typefaces_.small;
    const TextMeasure& measure = lane.used && roomy ? frame.fonts.name : frame.fonts.small;
    const QString name = text(lane.elevation);
    const auto wrap = wrapWithin(name, frame.gutter - 12, roomy ? 2 : 1, measure);
    const QStringList lines = wrap ? wrap->lines : QStringList{name};
    const qreal height = measure.line * static_cast<qreal>(lines.size());
    paintLines(QRectF(left + 8, (lane.top + lane.bottom - height) / 2, frame.gutter - 12, height), lines, font,
               lane.used ? theme_.ink : theme_.inkSoft, measure.line, Qt::AlignLeft);
    painter_.setPen(QPen(lane.used ? theme_.line : faded(theme_.line, 0.55), 1));
    const qreal y = std::round(lane.bottom) - 0.5;
    painter_.drawLine(QPointF(left, y), QPointF(visible_.left(), y));
  }
  const auto title = [&](const QRectF& strip, const QString& text) {
    paintLines(
        QRectF(left + 8, strip.center().y() - frame.fonts.small.line / 2, frame.gutter - 30, frame.fonts.small.line),
        {text}, typefaces_.small, theme_.inkSoft, frame.fonts.small.line, Qt::AlignLeft);
  };
  if (frame.foot == TerrainFoot::none)
    return;
  title(geometry_.ruler(), TerrainPainterText::tr("Minutes"));
  if (frame.foot == TerrainFoot::ruler)
    return;
  paintStripLegend();
  paintLoadAxis();
  title(geometry_.spineStrip(), TerrainPainterText::tr("Spine"));
  painter_.setFont(typefaces_.small);
  painter_.setPen(theme_.inkSoft);
  for (const int mark : {0, 5, 10}) {
    const qreal y = geometry_.effortY(mark);
    const qreal half = frame.fonts.small.line / 2;
    const qreal centre =
        std::clamp(y, geometry_.effortStrip().top() + half - 3, geometry_.effortStrip().bottom() - half + 2);
    painter_.drawText(QRectF(left, centre - half, frame.gutter - 7, 2 * half),
                      Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, QString::number(mark));
    painter_.drawLine(QPointF(visible_.left() - 4, y), QPointF(visible_.left(), y));
  }
}

} // namespace matwright
