#pragma once

#include "ui/rules/RuleFormPart.h"

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLabel;

namespace matwright {

class DemandForm;

// Where a rule looks, what for, by how much, and after what. What the scope has no use for is hidden and not in the
// rule; it comes back when the scope is changed back while the same rule is shown.
class RuleFormLook : public RuleFormPart {
  Q_OBJECT

public:
  explicit RuleFormLook(QWidget* parent = nullptr);

protected:
  void refresh() override;

private:
  void addAmount(QGridLayout& grid);
  void addEarlier(QGridLayout& grid);
  void connectFields();
  // The rule with what its scope and unit have a use for, out of what it has and what was set aside.
  void fit(Rule& rule);
  void setAside();
  void fillUnits();

  Rule aside_; // the last of each that was written for this rule
  QComboBox* scope_;
  QLabel* explained_;
  DemandForm* asks_;
  QWidget *asksField_, *amountField_, *afterField_;
  QLabel *asksName_, *amountName_, *afterName_, *amountWords_;
  QCheckBox *hasAmount_, *published_, *hasLasting_;
  QDoubleSpinBox *amount_, *lasting_;
  QComboBox* unit_;
  DemandForm* earlier_;
};

} // namespace matwright
