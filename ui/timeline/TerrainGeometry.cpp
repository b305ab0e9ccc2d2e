#include "ui/timeline/TerrainGeometry.h"

#include "ui/text/VocabularyText.h"

#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr qreal kMargin = 14;       // right of the last moment
constexpr qreal kLeastPad = 64;     // of an empty section
constexpr qreal kLeastBlock = 29;   // height at which a figure and its dose can be read
constexpr qreal kDenseBlock = 18;   // where a lower one is better than none
constexpr qreal kTallestSmall = 72; // of blocks whose names stand outside
constexpr qreal kTallest = 130;
constexpr qreal kUnderBlock = 3; // between a block and the floor of its lane
constexpr qreal kTickSpacing = 46;
constexpr qreal kNarrowestBlock = 2;

qreal padWidth(const TerrainSection& section, const TerrainFonts& fonts) {
  return std::max(kLeastPad, fonts.heading.width(section.name) + 24);
}

qreal padsOf(const TerrainScene& scene, const TerrainFonts& fonts) {
  qreal sum = 0;
  for (const TerrainSection& section : scene.sections)
    if (section.steps == 0)
      sum += padWidth(section, fonts);
  return sum;
}

// How much time the view keeps room for: the class and some free ground behind it, and the planned end once that is
// near.
Seconds horizonOf(const TerrainScene& scene) {
  const Seconds whole = std::max(scene.length, scene.target);
  const Seconds roomy = scene.length * 1.1 + minutes(1);
  return std::max(std::min(whole, roomy), std::min(whole, minutes(8))) * 1.01;
}

qreal rulerHeight(const TerrainFonts& fonts) { return std::ceil(fonts.small.line) + 8; }
qreal spineHeight(const TerrainFonts& fonts) { return std::ceil(fonts.small.line) + 7; }
qreal headerRow(const TerrainFonts& fonts) { return std::ceil(fonts.heading.line) + 6; }
qreal effortHeight(qreal view) { return std::clamp(view * 0.105, 35.0, 84.0); }
qreal thinLane(const TerrainFonts& fonts) { return std::ceil(fonts.small.line) + 3; }
constexpr qreal kBetweenStrips = 5;

// Of ruler and strips, and what lies between them.
qreal footHeight(const TerrainFrame& frame, qreal view) {
  const qreal ruler = rulerHeight(frame.fonts);
  switch (frame.foot) {
  case TerrainFoot::all:
    return ruler + 1 + effortHeight(view) + kBetweenStrips + spineHeight(frame.fonts) + 2;
  case TerrainFoot::ruler:
    return ruler;
  case TerrainFoot::none:
    return 0;
  }
  return 0;
}

} // namespace

TerrainFrame frameFor(QSizeF view, const TerrainFonts& fonts) {
  TerrainFrame frame{view, fonts};
  for (std::size_t i = 0; i < kWordCount<Elevation>; ++i)
    frame.gutter = std::max(frame.gutter, fonts.small.width(text(static_cast<Elevation>(i))));
  frame.gutter = std::ceil(frame.gutter) + 16;
  return frame;
}

qreal leastHeight(const TerrainFrame& frame, const TerrainScene& scene) {
  const auto used = elevationsIn(scene);
  const auto count = static_cast<qreal>(std::count(used.begin(), used.end(), true));
  const qreal lanes =
      count * ((frame.dense ? kDenseBlock : kLeastBlock) + 5) + (kWordCount<Elevation> - count) * thinLane(frame.fonts);
  return headerRow(frame.fonts) + lanes + footHeight(frame, 0) +
         (frame.foot == TerrainFoot::all ? 2 * kBetweenStrips - 3 : 0);
}

double fittingScale(const TerrainScene& scene, const TerrainFrame& frame) {
  const qreal room = frame.along() - padsOf(scene, frame.fonts) - kMargin;
  return std::max(room, frame.along() * 0.35) / std::max(horizonOf(scene).value(), 1.0);
}

