#include "ui/catalogue/CataloguePanel.h"
#include "ui/outline/OutlineView.h"
#include "ui/people/PeopleWorkspace.h"
#include "ui/settings/SettingsDialog.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"
#include "ui/tidy/TidyDialog.h"
#include "ui/timeline/TerrainView.h"
#include "ui/window/ClassWorkspace.h"
#include "ui/window/MainWindow.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QInputDialog>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>

namespace matwright {

QAction* MainWindow::add(QMenu* menu, const QString& text, const QList<QKeySequence>& keys, std::function<void()> act) {
  QAction* action = menu->addAction(text);
  action->setShortcuts(keys);
  connect(action, &QAction::triggered, this, [act = std::move(act)] { act(); });
  return action;
}

// Its keys work in the terrain and the outline alone, so that they stay free for text fields.
QAction* MainWindow::addStepAction(QMenu* menu, const QString& text, const QList<QKeySequence>& keys,
                                   std::function<void()> act) {
  QAction* action = add(menu, text, keys, std::move(act));
  action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  classWorkspace_->terrain().addAction(action);
  classWorkspace_->outline().addAction(action);
  stepActions_ << action;
  return action;
}

void MainWindow::buildMenus() {
  buildFileMenu();
  buildEditMenu();
  buildClassMenu();
  buildViewMenu();
  buildHelpMenu();
}

void MainWindow::buildFileMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&File"));
  add(menu, tr("&New Class"), {QKeySequence(Qt::CTRL | Qt::Key_N)}, [this] { newClass(); });
  add(menu, tr("&Open\u2026"), {QKeySequence(Qt::CTRL | Qt::Key_O)}, [this] { openClass(); });
  recentMenu_ = menu->addMenu(tr("Open &Recent"));
  connect(recentMenu_, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
  add(menu, tr("Open the &Demo Studio"), {}, [this] { whenSettled([this] { openDemo(); }); });
  menu->addSeparator();
  add(menu, tr("&Save"), {QKeySequence(Qt::CTRL | Qt::Key_S)}, [this] { save(); });
  add(menu, tr("Save &As\u2026"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S)}, [this] { saveAs(); });
  menu->addSeparator();
  add(menu, tr("&Card\u2026"), {QKeySequence(Qt::CTRL | Qt::Key_P)}, [this] { showCard(); });
  sheetAction_ = add(menu, tr("&Person\u2019s Sheet\u2026"), {}, [this] { showSheet(peopleWorkspace_->shown()); });
  QMenu* tables = menu->addMenu(tr("&Export"));
  add(tables, tr("&Table (CSV)\u2026"), {}, [this] { exportTable(true); });
  add(tables, tr("&Page (Markdown)\u2026"), {}, [this] { exportTable(false); });
  menu->addSeparator();
  add(menu, tr("Se&ttings\u2026"), {QKeySequence(Qt::CTRL | Qt::Key_Comma)}, [this] {
    auto* dialog = new SettingsDialog(settings_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->show();
  });
  add(menu, tr("&Quit"), {QKeySequence(Qt::CTRL | Qt::Key_Q)}, [this] { close(); });
}

void MainWindow::buildEditMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&Edit"));
  QAction* undo = undoGroup_.createUndoAction(this, tr("&Undo"));
  undo->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z));
  QAction* redo = undoGroup_.createRedoAction(this, tr("&Redo"));
  redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
  menu->addAction(undo);
  menu->addAction(redo);
  menu->addSeparator();
  addStepAction(menu, tr("Cu&t"), {QKeySequence(Qt::CTRL | Qt::Key_X)}, [this] { commands_.cutSelected(); });
  addStepAction(menu, tr("&Copy"), {QKeySequence(Qt::CTRL | Qt::Key_C)}, [this] { commands_.copySelected(); });
  pasteAction_ = addStepAction(menu, tr("&Paste"), {QKeySequence(Qt::CTRL | Qt::Key_V)}, [this] { commands_.paste(); });
  stepActions_.removeOne(pasteAction_); // needs no selected step, only something to paste
  const auto updatePaste = [this] { pasteAction_->setEnabled(commands_.canPaste()); };
  connect(QGuiApplication::clipboard(), &QClipboard::dataChanged, this, updatePaste);
  updatePaste();
  addStepAction(menu, tr("Du&plicate"), {QKeySequence(Qt::CTRL | Qt::Key_D)},
                [this] { commands_.duplicateSelected(); });
  replaceAction_ = addStepAction(menu, tr("Replace th&is Step\u2026"), {QKeySequence(Qt::CTRL | Qt::Key_R)},
                                 [this] { commands_.wantReplacements(); });
  addStepAction(menu, tr("&Remove"), {QKeySequence(Qt::Key_Delete), QKeySequence(Qt::Key_Backspace)},
                [this] { commands_.removeSelected(); });
  menu->addSeparator();
  addStepAction(menu, tr("Move &Earlier"), {QKeySequence(Qt::ALT | Qt::Key_Left), QKeySequence(Qt::ALT | Qt::Key_Up)},
                [this] { commands_.nudgeSelected(-1); });
  addStepAction(menu, tr("Move &Later"), {QKeySequence(Qt::ALT | Qt::Key_Right), QKeySequence(Qt::ALT | Qt::Key_Down)},
                [this] { commands_.nudgeSelected(1); });
  addStepAction(menu, tr("&More"), {QKeySequence(Qt::Key_Plus), QKeySequence(Qt::Key_Equal)},
                [this] { commands_.changeDoseOfSelected(1); });
  addStepAction(menu, tr("Le&ss"), {QKeySequence(Qt::Key_Minus)}, [this] { commands_.changeDoseOfSelected(-1); });
  menu->addSeparator();
  tidyAction_ = add(menu, tr("&Tidy the Order\u2026"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T)},
                    [this] { showTidy(selection_.steps()); });
  connect(&classWorkspace_->outline(), &OutlineView::tidyWanted, this, &MainWindow::showTidy);
  stepMenu_ = new QMenu(this);
  stepMenu_->addActions(menu->actions().mid(3));
  menu->addSeparator();
  QAction* all =
      add(menu, tr("Select &All Steps"), {QKeySequence(Qt::CTRL | Qt::Key_A)}, [this] { selection_.selectAll(); });
  all->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  classWorkspace_->terrain().addAction(all);
  classWorkspace_->outline().addAction(all);
  add(menu, tr("&Find a Movement"), {QKeySequence(Qt::CTRL | Qt::Key_F), QKeySequence(Qt::Key_Slash)}, [this] {
    showWorkspace(Workspace::classes);
    classWorkspace_->catalogue().focusSearch();
  })->setShortcutContext(Qt::WindowShortcut);
  menu->addSeparator();
  add(menu, tr("Add a Se&ction\u2026"), {},
      [this] { askSectionName(tr("Add a section"), [this](const QString& name) { commands_.addSection(name); }); });
  add(menu, tr("Split the Section &Here\u2026"), {}, [this] {
    askSectionName(tr("Split the section at the gap"), [this](const QString& name) { commands_.splitAtGap(name); });
  });
  add(menu, tr("Rename this Section\u2026"), {}, [this] { renameSection(selection_.gap().section); });
  add(menu, tr("Remove this Section"), {},
      [this] { document_.perform(RemoveSection{selection_.gap().section}, tr("Remove the section")); });
  TerrainView& terrain = classWorkspace_->terrain();
  connect(&terrain, &TerrainView::stepContextMenu, this,
          [this](const QPointF& at, StepId) { showStepMenu(at.toPoint()); });
  connect(&terrain, &TerrainView::gapContextMenu, this,
          [this](const QPointF& at, Place) { showStepMenu(at.toPoint()); });
  connect(&terrain, &TerrainView::gapActivated, this, [this] { classWorkspace_->catalogue().focusSearch(); });
  connect(&terrain, &TerrainView::sectionActivated, this, &MainWindow::renameSection);
}

