#pragma once

#include "ui/document/PlanDocument.h"
#include "ui/tidy/TidyLines.h"
#include "ui/timeline/StepFigure.h"
#include "ui/timeline/TerrainPainter.h"

#include <QAbstractScrollArea>

namespace matwright {

// What is shown of a search: the class as it is, and as it would be.
struct TidyPicture {
  Snapshot before, after;
  std::vector<TidyMove> moves;
};

// The class as it is and tidied, one above the other on one scale of time. Steps that move have a dashed outline in
// both, and a line from the one to the other; pinned ones have a pin. Nothing is changed here.
//
// A click, Left and Right, Home and End choose a step, in the order of the tidied class. Ctrl+wheel, Ctrl++ and Ctrl+-
// zoom, Ctrl+0 shows all.
class TidyTerrains : public QAbstractScrollArea {
  Q_OBJECT

public:
  // The document must outlive the view.
  explicit TidyTerrains(const PlanDocument& document, QWidget* parent = nullptr);

  void setPicture(TidyPicture picture);
  void setPinned(std::vector<StepId> pinned);
  void setWaiting(bool waiting); // what is shown below is of the search before

  std::optional<StepId> current() const { return current_; }
  void setCurrent(std::optional<StepId> step); // and scrolls to it in both; one that is not there: none

  const TidyStage& stage() const { return stage_; }
  QPointF toStage(QPointF viewport) const;
  QPointF toViewport(QPointF stage) const;

  QSize sizeHint() const override { return {860, 480}; }
  QSize minimumSizeHint() const override { return {320, 240}; }

Q_SIGNALS:
  void currentChanged();
  void stepMenuWanted(const QPoint& global); // of the current step

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void layOut();
  void zoomTo(double zoom, qreal viewportX);
  void paintTerrain(QPainter& painter, bool after, const QRectF& visible);
  void paintLines(QPainter& painter) const;
  void paintPins(QPainter& painter) const;
  void tellCurrent();
  QString toolTipAt(QPointF viewport) const;
  QString spoken(StepId step) const;

  const PlanDocument& document_;
  TidyPicture picture_;
  std::vector<StepId> pinned_;
  std::optional<StepId> current_;
  bool waiting_ = false;
  double zoom_ = 1;
  TerrainTypefaces typefaces_;
  TidyStage stage_;
  std::vector<TidyLine> lines_;
  std::vector<QRectF> texts_;
  FigurePictures figures_;
};

} // namespace matwright
