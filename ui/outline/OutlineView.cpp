#include "ui/outline/OutlineView.h"

#include "ui/controls/RowText.h"
#include "ui/outline/OutlineDelegate.h"
#include "ui/outline/OutlineModel.h"
#include "ui/theme/Theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScopedValueRollback>
#include <QScrollBar>

namespace matwright {

OutlineView::OutlineView(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent)
    : QTreeView(parent), document_(document), selection_(selection), commands_(commands),
      model_(new OutlineModel(document, commands, this)) {
  setModel(model_);
  setItemDelegate(new OutlineDelegate(*this));
  setAccessibleName(tr("Outline of the class"));
  setRootIsDecorated(false);
  setItemsExpandable(false);
  setExpandsOnDoubleClick(false);
  setIndentation(0);
  setUniformRowHeights(false);
  setSelectionMode(ExtendedSelection);
  setSelectionBehavior(SelectRows);
  setEditTriggers(DoubleClicked);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setDragEnabled(true);
  setAcceptDrops(true);
  setDragDropMode(DragDrop);
  setDropIndicatorShown(false);
  header()->setStretchLastSection(false);
  header()->setSectionsMovable(false);
  header()->setMinimumSectionSize(16);
  header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  header()->setSectionResizeMode(0, QHeaderView::Stretch);
  connect(header(), &QHeaderView::sectionResized, this, [this](int section) {
    if (section == 0)
      scheduleDelayedItemsLayout();
  });

  connect(model_, &QAbstractItemModel::modelReset, this, &OutlineView::arrangeSections);
  connect(&document, &PlanDocument::changed, this, &OutlineView::refresh);
  connect(&selection, &StepSelection::changed, this, &OutlineView::pullSelection);
  arrangeSections();
  pullSelection();
}

void OutlineView::refresh() {
  const int scrolled = verticalScrollBar()->value();
  {
    const QScopedValueRollback quiet(syncing_, true);
    model_->refresh();
  }
  scheduleDelayedItemsLayout();
  verticalScrollBar()->setValue(scrolled);
  pullSelection();
}

void OutlineView::arrangeSections() {
  for (int section = 0; section < model_->rowCount(); ++section)
    setFirstColumnSpanned(section, {}, true);
  expandAll();
}

void OutlineView::arrangeColumns() {
  // Where there is no room for every column beside a readable name, the facts go below the name.
  const bool narrow = viewport()->width() < fontMetrics().horizontalAdvance(QLatin1Char('0')) * 50;
  for (const OutlineColumn column : {OutlineColumn::begins, OutlineColumn::length, OutlineColumn::change})
    setColumnHidden(static_cast<int>(column), narrow);
}

void OutlineView::resizeEvent(QResizeEvent* event) {
  arrangeColumns();
  QTreeView::resizeEvent(event);
  scheduleDelayedItemsLayout();
}

void OutlineView::selectionChanged(const QItemSelection& selected, const QItemSelection& deselected) {
  QTreeView::selectionChanged(selected, deselected);
  pushSelection();
}

void OutlineView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTreeView::currentChanged(current, previous);
  pushSelection();
}

void OutlineView::pushSelection() {
  if (syncing_ || !selectionModel())
    return;
  const QScopedValueRollback quiet(syncing_, true);
  std::vector<StepId> steps;
  std::optional<std::size_t> heading;
  for (const QModelIndex& index : selectionModel()->selectedRows()) {
    if (const auto step = model_->stepAt(index))
      steps.push_back(*step);
    else
      heading = model_->sectionAt(index);
  }
  if (steps.empty()) {
    if (heading)
      selection_.selectGap({*heading, 0});
    return;
  }
  const auto current = model_->stepAt(currentIndex());
  const bool held = current && std::find(steps.begin(), steps.end(), *current) != steps.end();
  selection_.set(steps, held ? current : steps.back());
}

void OutlineView::pullSelection() {
  if (syncing_)
    return;
  const QScopedValueRollback quiet(syncing_, true);
  model_->refresh();
  QItemSelection rows;
  for (const StepId step : selection_.steps())
    if (const QModelIndex index = model_->indexOf(step); index.isValid())
      rows.select(index, index.siblingAtColumn(kOutlineColumns - 1));
  const Place gap = selection_.gap();
  if (selection_.steps().empty() && selection_.hasOwnGap() && gap.index == 0) {
    const QModelIndex heading = model_->indexOfSection(gap.section);
    rows.select(heading, heading.siblingAtColumn(kOutlineColumns - 1));
  }
  selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect);
  if (const auto current = selection_.current()) {
    const QModelIndex index = model_->indexOf(*current);
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::NoUpdate);
    scrollTo(index);
  }
  viewport()->update();
}

void OutlineView::nudge(int by) { commands_.nudgeSelected(by); }

void OutlineView::keyPressEvent(QKeyEvent* event) {
  const bool alt = event->modifiers() == Qt::AltModifier;
  if (alt && (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down)) {
    nudge(event->key() == Qt::Key_Up ? -1 : 1);
  } else if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
    commands_.removeSelected();
  } else if (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Minus) {
    commands_.changeDoseOfSelected(event->key() == Qt::Key_Plus ? 1 : -1);
  } else if (event->key() == Qt::Key_F2 && currentIndex().isValid()) {
    const bool step = model_->stepAt(currentIndex()).has_value();
    edit(currentIndex().siblingAtColumn(step ? static_cast<int>(OutlineColumn::dose) : 0));
  } else {
    QTreeView::keyPressEvent(event);
    return;
  }
  event->accept();
}

void OutlineView::mouseDoubleClickEvent(QMouseEvent* event) {
  // A heading is as wide as the view, whichever column lies there.
  const QModelIndex index = indexAt(event->position().toPoint());
  if (index.isValid() && !model_->stepAt(index) && event->button() == Qt::LeftButton)
    edit(index.siblingAtColumn(0));
  else
    QTreeView::mouseDoubleClickEvent(event);
}

void OutlineView::paintEvent(QPaintEvent* event) {
  QTreeView::paintEvent(event);
  std::optional<Place> place = dropPlace_;
  if (!place && selection_.hasOwnGap() && selection_.steps().empty())
    place = selection_.gap();
  const auto line = place ? lineAt(*place) : std::nullopt;
  if (!line)
    return;
  QPainter painter(viewport());
  painter.setPen(QPen(rowTheme().accent, 2));
  painter.drawLine(4, *line, viewport()->width() - 4, *line);
}

std::optional<int> OutlineView::lineAt(Place place) const {
  const QModelIndex heading = model_->indexOfSection(place.section);
  if (!heading.isValid())
    return std::nullopt;
  const int steps = model_->rowCount(heading);
  if (static_cast<int>(place.index) < steps)
    return visualRect(model_->index(static_cast<int>(place.index), 0, heading)).top();
  return visualRect(steps > 0 ? model_->index(steps - 1, 0, heading) : heading).bottom();
}

} // namespace matwright
