#pragma once

#include <QFont>
#include <QHash>
#include <QStyledItemDelegate>
#include <QTreeView>

namespace matwright {

// What the rows of such a tree carry. A row without a level has a dot for its mark, a heading none.
enum MarkedRole { kLevelRole = Qt::UserRole + 1, kBodyRole, kInsteadRole, kGroupRole, kOwnRole };

// Rows under headings that open and close. Each row is as tall as its words need at the width of the tree.
class MarkedTree : public QTreeView {
  Q_OBJECT

public:
  explicit MarkedTree(const QString& name, QWidget* parent = nullptr);

Q_SIGNALS:
  void chosen(const QModelIndex& index); // a row that is clicked or entered; headings open or close instead

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  void choose(const QModelIndex& index);
};

// Paints one row: the mark of the level, the headline, what was found and what to do instead, all wrapped, and what is
// said of one's own. A heading has a sign of whether it is open.
class MarkedRowDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit MarkedRowDelegate(QTreeView& view);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  QTreeView& view_;
  // How high the rows of a list are that is filled again and again, by what they say, at one width and in one font.
  mutable QHash<QString, int> heights_;
  mutable int width_ = 0;
  mutable QFont font_;
};

} // namespace matwright
