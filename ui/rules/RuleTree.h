#pragma once

#include "ui/controls/MarkedTree.h"
#include "ui/rules/RuleRows.h"

#include <QSet>

class QStandardItem;
class QStandardItemModel;

namespace matwright {

// What is looked at in the workspace: a rule, or the heading of a group.
struct RuleChoice {
  std::optional<RuleId> rule;
  std::optional<ConditionId> condition; // of a heading; with neither, that of the rules for everybody
  friend bool operator==(const RuleChoice&, const RuleChoice&) = default;
};

// The rules under the headings of their conditions. Headings can be chosen too.
class RuleTree : public MarkedTree {
  Q_OBJECT

public:
  explicit RuleTree(QWidget* parent = nullptr);

  // `open`: all groups are open, as when somebody searches; else those that the user has opened. What was current stays
  // so where it is still there.
  void show(const std::vector<RuleGroup>& groups, bool open);

  std::optional<RuleChoice> current() const; // nothing where no row is
  void setCurrent(const RuleChoice& choice); // its group is opened; nothing happens when it is not there
  bool has(const RuleChoice& choice) const { return find(choice).isValid(); }
  // What stands after the current row, else before it, within its group or as a heading.
  std::optional<RuleChoice> neighbour() const;

Q_SIGNALS:
  void currentChanged(); // by the user or by setCurrent()

private:
  static RuleChoice choiceOf(const RuleGroup& group) { return {{}, group.condition}; }
  std::optional<RuleChoice> choiceAt(const QModelIndex& index) const;
  QModelIndex find(const RuleChoice& choice) const;

  std::vector<RuleGroup> groups_;
  QStandardItemModel* model_;
  QSet<QString> opened_; // conditions whose groups the user has opened
  bool filling_ = false, allOpen_ = false;
};

} // namespace matwright
