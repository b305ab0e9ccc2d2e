#pragma once

#include "ui/document/ClassCommands.h"

#include <QPersistentModelIndex>
#include <QTimer>
#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QToolButton;

namespace matwright {

class CatalogueModel;
class CataloguePreview;
class FilterBar;
class MovementList;

// The movements to choose from, ranked by what fits the gap of the selection. Enter or a double click puts one there;
// it can be dragged anywhere that takes movements.
class CataloguePanel : public QWidget {
  Q_OBJECT

public:
  CataloguePanel(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent = nullptr);

  QLineEdit* search() const { return search_; } // for a shortcut of the window to focus
  void focusSearch();
  // Ranks at once what would be ranked shortly. Changes while the panel is hidden are caught up with when it shows.
  void refreshNow();
  void setReducedMotion(bool reduced); // the preview stands still

protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void arrange();
  void schedule();
  void applyFilter(const MovementId& current);
  void afterArranging(const MovementId& current);
  void watch(const QModelIndex& hovered);
  void insert(const QModelIndex& index);
  void showMenu(const QModelIndex& index, const QPoint& globalPoint);
  QString gapText() const;
  MovementId currentMovement() const;

  PlanDocument& document_;
  StepSelection& selection_;
  ClassCommands& commands_;
  QTimer timer_;
  bool stale_ = true; // ranked for another class or gap
  quint64 revision_ = 0;
  std::optional<Place> gap_;         // that it was ranked for
  std::vector<PersonId> seenPeople_; // and whom

  QLineEdit* search_;
  FilterBar* filters_;
  QLabel* ranked_;
  QToolButton* alphabetical_;
  QStackedWidget* stack_;
  CatalogueModel* model_;
  MovementList* list_;
  QLabel* empty_;
  QPushButton* clear_;
  CataloguePreview* preview_;
  QTimer settled_; // until the pointer, or the choice, has rested on a row
  QPersistentModelIndex hovered_;
};

} // namespace matwright
