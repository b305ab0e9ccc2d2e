#include "ui/controls/FlowLayout.h"

#include <QWidget>
#include <algorithm>

namespace matwright {

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout(parent), gap_(gap) { setContentsMargins(0, 0, 0, 0); }

FlowLayout::~FlowLayout() {
  for (QLayoutItem* item : items_)
    delete item;
}

void FlowLayout::addItem(QLayoutItem* item) { items_.push_back(item); }

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item)
    items_.erase(items_.begin() + index);
  return item;
}

int FlowLayout::heightForWidth(int width) const {
  const QMargins margins = contentsMargins();
  const QRect area(0, 0, width - margins.left() - margins.right(), 0);
  return arrange(area, false) + margins.top() + margins.bottom();
}

QSize FlowLayout::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_)
    if (!item->isEmpty())
      size = size.expandedTo(item->minimumSize());
  const QMargins margins = contentsMargins();
  return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

QSize FlowLayout::sizeHint() const {
  QSize size;
  for (const QLayoutItem* item : items_) {
    if (item->isEmpty())
      continue;
    const QSize own = item->sizeHint();
    size = QSize(size.width() + (size.width() > 0 ? gap_ : 0) + own.width(), std::max(size.height(), own.height()));
  }
  const QMargins margins = contentsMargins();
  return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowLayout::setGeometry(const QRect& area) {
  QLayout::setGeometry(area);
  arrange(area.marginsRemoved(contentsMargins()), true);
}

int FlowLayout::arrange(const QRect& area, bool place) const {
  int x = 0, y = 0, lineHeight = 0;
  for (QLayoutItem* item : items_) {
    if (item->isEmpty())
      continue;
    const int width = std::min(item->sizeHint().width(), std::max(area.width(), item->minimumSize().width()));
    const int height = item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height();
    if (x > 0 && x + width > area.width()) {
      x = 0;
      y += lineHeight + gap_;
      lineHeight = 0;
    }
    if (place)
      item->setGeometry(QRect(area.x() + x, area.y() + y, width, height));
    x += width + gap_;
    lineHeight = std::max(lineHeight, height);
  }
  return y + lineHeight;
}

} // namespace matwright
