#pragma once

#include "ui/timeline/TextWrap.h"

#include <QPointF>
#include <QRectF>
#include <optional>
#include <span>
#include <vector>

namespace matwright {

// A name that does not fit into its block, set above or below it, whole, on lines of whole words. A leader joins it to
// the block when it does not stand right next to it.
struct NameLabel {
  QRectF rect;
  QStringList lines;
  QPointF from, to; // the leader, straight up or down: on the label, on the block

  bool hasLeader() const { return qAbs(from.y() - to.y()) > 4; }
  friend bool operator==(const NameLabel&, const NameLabel&) = default;
};

struct NameRequest {
  QRectF block;
  QString name;
};

// A line that labels should rather not cover; `weight` says how much.
struct NameObstacle {
  std::vector<QPointF> points;
  double weight = 1;
};

// Where labels may go. `blocks` and `floors` (heights of lane floors) are those of the whole terrain.
struct NameGround {
  QRectF area;
  std::vector<QRectF> blocks;
  std::vector<NameObstacle> obstacles;
  std::vector<qreal> floors;
};

// One label a request, or none where there is truly no room. Labels lie within the area, cover no block and no other
// label; leaders cross no label and no block. Requests are ordered by x and their blocks share no moment. The same
// input gives the same result.
std::vector<std::optional<NameLabel>> placeNames(std::span<const NameRequest> requests, const NameGround& ground,
                                                 const TextMeasure& measure);

// Whether a line of short straight pieces passes through a rectangle.
bool passesThrough(std::span<const QPointF> line, const QRectF& rect);

} // namespace matwright
