#include "ui/rules/OwnEditor.h"

#include "core/base/Text.h"
#include "ui/controls/Labels.h"
#include "ui/rules/ConditionForm.h"
#include "ui/rules/RuleForm.h"
#include "ui/text/RuleText.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace matwright {
namespace {

enum Form { kRuleForm, kConditionForm };

// Under an id that nothing else has, kept or not.
template <class Value> void mint(Value& value, const char* stem, const std::vector<Value>& all) {
  value.id = {untakenId(std::string(kOwnPrefix) + stem,
                        [&](const std::string& id) { return findById(all, decltype(Value::id){id}) != nullptr; })};
}

template <class Value> void put(std::vector<Value>& all, const std::vector<Value>& drafts) {
  for (const Value& draft : drafts)
    if (Value* there = findById(all, draft.id))
      *there = draft;
    else
      all.push_back(draft);
}

} // namespace

Rule blankRule(std::optional<ConditionId> condition, Date today) {
  Rule rule;
  rule.condition = std::move(condition);
  rule.scope = Scope::step;
  rule.level = Level::watch;
  rule.strength = Strength::practice;
  rule.check = Verification::memory;
  rule.reviewed = today;
  return rule;
}

OwnEditor::OwnEditor(KnowledgeDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), title_(softLabel({})), done_(new QPushButton(tr("Done"))),
      remove_(new QPushButton(tr("Remove \u2026"))), stack_(new QStackedWidget), rule_(new RuleForm(document)),
      condition_(new ConditionForm(document)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 12, 12, 0);
  column->setSpacing(4);
  auto* head = new QHBoxLayout;
  head->setContentsMargins(12, 0, 12, 0);
  head->setSpacing(6);
  head->addWidget(title_, 1);
  head->addWidget(remove_);
  head->addWidget(done_);
  column->addLayout(head);
  column->addWidget(stack_, 1);
  stack_->addWidget(rule_);
  stack_->addWidget(condition_);
  done_->setProperty("primary", true);
  done_->setToolTip(tr("Show it as it is read"));
  connect(done_, &QPushButton::clicked, this, &OwnEditor::done);
  connect(remove_, &QPushButton::clicked, this, &OwnEditor::removeWanted);
  const auto tell = [this] {
    done_->setEnabled(!isUnkept(stack_->currentIndex() == kRuleForm ? RuleChoice{rule_->rule(), {}}
                                                                    : RuleChoice{{}, condition_->condition()}));
    Q_EMIT unkeptChanged();
  };
  for (auto signal : {&RuleForm::edited, &RuleForm::keptChanged})
    connect(rule_, signal, this, tell);
  for (auto signal : {&ConditionForm::edited, &ConditionForm::keptChanged})
    connect(condition_, signal, this, tell);
}

void OwnEditor::show(const RuleChoice& choice) {
  title_->setText(choice.rule ? tr("A rule of your own.") : tr("A condition of your own."));
  if (choice.rule && rule_->rule() != *choice.rule)
    rule_->setRule(*choice.rule);
  if (choice.condition && condition_->condition() != *choice.condition)
    condition_->setCondition(*choice.condition);
  stack_->setCurrentIndex(choice.rule ? kRuleForm : kConditionForm);
  done_->setEnabled(!isUnkept(choice));
}

RuleChoice OwnEditor::begin(Rule blank) {
  mint(blank, "rule", over(document_.knowledge()->rules).rules);
  rule_->begin(blank);
  return {blank.id, {}};
}

RuleChoice OwnEditor::begin(Condition blank) {
  mint(blank, "condition", over(document_.knowledge()->rules).conditions);
  condition_->begin(blank);
  return {{}, blank.id};
}

void OwnEditor::focusFirst() {
  if (stack_->currentIndex() == kRuleForm)
    rule_->focusFirst();
  else
    condition_->focusName();
}

bool OwnEditor::isUnkept(const RuleChoice& choice) const {
  return choice.rule ? rule_->hasUnkept(*choice.rule) : choice.condition && condition_->hasUnkept(*choice.condition);
}

std::optional<RuleChoice> OwnEditor::firstUnkept() const {
  if (const RuleId id = rule_->firstUnkept(); !id.empty())
    return RuleChoice{id, {}};
  if (const ConditionId id = condition_->firstUnkept(); !id.empty())
    return RuleChoice{{}, id};
  return std::nullopt;
}

QString OwnEditor::nameOf(const RuleChoice& choice) const {
  const RuleBook book = over(document_.knowledge()->rules);
  if (const Rule* rule = choice.rule ? book.findRule(*choice.rule) : nullptr)
    return titleText(*rule).isEmpty() ? tr("a new rule") : titleText(*rule);
  const Condition* condition = choice.condition ? book.findCondition(*choice.condition) : nullptr;
  return condition && !condition->name.empty() ? QString::fromStdString(condition->name) : tr("a new condition");
}

void OwnEditor::drop(const RuleChoice& choice) {
  if (choice.rule)
    rule_->drop(*choice.rule);
  if (choice.condition)
    condition_->drop(*choice.condition);
}

void OwnEditor::dropUnkept() {
  rule_->dropUnkept();
  condition_->dropUnkept();
}

Unkept OwnEditor::unkept() const {
  Unkept all;
  for (const Rule& rule : rule_->drafts())
    all.rules.insert(rule.id);
  for (const Condition& condition : condition_->drafts())
    all.conditions.insert(condition.id);
  return all;
}

RuleBook OwnEditor::over(RuleBook book) const {
  put(book.rules, rule_->drafts());
  put(book.conditions, condition_->drafts());
  return book;
}

} // namespace matwright
