#pragma once

#include <QStyledItemDelegate>

class QTreeView;

namespace matwright {

// Paints section headings and steps; the name wraps in its column. Edits doses with a spin box.
class OutlineDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit OutlineDelegate(QTreeView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const override;

private:
  QTreeView& view_;
};

} // namespace matwright
