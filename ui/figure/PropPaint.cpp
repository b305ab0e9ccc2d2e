#include "ui/figure/PropPaint.h"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>

namespace matwright {

namespace {

QColor mixed(const QColor& a, const QColor& b, float share) {
  const auto part = [share](float from, float to) { return from + (to - from) * share; };
  return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()), part(a.blueF(), b.blueF()));
}

} // namespace

void paintPiece(QPainter& painter, const PicturePiece& piece, const FigurePlacing& placing, const FigureStyle& style) {
  const FigureColours& colours = style.colours;
  const QColor edge = mixed(colours.floor, colours.near, piece.held ? 0.3F : 0.18F);
  const QColor ground = colours.paper.isValid() ? colours.paper : QColor(Qt::white);
  const QColor fill = piece.held ? mixed(colours.floor, ground, 0.25F) : mixed(colours.floor, ground, 0.5F);
  const double thin = std::max(style.thinnest * 0.55, placing.scale * 0.006);
  const double width = std::max(2 * piece.radius * placing.scale, thin);
  QPolygonF points;
  for (const Point2 point : piece.points)
    points << placing.at(point);
  switch (piece.kind) {
  case PicturePiece::Kind::area:
  case PicturePiece::Kind::frame:
    painter.setPen(QPen(edge, thin, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(piece.kind == PicturePiece::Kind::area ? QBrush(fill) : QBrush(Qt::NoBrush));
    painter.drawPolygon(points);
    break;
  case PicturePiece::Kind::line:
  case PicturePiece::Kind::loop:
    painter.setBrush(Qt::NoBrush);
    if (piece.held && colours.paper.isValid()) { // a seam, where it crosses the body
      painter.setPen(QPen(colours.paper, width + thin, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
      piece.kind == PicturePiece::Kind::line ? painter.drawPolyline(points) : painter.drawPolygon(points);
    }
    painter.setPen(QPen(edge, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    piece.kind == PicturePiece::Kind::line ? painter.drawPolyline(points) : painter.drawPolygon(points);
    break;
  case PicturePiece::Kind::disc:
    painter.setPen(QPen(edge, thin));
    painter.setBrush(fill);
    painter.drawEllipse(points.front(), width / 2 - thin / 2, width / 2 - thin / 2);
    break;
  }
}

void paintWallBehind(QPainter& painter, const QRectF& box, double floor, double top, double line,
                     const QColor& colour) {
  QColor fill = colour;
  fill.setAlphaF(fill.alphaF() * 0.28F);
  painter.fillRect(QRectF(QPointF(box.left(), std::max(top, box.top())), QPointF(box.right(), floor)), fill);
  painter.setPen(QPen(colour, line * 0.6));
  painter.drawLine(QLineF(box.left(), floor - 3 * line, box.right(), floor - 3 * line));
}

} // namespace matwright
