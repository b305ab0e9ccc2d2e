#pragma once

#include "ui/compose/Composition.h"

#include <QStyledItemDelegate>
#include <QTreeView>

class QStandardItem;
class QStandardItemModel;

namespace matwright {

// A composed class, one line a step under the heading of its section. The box before a step keeps it when the class is
// composed anew; the button beside a heading composes that section anew.
class ComposedList : public QTreeView {
  Q_OBJECT

public:
  // The composition must outlive the view.
  explicit ComposedList(Composition& composition, QWidget* parent = nullptr);

  std::optional<StepId> current() const;
  void setCurrent(std::optional<StepId> step);
  void setBusy(bool busy); // nothing can be composed anew just now

Q_SIGNALS:
  void currentChangedByUser();
  void sectionWanted(std::size_t section); // anew

protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

private:
  void refresh();
  void refreshKept();
  QWidget* headingOf(std::size_t section);
  QModelIndex indexOf(StepId step) const;
  std::optional<std::size_t> sectionAt(const QModelIndex& index) const;

  Composition& composition_;
  QStandardItemModel* rows_;
  bool busy_ = false, filling_ = false;
};

// Paints a step: a box, the name with option and dose below it, the length, and the mark of the strongest caution.
class ComposedDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  explicit ComposedDelegate(QTreeView& view) : QStyledItemDelegate(&view), view_(view) {}

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;

private:
  QTreeView& view_;
};

} // namespace matwright
