#include "ui/timeline/NameSpots.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace matwright {
namespace {

// Weights of what makes a place worse. Only their proportions matter.
constexpr double kPerLineAway = 10; // for each line of text between label and block
constexpr double kBelow = 6;        // names stand above by preference
constexpr double kPerLine = 1.5;    // for each further line of the name
constexpr double kPerWidth = 0.04;  // for each pixel wider than the block
constexpr double kPerShift = 0.07;  // for each pixel off the middle of the block
constexpr double kOverLine = 9;     // for covering a connector
constexpr double kOnNeighbour = 4;  // for standing right on another block, as if it were its name
constexpr double kOverFloor = 1;    // for covering the floor of a lane

constexpr qreal kNear = 2; // between label and block
constexpr int kMostLines = 4;
constexpr int kMostRows = 9;

NameOutline nameOutline(const NameLabel& label) {
  return {label.rect.left(),
          label.rect.top(),
          label.rect.right(),
          label.rect.bottom(),
          label.from.x(),
          std::min(label.from.y(), label.to.y()),
          std::max(label.from.y(), label.to.y())};
}

bool poleCrosses(const NameOutline& one, const NameOutline& other) {
  return one.pole > other.left - 2 && one.pole < other.right + 2 && one.poleBottom > other.top + 0.5 &&
         one.poleTop < other.bottom - 0.5;
}

class Places {
public:
  Places(const NameRequest& request, const NameGround& ground, const TextMeasure& measure, std::size_t most)
      : request_(request), ground_(ground), measure_(measure), most_(most) {}

  NameSpots all() {
    for (int lines = 1; lines <= kMostLines; ++lines) {
      const auto wrap = wrapOnto(request_.name, lines, measure_);
      if (!wrap)
        break;
      const bool wasteful = narrowest_ > 0 && wrap->width > narrowest_ - 3;
      if (wasteful)
        continue;
      narrowest_ = wrap->width;
      addAll(*wrap);
    }
    auto& candidates = layer_.candidates;
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const NameSpot& a, const NameSpot& b) { return a.cost < b.cost; });
    thinOut();
    layer_.left = request_.block.left();
    layer_.right = request_.block.right();
    for (const NameSpot& candidate : candidates) {
      layer_.left = std::min(layer_.left, candidate.label.rect.left());
      layer_.right = std::max(layer_.right, candidate.label.rect.right());
    }
    return std::move(layer_);
  }

