#pragma once

#include "ui/document/KnowledgeDocument.h"
#include "ui/rules/RuleReport.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace matwright {

// A condition, to be read: what it is, what is asked about it, who has it, and what the rules for it say. Without one:
// the rules for everybody.
class ConditionPage : public QWidget {
  Q_OBJECT

public:
  ConditionPage(const KnowledgeDocument& document, const PlanDocument& plan, QWidget* parent = nullptr);

  void show(const Condition* condition);

Q_SIGNALS:
  void ruleWanted(); // a new one for it
  void copyWanted(); // with its rules
  void editWanted();
  void removeWanted();

private:
  void fill(const Condition* condition);
  void fillRules(const Condition* condition);

  const KnowledgeDocument& document_;
  const PlanDocument& plan_;
  QLabel *title_, *whose_, *about_;
  QPushButton *rule_, *copy_, *edit_, *remove_;
  QVBoxLayout* column_;
  QWidget *facts_ = nullptr, *rules_ = nullptr;
};

} // namespace matwright
