// What the dialog shows of a search, and what is done with what was found.
#include "ui/compose/AboutComposed.h"
#include "ui/compose/ComposeDialog.h"
#include "ui/compose/ComposedList.h"
#include "ui/compose/ComposedTerrain.h"
#include "ui/compose/ObstacleList.h"
#include "ui/compose/WishesForm.h"
#include "ui/controls/FileQuestion.h"
#include "ui/document/NativePath.h"
#include "ui/text/ComposeText.h"
#include "ui/text/ErrorText.h"
#include "ui/text/VocabularyText.h"

#include <QDir>
#include <QLabel>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>

namespace matwright {

void ComposeDialog::showEvent(QShowEvent* event) {
  QDialog::showEvent(event);
  if (!asked_)
    search();
}

void ComposeDialog::hideEvent(QHideEvent* event) {
  pause_.stop();
  patience_.stop();
  composition_.drop();
  asked_.reset();
  QDialog::hideEvent(event);
}

void ComposeDialog::showStarted() {
  status_->setText(tr("Looking for a class\u2026"));
  progress_->setRange(0, 0);
  another_->setEnabled(false);
  use_->setEnabled(false);
  list_->setBusy(true);
  patience_.start();
}

void ComposeDialog::showBusy(bool busy) {
  patience_.stop();
  progress_->setVisible(busy);
  stop_->setVisible(busy);
  terrain_->setWaiting(busy);
}

void ComposeDialog::showProgress(const ComposeProgress& progress) {
  progress_->setRange(0, 1000);
  progress_->setValue(static_cast<int>(1000 * progress.evaluations / std::max<std::int64_t>(1, progress.of)));
  status_->setText(progress.best
                       ? tr("There is a class; looking for a better one\u2026 (costs %1)").arg(clock(*progress.best))
                       : tr("Looking for a class\u2026"));
}

void ComposeDialog::showFound() {
  showBusy(false);
  const ComposeResult& result = composition_.last()->result;
  const bool composed = result.status == ComposeStatus::composed;
  another_->setEnabled(true);
  use_->setEnabled(composed && (!composition_.completes() || !result.chosen.empty()));
  list_->setBusy(false);
  pages_->setCurrentIndex(composed ? 0 : 1);
  if (!composed) {
    obstacles_->show(*composition_.last(), document_.roster());
    status_->setText(text(result.status));
    return;
  }
  const int count = static_cast<int>(result.chosen.size());
  QStringList parts{composition_.completes() ? tr("%n step(s) added", nullptr, count)
                                             : tr("%n step(s)", nullptr, count)};
  if (result.stopped)
    parts << tr("stopped: the best so far");
  if (const int less = static_cast<int>(result.shortfalls.size()))
    parts << tr("%n part(s) of the focus have less time than wished", nullptr, less);
  if (composition_.completes() && result.chosen.empty())
    parts = {tr("Nothing is left to be filled")};
  status_->setText(parts.join(QStringLiteral(" \u00b7 ")));
  showCurrent(list_->current());
}

void ComposeDialog::showCurrent(std::optional<StepId> step) {
  terrain_->setCurrent(step);
  list_->setCurrent(step);
  about_->showStep(step);
}

void ComposeDialog::use() {
  if (!composition_.shown())
    return;
  if (!composition_.completes()) {
    ClassPlan plan = composition_.shown()->result.plan;
    nameWhatHasNone(plan);
    Q_EMIT useWanted(plan);
    return;
  }
  ComposeResult result = composition_.shown()->result;
  for (Section& section : result.plan.sections)
    for (Step& step : section.steps)
      if (!composition_.isOpen(step.id))
        step.id = document_.mintStepId(); // one that this document never had
  const Edit edit = editOf(document_.plan(), result);
  accept();
  document_.perform(edit, tr("Complete the class"));
}

void ComposeDialog::askWishesToOpen() {
  askFileToOpen(
      this, tr("Open wishes"), tr("Wishes"), [this](const QString& file) { openWishes(file); },
      QDir(studio_).filePath(QStringLiteral("wishes")));
}

void ComposeDialog::askWishesToSave() {
  QString name = QString::fromStdString(form_->wishes().name).toLower().replace(QLatin1Char(' '), QLatin1Char('-'));
  name.remove(QLatin1Char('/'));
  const QString folder = QDir(studio_).filePath(QStringLiteral("wishes"));
  askFileToSave(
      this, tr("Save wishes"), tr("Wishes"), name.isEmpty() ? tr("wishes") : name,
      [this](const QString& file) { saveWishes(file); }, QStringLiteral("json"), folder);
}

// A class that is filled up keeps its own length, sections, people and pace.
void ComposeDialog::openWishes(const QString& file) {
  const auto read = readWishes(nativePath(file));
  if (!read)
    return report(read.error());
  kept_ = read->kept;
  ClassWishes wishes = read->value;
  if (composition_.completes()) {
    const ClassWishes own = form_->wishes();
    wishes.name = own.name;
    wishes.date = own.date;
    wishes.length = own.length;
    wishes.sections = own.sections;
    wishes.people = own.people;
    wishes.pace = own.pace;
  }
  takeOthers(wishes);
}

void ComposeDialog::saveWishes(const QString& file) {
  const auto written = writeFile(nativePath(file), wishesText(form_->wishes(), kept_));
  if (!written)
    report(written.error());
}

void ComposeDialog::report(const Error& error) {
  auto* box = new QMessageBox(QMessageBox::Warning, windowTitle(), text(error), QMessageBox::Ok, this);
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setTextFormat(Qt::PlainText);
  box->open();
}

} // namespace matwright
