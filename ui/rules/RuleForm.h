#pragma once

#include "ui/document/Drafts.h"
#include "ui/rules/PlacedFaults.h"
#include "ui/rules/RuleReport.h"

#include <QWidget>

class QLabel;
class QScrollArea;

namespace matwright {

class FaultList;
class RuleFormGrounds;
class RuleFormPart;
class RuleFormWho;

// Everything about one rule of one's own. What is changed goes to the document at once when it can be kept there; what
// cannot be kept yet stays here, with what is wrong with it, until it can. Above it stands what the rule means.
class RuleForm : public QWidget {
  Q_OBJECT

public:
  explicit RuleForm(KnowledgeDocument& document, QWidget* parent = nullptr);

  void setRule(const RuleId& rule); // one of one's own, or a draft
  void begin(const Rule& rule);     // a new one, with an id, which is a draft until what is missing is there
  const RuleId& rule() const { return id_; }
  const Rule& draft() const { return draft_; } // as it is shown, kept or not
  void focusFirst();

  const std::vector<PlacedFault>& faults() const { return faults_; }
  bool hasUnkept(const RuleId& rule) const { return drafts_.has(rule); }
  RuleId firstUnkept() const { return drafts_.first(); } // or empty
  std::vector<Rule> drafts() const { return drafts_.all(); }
  void drop(const RuleId& rule); // what cannot be kept of it
  void dropUnkept();             // shows again what is kept

Q_SIGNALS:
  void edited();      // by the user; draft() is another
  void keptChanged(); // a rule has become one that cannot be kept yet, or can

private:
  void addPart(RuleFormPart* part);
  void take(const Rule& rule, const QString& what, const QString& gesture);
  void takeSource(Source source);
  void changeSource(const Source& source, const QString& what, const QString& gesture);
  void refresh();
  void show(const Rule& rule);
  QString reachOf(const Rule& rule);
  void goTo(int place);
  QString keyOf(const QString& gesture) const;

  KnowledgeDocument& document_;
  RuleId id_;
  Rule draft_;
  Drafts<Rule> drafts_;
  std::vector<PlacedFault> faults_;
  ConcernedMovements concerned_;
  std::vector<RuleFormPart*> parts_;
  QLabel *meaning_, *reach_, *state_;
  QScrollArea* area_ = nullptr;
  FaultList* list_;
  RuleFormWho* who_;
  RuleFormGrounds* grounds_;
};

} // namespace matwright
