// A pose changed by taking hold of a place of its body in the picture. Geometry alone: no widget, no pixel.
#pragma once

#include "core/figure/Handle.h"
#include "core/figure/Picture.h"

namespace matwright {

struct Drag {
  Pose pose;
  EnumSet<Joint> atLimit; // turned as far as they go, and still short of the pointer
  double miss = 0;        // from the handle to the pointer, in statures, before the body settles
};

// The pose in which `handle` is where the pointer is in the picture, or as near to it as its joints go. Only the joints
// of the handle are turned, those more that move it in the plane of the view; an angle that was outside its range is
// not turned further out. Dragging the pelvis keeps legs that rest where they are. The angles are those of `shape`,
// with all that settling did to them; for a pointer where the handle is already they are unchanged.
//
// A dragged seat takes the whole body along, while what rests on the floor stays in its place as far as limbs reach; a
// body that lies or sits on its trunk stays down.
Drag dragged(const Settled& shape, Handle handle, Point2 pointer);

} // namespace matwright
