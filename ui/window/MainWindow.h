// The window: menus, workspaces and their wiring.
#pragma once

#include "ui/document/ClassCommands.h"
#include "ui/document/KnowledgeDocument.h"
#include "ui/document/PeopleDocument.h"
#include "ui/document/StudioFiles.h"
#include "ui/settings/Settings.h"

#include <QActionGroup>
#include <QMainWindow>
#include <QPointer>
#include <QStackedWidget>
#include <QUndoGroup>
#include <functional>

class QLabel;
class QMenu;
class QMessageBox;

namespace matwright {

class CardPreview;
class ClassWorkspace;
class ComposeDialog;
class MovementsWorkspace;
class PeopleChooser;
class PeopleWorkspace;
class PersonSheetPreview;
class SeenChooser;
class TextPreview;
class TidyDialog;
class RulesWorkspace;

// Where the window finds and keeps things; tests give their own.
struct WindowPlaces {
  QString demoStudio;   // read-only, comes with the program
  QString ownStudio;    // the demo studio is copied here at the first start
  QString recoveryRoot; // unsaved work
};

class MainWindow : public QMainWindow {
  Q_OBJECT

public:
  MainWindow(std::shared_ptr<const Knowledge> knowledge, Settings& settings, WindowPlaces places,
             std::function<Date()> today, QWidget* parent = nullptr);
  ~MainWindow() override;

  // What is shown first: `file` when given, else the class that was open last, else the demo studio. Unsaved work of a
  // run that did not end well is offered first.
  void start(const QString& file);

  PlanDocument& document() { return document_; }
  PeopleDocument& people() { return people_; }
  KnowledgeDocument& knowledge() { return knowledge_; }
  StudioFiles& files() { return files_; }

protected:
  void closeEvent(QCloseEvent* event) override;

private:
  enum class Workspace { classes, people, movements, rules };

  void buildHeader();
  void buildMenus();
  void buildFileMenu();
  void buildEditMenu();
  void buildClassMenu();
  void buildViewMenu();
  void buildHelpMenu();
  QAction* add(QMenu* menu, const QString& text, const QList<QKeySequence>& keys, std::function<void()> act);
  QAction* addStepAction(QMenu* menu, const QString& text, const QList<QKeySequence>& keys, std::function<void()> act);
  void showWorkspace(Workspace workspace);
  void updateActions();
  void updateTitle();
  void applyAppearance();
  void applyMotion();
  void applyBody();
  void showStepMenu(const QPoint& at);
  void renameSection(std::size_t section);
  void askSectionName(const QString& title, std::function<void(const QString&)> then, const QString& name = {});

  // Files. `then` runs once what is unsaved is saved or let go.
  void whenSettled(std::function<void()> then);
  // `show` leads to what cannot be kept, `drop` lets it go.
  void askUnkept(const QString& name, std::function<void()> show, std::function<void()> drop,
                 std::function<void()> then);
  bool hasUnkept() const;
  void newClass();
  void openClass();
  void open(const QString& file);
  void openDemo();
  void save(std::function<void()> then = {});
  void saveAs(std::function<void()> then = {});
  void exportTable(bool csv);
  void showCard();
  void showTidy(const std::vector<StepId>& steps);
  void composeClass();
  void completeClass();
  ComposeDialog& composer();
  void useComposed(const ClassPlan& plan);
  void showSheet(const PersonId& person);
  void showRedFlags();
  void fillRedFlags();
  void showAboutLoad();
  void fillAboutLoad();
  void offerRecovery(const QString& file);
  void onChangedOnDisk();
  void report(const Error& error);
  QMessageBox* ask(const QString& title, const QString& text, const QString& detail = {});
  void fillRecent();

  Settings& settings_;
  WindowPlaces places_;
  KnowledgeDocument knowledge_;
  PlanDocument document_;
  PeopleDocument people_;
  StepSelection selection_;
  ClassCommands commands_;
  StudioFiles files_;
  QUndoGroup undoGroup_;
  ClassWorkspace* classWorkspace_ = nullptr;
  PeopleWorkspace* peopleWorkspace_ = nullptr;
  MovementsWorkspace* movementsWorkspace_ = nullptr;
  SeenChooser* seen_ = nullptr;
  RulesWorkspace* rulesWorkspace_ = nullptr;
  QStackedWidget* workspaces_ = nullptr;
  QActionGroup* workspaceActions_ = nullptr;
  QLabel* className_ = nullptr;
  QMenu* recentMenu_ = nullptr;
  QMenu* stepMenu_ = nullptr;
  QAction* replaceAction_ = nullptr; // needs a single one
  QList<QAction*> stepActions_;      // need a selected step
  QAction* pasteAction_ = nullptr;
  QAction* tidyAction_ = nullptr;
  QAction* completeAction_ = nullptr;
  QAction* sheetAction_ = nullptr; // needs a person whose page is open
  QAction* redFlagsAction_ = nullptr;
  QPointer<CardPreview> cardPreview_;
  QPointer<TidyDialog> tidy_;
  QPointer<ComposeDialog> compose_;
  QPointer<TextPreview> redFlags_;
  QPointer<TextPreview> aboutLoad_;
  QPointer<PersonSheetPreview> sheet_;
  QPointer<QMessageBox> diskQuestion_;
  bool closing_ = false;
};

} // namespace matwright
