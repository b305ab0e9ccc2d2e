#pragma once

#include "core/people/Person.h"
#include "core/screening/Rule.h"

#include <QWidget>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace matwright {

class ClearanceEditor;
class NoteField;
class QualifierField;

// One condition of a person: what it is, what is known about it, what was cleared.
class ConditionEditor : public QWidget {
  Q_OBJECT

public:
  // A condition that `book` does not have keeps its note and can only be removed.
  ConditionEditor(const RuleBook& book, const ConditionId& condition, QWidget* parent = nullptr);

  void show(const PersonCondition& held, Date day);

Q_SIGNALS:
  void edited(const matwright::PersonCondition& held, const QString& field); // `field`: which was edited
  void removeWanted();

private:
  void addQualifiers(const Condition& condition, QVBoxLayout* column);
  void addClearances(QVBoxLayout* column);
  void showClearances(Date day);

  PersonCondition held_;
  FeatureSet offered_; // for clearances: what the rules for this condition ask for
  std::vector<QualifierField*> qualifiers_;
  std::vector<ClearanceEditor*> clearances_;
  QVBoxLayout* clearanceColumn_ = nullptr; // null for a condition that no rule knows
  QLabel* openHint_;
  NoteField* note_;
};

} // namespace matwright
