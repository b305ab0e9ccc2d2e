#pragma once

#include "ui/document/ClassCommands.h"
#include "ui/document/PeopleDocument.h"

#include <QActionGroup>
#include <QSplitter>
#include <QStackedWidget>
#include <QWidget>

namespace matwright {

class CataloguePanel;
class CautionList;
class GroupView;
class InspectorPanel;
class OutlineView;
class TerrainView;
class TotalsLine;

// The views of one class around its terrain: catalogue at the left, inspector at the right, totals above, outline and
// cautions below. Wiring only: each view works on the documents, none on another.
class ClassWorkspace : public QWidget {
  Q_OBJECT

public:
  ClassWorkspace(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent = nullptr);

  CataloguePanel& catalogue() { return *catalogue_; }
  TerrainView& terrain() { return *terrain_; }
  OutlineView& outline() { return *outline_; }
  InspectorPanel& inspector() { return *inspector_; }

  // Timeline, and the table of steps against people in its place: one of them is checked.
  QList<QAction*> viewActions() const { return views_->actions(); }

  QByteArray layoutState() const;
  void restoreLayout(const QByteArray& state);

Q_SIGNALS:
  void aboutLoadWanted(); // somebody wants to read what load figures are
  void composeWanted();   // a class from wishes, in place of one without steps

private:
  void addSwitch();

  CataloguePanel* catalogue_;
  TotalsLine* totals_;
  TerrainView* terrain_;
  GroupView* group_;
  OutlineView* outline_;
  CautionList* cautions_;
  InspectorPanel* inspector_;
  QStackedWidget* above_; // terrain or table
  QActionGroup* views_;   // which of them
  QSplitter* across_;
  QSplitter* down_;
  QSplitter* below_;
};

} // namespace matwright
