#pragma once

#include "ui/movements/MovementPage.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QSpinBox;

namespace matwright {

class FigureView;
class NoteField;
class OrderedList;

// What a movement is: its name and kind, where it begins and ends, how much of it, what it works, what it needs.
class FactsPage : public MovementPage {
  Q_OBJECT

public:
  explicit FactsPage(QWidget* parent = nullptr);

  void focusName(); // with the name selected, to be typed over

protected:
  void refresh() override;

private:
  struct PositionField {
    QWidget* whole;
    QComboBox* choice;
    FigureView* figure;
  };

  PositionField makePosition(const QString& name);
  QWidget* makeDose();
  QWidget* makeEffort();
  QWidget* makeProps();
  void showPosition(const PositionField& field, const PositionId& id);
  void connectFields();
  // Puts the place where the field says; a pose that was just the position's becomes the new one's.
  void moveTo(PositionId& place, Pose& pose, const PositionField& field) const;

  QLineEdit* name_;
  QComboBox* repertoire_;
  NoteField* about_;
  PositionField start_, end_;
  QComboBox* sides_;
  QSpinBox* amount_;
  QComboBox* unit_;
  QLabel* doseWords_;
  QSpinBox* effort_;
  QLabel* effortWords_;
  std::vector<QCheckBox*> props_;
  OrderedList *regions_, *spine_, *prerequisites_, *counters_;
};

} // namespace matwright
