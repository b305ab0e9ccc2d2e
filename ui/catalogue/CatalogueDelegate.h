#pragma once

#include <QAbstractItemView>
#include <QStyledItemDelegate>

namespace matwright {

// Paints a movement: figure, name in full, dose and length, what it would add, and the mark of the strongest caution.
class CatalogueDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit CatalogueDelegate(QAbstractItemView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  QAbstractItemView& view_;
};

} // namespace matwright
