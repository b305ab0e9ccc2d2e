// Where everything of the terrain stands, computed from a scene without any window. Coordinates are logical pixels; x
// is 0 at the beginning of the class and runs right with time, y is 0 at the top of the view. The gutter with the names
// of the lanes lies left of 0 and does not scroll.
#pragma once

#include "ui/timeline/BlockFace.h"
#include "ui/timeline/NamePlacement.h"
#include "ui/timeline/TerrainScene.h"
#include "ui/timeline/TimeScale.h"

#include <array>

namespace matwright {

struct Lane {
  Elevation elevation{};
  qreal top = 0, bottom = 0; // bodies rest on the bottom
  bool used = false;
  qreal height() const { return bottom - top; }
};

struct Block {
  StepId id;
  Place place;
  Elevation elevation{};
  QRectF rect; // its width is the time of the work, nothing else
  BlockFace face;
  std::optional<NameLabel> label;  // when the name is not inside and there is room outside
  bool labelCoversLine = false;    // a connector or a floor runs behind it
  std::optional<qreal> sideChange; // x
};

// The way from one step into the next.
struct Connector {
  std::size_t into = 0; // index of the step
  std::vector<QPointF> points;
  bool change = false; // of position; else it only joins the two blocks
  std::optional<Level> caution;
  QString text; // "12 s"; empty when nothing changes
  QRectF label; // null when there is no room for the text
  QRectF mark;  // of the caution
};

struct SectionBand {
  qreal left = 0, right = 0;
  QString name;
  QString length; // "12:40" where there is room for it
  QRectF label;   // null when the name has no room
  bool empty = false;
};

// A place where a step can be put in.
struct GapSlot {
  Place place;
  qreal x = 0;
  qreal left = 0, right = 0; // where a click means it
};

struct TerrainHit {
  enum class Kind { ground, block, blockEdge, connector, gap, section };
  Kind kind = Kind::ground;
  std::optional<std::size_t> step; // index: block, edge, and the step that a connector leads into
  Place place;                     // gap and connector
  std::size_t section = 0;         // section header
};

// What stands under the lanes: ruler, effort and spine, the ruler alone, or nothing, where several terrains share one.
enum class TerrainFoot { all, ruler, none };

// Widths and heights that follow from the view and its fonts.
struct TerrainFrame {
  QSizeF view; // the whole viewport
  TerrainFonts fonts;
  qreal gutter = 0;
  TerrainFoot foot = TerrainFoot::all;
  bool dense = false; // lanes may be so low that figures are only just told apart
  qreal along() const { return std::max<qreal>(view.width() - gutter, 40); }
};

TerrainFrame frameFor(QSizeF view, const TerrainFonts& fonts);

// Below this the terrain scrolls up and down.
qreal leastHeight(const TerrainFrame& frame, const TerrainScene& scene);

// The pixels a second at which the class, and its planned end unless that is far off, just fills the view.
double fittingScale(const TerrainScene& scene, const TerrainFrame& frame);

class TerrainGeometry {
public:
  TerrainGeometry() = default;
  TerrainGeometry(const TerrainScene& scene, const TerrainFrame& frame, double pixelsPerSecond);

  const TerrainFrame& frame() const { return frame_; }
  const TimeScale& scale() const { return scale_; }
  const std::array<Lane, kWordCount<Elevation>>& lanes() const { return lanes_; } // standing first
  const Lane& lane(Elevation elevation) const;
  const std::vector<Block>& blocks() const { return blocks_; } // in the order of the class
  const std::vector<Connector>& connectors() const { return connectors_; }
  const std::vector<SectionBand>& sections() const { return sections_; }
  const std::vector<GapSlot>& gaps() const { return gaps_; }
  const std::vector<Tick>& ticks() const { return ticks_; }

  QSizeF contentSize() const { return contentSize_; } // without the gutter
  QRectF header() const { return header_; }
  QRectF terrain() const { return terrain_; }
  QRectF ruler() const { return ruler_; }
  QRectF effortStrip() const { return effort_; } // empty, as the other two, where the foot is without it
  QRectF spineStrip() const { return spine_; }
  qreal endX() const { return endX_; }       // of the class
  qreal targetX() const { return targetX_; } // of the planned length

  const Block* block(StepId id) const; // null when there is none
  const GapSlot* gap(Place place) const;
  qreal effortY(double effort) const;     // in the effort strip, 0 to 10
  qreal loadY(double newtonMetres) const; // in the same strip, 0 to the scene's loadScale

  TerrainHit hit(QPointF at) const;
  // Where steps dropped at `x` go. By the middles of the blocks, so that a place is never a pixel wide.
  Place dropPlace(qreal x) const;
  std::vector<std::size_t> blocksIn(const QRectF& area) const; // indices

private:
  void layRows(const TerrainScene& scene);
  void laySections(const TerrainScene& scene);
  void layLanes(const TerrainScene& scene);
  void layBlocks(const TerrainScene& scene);
  void layConnectors(const TerrainScene& scene);
  void layNames(const TerrainScene& scene);
  void laySeconds();
  void layGaps(const TerrainScene& scene);
  qreal stepX(const TerrainStep& step, Seconds at) const;
  qreal restingHeight(Elevation elevation) const;

  TerrainFrame frame_;
  TimeScale scale_;
  std::vector<qreal> padsBefore_; // by section
  std::array<Lane, kWordCount<Elevation>> lanes_{};
  std::vector<Block> blocks_;
  std::vector<Connector> connectors_;
  std::vector<SectionBand> sections_;
  std::vector<GapSlot> gaps_;
  std::vector<Tick> ticks_;
  QSizeF contentSize_;
  QRectF header_, terrain_, ruler_, effort_, spine_;
  qreal endX_ = 0, targetX_ = 0;
  double loadScale_ = 0;
};

} // namespace matwright