void MainWindow::buildViewMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&View"));
  menu->addActions(workspaceActions_->actions());
  menu->addSeparator();
  menu->addActions(classWorkspace_->viewActions());
  menu->addSeparator();
  TerrainView& terrain = classWorkspace_->terrain();
  add(menu, tr("Zoom &In"), {QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)},
      [&terrain] { terrain.zoomIn(); });
  add(menu, tr("Zoom &Out"), {QKeySequence(Qt::CTRL | Qt::Key_Minus)}, [&terrain] { terrain.zoomOut(); });
  add(menu, tr("Whole Class to &Fit"), {QKeySequence(Qt::CTRL | Qt::Key_0)}, [&terrain] { terrain.zoomToFit(); });
  menu->addSeparator();
  auto* appearances = new QActionGroup(this);
  const std::pair<QString, Appearance> entries[] = {
      {tr("As the &System"), Appearance::system}, {tr("&Light"), Appearance::light}, {tr("&Dark"), Appearance::dark}};
  for (const auto& [name, appearance] : entries) {
    QAction* action = add(menu, name, {}, [this, wanted = appearance] { settings_.setAppearance(wanted); });
    action->setCheckable(true);
    action->setActionGroup(appearances);
    connect(menu, &QMenu::aboutToShow, action,
            [this, action, own = appearance] { action->setChecked(settings_.appearance() == own); });
  }
}

