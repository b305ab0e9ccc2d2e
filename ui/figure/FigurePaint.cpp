#include "ui/figure/FigurePaint.h"

#include "core/figure/Passage.h"
#include "ui/figure/PropPaint.h"
#include "ui/theme/Theme.h"

#include <QPainter>
#include <QRectF>
#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

constexpr double kWholeWidth = 0.9;      // of a part that a region takes in a small figure, so that its colour is seen
constexpr double kSmallestExtent = 0.62; // statures: a body that makes itself small is not blown up beyond this

// Where the muscles of a region are: a stretch of beads, how wide against the part, how far to the front or back.
struct Working {
  bool trunk, arms, legs; // which parts
  std::size_t from, to;
  double width, front;
};

std::optional<Working> workingPlace(Region region) {
  using Body = PosedBody;
  switch (region) {
  case Region::neck:
    return Working{true, false, false, Body::kNeck, Body::kSkull, 0.8, 0};
  case Region::shoulders:
    return Working{false, true, false, 0, 0, 1.0, 0};
  case Region::arms:
    return Working{false, true, false, 0, 2, 0.6, 0};
  case Region::wrists:
    return Working{false, true, false, 2, 2, 1.4, 0};
  case Region::upperBack:
    return Working{true, false, false, Body::kThorax, Body::kNeck, 0.45, -0.5};
  case Region::lowerBack:
    return Working{true, false, false, Body::kLumbar, Body::kThorax, 0.45, -0.5};
  case Region::abdominals:
    return Working{true, false, false, Body::kLumbar, Body::kThorax, 0.5, 0.45};
  case Region::waist:
    return Working{true, false, false, Body::kLumbar + 1, Body::kThorax, 0.7, 0};
  case Region::pelvicFloor:
    return Working{true, false, false, Body::kPelvis, Body::kPelvis, 0.6, 0};
  case Region::hips:
    return Working{false, false, true, 0, 0, 0.85, -0.1};
  case Region::frontThigh:
    return Working{false, false, true, 0, 1, 0.45, 0.45};
  case Region::backThigh:
    return Working{false, false, true, 0, 1, 0.45, -0.45};
  case Region::innerThigh:
    return Working{false, false, true, 0, 1, 0.5, 0};
  case Region::lowerLeg:
    return Working{false, false, true, 1, 2, 0.6, -0.2};
  case Region::breathing:
    return Working{true, false, false, Body::kThorax, Body::kNeck - 1, 0.6, 0.2};
  }
  return std::nullopt;
}

// Regions that lie behind the near leg from the side, and are painted over it.
constexpr EnumSet<Region> kHidden{Region::pelvicFloor};

bool isArm(BodyPart part) { return part == BodyPart::armNear || part == BodyPart::armFar; }
bool isLeg(BodyPart part) { return part == BodyPart::legNear || part == BodyPart::legFar; }

QColor mixed(const QColor& a, const QColor& b, double share) {
  const auto part = [share](int from, int to) { return from + static_cast<int>(std::lround((to - from) * share)); };
  return QColor(part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue()),
                part(a.alpha(), b.alpha()));
}

void paintWorking(QPainter& painter, const PicturePart& part, EnumSet<Region> regions, const FigurePlacing& placing,
                  const FigureStyle& style) {
  painter.setPen(Qt::NoPen);
  const double small = smallness(placing, style.thinnest);
  regions.forEach([&](Region region) {
    const std::optional<Working> place = workingPlace(region);
    if (!place || !((part.part == BodyPart::trunk && place->trunk) || (isArm(part.part) && place->arms) ||
                    (isLeg(part.part) && place->legs)))
      return;
    painter.setBrush(mixed(style.colours.accent, style.colours.far, part.farness * 0.5));
    painter.drawPath(stretchOf(part, place->from, place->to,
                               place->width + (std::max(place->width, kWholeWidth) - place->width) * small,
                               place->front * (1 - small / 2), placing, style.thinnest * (0.6 + 0.4 * small)));
  });
}

void paintBody(QPainter& painter, const Picture& picture, const FigurePlacing& placing, const FigureStyle& style) {
  const FigureColours& colours = style.colours;
  const double width = placing.scale * 0.009;
  const double seam = colours.paper.isValid() && width > 0.2 * style.thinnest ? width : 0;
  auto piece = picture.pieces.begin();
  const auto paintPieces = [&](double depth) {
    for (; piece != picture.pieces.end() && piece->depth <= depth; ++piece)
      paintPiece(painter, *piece, placing, style);
  };
  for (const PicturePart& part : picture.parts) {
    paintPieces(part.depth);
    painter.setPen(Qt::NoPen);
    const FigureShape shape = shapeOf(part, placing, style.thinnest, seam);
    if (!shape.seam.isEmpty()) {
      painter.setBrush(colours.paper);
      painter.drawPath(shape.seam);
    }
    painter.setBrush(mixed(colours.near, colours.far, part.farness));
    painter.drawPath(shape.whole);
    paintWorking(painter, part, style.regions.without(kHidden), placing, style);
  }
  paintPieces(1e9);
  for (const PicturePart& part : picture.parts)
    paintWorking(painter, part, style.regions & kHidden, placing, style);
}

