#pragma once

#include "core/tidy/Tidy.h"
#include "ui/timeline/TerrainGeometry.h"

namespace matwright {

// Two terrains of the same steps, one above the other on one scale.
struct TidyStage {
  TerrainScene beforeScene, afterScene;
  TerrainGeometry before, after;
  qreal afterTop = 0; // of the lower one; the upper begins at 0
  QSizeF size;        // without the gutter

  qreal beforeBottom() const { return before.contentSize().height(); }
};

// Laid out in a view of this size at `zoom` times the scale at which both fit; they share the height, and are higher
// where it is less than they need.
TidyStage stageOf(TerrainScene before, TerrainScene after, const TerrainFonts& fonts, QSizeF view, double zoom);

// The way of a step that moves: from its block in the upper terrain down, across and down to its block in the lower.
struct TidyLine {
  StepId step;
  std::vector<QPointF> points; // four, the first and the last on the blocks
};
std::vector<TidyLine> linesOf(const TidyStage& stage, const std::vector<TidyMove>& moves);

// What lines must not be painted over: names, blocks other than their ends are never in their way.
std::vector<QRectF> textsOf(const TidyStage& stage);

// The step whose block or name is there, in the coordinates of the upper terrain; nothing elsewhere.
struct TidyHit {
  std::size_t step = 0; // index in the terrain's scene
  bool after = false;
};
std::optional<TidyHit> hitOn(const TidyStage& stage, QPointF at);

} // namespace matwright
