#pragma once

#include "ui/document/KnowledgeDocument.h"

#include <QWidget>

class QLabel;
class QListView;
class QModelIndex;
class QPushButton;
class QStackedWidget;

namespace matwright {

class ListSide;
class MovementEditor;
class MovementReading;
class MovementRows;

// All movements: those of one's own to be written and changed, those that come with the program to be read and copied.
class MovementsWorkspace : public QWidget {
  Q_OBJECT

public:
  explicit MovementsWorkspace(KnowledgeDocument& document, QWidget* parent = nullptr);

  void showMovement(const MovementId& movement);
  MovementId current() const; // empty for none
  MovementEditor& editor() { return *editor_; }
  void setReducedMotion(bool reduced);

  // With their results said in the workspace.
  void importFrom(const QString& file);
  void exportTo(const QString& file); // the current one

private:
  QWidget* makeList();
  QWidget* makeStage();
  void refresh();
  void add(Movement movement, const QString& what);
  void addNew();
  void copyCurrent();
  void removeCurrent();
  void askImport();
  void askExport();
  void say(const QString& words, bool wrong = false);

  KnowledgeDocument& document_;
  MovementRows* rows_;
  QListView* list_;
  ListSide* side_;
  QLabel* empty_;
  QPushButton *new_, *copy_, *remove_, *import_, *export_;
  QStackedWidget* stack_;
  MovementEditor* editor_;
  MovementReading* reading_;
};

// A movement that can be kept as it is, to begin with.
Movement blankMovement(const Knowledge& knowledge);

} // namespace matwright