TerrainGeometry::TerrainGeometry(const TerrainScene& scene, const TerrainFrame& frame, double pixelsPerSecond)
    : frame_(frame), loadScale_(scene.loadScale) {
  std::vector<TimeScale::Pad> pads;
  qreal before = 0;
  for (const TerrainSection& section : scene.sections) {
    padsBefore_.push_back(before);
    if (section.steps == 0) {
      pads.push_back({section.begin, padWidth(section, frame.fonts)});
      before += pads.back().width;
    }
  }
  scale_ = TimeScale(pixelsPerSecond, std::move(pads));
  endX_ = scale_.xOf(scene.length);
  targetX_ = scale_.xOf(scene.target);
  const Seconds horizon = horizonOf(scene);
  contentSize_.setWidth(std::max(scale_.xOf(horizon), endX_) + kMargin);
  ticks_ = ticksOf(scale_, horizon, std::max(kTickSpacing, frame.fonts.small.width(QStringLiteral("00:00")) + 14));
  laySections(scene);
  layRows(scene);
  layLanes(scene);
  layBlocks(scene);
  layConnectors(scene);
  layNames(scene);
  laySeconds();
  layGaps(scene);
}

qreal TerrainGeometry::stepX(const TerrainStep& step, Seconds at) const {
  return at.value() * scale_.pixelsPerSecond() + padsBefore_[step.place.section];
}

const Lane& TerrainGeometry::lane(Elevation elevation) const {
  return lanes_[kWordCount<Elevation> - 1 - static_cast<std::size_t>(elevation)];
}

const Block* TerrainGeometry::block(StepId id) const {
  const auto at = std::find_if(blocks_.begin(), blocks_.end(), [&](const Block& block) { return block.id == id; });
  return at == blocks_.end() ? nullptr : &*at;
}

const GapSlot* TerrainGeometry::gap(Place place) const {
  const auto at = std::find_if(gaps_.begin(), gaps_.end(), [&](const GapSlot& gap) { return gap.place == place; });
  return at == gaps_.end() ? nullptr : &*at;
}

qreal TerrainGeometry::effortY(double effort) const {
  return effort_.bottom() - 1 - (effort_.height() - 4) * std::clamp(effort, 0.0, 10.0) / 10.0;
}

qreal TerrainGeometry::loadY(double newtonMetres) const {
  return effortY(loadScale_ > 0 ? 10 * newtonMetres / loadScale_ : 0);
}

// Bands side by side; names that are wider than their band go into a second row rather than over the next name.
void TerrainGeometry::laySections(const TerrainScene& scene) {
  const TerrainFonts& fonts = frame_.fonts;
  for (std::size_t i = 0; i < scene.sections.size(); ++i) {
    const TerrainSection& section = scene.sections[i];
    SectionBand band;
    band.name = section.name;
    band.empty = section.steps == 0;
    band.left = section.begin.value() * scale_.pixelsPerSecond() + padsBefore_[i];
    band.right = band.empty ? band.left + padWidth(section, fonts)
                            : section.end.value() * scale_.pixelsPerSecond() + padsBefore_[i];
    const QString length = clock(section.end - section.begin);
    const qreal both = fonts.heading.width(section.name) + 8 + fonts.small.width(length);
    if (!band.empty && both + 12 <= band.right - band.left)
      band.length = length;
    sections_.push_back(std::move(band));
  }
  const qreal row = headerRow(fonts);
  std::array<qreal, 2> filled{-1e9, -1e9};
  for (SectionBand& band : sections_) {
    const qreal width = std::ceil(fonts.heading.width(band.name)) + 1;
    const qreal left = std::max(0.0, std::min(band.left + 6, contentSize_.width() - width - 2));
    for (std::size_t i = 0; i < filled.size(); ++i)
      if (left >= filled[i]) {
        band.label = QRectF(left, static_cast<qreal>(i) * row + 3, width, fonts.heading.line);
        const qreal length = band.length.isEmpty() ? 0 : 8 + fonts.small.width(band.length);
        filled[i] = left + width + length + 8;
        break;
      }
  }
}

void TerrainGeometry::layRows(const TerrainScene& scene) {
  const bool twoRows = std::any_of(sections_.begin(), sections_.end(),
                                   [](const SectionBand& band) { return band.label.top() > band.label.height(); });
  const qreal width = contentSize_.width();
  const qreal height = std::max(frame_.view.height(), leastHeight(frame_, scene));
  contentSize_.setHeight(height);
  header_ = QRectF(0, 0, width, headerRow(frame_.fonts) * (twoRows ? 2 : 1));
  const qreal foot = height - footHeight(frame_, frame_.view.height());
  const bool strips = frame_.foot == TerrainFoot::all;
  ruler_ = QRectF(0, foot, width, frame_.foot == TerrainFoot::none ? 0 : rulerHeight(frame_.fonts));
  effort_ = QRectF(0, ruler_.bottom() + (strips ? 1 : 0), width, strips ? effortHeight(frame_.view.height()) : 0);
  spine_ = QRectF(0, effort_.bottom() + (strips ? kBetweenStrips : 0), width, strips ? spineHeight(frame_.fonts) : 0);
  terrain_ = QRectF(0, header_.bottom(), width, ruler_.top() - header_.bottom());
}

