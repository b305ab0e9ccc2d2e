#pragma once

#include "ui/document/KnowledgeDocument.h"
#include "ui/document/PlanDocument.h"
#include "ui/rules/RuleTree.h"

#include <QWidget>

class QLabel;
class QMessageBox;
class QPushButton;
class QStackedWidget;

namespace matwright {

class ConditionPage;
class ListSide;
class OwnEditor;
class RuleFilterBar;
class RulePage;

// All that the screening knows: conditions and their rules, those that come with the program to be read and copied, and
// those of one's own.
class RulesWorkspace : public QWidget {
  Q_OBJECT

public:
  RulesWorkspace(KnowledgeDocument& document, PlanDocument& plan, QWidget* parent = nullptr);

  const RuleChoice& current() const { return current_; } // what is looked at
  // Filters that hide it are taken away.
  void show(const RuleChoice& choice);

  // What is written of one's own and cannot be kept yet, and is nowhere but here.
  std::optional<RuleChoice> firstUnkept() const;
  QString nameOf(const RuleChoice& choice) const;
  void dropUnkept();

  // With their results said in the workspace.
  void importFrom(const QString& file);
  void exportTo(const OwnKnowledge& given, const QString& file);

protected:
  void showEvent(QShowEvent* event) override;

private:
  QWidget* makeSide();
  QWidget* makeStage();
  void refreshAll(); // later, while it is not seen
  void fillList();
  void refresh();
  void begin(const RuleChoice& choice);
  void addRule();
  void addCondition();
  void copyCurrent();
  void copyCondition();
  void edit();
  void askRemove();
  void removeCurrent();
  void askImport();
  void askExport(OwnKnowledge given, const QString& name);
  OwnKnowledge currentWithWhatItNames() const;
  void say(const QString& words, bool wrong = false);

  bool isThere() const;               // what is looked at, kept or not
  const Rule* rule() const;           // that is looked at and kept; null for none
  const Condition* condition() const; // the same

  KnowledgeDocument& document_;
  PlanDocument& plan_;
  RuleChoice current_;
  bool stale_ = false;
  RuleTree* tree_;
  ListSide* side_;
  RuleFilterBar* filters_;
  QPushButton *newRule_, *newCondition_, *import_, *export_;
  QAction *exportThis_, *exportScreening_, *exportAll_;
  QStackedWidget* stack_;
  RulePage* rulePage_;
  ConditionPage* conditionPage_;
  OwnEditor* editor_;
  bool editing_ = false; // the form is shown in place of the page
};

} // namespace matwright
