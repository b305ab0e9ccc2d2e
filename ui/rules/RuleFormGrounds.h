#pragma once

#include "ui/rules/RuleFormPart.h"

class QComboBox;

namespace matwright {

class DateField;
class NoteField;
class SourcePicker;

// What stands behind a rule.
class RuleFormGrounds : public RuleFormPart {
  Q_OBJECT

public:
  explicit RuleFormGrounds(QWidget* parent = nullptr);

  SourcePicker& picker() { return *sources_; }

protected:
  void refresh() override;

private:
  QComboBox *strength_, *check_;
  NoteField* contested_;
  SourcePicker* sources_;
  DateField* reviewed_;
};

} // namespace matwright