void paintGhost(QPainter& painter, const Picture& picture, const FigurePlacing& placing, const FigureStyle& style) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(style.colours.ghost);
  for (const PicturePart& part : picture.parts)
    painter.drawPath(shapeOf(part, placing, style.thinnest).whole);
}

FigurePlacing placed(const QRectF& box, const Extent& frame, bool onFloor, double floorLine, const FigureStyle& style) {
  FigurePlacing placing;
  const double width = std::max(frame.width(), 0.05), height = std::max(frame.height(), 0.05);
  placing.scale = style.unitsPerStature.value_or(std::min({box.width() / width, (box.height() - floorLine) / height,
                                                           std::min(box.width(), box.height()) / kSmallestExtent}));
  placing.x = box.center().x() - placing.scale * (frame.lowest.x + frame.highest.x) / 2;
  placing.y = onFloor ? box.bottom() - floorLine + placing.scale * frame.lowest.y
                      : box.center().y() + placing.scale * (frame.lowest.y + frame.highest.y) / 2;
  return placing;
}

double floorLine(const QRectF& box, const FigureStyle& style) {
  return std::clamp(std::min(box.width(), box.height()) / 80, style.thinnest * 0.6, style.thinnest * 2.4);
}

void paintMat(QPainter& painter, const Extent& mat, const FigurePlacing& placing, double line, const QColor& colour) {
  QColor fill = colour;
  fill.setAlphaF(fill.alphaF() * 0.22F);
  painter.setBrush(fill);
  painter.setPen(QPen(colour, line * 0.7));
  painter.drawRoundedRect(QRectF(placing.at({mat.lowest.x, mat.highest.y}), placing.at({mat.highest.x, mat.lowest.y})),
                          placing.scale * 0.02, placing.scale * 0.02);
}

// Floor and wall touch the body from outside.
void paintFloorAndWall(QPainter& painter, const QRectF& box, const Picture& picture, const FigurePlacing& placing,
                       double line, const QColor& colour) {
  painter.setPen(QPen(colour, line, Qt::SolidLine, Qt::FlatCap));
  const double floor = placing.y + line / 2;
  if (picture.hasFloor)
    painter.drawLine(QLineF(box.left(), floor, box.right(), floor));
  if (picture.wall) {
    const double x = placing.at({*picture.wall, 0}).x() + picture.wallSide * line / 2;
    const double height = std::min(box.height(), std::max(picture.extent.height(), 0.5) * placing.scale + line);
    painter.drawLine(picture.hasFloor ? QLineF(x, floor - height, x, floor) : QLineF(x, box.top(), x, box.bottom()));
  }
}

} // namespace

FigureColours figureColours(const Theme& theme, const QColor& paper) {
  FigureColours colours;
  colours.near = theme.bodyNear;
  colours.far = theme.bodyFar;
  colours.ghost = mixed(paper, theme.bodyFar, 0.4);
  colours.accent = theme.bodyAccent;
  colours.path = theme.accent;
  colours.floor = theme.floor;
  colours.paper = paper;
  return colours;
}

FigureColours printColours() {
  FigureColours colours;
  colours.near = Qt::black;
  colours.far = QColor(0x96, 0x96, 0x96);
  colours.ghost = QColor(0xdc, 0xdc, 0xdc);
  colours.accent = QColor(0x60, 0x60, 0x60);
  colours.path = Qt::black;
  colours.floor = QColor(0xa0, 0xa0, 0xa0);
  colours.paper = Qt::white;
  return colours;
}

FigurePlacing placingOf(const QRectF& box, const Picture& picture, const Extent& frame, const FigureStyle& style) {
  return placed(box, frame, picture.hasFloor, style.floor && picture.hasFloor ? floorLine(box, style) : 0, style);
}

void paintFigure(QPainter& painter, const QRectF& box, const Picture& picture, const Picture* ghost,
                 const Extent& frame, const FigureStyle& style) {
  const double line = floorLine(box, style);
  const FigurePlacing placing = placingOf(box, picture, frame, style);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (style.floor && picture.mat)
    paintMat(painter, *picture.mat, placing, line, style.colours.floor);
  if (style.floor && picture.wallBehind)
    paintWallBehind(painter, box, placing.y, placing.y - (picture.extent.height() + 0.05) * placing.scale, line,
                    style.colours.floor);
  if (ghost != nullptr)
    paintGhost(painter, *ghost, placing, style);
  paintBody(painter, picture, placing, style);
  if (style.floor)
    paintFloorAndWall(painter, box, picture, placing, line, style.colours.floor);
  painter.restore();
}

void paintFigure(QPainter& painter, const QRectF& box, const Pose& pose, const FigureStyle& style) {
  const Picture picture = pictureOf(*settledOnce(pose));
  paintFigure(painter, box, picture, nullptr, picture.extent, style);
}

void paintFigure(QPainter& painter, const QRectF& box, const Pose& pose, const Pose& ghost, const FigureStyle& style) {
  if (pose.view != ghost.view || pose.flip != ghost.flip) {
    paintFigure(painter, box, pose, style);
    return;
  }
  const std::shared_ptr<const Settled> behind = settledOnce(ghost);
  const Picture picture = pictureOf(alignedTo(*behind, *settledOnce(pose)));
  const Picture faint = pictureOf(*behind);
  Extent frame = picture.extent;
  frame.unite(faint.extent);
  paintFigure(painter, box, picture, &faint, frame, style);
}

} // namespace matwright
