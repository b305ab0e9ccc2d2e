// The outlines of a figure's parts as painter paths.
#pragma once

#include "core/figure/Picture.h"

#include <QPainterPath>
#include <QPointF>

namespace matwright {

// From statures with y up to the painter's units with y down.
struct FigurePlacing {
  double scale = 1, x = 0, y = 0;

  QPointF at(Point2 p) const { return {x + scale * p.x, y - scale * p.y}; }
};

// How far a figure must be simplified to be read: 0 where its limbs are as thick as they are, 1 at the size of an icon,
// where they have the least width.
double smallness(const FigurePlacing& placing, double thinnest);

struct FigureShape {
  QPainterPath whole;
  // What a seam around it covers: the head, or a limb without the beginning that grows out of the trunk, wider by the
  // seam on each side. Empty for the trunk, and without a seam.
  QPainterPath seam;
};

// `thinnest` is the least width of a limb, `seam` the width of the seam around it, in the painter's units.
FigureShape shapeOf(const PicturePart& part, const FigurePlacing& placing, double thinnest, double seam = 0);

// A stretch of a part from one bead to another, `narrower` times as wide and moved by `towardsFront` of its half width
// to the front (+) or the back (-) of the body: the place of a muscle group. From a bead to itself: a disc.
QPainterPath stretchOf(const PicturePart& part, std::size_t from, std::size_t to, double narrower, double towardsFront,
                       const FigurePlacing& placing, double thinnest);

} // namespace matwright
