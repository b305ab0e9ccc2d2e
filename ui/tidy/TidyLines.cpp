#include "ui/tidy/TidyLines.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr qreal kBetween = 34; // the two terrains: room for lines to cross

} // namespace

TidyStage stageOf(TerrainScene before, TerrainScene after, const TerrainFonts& fonts, QSizeF view, double zoom) {
  TerrainFrame upper = frameFor(view, fonts), lower = upper;
  upper.foot = TerrainFoot::none;
  lower.foot = TerrainFoot::ruler;
  // Better both in sight and dense than one out of sight.
  upper.dense = lower.dense = leastHeight(upper, before) + kBetween + leastHeight(lower, after) > view.height();
  const qreal leastUpper = leastHeight(upper, before), leastLower = leastHeight(lower, after);
  const qreal spare = std::max(0.0, view.height() - kBetween - leastUpper - leastLower);
  upper.view.setHeight(std::floor(leastUpper + spare / 2));
  lower.view.setHeight(std::floor(leastLower + spare / 2));
  const double scale = zoom * std::min(fittingScale(before, upper), fittingScale(after, lower));
  TidyStage stage{std::move(before), std::move(after), {}, {}, 0, {}};
  stage.before = TerrainGeometry(stage.beforeScene, upper, scale);
  stage.after = TerrainGeometry(stage.afterScene, lower, scale);
  stage.afterTop = std::ceil(stage.beforeBottom() + kBetween);
  stage.size = {std::max(stage.before.contentSize().width(), stage.after.contentSize().width()),
                stage.afterTop + stage.after.contentSize().height()};
  return stage;
}

std::vector<TidyLine> linesOf(const TidyStage& stage, const std::vector<TidyMove>& moves) {
  std::vector<TidyLine> lines;
  for (const TidyMove& move : moves) {
    const Block* from = stage.before.block(move.step);
    const Block* to = stage.after.block(move.step);
    if (!from || !to)
      continue;
    const qreal above = from->rect.center().x(), below = to->rect.center().x();
    lines.push_back({move.step,
                     {{above, from->rect.bottom()},
                      {above, stage.beforeBottom()},
                      {below, stage.afterTop},
                      {below, stage.afterTop + to->rect.top()}}});
  }
  return lines;
}

std::vector<QRectF> textsOf(const TidyStage& stage) {
  std::vector<QRectF> texts;
  const auto add = [&](const QRectF& rect, qreal top) {
    if (!rect.isEmpty())
      texts.push_back(rect.translated(0, top).adjusted(-2, 0, 2, 0));
  };
  for (const auto& [geometry, top] : {std::pair(&stage.before, 0.0), std::pair(&stage.after, stage.afterTop)}) {
    for (const Block& block : geometry->blocks())
      if (block.label)
        add(block.label->rect, top);
    for (const Connector& connector : geometry->connectors()) {
      add(connector.label, top);
      add(connector.mark, top);
    }
    for (const SectionBand& section : geometry->sections()) {
      const qreal length = section.length.isEmpty() ? 0 : 8 + geometry->frame().fonts.small.width(section.length);
      add(section.label.isNull() ? QRectF() : section.label.adjusted(0, 0, length, 0), top);
    }
  }
  return texts;
}

std::optional<TidyHit> hitOn(const TidyStage& stage, QPointF at) {
  const bool after = at.y() >= stage.afterTop;
  const TerrainHit hit = after ? stage.after.hit(at - QPointF(0, stage.afterTop)) : stage.before.hit(at);
  if (!hit.step || (hit.kind != TerrainHit::Kind::block && hit.kind != TerrainHit::Kind::blockEdge))
    return std::nullopt;
  return TidyHit{*hit.step, after};
}

} // namespace matwright
