#pragma once

#include "ui/document/ClassCommands.h"

#include <QTreeView>

namespace matwright {

class OutlineModel;

// The class as a list: one line a step under the headings of its sections. It shares the selection with every other
// view of the class; steps are dragged to their place, movements dropped in from the catalogue, doses and headings
// edited in the row.
class OutlineView : public QTreeView {
  Q_OBJECT

public:
  OutlineView(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent = nullptr);

  OutlineModel& outline() const { return *model_; }
  // Where something dropped at a point of the viewport would go.
  Place placeAt(const QPoint& point) const;
  // What a drag of the selected steps carries; null when no step is selected. Owned by the caller.
  QMimeData* selectedMimeData() const;

Q_SIGNALS:
  void tidyWanted(const std::vector<matwright::StepId>& steps); // two or more

protected:
  void selectionChanged(const QItemSelection& selected, const QItemSelection& deselected) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void drawBranches(QPainter*, const QRect&, const QModelIndex&) const override {}

  void startDrag(Qt::DropActions actions) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragMoveEvent(QDragMoveEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;

private:
  void refresh();
  void arrangeSections();
  void arrangeColumns();
  void pushSelection(); // from here to the class
  void pullSelection(); // from the class to here
  void nudge(int by);
  void fillStepMenu(QMenu& menu);
  void fillSectionMenu(QMenu& menu, std::size_t section);
  // The height in the viewport at which a gap lies.
  std::optional<int> lineAt(Place place) const;

  PlanDocument& document_;
  StepSelection& selection_;
  ClassCommands& commands_;
  OutlineModel* model_;
  std::optional<Place> dropPlace_;
  bool syncing_ = false;
};

} // namespace matwright
