// Draws a movement standing still: its end pose, the start pose faintly behind it, and an arrow along the way of what
// travels most.
#pragma once

#include "core/figure/PathOfMotion.h"
#include "core/movement/Movement.h"
#include "ui/figure/FigurePaint.h"

namespace matwright {

// Whether both ends of a movement can stand in one picture, and differ.
bool movesInOnePicture(const KeyPoses& poses);

struct MovementPicture {
  Picture body;
  std::optional<Picture> ghost;    // none where the movement does not move in one picture
  std::vector<PathOfMotion> paths; // two at most
  Extent frame;                    // of all of it
};

MovementPicture pictureOf(const KeyPoses& poses);
MovementPicture pictureOf(const Passage& passage);

// The same, worked out once for each pair of poses and kept for those used last; call it on the thread that paints.
std::shared_ptr<const MovementPicture> pictureOnce(const KeyPoses& poses);

void paintMovement(QPainter& painter, const QRectF& box, const MovementPicture& picture, const FigureStyle& style);

// The arrows alone. Those too short for their heads at this scale are left out.
void paintPaths(QPainter& painter, const std::vector<PathOfMotion>& paths, const FigurePlacing& placing,
                const FigureStyle& style);

} // namespace matwright
