#include "ui/rules/ConditionPage.h"

#include "ui/controls/FactGrid.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/RowText.h"
#include "ui/rules/RuleLines.h"
#include "ui/rules/RulePage.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace matwright {

ConditionPage::ConditionPage(const KnowledgeDocument& document, const PlanDocument& plan, QWidget* parent)
    : QWidget(parent), document_(document), plan_(plan), title_(titleLabel({})), whose_(softLabel({})),
      about_(plainLabel({})), rule_(new QPushButton(tr("New rule for it"))),
      copy_(new QPushButton(tr("Copy with its rules"))), edit_(new QPushButton(tr("Edit"))),
      remove_(new QPushButton(tr("Remove \u2026"))), column_(readingColumn(*this)) {
  column_->addWidget(title_);
  column_->addWidget(whose_);
  auto* actions = new QWidget;
  auto* line = new FlowLayout(actions, 6);
  edit_->setProperty("primary", true);
  for (QPushButton* button : {edit_, rule_, copy_, remove_})
    line->addWidget(button);
  column_->addWidget(actions);
  column_->addWidget(about_);
  column_->addStretch(1);
  about_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  connect(rule_, &QPushButton::clicked, this, &ConditionPage::ruleWanted);
  connect(copy_, &QPushButton::clicked, this, &ConditionPage::copyWanted);
  connect(edit_, &QPushButton::clicked, this, &ConditionPage::editWanted);
  connect(remove_, &QPushButton::clicked, this, &ConditionPage::removeWanted);
}

void ConditionPage::show(const Condition* condition) {
  const bool own = condition && isOwn(condition->id), locked = !document_.lockedBy().empty();
  rule_->setText(condition ? tr("New rule for it") : tr("New rule for everybody"));
  rule_->setEnabled(!locked);
  copy_->setVisible(condition != nullptr);
  copy_->setEnabled(!locked);
  copy_->setToolTip(tr("A condition of your own that begins like this one, with copies of all its rules"));
  edit_->setVisible(own);
  edit_->setEnabled(!locked);
  remove_->setVisible(own);
  remove_->setEnabled(!locked);
  title_->setText(condition ? QString::fromStdString(condition->name) : tr("For everybody, and by age"));
  whose_->setText(own         ? tr("A condition of your own.")
                  : condition ? tr("This condition comes with the program and stays as it is. Rules of your own can be "
                                   "for it, too.")
                              : tr("Here are all the rules that the screening knows, with what stands behind them."));
  about_->setText(condition ? QString::fromStdString(condition->about)
                            : tr("These rules ask for no condition. They speak in every class, or for all people of "
                                 "an age, as far as it is noted. The others stand under the condition that they are "
                                 "for, and speak for people who have it on file."));
  fill(condition);
  fillRules(condition);
}

void ConditionPage::fill(const Condition* condition) {
  const RuleBook& book = document_.knowledge()->rules;
  FactGrid* facts = freshFacts(*column_, facts_, {});
  std::array<int, kWordCount<Level>> counts{};
  int all = 0;
  for (const Rule& rule : book.rules)
    if (rule.condition == (condition ? std::optional{condition->id} : std::nullopt)) {
      ++counts[static_cast<std::size_t>(rule.level)];
      ++all;
    }
  if (condition) {
    QStringList codes, asked;
    for (const std::string& code : condition->icd10)
      codes << QString::fromStdString(code);
    for (const QualifierSpec& qualifier : condition->qualifiers)
      asked << qualifierText(qualifier);
    facts->add(tr("ICD-10"), codes.join(QStringLiteral(", ")));
    facts->add(tr("What is asked"), asked.isEmpty() ? tr("nothing further") : asked.join(QLatin1Char('\n')));
    const QStringList people = peopleWith(condition->id, plan_);
    facts->add(tr("People on file"), people.isEmpty() ? tr("nobody") : people.join(QStringLiteral(", ")));
  }
  QStringList levels;
  for (std::size_t i = counts.size(); i-- > 0;)
    if (counts[i] > 0)
      levels << QStringLiteral("%1 %2").arg(counts[i]).arg(text(static_cast<Level>(i)));
  facts->add(tr("Rules"), all == 0 ? tr("none yet: the screening says nothing about it")
                                   : tr("%n rule(s): %1", nullptr, all).arg(levels.join(QStringLiteral(", "))));
  if (!condition) {
    const auto conditions = static_cast<int>(book.conditions.size());
    facts->add(tr("All in all"), tr("%1, for %2 and for everybody, with %3 behind them")
                                     .arg(tr("%n rule(s)", nullptr, static_cast<int>(book.rules.size())),
                                          tr("%n condition(s)", nullptr, conditions),
                                          tr("%n source(s)", nullptr, static_cast<int>(book.sources.size()))));
  }
}

void ConditionPage::fillRules(const Condition* condition) {
  const RuleBook& book = document_.knowledge()->rules;
  FactGrid* lines = freshFacts(*column_, rules_, tr("What they say"));
  lines->setVerticalSpacing(10);
  int count = 0;
  for (const RuleGroup& group : ruleGroups(book, {}, {}))
    if (group.condition == (condition ? std::optional{condition->id} : std::nullopt))
      for (const RuleRow& row : group.rows)
        lines->addWidget(new RuleLines(row, QString::fromStdString(book.findRule(row.rule)->why)), count++, 0, 1, 2);
  rules_->setVisible(count > 0);
}

} // namespace matwright
