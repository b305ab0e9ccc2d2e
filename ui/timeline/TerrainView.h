#pragma once

#include "ui/document/ClassCommands.h"
#include "ui/timeline/StepFigure.h"
#include "ui/timeline/TerrainGestures.h"
#include "ui/timeline/TerrainPainter.h"
#include "ui/timeline/TerrainText.h"

#include <QAbstractScrollArea>
#include <QBasicTimer>
#include <memory>

namespace matwright {

// The class as a terrain: time runs right, height is how far the body is from the floor. Under it effort and spine on
// the same scale.
//
// Pointer: click, Ctrl-click, Shift-click and a frame on free ground select; a click on a gap or a way chooses the gap;
// a click on a section's name selects its steps. Blocks are dragged to another place (with Ctrl: copied), their right
// edge is dragged to change the dose, movements are dragged in from the catalogue. Escape ends a gesture as if it had
// never begun. Ctrl+wheel zooms about the pointer, the wheel alone goes along.
//
// Keys, handled here where the window has no shortcut of the same keys (a shortcut of the window comes first):
//   Left, Right            the step before, after; with Shift: extends the selection
//   Home, End              the first, last step; with Shift likewise
//   Up, Down               the first step of the section before, after
//   Alt+Left, Alt+Right    moves the selected steps one place
//   +, -                   changes the dose of the selected steps; holding the key is one gesture
//   Delete, Backspace      removes the selected steps
//   Ctrl+A                 selects all
//   G, Insert              puts the gap cursor; then Left, Right, Home, End, Up, Down move it, Escape gives it up
//   Return                 stepActivated, or gapActivated with the gap cursor
//   Menu, Shift+F10        the context menu
//   Ctrl++, Ctrl+-, Ctrl+0 zoom in, out, to fit
class TerrainView : public QAbstractScrollArea {
  Q_OBJECT

public:
  // None of the three is owned; all must outlive the view.
  TerrainView(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent = nullptr);
  ~TerrainView() override;

  void zoomIn();
  void zoomOut();
  void zoomToFit(); // and stays fitted when view or class change size, until zoomed otherwise
  bool isFitted() const { return fitted_; }
  double pixelsPerSecond() const { return pixelsPerSecond_; }

  void showStep(StepId step); // scrolls until it is in sight

  // What is shown just now: while something is dragged, as it would be.
  const TerrainScene& scene() const;
  const TerrainGeometry& geometry() const;
  TerrainSubject subject() const;
  // The class as it is, whatever is being dragged.
  TerrainSubject settledSubject() const;
  const TerrainGeometry& settledGeometry() const { return settled_.geometry; }
  bool isInGesture() const { return gesture_ != nullptr; }
  const StepSelection& selection() const { return selection_; }

  // Between the coordinates of the viewport and those of the geometry.
  QPointF toTerrain(QPointF viewport) const;
  QRectF toViewport(const QRectF& terrain) const;

  void activateStep(StepId step) { Q_EMIT stepActivated(step); }
  void selectStep(StepId step) { selection_.select(step); }

  QSize sizeHint() const override { return {900, 460}; }
  // As tall as it takes to see all strips, as far as a small window can give that.
  QSize minimumSizeHint() const override;

Q_SIGNALS:
  // The class as it would be while something is dragged; nothing when that is over.
  void previewChanged(std::optional<matwright::Snapshot> snapshot);
  void stepActivated(matwright::StepId step);                  // double click or Return: to be edited
  void gapActivated(matwright::Place place);                   // Return on the gap cursor: something is wanted there
  void sectionActivated(std::size_t section);                  // double click on its name
  void stepContextMenu(QPoint global, matwright::StepId step); // the step is selected already
  void gapContextMenu(QPoint global, matwright::Place place);  // elsewhere on the terrain; the gap is chosen already
  void scaleChanged(double pixelsPerSecond, bool fitted);

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void scrollContentsBy(int dx, int dy) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void timerEvent(QTimerEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragMoveEvent(QDragMoveEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;

private:
  struct Laid {
    TerrainScene scene;
    TerrainGeometry geometry;
  };
  struct Press {
    QPointF at; // viewport
    TerrainHit hit;
    Qt::KeyboardModifiers modifiers;
    bool selectsAlone = false; // on release, unless it becomes a drag
  };

  // TerrainView.cpp
  void takeChange();
  void takeSelection();
  void layOut();
  void updateScrollBars();
  void zoomTo(double pixelsPerSecond, qreal viewportX);
  void setGhost(std::optional<Ghost> ghost);
  TerrainAccent accent() const;
  QString toolTipAt(QPointF viewport) const;

  // TerrainPointer.cpp
  void begin(std::unique_ptr<TerrainGesture> gesture);
  void end(bool commit);
  void followPointer(QPointF viewport, Qt::KeyboardModifiers modifiers);
  std::unique_ptr<TerrainGesture> gestureFrom(const Press& press);
  void click(const Press& press);
  void updateCursor(QPointF viewport);

  // TerrainKeys.cpp
  bool moveCurrent(int key, bool extend);
  bool moveGap(int key);

  PlanDocument& document_;
  StepSelection& selection_;
  ClassCommands& commands_;
  TerrainStage stage_;

  TerrainTypefaces typefaces_;
  TerrainFrame frame_;
  double pixelsPerSecond_ = 1;
  bool fitted_ = true;
  int least_ = 0; // height at which all strips are seen
  Laid settled_;
  std::optional<Laid> would_; // what a ghost looks like
  std::optional<Ghost> ghost_;
  QRectF rubberBand_;
  FigurePictures figures_;

  std::unique_ptr<TerrainGesture> gesture_;
  std::optional<Press> press_;
  QPointF pointer_; // viewport
  Qt::KeyboardModifiers pointerModifiers_;
  QBasicTimer edgeScroll_;
};

} // namespace matwright
