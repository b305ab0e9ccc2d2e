#include "ui/catalogue/MovementList.h"

#include "ui/catalogue/CatalogueDelegate.h"
#include "ui/catalogue/CatalogueModel.h"
#include "ui/controls/MovementRow.h"

#include <QContextMenuEvent>
#include <QDrag>
#include <QKeyEvent>
#include <QMimeData>

namespace matwright {

MovementList::MovementList(QWidget* parent) : QListView(parent) {
  setItemDelegate(new CatalogueDelegate(*this));
  setResizeMode(Adjust);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  setSelectionMode(SingleSelection);
  setEditTriggers(NoEditTriggers);
  setDragEnabled(true);
  setDragDropMode(DragOnly);
  setDropIndicatorShown(false);
  setMouseTracking(true);
  connect(this, &QListView::entered, this, &MovementList::hovered);
  connect(this, &QListView::viewportEntered, this, [this] { Q_EMIT hovered({}); });
  connect(this, &QListView::doubleClicked, this, &MovementList::insertWanted);
}

bool MovementList::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::Enter || event->type() == QEvent::Leave) {
    pointed_ = event->type() == QEvent::Enter;
    if (!pointed_)
      Q_EMIT hovered({});
    tellWatched();
  }
  return QListView::viewportEvent(event);
}

void MovementList::focusInEvent(QFocusEvent* event) {
  QListView::focusInEvent(event);
  tellWatched();
}

void MovementList::focusOutEvent(QFocusEvent* event) {
  QListView::focusOutEvent(event);
  tellWatched();
}

void MovementList::tellWatched() { Q_EMIT watchedChanged(pointed_ || hasFocus()); }

void MovementList::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (!enter || !currentIndex().isValid()) {
    QListView::keyPressEvent(event);
    return;
  }
  Q_EMIT insertWanted(currentIndex());
  event->accept();
}

void MovementList::contextMenuEvent(QContextMenuEvent* event) {
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  const QModelIndex index = byKey ? currentIndex() : indexAt(event->pos());
  if (!index.isValid())
    return;
  Q_EMIT menuWanted(index, byKey ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos());
  event->accept();
}

void MovementList::startDrag(Qt::DropActions) {
  const auto* rows = qobject_cast<const CatalogueModel*>(model());
  const matwright::Movement* movement = rows ? rows->movementAt(currentIndex()) : nullptr;
  if (!movement)
    return;
  auto* drag = new QDrag(this);
  drag->setMimeData(rows->mimeData({currentIndex()}));
  drag->setPixmap(dragPixmap(QString::fromStdString(movement->name),
                             movementPixmap(*movement, nullptr, MovementRow::kFigure, *this), *this));
  // Left of the pointer: to its right the terrain says what the drop would do.
  const QSizeF size = drag->pixmap().deviceIndependentSize();
  drag->setHotSpot({static_cast<int>(size.width()) + 12, static_cast<int>(size.height()) / 2});
  drag->exec(Qt::CopyAction);
}

} // namespace matwright
