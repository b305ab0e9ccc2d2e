// Connectors, and the texts that stand on free ground: names outside their blocks, and seconds beside connectors.
#include "ui/timeline/TerrainGeometry.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr int kPieces = 10; // straight pieces of one curve
constexpr qreal kMark = 13;

// From one height to another, leaving and arriving level.
void addCurve(std::vector<QPointF>& points, QPointF to) {
  const QPointF from = points.back();
  if (std::abs(to.y() - from.y()) < 1 || to.x() - from.x() < 1.5) {
    points.push_back(to);
    return;
  }
  for (int piece = 1; piece <= kPieces; ++piece) {
    const double t = static_cast<double>(piece) / kPieces;
    const double rise = t * t * (3 - 2 * t);
    points.push_back({from.x() + (to.x() - from.x()) * t, from.y() + (to.y() - from.y()) * rise});
  }
}

QPointF pointAt(const std::vector<QPointF>& points, double share) {
  double whole = 0;
  const auto length = [&](std::size_t i) {
    return std::hypot(points[i].x() - points[i - 1].x(), points[i].y() - points[i - 1].y());
  };
  for (std::size_t i = 1; i < points.size(); ++i)
    whole += length(i);
  double left = whole * share;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double piece = length(i);
    if (left <= piece && piece > 0)
      return points[i - 1] + (points[i] - points[i - 1]) * (left / piece);
    left -= piece;
  }
  return points.back();
}

QString secondsText(Seconds seconds) {
  return QCoreApplication::translate("TerrainGeometry", "%1 s").arg(std::lround(seconds.value()));
}

// What a text on free ground must keep clear of.
struct Taken {
  std::vector<QRectF> rects;

  bool free(const QRectF& rect) const {
    return std::none_of(rects.begin(), rects.end(), [&](const QRectF& other) { return other.intersects(rect); });
  }
};

} // namespace

// Where ways pass at this height: a little above the floor, where bodies are.
qreal TerrainGeometry::restingHeight(Elevation elevation) const {
  const Lane& at = lane(elevation);
  return at.bottom - std::min(at.height() * 0.35, 26.0);
}

void TerrainGeometry::layConnectors(const TerrainScene& scene) {
  for (std::size_t i = 1; i < scene.steps.size(); ++i) {
    const TerrainStep& step = scene.steps[i];
    Connector connector;
    connector.into = i;
    connector.change = step.changes > 0;
    connector.caution = step.wayCaution;
    if (connector.change)
      connector.text = secondsText(step.moving);
    const QRectF& from = blocks_[i - 1].rect;
    const QRectF& to = blocks_[i].rect;
    // The body moves first; what is left of the gap it waits, while the teacher talks.
    const qreal arrived =
        std::clamp(stepX(step, step.begin + step.moving), from.right(), std::max(from.right(), to.left()));
    connector.points.push_back({from.right(), restingHeight(scene.steps[i - 1].elevation)});
    for (const TerrainStep::Stop& stop : step.way)
      addCurve(connector.points, {from.right() + (arrived - from.right()) * stop.share, restingHeight(stop.elevation)});
    addCurve(connector.points, {std::max(from.right(), to.left()), restingHeight(step.elevation)});
    connectors_.push_back(std::move(connector));
  }
}

