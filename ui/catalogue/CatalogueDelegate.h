#pragma once

#include "core/movement/Movement.h"

#include <QAbstractItemView>
#include <QPixmap>
#include <QStyledItemDelegate>

namespace matwright {

// The end pose of a movement as a small picture, remembered from one painting to the next.
QPixmap movementPixmap(const Movement& movement, const QSize& size, const QWidget& on);

// Paints a movement: figure, name in full, dose and length, what it would add, and the mark of the strongest caution.
class CatalogueDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  static constexpr QSize kFigure{66, 50};

  explicit CatalogueDelegate(QAbstractItemView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  QAbstractItemView& view_;
};

} // namespace matwright
