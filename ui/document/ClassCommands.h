// What a teacher does to the steps of a class, whichever view she does it in: each is one gesture and one entry of the
// undo list, and leaves the right steps selected.
#pragma once

#include "core/evaluate/Swaps.h"
#include "ui/document/StepSelection.h"

#include <QMimeData>
#include <QString>

namespace matwright {

// A movement dragged out of the catalogue: its id in UTF-8.
inline const QString kMovementMime = QStringLiteral("application/x-matwright-movement");
// Steps as JSON text, on the clipboard (beside plain text for people).
inline const QString kStepsMime = QStringLiteral("application/x-matwright-steps");
// Steps of this class being dragged: their numbers separated by spaces.
inline const QString kStepIdsMime = QStringLiteral("application/x-matwright-step-ids");

class ClassCommands : public QObject {
  Q_OBJECT

public:
  ClassCommands(PlanDocument& document, StepSelection& selection, QObject* parent = nullptr);

  // The edit that puts a movement at a place, with the id that the new step would have; for previews too. Nothing for
  // a movement that is not in the catalogue.
  std::optional<InsertSteps> insertion(const MovementId& movement, Place place) const;
  void insertMovement(const MovementId& movement, Place place); // and selects it

  void moveSteps(const std::vector<StepId>& steps, Place place);
  void replaceStep(StepId step, const Swap& swap);                     // for everybody
  void setDose(StepId step, const Dose& dose, bool continued = false); // `continued`: part of one gesture

  // On what is selected; nothing happens when nothing is.
  void removeSelected();
  void duplicateSelected(); // after the last of them
  void copySelected() const;
  void cutSelected();
  void paste(); // at the selection's gap
  bool canPaste() const;
  void nudgeSelected(int by); // one place earlier (-1) or later (+1), across sections
  void changeDoseOfSelected(int by);

  // Puts one section after the current step's section, and splits at the gap.
  void addSection(const QString& name);
  void splitAtGap(const QString& name);

  // Asks for what else could stand in the place of the step, when a single one is selected.
  bool canReplace() const;
  void wantReplacements();

  QString describe(const std::vector<StepId>& steps) const; // "The hundred", "3 steps"

Q_SIGNALS:
  void replacementsWanted(matwright::StepId step);

private:
  std::vector<Step> selectedSteps() const;
  void pasteSteps(std::vector<Step> steps, Place place, const QString& what);

  PlanDocument& document_;
  StepSelection& selection_;
};

} // namespace matwright
