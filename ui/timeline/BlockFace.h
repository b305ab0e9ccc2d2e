#pragma once

#include "ui/timeline/TerrainScene.h"
#include "ui/timeline/TextWrap.h"

#include <QRectF>

namespace matwright {

// The fonts that the terrain is laid out with.
struct TerrainFonts {
  TextMeasure name;    // names of movements
  TextMeasure heading; // names of sections
  TextMeasure small;   // doses, seconds, ruler
};

// What stands within a block, and where. What has no room is left out: its rectangle is null and its text empty;
// nothing is ever cut.
struct BlockFace {
  QRectF figure;
  QRectF name;
  QStringList nameLines;
  QRectF dose;
  QStringList doseLines;
  QRectF mark; // of the strongest caution

  bool showsName() const { return !nameLines.isEmpty(); }
  friend bool operator==(const BlockFace&, const BlockFace&) = default;
};

// With the whole name inside and room for a figure; nothing when the block is too small for that.
std::optional<BlockFace> faceWithName(const QRectF& block, const TerrainStep& step, const TerrainFonts& fonts);

// The figure alone, with mark and dose as far as there is room.
BlockFace faceWithoutName(const QRectF& block, const TerrainStep& step, const TerrainFonts& fonts);

} // namespace matwright
