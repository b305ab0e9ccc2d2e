#pragma once

#include <QHeaderView>
#include <QStyledItemDelegate>

namespace matwright {

// Paints a cell: the mark of its strongest caution, how many there are when more than one, and a folded corner where
// the person has a variant. An empty cell stays empty.
class GroupDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

// Names of rows or columns. Those of sections stand out, those of people who are not looked at stand back. What is too
// long for a row is shortened at its end and shown in full by its tool tip.
class GroupHeader : public QHeaderView {
  Q_OBJECT

public:
  explicit GroupHeader(Qt::Orientation orientation, QWidget* parent = nullptr);
  QSize sizeHint() const override;

protected:
  void paintSection(QPainter* painter, const QRect& area, int section) const override;
};

} // namespace matwright
