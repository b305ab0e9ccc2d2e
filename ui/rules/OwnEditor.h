#pragma once

#include "ui/document/KnowledgeDocument.h"
#include "ui/rules/RuleRows.h"
#include "ui/rules/RuleTree.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace matwright {

class ConditionForm;
class RuleForm;

// The forms of rules and conditions of one's own, in place of their pages. What cannot be kept yet stays here.
class OwnEditor : public QWidget {
  Q_OBJECT

public:
  explicit OwnEditor(KnowledgeDocument& document, QWidget* parent = nullptr);

  void show(const RuleChoice& choice); // a rule or a condition of one's own, or what is not kept yet
  // A new one, which gets an id and stays here until what is missing is there.
  RuleChoice begin(Rule blank);
  RuleChoice begin(Condition blank);
  void focusFirst();

  bool isUnkept(const RuleChoice& choice) const;
  std::optional<RuleChoice> firstUnkept() const;
  QString nameOf(const RuleChoice& choice) const;
  void drop(const RuleChoice& choice); // what cannot be kept of it
  void dropUnkept();

  Unkept unkept() const;
  RuleBook over(RuleBook book) const; // with what is not kept yet in its place

Q_SIGNALS:
  void done();
  void removeWanted();
  void unkeptChanged(); // in what is not kept yet

private:
  KnowledgeDocument& document_;
  QLabel* title_;
  QPushButton *done_, *remove_;
  QStackedWidget* stack_;
  RuleForm* rule_;
  ConditionForm* condition_;
};

// A rule to begin with, in which all that only a teacher can say is still missing.
Rule blankRule(std::optional<ConditionId> condition, Date today);

} // namespace matwright
