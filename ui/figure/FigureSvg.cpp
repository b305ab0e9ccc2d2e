#include "ui/figure/FigureSvg.h"

#include "ui/theme/Theme.h"

#include <QBuffer>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <cmath>

namespace matwright {

namespace {

constexpr double kUnitsPerStature = 1000, kMargin = 30;

// Stand in the drawing for what is said of it: Qt 6.4 writes words as they are, ampersands and all.
constexpr QLatin1String kTitle("matwright-title"), kDescription("matwright-description");

// The first element says how the drawing is to be read, and nothing of a size: it takes the one it is given.
QByteArray finished(const QByteArray& svg, const FigureCaption& caption) {
  QString text = QString::fromUtf8(svg);
  const qsizetype begin = text.indexOf(QLatin1String("<svg")), end = text.indexOf(QLatin1Char('>'), begin);
  QString head = text.mid(begin, end - begin);
  static const QRegularExpression size(QStringLiteral("\\s(width|height)=\"[^\"]*\""));
  head.remove(size);
  head.insert(4, QStringLiteral(" role=\"img\""));
  text.replace(begin, end - begin, head);
  text.replace(kTitle, caption.title.toHtmlEscaped());
  text.replace(kDescription, caption.description.toHtmlEscaped());
  return text.toUtf8();
}

MovementPicture pictureOf(const KeyPoses& poses, FigureEnds ends) {
  if (ends == FigureEnds::both)
    return pictureOf(poses);
  const Pose& pose = ends == FigureEnds::start ? poses.start : poses.end;
  return pictureOf(KeyPoses{pose, pose});
}

} // namespace

FigureStyle svgStyle(EnumSet<Region> regions) {
  FigureStyle style;
  style.colours = figureColours(lightTheme(), Qt::white);
  style.unitsPerStature = kUnitsPerStature;
  style.thinnest = 8;
  style.regions = regions;
  return style;
}

QByteArray figureSvg(const KeyPoses& poses, FigureEnds ends, const FigureCaption& caption, const FigureStyle& style) {
  const MovementPicture picture = pictureOf(poses, ends);
  const double scale = style.unitsPerStature.value_or(kUnitsPerStature);
  FigureStyle scaled = style;
  scaled.unitsPerStature = scale;
  const QRectF sheet(0, 0, std::ceil(picture.frame.width() * scale + 2 * kMargin),
                     std::ceil(picture.frame.height() * scale + 2 * kMargin));
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setViewBox(sheet);
  generator.setTitle(kTitle);
  generator.setDescription(kDescription);
  QPainter painter(&generator);
  paintMovement(painter, sheet.adjusted(kMargin, kMargin, -kMargin, -kMargin), picture, scaled);
  painter.end();
  return finished(buffer.data(), caption);
}

} // namespace matwright