// Lanes in use share what the thin ones leave, those with more steps a little more. Where few are in use the others
// need not be thin.
void TerrainGeometry::layLanes(const TerrainScene& scene) {
  std::array<int, kWordCount<Elevation>> counts{};
  for (const TerrainStep& step : scene.steps)
    ++counts[static_cast<std::size_t>(step.elevation)];
  std::array<qreal, kWordCount<Elevation>> weight{};
  qreal weights = 0, unused = 0;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    weight[i] = scene.steps.empty() ? 1 : counts[i] == 0 ? 0 : 1 + 0.12 * std::min(counts[i] - 1, 5);
    weights += weight[i];
    unused += weight[i] > 0 ? 0 : 1;
  }
  const qreal ample = std::max(96.0, terrain_.height() * 2 / kWordCount<Elevation>);
  const qreal thin = std::max(thinLane(frame_.fonts), (terrain_.height() - ample * weights) / std::max(unused, 1.0));
  const qreal shared = terrain_.height() - thin * unused;
  qreal top = terrain_.top();
  for (std::size_t row = 0; row < lanes_.size(); ++row) {
    const std::size_t i = lanes_.size() - 1 - row;
    const qreal height = weight[i] > 0 ? shared * weight[i] / weights : thin;
    lanes_[row] = {static_cast<Elevation>(i), top, top + height, counts[i] > 0};
    top += height;
  }
}

void TerrainGeometry::layBlocks(const TerrainScene& scene) {
  const auto rectOf = [&](const TerrainStep& step, qreal height) {
    const qreal left = stepX(step, step.workBegin);
    const qreal width = std::max(kNarrowestBlock, stepX(step, step.finish) - left);
    return QRectF(left, lane(step.elevation).bottom - kUnderBlock - height, width, height);
  };
  // A block that can hold its name takes the height of its lane; the others leave room for their names above.
  for (const TerrainStep& step : scene.steps) {
    const qreal laneHeight = lane(step.elevation).height();
    const qreal whole = std::min(laneHeight - 2 * kUnderBlock, kTallest);
    const qreal belowName = laneHeight - frame_.fonts.name.line - 2 * kUnderBlock - 2;
    const qreal part = std::clamp(std::min(laneHeight * 0.62, belowName), std::min(kLeastBlock, whole),
                                  std::min(kTallestSmall, whole));
    Block block;
    block.id = step.id;
    block.place = step.place;
    block.elevation = step.elevation;
    block.rect = rectOf(step, whole);
    if (auto face = faceWithName(block.rect, step, frame_.fonts)) {
      block.face = std::move(*face);
    } else {
      block.rect = rectOf(step, part);
      block.face = faceWithoutName(block.rect, step, frame_.fonts);
    }
    if (step.sideChange)
      block.sideChange = stepX(step, *step.sideChange);
    blocks_.push_back(std::move(block));
  }
}

// One slot before each step and one at the end of each section. Where two sections meet, the end of the one and the
// beginning of the other are two places at one moment, drawn a little apart.
void TerrainGeometry::layGaps(const TerrainScene& scene) {
  std::size_t next = 0;
  for (std::size_t s = 0; s < scene.sections.size(); ++s) {
    const SectionBand& band = sections_[s];
    if (band.empty) {
      const qreal middle = (band.left + band.right) / 2;
      gaps_.push_back({{s, 0}, middle, band.left, band.right});
      continue;
    }
    qreal last = band.left;
    for (std::size_t i = 0; i < scene.sections[s].steps && next < blocks_.size(); ++i, ++next) {
      const QRectF& block = blocks_[next].rect;
      const qreal x = i == 0 ? std::min(band.left + 2, block.left()) : (last + block.left()) / 2;
      gaps_.push_back({{s, i}, x, last, block.left()});
      last = block.right();
    }
    const bool lastSection = s + 1 == scene.sections.size();
    const qreal end = lastSection ? contentSize_.width() : last;
    gaps_.push_back({{s, scene.sections[s].steps}, lastSection ? last + 4 : last - 1, last, end});
  }
}

} // namespace matwright