void TerrainGeometry::layNames(const TerrainScene& scene) {
  NameGround ground;
  ground.area = terrain_.adjusted(0, 1, 0, -1);
  for (const Block& block : blocks_)
    ground.blocks.push_back(block.rect);
  for (const Connector& connector : connectors_)
    ground.obstacles.push_back({connector.points, connector.caution ? 2.5 : connector.change ? 1 : 0.3});
  if (targetX_ < contentSize_.width())
    ground.obstacles.push_back({{{targetX_, terrain_.top()}, {targetX_, terrain_.bottom()}}, 1.5});
  for (const Lane& lane : lanes_)
    ground.floors.push_back(lane.bottom);
  std::vector<NameRequest> requests;
  std::vector<std::size_t> owners;
  for (std::size_t i = 0; i < blocks_.size(); ++i)
    if (!blocks_[i].face.showsName()) {
      requests.push_back({blocks_[i].rect, scene.steps[i].name});
      owners.push_back(i);
    }
  auto labels = placeNames(requests, ground, frame_.fonts.name);
  for (std::size_t i = 0; i < owners.size(); ++i) {
    Block& block = blocks_[owners[i]];
    block.label = std::move(labels[i]);
    if (!block.label)
      continue;
    const QRectF& rect = block.label->rect;
    block.labelCoversLine =
        std::any_of(ground.floors.begin(), ground.floors.end(),
                    [&](qreal floor) { return floor > rect.top() && floor < rect.bottom(); }) ||
        std::any_of(ground.obstacles.begin(), ground.obstacles.end(),
                    [&](const NameObstacle& obstacle) { return passesThrough(obstacle.points, rect); });
  }
}

// Beside the connector, where neither block nor name is; the mark of a caution is always shown, if need be without the
// text.
void TerrainGeometry::laySeconds() {
  Taken taken;
  for (const Block& block : blocks_) {
    taken.rects.push_back(block.rect);
    if (block.label) {
      taken.rects.push_back(block.label->rect);
      if (block.label->hasLeader())
        taken.rects.push_back(QRectF(block.label->from, block.label->to).normalized().adjusted(-1, 0, 1, 0));
    }
  }
  taken.rects.push_back(QRectF(targetX_ - 2, terrain_.top(), 4, terrain_.height()));
  constexpr double shares[] = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0.45, 0.55, 0.35, 0.65, 0.25, 0.75};
  const TextMeasure& small = frame_.fonts.small;
  for (const bool cautioned : {true, false})
    for (Connector& connector : connectors_) {
      if (connector.caution.has_value() != cautioned || (!connector.change && !connector.caution))
        continue;
      const qreal markWidth = connector.caution ? kMark + 2 : 0;
      const qreal textWidth = connector.text.isEmpty() ? 0 : std::ceil(small.width(connector.text)) + 2;
      const qreal height = connector.caution ? std::max(small.line, kMark) : small.line;
      for (const bool withText : {true, false}) {
        const QSizeF size(markWidth + (withText ? textWidth : 0), height);
        if (size.width() <= 0)
          break;
        std::optional<QRectF> spot;
        const auto take = [&](QPointF corner) {
          const QRectF rect(corner, size);
          if (!spot && rect.left() >= 0 && terrain_.contains(rect) && taken.free(rect.adjusted(-1, 0, 1, 0)) &&
              std::none_of(connectors_.begin(), connectors_.end(), [&](const Connector& other) {
                return other.points.front().x() < rect.right() && other.points.back().x() > rect.left() &&
                       passesThrough(other.points, rect);
              }))
            spot = rect;
        };
        for (const double share : shares) {
          const QPointF at = pointAt(connector.points, share);
          take({at.x() + 4, at.y() - size.height() / 2});
          take({at.x() - 4 - size.width(), at.y() - size.height() / 2});
          take({at.x() - size.width() / 2, at.y() - size.height() - 3});
          take({at.x() - size.width() / 2, at.y() + 3});
        }
        // Between neighbours that leave no room: above or below the two.
        const QRectF both = blocks_[connector.into - 1].rect.united(blocks_[connector.into].rect);
        const qreal middle = (connector.points.front().x() + connector.points.back().x() - size.width()) / 2;
        take({middle, both.top() - size.height() - 1});
        take({middle, both.bottom() + 1});
        if (!spot && !withText && connector.caution)
          spot = QRectF(pointAt(connector.points, 0.5) - QPointF(kMark / 2, kMark / 2), QSizeF(kMark, kMark));
        if (!spot)
          continue;
        if (connector.caution)
          connector.mark = QRectF(spot->left(), spot->center().y() - kMark / 2, kMark, kMark);
        if (withText && textWidth > 0)
          connector.label = spot->adjusted(markWidth, 0, 0, 0);
        taken.rects.push_back(*spot);
        break;
      }
    }
}

} // namespace matwright
