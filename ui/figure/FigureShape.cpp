#include "ui/figure/FigureShape.h"

#include <QRectF>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace matwright {

namespace {

struct Circle {
  QPointF at;
  double radius = 0;
};

double size(QPointF v) { return std::hypot(v.x(), v.y()); }
double dot(QPointF a, QPointF b) { return a.x() * b.x() + a.y() * b.y(); }
QPointF aside(QPointF v) { return {-v.y(), v.x()}; }

// A head stays a head beside limbs that are thicker than they should be.
constexpr double kLargerHead = 0.28;

// Evenly spaced directions, clockwise as painters have it.
constexpr std::size_t kDirections = 96;

const std::array<QPointF, kDirections>& directions() {
  static const std::array<QPointF, kDirections> all = [] {
    std::array<QPointF, kDirections> made;
    for (std::size_t i = 0; i < kDirections; ++i) {
      const double angle = 2 * std::numbers::pi * static_cast<double>(i) / kDirections;
      made[i] = {std::cos(angle), std::sin(angle)};
    }
    return made;
  }();
  return all;
}

// Every how manyeth direction a circle needs to look round: corners stay within a tenth of the painter's unit.
std::size_t strideFor(double radius) {
  if (radius < 1.4)
    return 12;
  if (radius < 5)
    return 6;
  if (radius < 20)
    return 3;
  return radius < 45 ? 2 : 1;
}

void addCircle(QPainterPath& path, const Circle& circle) {
  const std::size_t stride = strideFor(circle.radius);
  path.moveTo(circle.at + directions()[0] * circle.radius);
  for (std::size_t i = stride; i < kDirections; i += stride)
    path.lineTo(circle.at + directions()[i] * circle.radius);
  path.closeSubpath();
}

// What a circle sweeps that goes from `a` to `b` while it changes its size, as one closed outline.
void addSweep(QPainterPath& path, const Circle& a, const Circle& b) {
  const QPointF way = b.at - a.at;
  const double distance = size(way);
  if (distance <= std::abs(a.radius - b.radius) + 1e-6) {
    addCircle(path, a.radius > b.radius ? a : b);
    return;
  }
  const QPointF ahead = way / distance;
  const double cosine = (a.radius - b.radius) / distance, sine = std::sqrt(1 - cosine * cosine);
  const QPointF leaving = ahead * cosine + aside(ahead) * sine;   // where the outline goes from b back to a
  const QPointF returning = ahead * cosine - aside(ahead) * sine; // and from a to b
  const std::size_t stride = strideFor(std::max(a.radius, b.radius));
  const auto onB = [&](std::size_t i) { return dot(directions()[i % kDirections], ahead) > cosine; };
  std::size_t first = 0; // a direction of b's part whose predecessor is of a's
  while (first < kDirections && !(onB(first) && !onB(first + kDirections - stride)))
    first += stride;
  if (first >= kDirections) { // the smaller hardly shows
    addCircle(path, a.radius > b.radius ? a : b);
    return;
  }
  path.moveTo(b.at + returning * b.radius);
  bool onEnd = true;
  for (std::size_t i = first; i < first + kDirections; i += stride) {
    const bool part = onB(i);
    if (onEnd && !part) {
      path.lineTo(b.at + leaving * b.radius);
      path.lineTo(a.at + leaving * a.radius);
      onEnd = false;
    }
    const Circle& circle = part ? b : a;
    path.lineTo(circle.at + directions()[i % kDirections] * circle.radius);
  }
  path.lineTo(a.at + returning * a.radius);
  path.closeSubpath();
}

// A smooth closed curve through the middles of the polygon's sides.
void addSmooth(QPainterPath& path, const std::vector<QPointF>& corners) {
  const std::size_t n = corners.size();
  path.moveTo((corners[n - 1] + corners[0]) / 2);
  for (std::size_t i = 0; i < n; ++i)
    path.quadTo(corners[i], (corners[i] + corners[(i + 1) % n]) / 2);
  path.closeSubpath();
}

class Outliner {
public:
  // Everything is wider by `more` on each side.
  Outliner(const FigurePlacing& placing, double thinnest, double more = 0)
      : placing_(placing), least_(thinnest / 2), more_(more) {}

  Circle circle(const Bead& bead) const {
    return {placing_.at(bead.at), std::max(bead.radius * placing_.scale, least_) + more_};
  }

  QPainterPath trunk(const PicturePart& part) const {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    double seen = 0, shortest = 1e9;
    for (std::size_t i = 0; i + 1 < part.count; ++i) {
      const double link = size(middle(part, i + 1) - middle(part, i));
      seen += link;
      shortest = std::min(shortest, link);
    }
    const double whole = placing_.scale * 0.3;
    if (seen > 0.6 * whole && shortest > 0.2 * whole / static_cast<double>(part.count))
      addAlong(path, part);
    else
      addEndOn(path, part);
    return path;
  }

