#include "ui/figure/MovementPaint.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <deque>

namespace matwright {

namespace {

constexpr std::size_t kMostKept = 256;
constexpr double kHead = 4.4;      // length of an arrow's head in widths of its line
constexpr double kShortest = 2.2;  // heads: a shorter arrow says nothing
constexpr double kHalfHead = 0.42; // half the breadth of a head in its lengths

double lengthOf(const QPolygonF& line) {
  double sum = 0;
  for (qsizetype i = 1; i < line.size(); ++i)
    sum += QLineF(line[i - 1], line[i]).length();
  return sum;
}

// The line without its last stretch, which the head takes.
QPolygonF shaftOf(const QPolygonF& line, double head) {
  QPolygonF shaft = line;
  double left = head;
  while (shaft.size() > 2) {
    const double link = QLineF(shaft[shaft.size() - 2], shaft.back()).length();
    if (link > left)
      break;
    left -= link;
    shaft.removeLast();
  }
  QLineF last(shaft[shaft.size() - 2], shaft.back());
  last.setLength(std::max(last.length() - left, 1e-6));
  shaft.back() = last.p2();
  return shaft;
}

QPolygonF headOf(const QPolygonF& shaft, QPointF tip) {
  const QPointF way = tip - shaft.back();
  const QPointF aside(-way.y() * kHalfHead, way.x() * kHalfHead);
  return {{tip, shaft.back() + aside, shaft.back() - aside}};
}

} // namespace

bool movesInOnePicture(const KeyPoses& poses) {
  return poses.start != poses.end && poses.start.view == poses.end.view && poses.start.flip == poses.end.flip;
}

MovementPicture pictureOf(const Passage& passage) {
  MovementPicture picture{pictureOf(passage.end()), pictureOf(passage.start()), pathsOfMotion(passage), {}};
  picture.frame = picture.body.extent;
  picture.frame.unite(picture.ghost->extent);
  for (const PathOfMotion& path : picture.paths)
    for (const Point2 point : path.points)
      picture.frame.takeIn(point);
  return picture;
}

MovementPicture pictureOf(const KeyPoses& poses) {
  if (movesInOnePicture(poses))
    return pictureOf(Passage(*settledOnce(poses.start), *settledOnce(poses.end)));
  MovementPicture picture;
  picture.body = pictureOf(*settledOnce(poses.end));
  picture.frame = picture.body.extent;
  return picture;
}

std::shared_ptr<const MovementPicture> pictureOnce(const KeyPoses& poses) {
  static thread_local std::deque<std::pair<KeyPoses, std::shared_ptr<const MovementPicture>>> kept;
  const auto found = std::find_if(kept.begin(), kept.end(), [&](const auto& each) { return each.first == poses; });
  if (found != kept.end())
    return found->second;
  if (kept.size() >= kMostKept)
    kept.pop_front();
  return kept.emplace_back(poses, std::make_shared<const MovementPicture>(pictureOf(poses))).second;
}

void paintMovement(QPainter& painter, const QRectF& box, const MovementPicture& picture, const FigureStyle& style) {
  paintFigure(painter, box, picture.body, picture.ghost ? &*picture.ghost : nullptr, picture.frame, style);
  paintPaths(painter, picture.paths, placingOf(box, picture.body, picture.frame, style), style);
}

void paintPaths(QPainter& painter, const std::vector<PathOfMotion>& paths, const FigurePlacing& placing,
                const FigureStyle& style) {
  const double width = std::max(placing.scale * 0.0095, style.thinnest * 0.75);
  const double head = width * kHead;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  for (const PathOfMotion& path : paths) {
    QPolygonF line;
    for (const Point2 point : path.points)
      line << placing.at(point);
    if (lengthOf(line) < kShortest * head)
      continue;
    const QPolygonF shaft = shaftOf(line, head), arrow = headOf(shaft, line.back());
    const auto draw = [&](const QColor& colour, double more) {
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(colour, width + more, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
      painter.drawPolyline(shaft);
      painter.setBrush(colour);
      painter.setPen(more > 0 ? QPen(colour, more, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin) : QPen(Qt::NoPen));
      painter.drawPolygon(arrow);
    };
    if (style.colours.paper.isValid())
      draw(style.colours.paper, width * 1.4);
    draw(style.colours.path, 0);
  }
  painter.restore();
}

} // namespace matwright
