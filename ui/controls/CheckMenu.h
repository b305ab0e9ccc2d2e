#pragma once

#include <QMenu>

namespace matwright {

// A menu for choosing several things: it stays open while boxes are ticked, with the mouse or the space bar.
class CheckMenu : public QMenu {
  Q_OBJECT

public:
  using QMenu::QMenu;

protected:
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  // True when the action is one to tick; then it has been.
  static bool tick(QAction* action);
};

} // namespace matwright