  QPainterPath limb(const PicturePart& part, double skipped) const {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (std::size_t i = 0; i + 1 < part.count; ++i) {
      Circle from = circle(part.left[i]);
      const Circle to = circle(part.left[i + 1]);
      if (i == 0)
        from = {from.at + (to.at - from.at) * skipped, from.radius + (to.radius - from.radius) * skipped};
      addSweep(path, from, to);
    }
    if (part.part == BodyPart::legNear || part.part == BodyPart::legFar) {
      const Circle ankle = circle(part.left[2]), heel = circle(part.left[3]), toes = circle(part.left[4]);
      addSweep(path, ankle, toes);
      std::array<QPointF, 3> sole{ankle.at, heel.at, toes.at};
      if (dot(aside(sole[1] - sole[0]), sole[2] - sole[0]) < 0)
        std::swap(sole[1], sole[2]);
      path.moveTo(sole[0]);
      path.lineTo(sole[1]);
      path.lineTo(sole[2]);
      path.closeSubpath();
    }
    return path;
  }

private:
  QPointF middle(const PicturePart& part, std::size_t i) const {
    return (placing_.at(part.left[i].at) + placing_.at(part.right[i].at)) / 2;
  }

  // How far the flesh at point `i` reaches from the spine in a direction.
  double reach(const PicturePart& part, std::size_t i, QPointF towards) const {
    const Circle left = circle(part.left[i]);
    return std::abs(dot(placing_.at(part.right[i].at) - placing_.at(part.left[i].at), towards)) / 2 + left.radius;
  }

  // The silhouette on both sides of a spine that is seen along most of its length.
  void addAlong(QPainterPath& path, const PicturePart& part) const {
    const std::size_t n = part.count;
    std::vector<QPointF> corners;
    corners.reserve(2 * n + 6);
    std::array<QPointF, PicturePart::kMostBeads> ahead;
    for (std::size_t i = 0; i < n; ++i) {
      const QPointF way = middle(part, std::min(i + 1, n - 1)) - middle(part, i > 0 ? i - 1 : 0);
      ahead[i] = way / std::max(size(way), 1e-9);
    }
    for (std::size_t i = 0; i < n; ++i) {
      const QPointF side = aside(ahead[i]);
      corners.push_back(middle(part, i) + side * reach(part, i, side));
    }
    addCap(corners, part, n - 1, ahead[n - 1]);
    for (std::size_t i = n; i-- > 0;) {
      const QPointF side = -aside(ahead[i]);
      corners.push_back(middle(part, i) + side * reach(part, i, side));
    }
    addCap(corners, part, 0, -ahead[0]);
    addSmooth(path, corners);
  }

  void addCap(std::vector<QPointF>& corners, const PicturePart& part, std::size_t i, QPointF outward) const {
    const QPointF side = aside(outward);
    const double depth = reach(part, i, outward), width = reach(part, i, side);
    corners.push_back(middle(part, i) + side * (width * 0.85) + outward * (depth * 0.75));
    corners.push_back(middle(part, i) + outward * depth * 1.08);
    corners.push_back(middle(part, i) - side * (width * 0.85) + outward * (depth * 0.75));
  }

  // A trunk that points at the viewer: all of its cross-sections.
  void addEndOn(QPainterPath& path, const PicturePart& part) const {
    for (std::size_t i = 0; i < part.count; ++i) {
      addSweep(path, circle(part.left[i]), circle(part.right[i]));
      if (i + 1 < part.count) {
        addSweep(path, circle(part.left[i]), circle(part.left[i + 1]));
        addSweep(path, circle(part.right[i]), circle(part.right[i + 1]));
      }
    }
  }

  FigurePlacing placing_;
  double least_, more_;
};

} // namespace

double smallness(const FigurePlacing& placing, double thinnest) {
  constexpr double kFull = 38, kIcon = 18; // least widths a stature
  return std::clamp((kFull - placing.scale / thinnest) / (kFull - kIcon), 0.0, 1.0);
}

FigureShape shapeOf(const PicturePart& part, const FigurePlacing& placing, double thinnest, double seam) {
  const Outliner outliner(placing, thinnest);
  FigureShape shape;
  if (part.part == BodyPart::trunk) {
    shape.whole = outliner.trunk(part);
  } else if (part.part == BodyPart::head) {
    Circle circle = outliner.circle(part.left[1]);
    circle.radius *= 1 + kLargerHead * smallness(placing, thinnest);
    addCircle(shape.whole, circle);
    constexpr double kSmallest = 5; // of a head in the painter's units; below it a nose is no more than a smear
    if (circle.radius >= kSmallest) {
      shape.whole.setFillRule(Qt::WindingFill);
      addCircle(shape.whole, outliner.circle(part.left[2]));
    }
    circle.radius += seam;
    if (seam > 0)
      addCircle(shape.seam, circle);
  } else {
    shape.whole = outliner.limb(part, 0);
    if (seam > 0)
      shape.seam = Outliner(placing, thinnest, seam).limb(part, 0.4);
  }
  return shape;
}

QPainterPath stretchOf(const PicturePart& part, std::size_t from, std::size_t to, double narrower, double towardsFront,
                       const FigurePlacing& placing, double thinnest) {
  const Outliner outliner(placing, thinnest);
  QPainterPath path;
  path.setFillRule(Qt::WindingFill);
  const auto moved = [&](std::size_t i) {
    Bead bead = part.left[i];
    bead.at = {(part.left[i].at.x + part.right[i].at.x) / 2, (part.left[i].at.y + part.right[i].at.y) / 2};
    bead.at.x += bead.front.x * bead.radius * towardsFront;
    bead.at.y += bead.front.y * bead.radius * towardsFront;
    bead.radius *= narrower;
    return outliner.circle(bead);
  };
  if (from == to)
    addCircle(path, moved(from));
  for (std::size_t i = from; i < to; ++i)
    addSweep(path, moved(i), moved(i + 1));
  return path;
}

} // namespace matwright
