// What the window shows first.
#include "ui/window/MainWindow.h"

#include <QFileInfo>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>

namespace matwright {

void MainWindow::start(const QString& file) {
  if (!file.isEmpty())
    open(file);
  else if (const QString last = settings_.lastClass(); !last.isEmpty())
    open(last);
  if (files_.classFile().isEmpty() && file.isEmpty())
    openDemo();
  offerRecovery(file);
}

void MainWindow::offerRecovery(const QString& file) {
  for (const Recovery& recovery : StudioFiles::findRecoveries(places_.recoveryRoot)) {
    if (!file.isEmpty() && recovery.origin != QFileInfo(file).absoluteFilePath())
      continue;
    const QString name =
        recovery.origin.isEmpty() ? tr("a class that was never saved") : QFileInfo(recovery.origin).fileName();
    QMessageBox* box =
        ask(tr("Unsaved work"), tr("Matwright did not end well last time. Unsaved work of %1 was kept: %2.")
                                    .arg(QLocale().toString(recovery.when, QLocale::ShortFormat), name));
    QPushButton* take = box->addButton(tr("Recover"), QMessageBox::AcceptRole);
    QPushButton* drop = box->addButton(tr("Let It Go"), QMessageBox::DestructiveRole);
    box->addButton(tr("Later"), QMessageBox::RejectRole);
    connect(box, &QMessageBox::buttonClicked, this, [this, take, drop, recovery](QAbstractButton* button) {
      if (button == take) {
        if (const auto recovered = files_.recover(recovery); !recovered)
          report(recovered.error());
      } else if (button == drop) {
        StudioFiles::discard(recovery);
      }
    });
    box->open();
    return; // one at a time: the next start offers the next
  }
}

} // namespace matwright
