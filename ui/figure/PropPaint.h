// Paints what carries a figure and what it holds.
#pragma once

#include "core/figure/Picture.h"
#include "ui/figure/FigurePaint.h"

namespace matwright {

void paintPiece(QPainter& painter, const PicturePiece& piece, const FigurePlacing& placing, const FigureStyle& style);

// The wall that a figure has behind it, up to `top`.
void paintWallBehind(QPainter& painter, const QRectF& box, double floor, double top, double line, const QColor& colour);

} // namespace matwright
