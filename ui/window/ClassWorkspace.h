#pragma once

#include "ui/document/ClassCommands.h"
#include "ui/document/PeopleDocument.h"

#include <QSplitter>
#include <QWidget>

namespace matwright {

class CataloguePanel;
class CautionList;
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

  QByteArray layoutState() const;
  void restoreLayout(const QByteArray& state);

private:
  CataloguePanel* catalogue_;
  TotalsLine* totals_;
  TerrainView* terrain_;
  OutlineView* outline_;
  CautionList* cautions_;
  InspectorPanel* inspector_;
  QSplitter* across_;
  QSplitter* down_;
  QSplitter* below_;
};

} // namespace matwright