private:
  void addAll(const Wrap& wrap) {
    const QRectF& block = request_.block;
    const qreal width = std::ceil(wrap.width) + 4;
    const qreal height = measure_.line * static_cast<qreal>(wrap.lines.size());
    const qreal middle = block.center().x();
    const std::array<qreal, 5> lefts{middle - width / 2, block.left(), block.right() - width, middle - 5,
                                     middle + 5 - width};
    for (const qreal wanted : lefts) {
      const qreal left =
          std::clamp(wanted, ground_.area.left(), std::max(ground_.area.left(), ground_.area.right() - width));
      const qreal pole = std::clamp(middle, left + 2, left + width - 2);
      if (pole < block.left() - 0.5 || pole > block.right() + 0.5)
        continue;
      for (int row = 0; row < kMostRows; ++row) {
        const qreal away = kNear + row * measure_.line;
        add({QRectF(left, block.top() - away - height, width, height), wrap.lines, QPointF(pole, block.top() - away),
             QPointF(pole, block.top())});
        add({QRectF(left, block.bottom() + away, width, height), wrap.lines, QPointF(pole, block.bottom() + away),
             QPointF(pole, block.bottom())});
      }
    }
  }

  void add(NameLabel label) {
    const QRectF& rect = label.rect;
    if (rect.top() < ground_.area.top() || rect.bottom() > ground_.area.bottom())
      return;
    double cost = 0;
    const auto first = std::lower_bound(ground_.blocks.begin(), ground_.blocks.end(), rect.left(),
                                        [](const QRectF& block, qreal x) { return block.right() < x; });
    for (auto block = first; block != ground_.blocks.end() && block->left() < rect.right(); ++block) {
      if (block->adjusted(-1, -1, 1, 1).intersects(rect))
        return;
      const bool adjoining = std::abs(block->top() - rect.bottom()) < 4 || std::abs(block->bottom() - rect.top()) < 4;
      if (adjoining && *block != request_.block)
        cost += kOnNeighbour;
    }
    const QRectF& block = request_.block;
    cost += kPerLineAway * (std::abs(label.from.y() - label.to.y()) - kNear) / measure_.line;
    cost += rect.top() > block.center().y() ? kBelow : 0;
    cost += kPerLine * static_cast<double>(label.lines.size() - 1);
    cost += kPerWidth * std::max(0.0, rect.width() - block.width());
    cost += kPerShift * std::abs(rect.center().x() - block.center().x());
    for (const NameObstacle& obstacle : ground_.obstacles)
      if (!obstacle.points.empty() && obstacle.points.front().x() < rect.right() + 2 &&
          obstacle.points.back().x() > rect.left() - 2 && passesThrough(obstacle.points, rect.adjusted(-1, 0, 1, 0)))
        cost += kOverLine * obstacle.weight;
    for (const qreal floor : ground_.floors)
      if (floor > rect.top() + 1 && floor < rect.bottom() - 1)
        cost += kOverFloor;
    const NameOutline outline = nameOutline(label);
    layer_.candidates.push_back({std::move(label), cost, outline});
  }

  // The cheapest, but not all from the same row: further rows are what a crowd needs.
  void thinOut() {
    auto& candidates = layer_.candidates;
    if (candidates.size() <= most_)
      return;
    std::vector<NameSpot> kept, spare;
    std::vector<std::pair<int, int>> rows; // height, how many
    for (NameSpot& candidate : candidates) {
      const int at = static_cast<int>(std::lround(candidate.label.from.y()));
      auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& known) { return known.first == at; });
      if (row == rows.end())
        row = rows.insert(rows.end(), {at, 0});
      (row->second++ < 5 ? kept : spare).push_back(std::move(candidate));
    }
    for (NameSpot& candidate : spare)
      kept.push_back(std::move(candidate));
    kept.resize(most_);
    std::stable_sort(kept.begin(), kept.end(), [](const NameSpot& a, const NameSpot& b) { return a.cost < b.cost; });
    candidates = std::move(kept);
  }

  const NameRequest& request_;
  const NameGround& ground_;
  const TextMeasure& measure_;
  std::size_t most_;
  qreal narrowest_ = 0;
  NameSpots layer_;
};

} // namespace

bool inTheWayOf(const NameOutline& one, const NameOutline& other) {
  if (one.left - kNamesApart >= other.right || other.left - kNamesApart >= one.right)
    return false; // poles stand within the bounds
  if (one.top < other.bottom && other.top < one.bottom)
    return true;
  return poleCrosses(one, other) || poleCrosses(other, one);
}

NameSpots spotsFor(const NameRequest& request, const NameGround& ground, const TextMeasure& measure, std::size_t most) {
  return Places(request, ground, measure, most).all();
}

bool passesThrough(std::span<const QPointF> line, const QRectF& rect) {
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (rect.contains(line[i]))
      return true;
    if (i + 1 == line.size())
      break;
    const QPointF a = line[i], b = line[i + 1];
    // Liang and Barsky's clipping: what is left of the piece within the rectangle.
    double enter = 0, leave = 1;
    const double dx = b.x() - a.x(), dy = b.y() - a.y();
    const std::array<std::pair<double, double>, 4> sides{{{-dx, a.x() - rect.left()},
                                                          {dx, rect.right() - a.x()},
                                                          {-dy, a.y() - rect.top()},
                                                          {dy, rect.bottom() - a.y()}}};
    bool outside = false;
    for (const auto& [towards, room] : sides) {
      if (towards == 0) {
        outside = outside || room < 0;
      } else if (towards < 0) {
        enter = std::max(enter, room / towards);
      } else {
        leave = std::min(leave, room / towards);
      }
    }
    if (!outside && enter <= leave)
      return true;
  }
  return false;
}

} // namespace matwright
