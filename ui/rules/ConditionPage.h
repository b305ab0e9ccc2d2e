#pragma once

#include "ui/document/KnowledgeDocument.h"
#include "ui/rules/RuleReport.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace matwright {

// A condition, to be read: what it is, what is asked about it, who has it, and how many rules are for it. Without one:
// what the rules for everybody are, and what all the rules are not.
class ConditionPage : public QWidget {
  Q_OBJECT

public:
  ConditionPage(const KnowledgeDocument& document, const PlanDocument& plan, QWidget* parent = nullptr);

  void show(const Condition* condition);

Q_SIGNALS:
  void ruleWanted(); // a new one for it
  void editWanted();
  void removeWanted();

private:
  void fill(const Condition* condition);

  const KnowledgeDocument& document_;
  const PlanDocument& plan_;
  QLabel *title_, *whose_, *about_;
  QPushButton *rule_, *edit_, *remove_;
  QVBoxLayout* column_;
  QWidget* facts_ = nullptr;
};

} // namespace matwright
