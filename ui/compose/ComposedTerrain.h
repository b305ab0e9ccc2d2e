#pragma once

#include "ui/compose/Composition.h"
#include "ui/timeline/StepFigure.h"
#include "ui/timeline/TerrainPainter.h"

#include <QAbstractScrollArea>

namespace matwright {

// A composed class as a terrain in which steps are chosen and nothing is changed. Kept steps have a pin; what is added
// to a class that is there has a dashed outline.
//
// A click, Left and Right, Home and End choose a step. Ctrl+wheel, Ctrl++ and Ctrl+- zoom, Ctrl+0 shows all.
class ComposedTerrain : public QAbstractScrollArea {
  Q_OBJECT

public:
  // The composition must outlive the view.
  explicit ComposedTerrain(Composition& composition, QWidget* parent = nullptr);

  void setWaiting(bool waiting); // another class is being looked for
  std::optional<StepId> current() const { return current_; }
  void setCurrent(std::optional<StepId> step); // and scrolls to it; one that is not there: none

  const TerrainGeometry& geometry() const { return geometry_; }
  const TerrainScene& scene() const { return scene_; }
  QPointF toViewport(QPointF terrain) const;

  QSize sizeHint() const override { return {720, 250}; }
  QSize minimumSizeHint() const override { return {320, 150}; }

Q_SIGNALS:
  void currentChanged();

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void takeClass();
  void layOut();
  void zoomTo(double zoom, qreal viewportX);
  void paintPins(QPainter& painter) const;
  QPointF toTerrain(QPointF viewport) const { return viewport + (QPointF() - toViewport({})); }
  QString toolTipAt(QPointF viewport) const;
  void tellCurrent();

  Composition& composition_;
  PlanDocument& document_; // of the composition
  std::optional<StepId> current_;
  bool waiting_ = false;
  double zoom_ = 1;
  TerrainTypefaces typefaces_;
  TerrainScene scene_;
  TerrainGeometry geometry_;
  FigurePictures figures_;
};

} // namespace matwright
