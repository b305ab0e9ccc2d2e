#include "ui/inspector/RowList.h"

#include <QKeyEvent>
#include <QWheelEvent>

namespace matwright {

RowList::RowList(const QString& name, HeightOf heightOf, QWidget* parent)
    : QListWidget(parent), heightOf_(std::move(heightOf)) {
  setAccessibleName(name);
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setResizeMode(QListView::Adjust);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  connect(this, &QListWidget::itemClicked, this, [this](const QListWidgetItem* item) { Q_EMIT chosen(row(item)); });
}

int RowList::heightForWidth(int width) const {
  int height = 0;
  for (int i = 0; i < count(); ++i)
    height += heightOf_(i, width);
  return height;
}

void RowList::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key != Qt::Key_Space && key != Qt::Key_Return && key != Qt::Key_Enter)
    QListWidget::keyPressEvent(event);
  else if (currentRow() >= 0)
    Q_EMIT chosen(currentRow());
}

void RowList::wheelEvent(QWheelEvent* event) { event->ignore(); }

} // namespace matwright
