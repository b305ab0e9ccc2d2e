#include "ui/controls/FileQuestion.h"

#include <QFileDialog>
#include <QFileInfo>

namespace matwright {
namespace {

QFileDialog* dialogFor(QWidget* parent, const QString& title, const QString& kind, const QString& suffix,
                       const QString& folder, std::function<void(const QString&)> then) {
  auto* dialog = new QFileDialog(parent, title, QFileInfo::exists(folder) ? folder : QString(),
                                 QStringLiteral("%1 (*.%2)").arg(kind, suffix));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  QObject::connect(dialog, &QFileDialog::fileSelected, parent, std::move(then));
  return dialog;
}

} // namespace

void askFileToOpen(QWidget* parent, const QString& title, const QString& kind, std::function<void(const QString&)> then,
                   const QString& folder) {
  QFileDialog* dialog = dialogFor(parent, title, kind, QStringLiteral("json"), folder, std::move(then));
  dialog->setFileMode(QFileDialog::ExistingFile);
  dialog->open();
}

void askFileToSave(QWidget* parent, const QString& title, const QString& kind, const QString& name,
                   std::function<void(const QString&)> then, const QString& suffix, const QString& folder) {
  QFileDialog* dialog = dialogFor(parent, title, kind, suffix, folder, std::move(then));
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(suffix);
  dialog->selectFile(QStringLiteral("%1.%2").arg(name, suffix));
  dialog->open();
}

} // namespace matwright
