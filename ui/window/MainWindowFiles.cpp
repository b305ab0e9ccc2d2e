#include "ui/card/CardText.h"
#include "ui/movements/MovementEditor.h"
#include "ui/movements/MovementsWorkspace.h"
#include "ui/print/CardPreview.h"
#include "ui/print/PersonSheetPreview.h"
#include "ui/rules/RulesWorkspace.h"
#include "ui/text/CautionText.h"
#include "ui/text/ErrorText.h"
#include "ui/text/LoadText.h"
#include "ui/text/RedFlagText.h"
#include "ui/text/VocabularyText.h"
#include "ui/window/ClassWorkspace.h"
#include "ui/window/MainWindow.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QStatusBar>

namespace matwright {
namespace {

// Copies a folder with what is in it; what is there already is left alone.
bool copyFolder(const QString& from, const QString& to) {
  if (!QDir().mkpath(to))
    return false;
  for (const QFileInfo& entry : QDir(from).entryInfoList(QDir::Files | QDir::Dirs | QDir::NoDotAndDotDot)) {
    const QString target = QDir(to).filePath(entry.fileName());
    if (entry.isDir()) {
      if (!copyFolder(entry.absoluteFilePath(), target))
        return false;
    } else if (!QFile::exists(target)) {
      if (!QFile::copy(entry.absoluteFilePath(), target))
        return false;
      // What comes with the program is read-only; the copy is the teacher's, and people are for her eyes alone.
      QFile::setPermissions(target, QFile::ReadOwner | QFile::WriteOwner |
                                        (QFileInfo(to).fileName() == QLatin1String("people")
                                             ? QFileDevice::Permissions()
                                             : QFile::ReadGroup | QFile::ReadOther));
    }
  }
  return true;
}

QString classesFolder(const QString& studio) {
  const QString classes = QDir(studio).filePath(QStringLiteral("classes"));
  return QFileInfo::exists(classes) ? classes : studio;
}

} // namespace

QMessageBox* MainWindow::ask(const QString& title, const QString& text, const QString& detail) {
  auto* box = new QMessageBox(this);
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setWindowTitle(title);
  box->setTextFormat(Qt::PlainText);
  box->setText(text);
  box->setInformativeText(detail);
  return box;
}

void MainWindow::report(const Error& error) {
  QMessageBox* box = ask(tr("Matwright"), text(error));
  box->setIcon(QMessageBox::Warning);
  box->open();
}

// What cannot be kept in the studio is nowhere but on the screen.
void MainWindow::askUnkept(const QString& name, std::function<void()> show, std::function<void()> drop,
                           std::function<void()> then) {
  QMessageBox* box =
      ask(tr("Not kept yet"),
          tr("Your changes to \u201c%1\u201d cannot be kept as they are. Go on without them?").arg(name));
  QPushButton* mend = box->addButton(tr("Put them right"), QMessageBox::RejectRole);
  QPushButton* leave = box->addButton(tr("Go on without"), QMessageBox::DestructiveRole);
  box->setDefaultButton(mend);
  connect(box, &QMessageBox::buttonClicked, this, [this, show, drop, leave, then](QAbstractButton* button) {
    if (button != leave)
      return show();
    drop();
    whenSettled(then);
  });
  box->open();
}

bool MainWindow::hasUnkept() const {
  return !movementsWorkspace_->editor().firstUnkept().empty() || rulesWorkspace_->firstUnkept();
}

void MainWindow::whenSettled(std::function<void()> then) {
  if (const MovementId unkept = movementsWorkspace_->editor().firstUnkept(); !unkept.empty())
    return askUnkept(
        movementName(*knowledge_.knowledge(), unkept),
        [this, unkept] {
          showWorkspace(Workspace::movements);
          movementsWorkspace_->showMovement(unkept);
        },
        [this] { movementsWorkspace_->editor().dropUnkept(); }, std::move(then));
  if (const auto unkept = rulesWorkspace_->firstUnkept())
    return askUnkept(
        rulesWorkspace_->nameOf(*unkept),
        [this, unkept] {
          showWorkspace(Workspace::rules);
          rulesWorkspace_->show(*unkept);
        },
        [this] { rulesWorkspace_->dropUnkept(); }, std::move(then));
  if (!files_.isModified())
    return then();
  QMessageBox* box = ask(tr("Unsaved changes"),
                         tr("Save the changes to \u201c%1\u201d?").arg(QString::fromStdString(document_.plan().name)));
  box->setStandardButtons(QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel);
  box->setDefaultButton(QMessageBox::Save);
  connect(box, &QMessageBox::buttonClicked, this, [this, box, then](QAbstractButton* button) {
    switch (box->standardButton(button)) {
    case QMessageBox::Save:
      return save(then);
    case QMessageBox::Discard:
      return then();
    default:
      return;
    }
  });
  box->open();
}

void MainWindow::newClass() {
  whenSettled([this] { files_.startNew(emptyClass(tr("New class").toStdString())); });
}

void MainWindow::openClass() {
  whenSettled([this] {
    auto* dialog =
        new QFileDialog(this, tr("Open a class"), classesFolder(files_.studioFolder()), tr("Classes (*.json)"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this, &MainWindow::open);
    dialog->open();
  });
}

void MainWindow::open(const QString& file) {
  if (const auto opened = files_.open(file); !opened)
    return report(opened.error());
  settings_.noteRecent(files_.classFile());
  if (const auto& errors = files_.peopleErrors(); !errors.empty()) {
    QStringList lines;
    for (const Error& error : errors)
      lines << text(error);
    QMessageBox* box =
        ask(tr("Some people could not be read"), tr("These files were left as they are; nobody in them is screened."),
            lines.join(QLatin1Char('\n')));
    box->setIcon(QMessageBox::Warning);
    box->open();
  }
  if (const auto& errors = files_.knowledgeErrors(); !errors.empty()) {
    QMessageBox* box = ask(tr("Your own movements and rules could not be read"),
                           tr("The class is opened without them: their movements are unknown, their rules do not "
                              "speak. The file is left as it is."),
                           text(errors.front()));
    box->setIcon(QMessageBox::Warning);
    box->open();
  }
}

void MainWindow::openDemo() {
  if (!copyFolder(places_.demoStudio, places_.ownStudio))
    return report({ErrorCode::cannotWrite, places_.ownStudio.toStdString(), {}, {}, {}});
  const QStringList classes =
      QDir(classesFolder(places_.ownStudio)).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
  if (!classes.isEmpty())
    open(QDir(classesFolder(places_.ownStudio)).filePath(classes.first()));
}

void MainWindow::save(std::function<void()> then) {
  if (files_.classFile().isEmpty())
    return saveAs(std::move(then));
  const auto saved = files_.save();
  if (saved) {
    settings_.noteRecent(files_.classFile());
    statusBar()->showMessage(tr("Saved %1").arg(files_.classFile()), 4000);
    if (then)
      then();
    return;
  }
  if (saved.error().code != ErrorCode::changedOnDisk)
    return report(saved.error());
  QMessageBox* box = ask(tr("Changed on disk"), text(saved.error()),
                         tr("Replace what is there with what is open here, or save this class under another name?"));
  QPushButton* replace = box->addButton(tr("Replace"), QMessageBox::DestructiveRole);
  QPushButton* other = box->addButton(tr("Save As\u2026"), QMessageBox::AcceptRole);
  box->addButton(QMessageBox::Cancel);
  connect(box, &QMessageBox::buttonClicked, this, [this, replace, other, then](QAbstractButton* button) {
    if (button == other)
      return saveAs(then);
    if (button != replace)
      return;
    if (const auto again = files_.save(StudioFiles::Conflict::overwrite); !again)
      return report(again.error());
    if (then)
      then();
  });
  box->open();
}

void MainWindow::saveAs(std::function<void()> then) {
  const QString folder = files_.studioFolder().isEmpty() ? places_.ownStudio : files_.studioFolder();
  auto* dialog = new QFileDialog(this, tr("Save the class as"), classesFolder(folder), tr("Classes (*.json)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("json"));
  QString name = QString::fromStdString(document_.plan().name).toLower().replace(QLatin1Char(' '), QLatin1Char('-'));
  name.remove(QLatin1Char('/'));
  dialog->selectFile((name.isEmpty() ? QStringLiteral("class") : name) + QStringLiteral(".json"));
  connect(dialog, &QFileDialog::fileSelected, this, [this, then](const QString& file) {
    if (const auto saved = files_.saveAs(file); !saved)
      return report(saved.error());
    settings_.noteRecent(files_.classFile());
    if (then)
      then();
  });
  dialog->open();
}

void MainWindow::exportTable(bool csv) {
  const Card card = cardOf(document_.knowledge(), document_.plan(), document_.evaluation(), document_.roster(),
                           settings_.namesOnCard() ? NameStyle::names : NameStyle::initials);
  auto* dialog =
      new QFileDialog(this, tr("Export"), files_.studioFolder(), csv ? tr("Table (*.csv)") : tr("Page (*.md)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(csv ? QStringLiteral("csv") : QStringLiteral("md"));
  connect(dialog, &QFileDialog::fileSelected, this, [this, csv, card](const QString& file) {
    const std::string bytes = (csv ? cardCsv(card) : cardMarkdown(card)).toStdString();
    const auto written = writeFile(QFile::encodeName(file).toStdString(), bytes);
    if (!written)
      return report(written.error());
    statusBar()->showMessage(tr("Saved %1").arg(file), 4000);
  });
  dialog->open();
}

void MainWindow::showCard() {
  if (!cardPreview_)
    cardPreview_ = new CardPreview(document_, settings_, this);
  cardPreview_->show();
  cardPreview_->raise();
  cardPreview_->activateWindow();
}

void MainWindow::showSheet(const PersonId& person) {
  if (!sheet_)
    sheet_ = new PersonSheetPreview(document_, settings_, this);
  sheet_->showPerson(person);
  sheet_->show();
  sheet_->raise();
  sheet_->activateWindow();
}

void MainWindow::showRedFlags() {
  if (!redFlags_)
    redFlags_ = new TextPreview(settings_, this);
  fillRedFlags();
  redFlags_->show();
  redFlags_->raise();
  redFlags_->activateWindow();
}

// Which of them concern somebody in the class changes with it.
void MainWindow::fillRedFlags() {
  std::vector<Person> inClass;
  for (const PersonId& id : document_.evaluation().people)
    if (const Person* person = findPerson(document_.roster(), id))
      inClass.push_back(*person);
  redFlags_->setSheet({redFlagTitle(), redFlagHtml(document_.knowledge(), inClass), standingNotice()});
}

void MainWindow::showAboutLoad() {
  if (!aboutLoad_)
    aboutLoad_ = new TextPreview(settings_, this);
  fillAboutLoad();
  aboutLoad_->show();
  aboutLoad_->raise();
  aboutLoad_->activateWindow();
}

// The body of the settings stands in it.
void MainWindow::fillAboutLoad() {
  aboutLoad_->setSheet(
      {loadPageTitle(), loadPageHtml(document_.knowledge(), document_.snapshot().body), standingNotice()});
}

void MainWindow::fillRecent() {
  recentMenu_->clear();
  const QStringList recent = settings_.recentClasses();
  for (const QString& file : recent)
    add(recentMenu_, QFileInfo(file).completeBaseName() + QStringLiteral("   ") + QFileInfo(file).path(), {},
        [this, file] { whenSettled([this, file] { open(file); }); });
  if (recent.isEmpty())
    recentMenu_->addAction(tr("Nothing yet"))->setEnabled(false);
  else
    add(recentMenu_, tr("Clear the List"), {}, [this] { settings_.clearRecent(); });
}

void MainWindow::onChangedOnDisk() {
  if (diskQuestion_)
    return;
  QMessageBox* box = ask(
      tr("Changed on disk"),
      tr("\u201c%1\u201d was changed by somebody else.").arg(QFileInfo(files_.classFile()).fileName()),
      files_.isModified() ? tr("Reading it again loses the changes that are not saved here.") : tr("Read it again?"));
  QPushButton* reload = box->addButton(tr("Read Again"), QMessageBox::AcceptRole);
  box->addButton(tr("Keep This One"), QMessageBox::RejectRole);
  diskQuestion_ = box;
  connect(box, &QMessageBox::buttonClicked, this, [this, reload](QAbstractButton* button) {
    if (button == reload)
      open(files_.classFile());
  });
  box->open();
}

} // namespace matwright
