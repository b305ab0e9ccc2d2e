#pragma once

#include "ui/document/StepSelection.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace matwright {

class GroupModel;

// The class as a table of its steps against its people. Choosing a cell selects its step and asks for its caution; the
// name of a person is a switch to see the class for her alone.
class GroupView : public QWidget {
  Q_OBJECT

public:
  GroupView(PlanDocument& document, StepSelection& selection, QWidget* parent = nullptr);

Q_SIGNALS:
  // A cell was chosen: a step (none: the class as a whole) and a person (nobody: everybody).
  void cautionWanted(std::optional<matwright::StepId> step, std::optional<matwright::PersonId> person);
  // The same, and what else could be done is to be offered at a point of the screen.
  void insteadWanted(std::optional<matwright::StepId> step, std::optional<matwright::PersonId> person,
                     const QPoint& at);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void afterReset();
  void followSelection();
  void choose(const QModelIndex& index);
  void offerInstead(const QModelIndex& index);
  void seeFor(int column);

  PlanDocument& document_;
  StepSelection& selection_;
  GroupModel* model_;
  QTableView* table_;
  QLabel* nobody_;
  std::optional<StepId> step_; // of the current cell, and her: found again when the class changes
  std::optional<PersonId> person_;
  bool following_ = false;
};

} // namespace matwright
