#pragma once

#include <QStyledItemDelegate>

class QTreeView;

namespace matwright {

// What the rows of the list carry.
enum CautionRole { kLevelRole = Qt::UserRole + 1, kBodyRole, kInsteadRole, kGroupRole };

// Paints one row: the mark of the level, the headline, what was found and what to do instead, all wrapped. A heading
// has a sign of whether it is open.
class CautionDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit CautionDelegate(QTreeView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  QTreeView& view_;
};

} // namespace matwright
