#include "ui/theme/Theme.h"

#include <QFontDatabase>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

static void initialiseFontResource() { Q_INIT_RESOURCE(matwright_fonts); }

namespace matwright {
namespace {

Theme makeLight() {
  Theme theme;
  theme.ground = QColor("#f6f4ef");
  theme.panel = QColor("#ffffff");
  theme.ink = QColor("#22303a");
  theme.inkSoft = QColor("#5a6570");
  theme.line = QColor("#d9d4c8");
  theme.accent = QColor("#1d6f70");
  theme.accentSoft = QColor("#dcebe9");
  theme.onAccent = QColor("#ffffff");
  theme.bodyNear = QColor("#2b3a44");
  theme.bodyFar = QColor("#93a5ab");
  theme.bodyAccent = QColor("#1d7f80");
  theme.floor = QColor("#b7a98f");
  theme.ghost = QColor("#1d6f70");
  theme.sections = {QColor("#f0ece3"), QColor("#e7efeb"), QColor("#f4eadd"), QColor("#e9eaf2")};
  theme.levels = {QColor("#5a6570"), QColor("#0068a8"), QColor("#9a5b00"), QColor("#ad3300")};
  theme.spine = {QColor("#d8dee0"), QColor("#eeb548"), QColor("#8cc6ea"), QColor("#e0a8c5"), QColor("#a9d6b4")};
  theme.onSpine = QColor("#1c262d");
  return theme;
}

Theme makeDark() {
  Theme theme;
  theme.dark = true;
  theme.ground = QColor("#171c20");
  theme.panel = QColor("#21282e");
  theme.ink = QColor("#e8ebea");
  theme.inkSoft = QColor("#a5b0b5");
  theme.line = QColor("#3b454c");
  theme.accent = QColor("#5cc0bb");
  theme.accentSoft = QColor("#1f3f41");
  theme.onAccent = QColor("#0e1a1b");
  theme.bodyNear = QColor("#e3e8e8");
  theme.bodyFar = QColor("#75858c");
  theme.bodyAccent = QColor("#5cc0bb");
  theme.floor = QColor("#8a7d66");
  theme.ghost = QColor("#5cc0bb");
  theme.sections = {QColor("#242420"), QColor("#1e2827"), QColor("#2a251f"), QColor("#22242e")};
  theme.levels = {QColor("#a5b0b5"), QColor("#6cbcf0"), QColor("#f0ad4a"), QColor("#ff8a60")};
  theme.spine = {QColor("#8f999e"), QColor("#e2a83d"), QColor("#7db9de"), QColor("#d59aba"), QColor("#93c7a0")};
  theme.onSpine = QColor("#11181c");
  return theme;
}

Theme makePrint() {
  Theme theme;
  theme.ground = theme.panel = Qt::white;
  theme.ink = Qt::black;
  theme.inkSoft = QColor("#404040");
  theme.line = QColor("#8c8c8c");
  theme.accent = Qt::black;
  theme.accentSoft = QColor("#e6e6e6");
  theme.onAccent = Qt::white;
  theme.bodyNear = QColor("#1a1a1a");
  theme.bodyFar = QColor("#9a9a9a");
  theme.bodyAccent = QColor("#1a1a1a");
  theme.floor = QColor("#a8a8a8");
  theme.ghost = QColor("#bdbdbd");
  theme.sections = {QColor("#9a9a9a"), QColor("#9a9a9a"), QColor("#1a1a1a"), QColor("#9a9a9a")};
  theme.levels.fill(Qt::black);
  theme.spine.fill(QColor("#d0d0d0"));
  theme.onSpine = Qt::black;
  return theme;
}

double channel(double value) { return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4); }

double luminance(const QColor& colour) {
  return 0.2126 * channel(colour.redF()) + 0.7152 * channel(colour.greenF()) + 0.0722 * channel(colour.blueF());
}

} // namespace

const Theme& lightTheme() {
  static const Theme theme = makeLight();
  return theme;
}

const Theme& darkTheme() {
  static const Theme theme = makeDark();
  return theme;
}

const Theme& printTheme() {
  static const Theme theme = makePrint();
  return theme;
}

const Theme& themeFor(const QPalette& palette) {
  return palette.color(QPalette::Text).lightness() > 127 ? darkTheme() : lightTheme();
}

void paintLevelMark(QPainter& painter, const QRectF& square, Level level, const Theme& theme, bool outlined) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor colour = theme.levels[static_cast<std::size_t>(level)];
  const QColor inside = theme.dark ? theme.onAccent : QColor(Qt::white);
  const qreal size = std::min(square.width(), square.height());
  const QPointF centre = square.center();
  const qreal stroke = size * 0.11;
  const qreal reach = size * 0.5 - stroke * 0.5;
  QPen pen(colour, stroke, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
  painter.setPen(pen);
  painter.setBrush(outlined ? Qt::NoBrush : QBrush(colour));
  switch (level) {
  case Level::watch:
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, size * 0.14));
    painter.drawEllipse(centre, reach * 0.86, reach * 0.86);
    break;
  case Level::adapt: {
    const QPointF shift(0, reach * 0.16);
    painter.drawPolygon(
        QPolygonF({centre + shift + QPointF(0, -reach), centre + shift + QPointF(reach * 0.95, reach * 0.7),
                   centre + shift + QPointF(-reach * 0.95, reach * 0.7)}));
    break;
  }
  case Level::askFirst: {
    painter.drawPolygon(QPolygonF({centre + QPointF(0, -reach), centre + QPointF(reach, 0), centre + QPointF(0, reach),
                                   centre + QPointF(-reach, 0)}));
    QFont font(textFamily());
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(size * 0.62))));
    font.setBold(true);
    QPainterPath sign;
    sign.addText(0, 0, font, QStringLiteral("?"));
    const QRectF box = sign.boundingRect();
    const qreal scale = size * 0.5 / std::max<qreal>(box.height(), 1);
    painter.translate(centre);
    painter.scale(scale, scale);
    painter.translate(-box.center());
    painter.fillPath(sign, outlined ? colour : inside);
    break;
  }
  case Level::leaveOut: {
    painter.setBrush(colour);
    painter.drawRoundedRect(QRectF(centre.x() - reach * 0.9, centre.y() - reach * 0.9, reach * 1.8, reach * 1.8),
                            stroke, stroke);
    painter.setPen(QPen(inside, stroke * 1.15, Qt::SolidLine, Qt::RoundCap));
    const qreal arm = reach * 0.42;
    painter.drawLine(centre + QPointF(-arm, -arm), centre + QPointF(arm, arm));
    painter.drawLine(centre + QPointF(-arm, arm), centre + QPointF(arm, -arm));
    break;
  }
  }
  painter.restore();
}

double contrast(const QColor& one, const QColor& other) {
  const double a = luminance(one);
  const double b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QString textFamily() { return QStringLiteral("Inter"); }

void loadFonts() {
  initialiseFontResource();
  for (const char* weight : {"Regular", "SemiBold", "Bold"})
    QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/Inter-%1.otf").arg(QLatin1String(weight)));
}

} // namespace matwright