void MainWindow::buildHelpMenu() {
  QMenu* menu = menuBar()->addMenu(tr("&Help"));
  add(menu, tr("What the &Marks Mean"), {QKeySequence(Qt::Key_F1)}, [this] {
    QStringList lines;
    lines << tr(
        "A crossed square: leave out. A diamond: ask first, the person's clinician has to agree. A triangle: adapt. A "
        "ring: watch.");
    lines << tr(
        "A recorded clearance turns \"ask first\" into \"watch\", never \"leave out\". What is not known about a "
        "condition is mostly taken as holding so that the caution shows, and the reason says it.");
    lines << tr("Stop and ask when there is %1. \"Red Flags\" at the top of the window has them all, with what to do.")
                 .arg(stopSigns().join(QStringLiteral(", ")));
    ask(tr("What the marks mean"), standingNotice(), lines.join(QStringLiteral("\n\n")))->open();
  });
  menu->addAction(redFlagsAction_);
  add(menu, tr("About &Load Figures"), {}, [this] { showAboutLoad(); });
  add(menu, tr("&About Matwright"), {}, [this] {
    ask(tr("About Matwright"), tr("Matwright %1").arg(QGuiApplication::applicationVersion()),
        tr("Composes, screens and prints classes on the mat. The figures, times and cautions are computed from the "
           "files of "
           "its catalogue; every caution can show its whole reason.\n\n%1")
            .arg(standingNotice()))
        ->open();
  });
}

void MainWindow::showStepMenu(const QPoint& at) { stepMenu_->popup(at); }

void MainWindow::showTidy(const std::vector<StepId>& steps) {
  if (!tidy_)
    tidy_ = new TidyDialog(document_, this);
  tidy_->askFor(steps);
  tidy_->show();
  tidy_->raise();
  tidy_->activateWindow();
}

void MainWindow::renameSection(std::size_t section) {
  if (section >= document_.plan().sections.size())
    return;
  askSectionName(
      tr("Rename the section"),
      [this, section](const QString& name) {
        document_.perform(RenameSection{section, name.toStdString()}, tr("Rename the section"));
      },
      QString::fromStdString(document_.plan().sections[section].name));
}

void MainWindow::askSectionName(const QString& title, std::function<void(const QString&)> then, const QString& name) {
  auto* dialog = new QInputDialog(this);
  dialog->setTextValue(name);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setWindowTitle(title);
  dialog->setLabelText(tr("Name of the section"));
  connect(dialog, &QInputDialog::textValueSelected, this,
          [then = std::move(then)](const QString& chosen) { then(chosen); });
  dialog->open();
}

} // namespace matwright
