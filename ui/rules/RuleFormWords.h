#pragma once

#include "ui/rules/RuleFormPart.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace matwright {

class NoteField;

// What a rule says when it speaks.
class RuleFormWords : public RuleFormPart {
  Q_OBJECT

public:
  explicit RuleFormWords(QWidget* parent = nullptr);

protected:
  void refresh() override;

private:
  QComboBox* level_;
  QLineEdit* instead_;
  QLabel* count_; // of the words of it
  NoteField* why_;
};

} // namespace matwright
