#pragma once

#include "ui/document/ClassCommands.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;
class QSpinBox;
class QToolButton;

namespace matwright {

class FigureView;
class LoadPart;
class NoteField;
class OptionChoice;
class StepCautions;
class TempoEditor;

// One step: what it is, how it is done, how long it takes and what it may mean for these people.
class StepPage : public QWidget {
  Q_OBJECT

public:
  StepPage(PlanDocument& document, ClassCommands& commands, QWidget* parent = nullptr);

  void show(StepId step); // which must be in the class
  void setReducedMotion(bool reduced);

Q_SIGNALS:
  void aboutLoadWanted();

private:
  void makeFields(QGridLayout& grid);
  void connectFields();
  void seal();
  void showMovement(const Step& step, const Movement* movement);
  void showFields(const Step& step, const Movement* movement);
  void showFacts(const Step& step);
  void changeUnit(DoseUnit unit);
  void chooseOption(const OptionId& option);
  const Step* step() const { return findStep(document_.plan(), id_); }
  QString key(const QString& field) const; // for entries of the undo list that belong together

  PlanDocument& document_;
  ClassCommands& commands_;
  StepId id_;

  QLabel *name_, *place_, *unknown_;
  FigureView* figure_;
  QToolButton *move_, *replaceButton_;
  QSpinBox* amount_;
  QComboBox *unit_, *side_;
  OptionChoice* option_;
  TempoEditor* tempo_;
  QLabel *optionLabel_, *sideLabel_;
  QLabel *work_, *wayIn_, *gap_;
  QLabel *setUpLabel_, *setUp_, *actionLabel_, *action_;
  NoteField* note_;
  StepCautions* cautions_;
  LoadPart* load_;
};

} // namespace matwright
