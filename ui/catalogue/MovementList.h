#pragma once

#include <QListView>

namespace matwright {

// The list of movements: drags one out, and tells when one is to be put into the class.
class MovementList : public QListView {
  Q_OBJECT

public:
  explicit MovementList(QWidget* parent = nullptr);

Q_SIGNALS:
  void insertWanted(const QModelIndex& index); // Enter or a double click
  void hovered(const QModelIndex& index);      // the row under the pointer; none when it has left
  void watchedChanged(bool watched);           // has the focus or the pointer
  void menuWanted(const QModelIndex& index, const QPoint& globalPoint);

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void startDrag(Qt::DropActions actions) override;

private:
  void tellWatched();

  bool pointed_ = false;
};

} // namespace matwright
