// Composing a class, and completing the open one.
#include "ui/compose/ComposeDialog.h"
#include "ui/window/MainWindow.h"

#include <QMenu>
#include <QMenuBar>

namespace matwright {

void MainWindow::buildClassMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&Class"));
  add(menu, tr("&Compose a Class\u2026"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N)}, [this] { composeClass(); });
  completeAction_ = add(menu, tr("C&omplete this Class\u2026"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E)},
                        [this] { completeClass(); });
}

ComposeDialog& MainWindow::composer() {
  if (!compose_) {
    compose_ = new ComposeDialog(document_, this);
    connect(compose_, &ComposeDialog::useWanted, this, &MainWindow::useComposed);
  }
  compose_->setStudio(files_.studioFolder(), files_.classFile());
  return *compose_;
}

void MainWindow::composeClass() {
  ComposeDialog& dialog = composer();
  dialog.composeNew();
  dialog.show();
  dialog.raise();
  dialog.activateWindow();
}

void MainWindow::completeClass() {
  ComposeDialog& dialog = composer();
  dialog.complete();
  dialog.show();
  dialog.raise();
  dialog.activateWindow();
}

// The dialog stays until the open class is settled, so that nothing is lost by changing one's mind.
void MainWindow::useComposed(const ClassPlan& plan) {
  whenSettled([this, plan] {
    if (compose_)
      compose_->accept();
    files_.startNew(plan);
    showWorkspace(Workspace::classes);
  });
}

} // namespace matwright
