#pragma once

#include "core/body/Body.h"
#include "core/figure/Pose.h"

#include <QPainter>
#include <QPixmap>
#include <map>
#include <optional>
#include <tuple>

namespace matwright {

struct Theme;

// Figures of steps, painted once for each pose and size. Poses are known by their address: before one goes
// and another may take its place, clear() this.
class FigurePictures {
public:
  // Standing on the lower edge of `box`. Null: a question mark, because the movement is not known.
  void paint(QPainter& painter, const QRectF& box, const Pose* pose, std::optional<Region> region, const Theme& theme,
             const QColor& paper);
  void clear() { pictures_.clear(); }

private:
  using Key = std::tuple<const Pose*, int, int, int, unsigned, bool>; // width, height, scale in percent, paper, dark
  std::map<Key, QPixmap> pictures_;
};

} // namespace matwright
