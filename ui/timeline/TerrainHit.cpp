#include "ui/timeline/TerrainGeometry.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr qreal kReach = 5; // how far beside a thin thing a click still means it

qreal distanceTo(const std::vector<QPointF>& line, QPointF at) {
  qreal least = 1e9;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const QPointF along = line[i] - line[i - 1];
    const QPointF towards = at - line[i - 1];
    const qreal square = QPointF::dotProduct(along, along);
    const qreal share = square > 0 ? std::clamp(QPointF::dotProduct(towards, along) / square, 0.0, 1.0) : 0.0;
    const QPointF off = towards - along * share;
    least = std::min(least, std::hypot(off.x(), off.y()));
  }
  return least;
}

} // namespace

TerrainHit TerrainGeometry::hit(QPointF at) const {
  TerrainHit hit;
  for (std::size_t s = 0; s < sections_.size(); ++s)
    if (at.x() >= sections_[s].left || s == 0)
      hit.section = s;
  if (header_.contains(at) || at.y() < header_.bottom()) {
    for (std::size_t s = 0; s < sections_.size(); ++s)
      if (sections_[s].label.adjusted(-4, -3, 4, 3).contains(at))
        hit.section = s;
    if (!sections_.empty() && (at.x() <= endX_ || sections_[hit.section].label.adjusted(-4, -3, 4, 3).contains(at)))
      hit.kind = TerrainHit::Kind::section;
    return hit;
  }
  if (at.y() >= terrain_.bottom())
    return hit;
  for (std::size_t i = 0; i < blocks_.size(); ++i) {
    const QRectF& rect = blocks_[i].rect;
    // Reached a little beyond narrow blocks, never into the next one.
    const qreal beyond = rect.width() < 8 ? 2 : 0;
    const qreal edge = std::min(kReach, rect.width() / 3);
    if (QRectF(rect.right() - edge, rect.top(), edge + 2, rect.height()).contains(at)) {
      hit.kind = TerrainHit::Kind::blockEdge;
      hit.step = i;
      return hit;
    }
    if (rect.adjusted(-beyond, 0, 0, 0).contains(at) || (blocks_[i].label && blocks_[i].label->rect.contains(at))) {
      hit.kind = TerrainHit::Kind::block;
      hit.step = i;
      return hit;
    }
  }
  for (const Connector& connector : connectors_)
    if (connector.label.contains(at) || connector.mark.contains(at) || distanceTo(connector.points, at) <= kReach) {
      hit.kind = TerrainHit::Kind::connector;
      hit.step = connector.into;
      hit.place = blocks_[connector.into].place;
      return hit;
    }
  const GapSlot* nearest = nullptr;
  qreal least = kReach;
  for (const GapSlot& gap : gaps_) {
    const qreal away = at.x() < gap.left ? gap.left - at.x() : at.x() > gap.right ? at.x() - gap.right : 0;
    const qreal off = away + std::abs(at.x() - gap.x) * 1e-4;
    if (off < least) {
      least = off;
      nearest = &gap;
    }
  }
  if (nearest) {
    hit.kind = TerrainHit::Kind::gap;
    hit.place = nearest->place;
  }
  return hit;
}

Place TerrainGeometry::dropPlace(qreal x) const {
  if (sections_.empty())
    return {};
  std::size_t section = 0;
  for (std::size_t s = 0; s < sections_.size(); ++s)
    if (x >= sections_[s].left)
      section = s;
  Place place{section, 0};
  for (const Block& block : blocks_)
    if (block.place.section == section && block.rect.center().x() < x)
      place.index = block.place.index + 1;
  return place;
}

std::vector<std::size_t> TerrainGeometry::blocksIn(const QRectF& area) const {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < blocks_.size(); ++i)
    if (blocks_[i].rect.intersects(area))
      found.push_back(i);
  return found;
}

} // namespace matwright
