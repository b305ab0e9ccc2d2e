#include "ui/window/MainWindow.h"

#include "ui/catalogue/CataloguePanel.h"
#include "ui/compose/ComposeDialog.h"
#include "ui/inspector/InspectorPanel.h"
#include "ui/movements/MovementEditor.h"
#include "ui/movements/MovementsWorkspace.h"
#include "ui/people/PeopleChooser.h"
#include "ui/people/PeopleWorkspace.h"
#include "ui/people/SeenChooser.h"
#include "ui/print/CardPreview.h"
#include "ui/print/PersonSheetPreview.h"
#include "ui/print/TextPreview.h"
#include "ui/rules/RulesWorkspace.h"
#include "ui/text/ErrorText.h"
#include "ui/theme/Theme.h"
#include "ui/tidy/TidyDialog.h"
#include "ui/window/ClassWorkspace.h"

#include <QApplication>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QStatusBar>
#include <QStyleHints>
#include <QToolButton>
#include <QVBoxLayout>

namespace matwright {

MainWindow::MainWindow(std::shared_ptr<const Knowledge> knowledge, Settings& settings, WindowPlaces places,
                       std::function<Date()> today, QWidget* parent)
    : QMainWindow(parent), settings_(settings), places_(std::move(places)), knowledge_(std::move(knowledge)),
      document_(knowledge_.knowledge(), std::move(today)), selection_(document_), commands_(document_, selection_),
      files_(document_, people_, knowledge_, places_.recoveryRoot) {
  undoGroup_.addStack(document_.undoStack());
  undoGroup_.addStack(people_.undoStack());
  undoGroup_.addStack(knowledge_.undoStack());
  applyAppearance();
  buildHeader();
  buildMenus();
  connect(&settings_, &Settings::changed, this, &MainWindow::applyAppearance);
  connect(&settings_, &Settings::changed, this, &MainWindow::applyMotion);
  connect(&settings_, &Settings::changed, this, &MainWindow::applyBody);
  connect(&document_, &PlanDocument::changed, this, &MainWindow::updateTitle);
  connect(&document_, &PlanDocument::changed, this, [this] {
    if (redFlags_ && redFlags_->isVisible())
      fillRedFlags();
    if (aboutLoad_ && aboutLoad_->isVisible())
      fillAboutLoad();
  });
  connect(&document_, &PlanDocument::refused, this,
          [this](Refusal refusal) { statusBar()->showMessage(text(refusal), 6000); });
  connect(&selection_, &StepSelection::changed, this, &MainWindow::updateActions);
  connect(&files_, &StudioFiles::classFileChanged, this, &MainWindow::updateTitle);
  connect(&files_, &StudioFiles::modifiedChanged, this, &MainWindow::updateTitle);
  connect(&files_, &StudioFiles::changedOnDisk, this, &MainWindow::onChangedOnDisk);
  connect(&files_, &StudioFiles::autosaveFailed, this,
          [this](const QString& message) { statusBar()->showMessage(message, 10000); });
  statusBar()->setSizeGripEnabled(false);
  resize(1280, 800);
  setMinimumSize(1024, 640);
  restoreGeometry(settings_.layout(QStringLiteral("window")));
  classWorkspace_->restoreLayout(settings_.layout(QStringLiteral("class")));
  showWorkspace(Workspace::classes);
  applyMotion();
  applyBody();
  updateTitle();
  updateActions();
}

MainWindow::~MainWindow() {
  // The views go before the documents they look at.
  delete compose_;
  delete takeCentralWidget();
}

void MainWindow::buildHeader() {
  className_ = new QLabel;
  className_->setTextFormat(Qt::PlainText);
  QFont large = className_->font();
  large.setPixelSize(17);
  large.setWeight(QFont::DemiBold);
  className_->setFont(large);
  className_->setMinimumWidth(120);
  className_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

  workspaceActions_ = new QActionGroup(this);
  auto* switches = new QHBoxLayout;
  switches->setSpacing(4);
  const std::pair<QString, Workspace> entries[] = {{tr("Class"), Workspace::classes},
                                                   {tr("People"), Workspace::people},
                                                   {tr("Movements"), Workspace::movements},
                                                   {tr("Rules"), Workspace::rules}};
  for (const auto& [name, workspace] : entries) {
    auto* action = new QAction(name, workspaceActions_);
    action->setCheckable(true);
    action->setShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(workspace))));
    connect(action, &QAction::triggered, this, [this, wanted = workspace] { showWorkspace(wanted); });
    auto* button = new QToolButton;
    button->setDefaultAction(action);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setMinimumWidth(84);
    switches->addWidget(button);
  }

  classWorkspace_ = new ClassWorkspace(document_, selection_, commands_);
  connect(classWorkspace_, &ClassWorkspace::aboutLoadWanted, this, &MainWindow::showAboutLoad);
  connect(classWorkspace_, &ClassWorkspace::composeWanted, this, &MainWindow::composeClass);
  peopleWorkspace_ = new PeopleWorkspace(document_, people_);
  connect(peopleWorkspace_, &PeopleWorkspace::shownChanged, this, &MainWindow::updateActions);
  connect(peopleWorkspace_, &PeopleWorkspace::sheetWanted, this, &MainWindow::showSheet);
  workspaces_ = new QStackedWidget;
  workspaces_->addWidget(classWorkspace_);
  workspaces_->addWidget(peopleWorkspace_);
  movementsWorkspace_ = new MovementsWorkspace(knowledge_);
  workspaces_->addWidget(movementsWorkspace_);
  rulesWorkspace_ = new RulesWorkspace(knowledge_, document_);
  workspaces_->addWidget(rulesWorkspace_);

  redFlagsAction_ = new QAction(tr("Red &Flags and Stop Signs\u2026"), this);
  redFlagsAction_->setIconText(tr("Red Flags"));
  redFlagsAction_->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_H));
  redFlagsAction_->setToolTip(tr("Red flags and stop signs, to read and to print (Ctrl+Shift+H)"));
  connect(redFlagsAction_, &QAction::triggered, this, &MainWindow::showRedFlags);
  auto* redFlags = new QToolButton;
  redFlags->setDefaultAction(redFlagsAction_);
  redFlags->setToolButtonStyle(Qt::ToolButtonTextOnly);

  auto* card = new QPushButton(tr("Card"));
  card->setProperty("primary", true);
  card->setMinimumWidth(84);
  card->setToolTip(tr("See, print or save the one-page card (Ctrl+P)"));
  connect(card, &QPushButton::clicked, this, &MainWindow::showCard);

  auto* header = new QHBoxLayout;
  header->setContentsMargins(14, 6, 14, 6);
  header->addWidget(className_, 1);
  header->addLayout(switches);
  header->addStretch(1);
  header->setSpacing(8);
  auto* chooser = new PeopleChooser(document_, people_);
  connect(chooser, &PeopleChooser::peopleWanted, this, [this] { showWorkspace(Workspace::people); });
  header->addWidget(chooser);
  seen_ = new SeenChooser(document_);
  header->addWidget(seen_);
  header->addWidget(redFlags);
  header->addWidget(card);

  auto* line = new QFrame;
  line->setFrameShape(QFrame::HLine);
  line->setFrameShadow(QFrame::Plain);
  line->setForegroundRole(QPalette::Mid);
  auto* centre = new QWidget;
  auto* layout = new QVBoxLayout(centre);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addLayout(header);
  layout->addWidget(line);
  layout->addWidget(workspaces_, 1);
  setCentralWidget(centre);
}

