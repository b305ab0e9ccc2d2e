// What carries a body besides floor and wall, and what it holds, as pieces of its picture.
#pragma once

#include "core/figure/Picture.h"

namespace matwright {

// The farthest first.
std::vector<PicturePiece> piecesOf(const Settled& settled);

} // namespace matwright
