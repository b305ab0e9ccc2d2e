#include "ui/controls/CheckMenu.h"

#include <QKeyEvent>
#include <QMouseEvent>

namespace matwright {

void CheckMenu::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !tick(actionAt(event->position().toPoint())))
    QMenu::mouseReleaseEvent(event);
}

void CheckMenu::keyPressEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Space || !tick(activeAction()))
    QMenu::keyPressEvent(event);
}

bool CheckMenu::tick(QAction* action) {
  if (!action || !action->isCheckable() || !action->isEnabled())
    return false;
  action->trigger();
  return true;
}

} // namespace matwright