void MainWindow::showWorkspace(Workspace workspace) {
  QUndoStack* const stacks[] = {document_.undoStack(), people_.undoStack(), knowledge_.undoStack(),
                                knowledge_.undoStack()};
  const int place = static_cast<int>(workspace);
  workspaces_->setCurrentIndex(place);
  undoGroup_.setActiveStack(stacks[place]);
  workspaceActions_->actions().at(place)->setChecked(true);
  seen_->setVisible(workspace == Workspace::classes);
  for (QAction* action : classWorkspace_->viewActions())
    action->setEnabled(workspace == Workspace::classes);
  updateActions();
}

void MainWindow::updateActions() {
  const bool composing = workspaces_->currentWidget() == classWorkspace_;
  const bool any = composing && !selection_.steps().empty();
  for (QAction* action : std::as_const(stepActions_))
    action->setEnabled(any);
  replaceAction_->setEnabled(any && commands_.canReplace());
  tidyAction_->setEnabled(composing);
  completeAction_->setEnabled(composing);
  sheetAction_->setEnabled(workspaces_->currentWidget() == peopleWorkspace_ && !peopleWorkspace_->shown().empty());
}

void MainWindow::updateTitle() {
  QString name = QString::fromStdString(document_.plan().name);
  if (name.isEmpty())
    name = tr("Untitled class");
  className_->setText(name);
  className_->setToolTip(files_.classFile());
  setWindowModified(files_.isModified());
  setWindowTitle(tr("%1[*] \u2013 Matwright").arg(name));
}

void MainWindow::applyMotion() {
  classWorkspace_->inspector().setReducedMotion(settings_.reducedMotion());
  classWorkspace_->catalogue().setReducedMotion(settings_.reducedMotion());
  movementsWorkspace_->setReducedMotion(settings_.reducedMotion());
}

void MainWindow::applyBody() {
  knowledge_.setBodyTable(settings_.bodyTable());
  document_.setBody(settings_.bodySize());
}

void MainWindow::applyAppearance() {
  static const QPalette systemPalette = QApplication::palette();
  const Appearance appearance = settings_.appearance();
  const Theme& theme = appearance == Appearance::dark    ? darkTheme()
                       : appearance == Appearance::light ? lightTheme()
                                                         : themeFor(systemPalette);
  if (QApplication::palette().color(QPalette::Window) != theme.ground)
    QApplication::setPalette(paletteOf(theme));
  if (qApp->styleSheet() != styleSheetOf(theme))
    qApp->setStyleSheet(styleSheetOf(theme));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!closing_ && (files_.isModified() || hasUnkept())) {
    event->ignore();
    whenSettled([this] {
      closing_ = true;
      close();
    });
    return;
  }
  settings_.setLayout(QStringLiteral("window"), saveGeometry());
  settings_.setLayout(QStringLiteral("class"), classWorkspace_->layoutState());
  delete cardPreview_;
  delete tidy_;
  delete compose_;
  delete redFlags_;
  delete aboutLoad_;
  delete sheet_;
  event->accept();
}

} // namespace matwright
