#include "ui/timeline/BlockFace.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr qreal kPadding = 4;
constexpr qreal kMark = 13;
constexpr qreal kLeastFigureHeight = 22;
constexpr qreal kGoodFigureHeight = 30;
constexpr qreal kLeastFigureWidth = 15; // with a name
constexpr qreal kNarrowestFigure = 9;   // alone
constexpr int kMostNameLines = 4;

Wrap doseWithin(const TerrainStep& step, qreal width, int most, const TextMeasure& measure) {
  if (auto whole = wrapWithin(step.dose, width, 1, measure))
    return *whole;
  if (auto shorter = wrapWithin(step.shortDose, width, 1, measure); shorter && most < 2)
    return *shorter;
  if (auto whole = wrapWithin(step.dose, width, most, measure))
    return *whole;
  return wrapWithin(step.shortDose, width, 1, measure).value_or(Wrap{});
}

// Name above, figure in the middle, dose below.
std::optional<BlockFace> stacked(const QRectF& block, const TerrainStep& step, const TerrainFonts& fonts,
                                 qreal leastFigure) {
  const QRectF inside = block.adjusted(kPadding, 3, -kPadding, -2);
  if (inside.width() < kLeastFigureWidth)
    return std::nullopt;
  const qreal besideMark = inside.width() - (step.caution ? kMark + 2 : 0);
  const auto name = wrapWithin(step.name, besideMark, kMostNameLines, fonts.name);
  if (!name)
    return std::nullopt;
  const qreal nameHeight = fonts.name.line * static_cast<qreal>(name->lines.size());
  const Wrap dose = doseWithin(step, inside.width(), 1, fonts.small);
  const qreal doseHeight = fonts.small.line * static_cast<qreal>(dose.lines.size());
  const qreal figureHeight = inside.height() - nameHeight - doseHeight;
  if (figureHeight < leastFigure)
    return std::nullopt;
  BlockFace face;
  face.name = QRectF(inside.left(), inside.top(), besideMark, nameHeight);
  face.nameLines = name->lines;
  face.figure = QRectF(inside.left(), inside.top() + nameHeight + 1, inside.width(), figureHeight - 2);
  face.dose = QRectF(inside.left(), inside.bottom() - doseHeight, inside.width(), doseHeight);
  face.doseLines = dose.lines;
  if (step.caution)
    face.mark = QRectF(inside.right() - kMark + 1, inside.top(), kMark, kMark);
  return face;
}

// Figure on the left in `share` of the width, name and dose beside it.
std::optional<BlockFace> abreast(const QRectF& block, const TerrainStep& step, const TerrainFonts& fonts,
                                 double share) {
  const QRectF inside = block.adjusted(kPadding, 2, -kPadding, -2);
  if (inside.height() < kLeastFigureHeight)
    return std::nullopt;
  const qreal figureWidth = std::clamp(inside.width() * share, 26.0, inside.height() * 2.2);
  const qreal textWidth = inside.width() - figureWidth - 4 - (step.caution ? kMark + 2 : 0);
  const Wrap dose = doseWithin(step, textWidth, 1, fonts.small);
  const qreal doseHeight = fonts.small.line * static_cast<qreal>(dose.lines.size());
  const int most = std::min(kMostNameLines, static_cast<int>((inside.height() - doseHeight) / fonts.name.line));
  const auto name = most < 1 || textWidth < 20 ? std::nullopt : wrapWithin(step.name, textWidth, most, fonts.name);
  if (!name)
    return std::nullopt;
  const qreal nameHeight = fonts.name.line * static_cast<qreal>(name->lines.size());
  const qreal top = inside.top() + (inside.height() - nameHeight - doseHeight) / 2;
  BlockFace face;
  face.figure = QRectF(inside.left(), inside.top(), figureWidth, inside.height() - 1);
  face.name = QRectF(inside.left() + figureWidth + 4, top, textWidth, nameHeight);
  face.nameLines = name->lines;
  face.dose = QRectF(face.name.left(), top + nameHeight, textWidth, doseHeight);
  face.doseLines = dose.lines;
  if (step.caution)
    face.mark = QRectF(inside.right() - kMark + 1, inside.top() + 1, kMark, kMark);
  return face;
}

} // namespace

std::optional<BlockFace> faceWithName(const QRectF& block, const TerrainStep& step, const TerrainFonts& fonts) {
  if (auto face = stacked(block, step, fonts, kGoodFigureHeight))
    return face;
  for (const double share : {0.4, 0.3, 0.2})
    if (auto face = abreast(block, step, fonts, share))
      return face;
  return stacked(block, step, fonts, kLeastFigureHeight);
}

BlockFace faceWithoutName(const QRectF& block, const TerrainStep& step, const TerrainFonts& fonts) {
  BlockFace face;
  const qreal padding = std::clamp((block.width() - 14) / 4, 1.0, kPadding);
  QRectF inside = block.adjusted(padding, 2, -padding, -2);
  qreal besideMark = 0;
  if (step.caution) {
    const qreal size = std::clamp(block.width() - 2, 7.0, kMark);
    const qreal left = block.width() > 2 * size ? inside.right() - size + 1 : block.center().x() - size / 2;
    face.mark = QRectF(left, inside.top(), size, size);
    // The mark has its own place above the figure or beside it, so that neither hides the other.
    if (block.width() < 3 * kMark)
      inside.setTop(face.mark.bottom() + 1);
    else
      besideMark = face.mark.width() + 1;
  }
  if (inside.width() < kNarrowestFigure)
    return face;
  const int lines = block.height() > 58 ? 2 : 1;
  const Wrap dose = doseWithin(step, inside.width(), lines, fonts.small);
  const qreal doseHeight = fonts.small.line * static_cast<qreal>(dose.lines.size());
  if (inside.height() - doseHeight >= 12) {
    face.doseLines = dose.lines;
    face.dose = QRectF(inside.left(), inside.bottom() - doseHeight, inside.width(), doseHeight);
    inside.setBottom(face.dose.top());
  }
  face.figure = inside.adjusted(0, 0, -besideMark, -1);
  return face;
}

} // namespace matwright
