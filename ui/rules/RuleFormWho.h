#pragma once

#include "ui/rules/RuleFormPart.h"

#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;

namespace matwright {

class QualifierTests;

// For whom a rule speaks.
class RuleFormWho : public RuleFormPart {
  Q_OBJECT

public:
  explicit RuleFormWho(QWidget* parent = nullptr);

  void focusFirst();

protected:
  void refresh() override;

private:
  void takeCondition(int index);
  void fillConditions();

  QComboBox* condition_;
  std::vector<ConditionId> ids_; // of the entries, after "everybody"
  QLabel* dropped_;              // tests that did not fit the condition chosen last
  RuleId droppedOf_;             // the rule that this was said of, and the condition
  std::optional<ConditionId> droppedFor_;
  std::vector<QCheckBox*> ages_;
  QualifierTests* tests_;
  std::shared_ptr<const Knowledge> filledFrom_;
};

} // namespace matwright
