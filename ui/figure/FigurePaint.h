// Draws a pose as a figure of rounded limbs on its floor.
#pragma once

#include "core/body/Body.h"
#include "core/figure/Picture.h"
#include "core/figure/Settle.h"
#include "ui/figure/FigureShape.h"

#include <QColor>
#include <memory>
#include <optional>

class QPainter;
class QRectF;

namespace matwright {

struct Theme;

struct FigureColours {
  QColor near{0x2d, 0x3b, 0x45}; // head, trunk and what is on the viewer's side
  QColor far{0x98, 0xad, 0xb3};  // what is on the other side
  QColor ghost{0xdc, 0xe2, 0xe2};
  QColor accent{0x2a, 0x9d, 0x96}; // the working region
  QColor path{0x1d, 0x6f, 0x70};   // the arrow along the way of a movement
  QColor floor{0xc9, 0xb8, 0xa4};  // floor and wall, and the edge of the mat seen from above
  QColor paper{0xfa, 0xf9, 0xf5};  // a thin seam of it separates what crosses; an invalid colour: no seam
};

// The colours of a theme, on a ground of its own.
FigureColours figureColours(const Theme& theme, const QColor& paper);

// Black on white, for print: the far side is grey.
FigureColours printColours();

struct FigureStyle {
  FigureColours colours;
  // One scale for all figures of a list, in the painter's units; unset: as large as the box allows, which small boxes
  // need to stay legible.
  std::optional<double> unitsPerStature;
  double thinnest = 1.7;   // no limb is drawn thinner, in the painter's units
  bool floor = true;       // false: neither floor, wall nor mat is drawn
  EnumSet<Region> regions; // shown in the accent colour
};

// The figure stands in the middle of the lower edge of the box; seen from above, in its middle.
void paintFigure(QPainter& painter, const QRectF& box, const Pose& pose, const FigureStyle& style);

// With another pose faintly behind it, on the same floor and to the same scale: where the movement comes from. A pose
// that is seen from elsewhere is left away.
void paintFigure(QPainter& painter, const QRectF& box, const Pose& pose, const Pose& ghost, const FigureStyle& style);

// A picture made beforehand, before another that may be null. The box holds `frame`: kept the same while a picture
// moves, it keeps the floor and the scale in place.
void paintFigure(QPainter& painter, const QRectF& box, const Picture& picture, const Picture* ghost,
                 const Extent& frame, const FigureStyle& style);

// Where that puts a point of the picture in the box.
FigurePlacing placingOf(const QRectF& box, const Picture& picture, const Extent& frame, const FigureStyle& style);

// Settling is done once for each pose and kept for those used last; call it on the thread that paints.
std::shared_ptr<const Settled> settledOnce(const Pose& pose);

} // namespace matwright
