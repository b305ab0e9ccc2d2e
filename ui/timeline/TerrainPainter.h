#pragma once

#include "ui/theme/Theme.h"
#include "ui/timeline/TerrainGeometry.h"

#include <QFont>
#include <QPainter>

namespace matwright {

class FigurePictures;

// The fonts that belong to the application's font, and their measures.
struct TerrainTypefaces {
  QFont name, heading, small;
};
TerrainTypefaces typefacesFrom(const QFont& font);
TerrainFonts measuresOf(const TerrainTypefaces& typefaces);

// What a person does to the terrain just now: shown, but no part of the class.
struct TerrainAccent {
  std::vector<StepId> selected;
  std::optional<StepId> current;
  bool focused = false;       // the keyboard speaks to the view
  std::vector<StepId> ghosts; // steps that are where they would be
  std::optional<Place> gap;   // where the next movement would go in
  bool ownGap = false;        // chosen on its own, not merely behind the current step
  QRectF rubberBand;

  bool isSelected(StepId step) const;
  bool isGhost(StepId step) const;
};

// Paints one scene where its geometry puts it. The painter's origin is that of the geometry.
class TerrainPainter {
public:
  TerrainPainter(QPainter& painter, const TerrainScene& scene, const TerrainGeometry& geometry, const Theme& theme,
                 const TerrainTypefaces& typefaces, const TerrainAccent& accent, FigurePictures& figures,
                 const QRectF& visible);

  void paintContent(); // all that scrolls
  void paintGutter();  // lane names and axes; drawn over the content, with its left edge at -gutter + `visible.left()`

private:
  // TerrainPainter.cpp
  void paintGround();
  void fillUpright(qreal left, qreal top, qreal right, qreal bottom, const QColor& colour); // on whole pixels
  void paintLandscape();
  void paintFloors();
  void paintHeader();
  void paintOver();
  void paintConnectors();
  void paintNames();
  NameLabel inSight(std::size_t block) const;
  void paintGap();
  // BlockPainter.cpp
  void paintBlock(std::size_t index);
  void paintLines(const QRectF& rect, const QStringList& lines, const QFont& font, const QColor& colour, qreal line,
                  Qt::Alignment alignment);
  // StripPainter.cpp
  void paintRuler();
  void paintEffort();
  void paintWishedEffort();
  void paintLoad();
  void paintStripLegend(); // of effort and load, in the gutter
  void paintLoadAxis();
  void paintSpine();

  bool isVisible(qreal left, qreal right) const { return right >= visible_.left() && left <= visible_.right(); }
  QColor sectionGround(std::size_t section) const { return theme_.sections[section % theme_.sections.size()]; }

  QPainter& painter_;
  const TerrainScene& scene_;
  const TerrainGeometry& geometry_;
  const Theme& theme_;
  const TerrainTypefaces& typefaces_;
  const TerrainAccent& accent_;
  FigurePictures& figures_;
  QRectF visible_;
};

// `share` of the other colour, 0 to 1.
QColor mixed(const QColor& one, const QColor& other, double share);

// A glyph that stands for what the spine does, beside its colour and its word.
void paintSpineGlyph(QPainter& painter, const QRectF& square, SpineAction action, const QColor& colour);

// What would happen, beside the pointer and wholly within `within`: the text, and the mark of a level.
void paintChip(QPainter& painter, QPointF pointer, const QRectF& within, const QString& text,
               std::optional<Level> level, const QFont& font, const Theme& theme);

} // namespace matwright
