#pragma once

#include "ui/document/Drafts.h"
#include "ui/rules/PlacedFaults.h"

#include <QWidget>
#include <set>

class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace matwright {

class ConditionQuestion;
class FaultList;
class NoteField;

// Everything about one condition of one's own: what it is called, its codes, what it is, and what is asked about it.
// What is changed goes to the document at once when it can be kept there, as in RuleForm.
class ConditionForm : public QWidget {
  Q_OBJECT

public:
  explicit ConditionForm(KnowledgeDocument& document, QWidget* parent = nullptr);

  void setCondition(const ConditionId& condition); // one of one's own, or a draft
  void begin(const Condition& condition);          // as in RuleForm
  const ConditionId& condition() const { return id_; }
  const Condition& draft() const { return draft_; } // as it is shown, kept or not
  void focusName();

  const std::vector<PlacedFault>& faults() const { return faults_; }
  bool hasUnkept(const ConditionId& condition) const { return drafts_.has(condition); }
  ConditionId firstUnkept() const { return drafts_.first(); } // or empty
  std::vector<Condition> drafts() const { return drafts_.all(); }
  void drop(const ConditionId& condition);
  void dropUnkept();

Q_SIGNALS:
  void edited();
  void keptChanged();

private:
  void connectFields();
  void takeCodes(const QString& words);
  void takeQuestion(std::size_t at, QualifierSpec spec, const QString& gesture);
  void addQuestion();
  void addRow();
  void change(Condition after, const QString& what, const QString& gesture = {});
  void refresh();
  void show(const Condition& condition);
  void showQuestions();
  void goTo(int place);

  KnowledgeDocument& document_;
  ConditionId id_;
  Condition draft_;
  Drafts<Condition> drafts_;
  std::set<std::string> fresh_; // ids of questions whose names are still being written for the first time
  std::vector<PlacedFault> faults_;
  FaultMarks marks_;
  QLabel *title_, *state_, *codesNote_, *none_;
  QLineEdit *name_, *codes_;
  NoteField* about_;
  QWidget* questions_;
  QVBoxLayout* rows_;
  std::vector<ConditionQuestion*> row_;
  QPushButton* add_;
  QScrollArea* area_ = nullptr;
  FaultList* list_;
};

// The codes in a line of them, apart by commas or spaces, as they are written in files: "m54.5" gives "M54.5".
std::vector<std::string> codesIn(const QString& words);
// Whether it is written as the ICD-10 writes its codes: a letter, a digit, a digit or letter, and behind a point up to
// four digits or letters. Not whether there is such a code.
bool isCodeShaped(const std::string& code);

} // namespace matwright
