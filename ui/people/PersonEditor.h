#pragma once

#include "ui/document/PeopleDocument.h"
#include "ui/document/PlanDocument.h"

#include <QWidget>
#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QVBoxLayout;

namespace matwright {

class ConditionEditor;
class NoteField;

// What is on file about one person.
class PersonEditor : public QWidget {
  Q_OBJECT

public:
  // `plan` gives the conditions that rules know, and the day for which weeks are counted.
  PersonEditor(PlanDocument& plan, PeopleDocument& people, QWidget* parent = nullptr);

  void setPerson(const PersonId& person);
  const PersonId& person() const { return id_; }
  void focusName(); // with the name selected, to be typed over

private:
  void connectProfile();
  void refresh();
  void showProfile(const Person& person);
  void rebuildConditions(const Person& person);
  void addCondition(const ConditionId& condition);
  // Changes the person by `edit`; entries with the same `field` in one go are one.
  void change(const std::function<void(Person&)>& edit, const QString& what, const QString& field = {});

  PlanDocument& plan_;
  PeopleDocument& people_;
  PersonId id_;
  QLineEdit *name_, *initials_;
  QComboBox* age_;                  // "not noted", then the bands
  QDoubleSpinBox *stature_, *mass_; // at their least: not noted
  NoteField *wishes_, *note_;
  QVBoxLayout* conditionColumn_;
  std::vector<ConditionId> shown_; // the conditions that have editors, in their order
  std::vector<ConditionEditor*> conditions_;
};

} // namespace matwright
