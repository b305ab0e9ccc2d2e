#include "ui/rules/RulesWorkspace.h"

#include "ui/controls/FileQuestion.h"
#include "ui/controls/Labels.h"
#include "ui/controls/ListSide.h"
#include "ui/controls/Scrolled.h"
#include "ui/document/KnowledgeExchange.h"
#include "ui/rules/ConditionPage.h"
#include "ui/rules/OwnEditor.h"
#include "ui/rules/RuleFilterBar.h"
#include "ui/rules/RulePage.h"
#include "ui/text/CautionText.h"
#include "ui/text/ErrorText.h"
#include "ui/text/ExchangeText.h"
#include "ui/text/RuleText.h"

#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace matwright {
namespace {

enum Stage { kRulePage, kConditionPage, kEditor };

} // namespace

RulesWorkspace::RulesWorkspace(KnowledgeDocument& document, PlanDocument& plan, QWidget* parent)
    : QWidget(parent), document_(document), plan_(plan), tree_(new RuleTree),
      side_(new ListSide(tr("Rules"), tr("Search conditions, rules and sources"),
                         tr("No rule is found by these words and filters."), tree_)),
      filters_(new RuleFilterBar), newRule_(new QPushButton(tr("New rule"))),
      newCondition_(new QPushButton(tr("New condition"))), import_(new QPushButton(tr("Import \u2026"))),
      export_(new QPushButton(tr("Export \u25be"))), stack_(new QStackedWidget),
      rulePage_(new RulePage(document, plan)), conditionPage_(new ConditionPage(document, plan)),
      editor_(new OwnEditor(document)) {
  QVBoxLayout* column = addListAndStage(*this, makeSide(), makeStage(), {370, 910});
  QLabel* notice = softLabel(standingNotice());
  notice->setContentsMargins(14, 6, 14, 8);
  column->addWidget(notice);

  connect(tree_, &RuleTree::currentChanged, this, [this] {
    say({});
    if (const auto choice = tree_->current(); choice && *choice != current_) {
      current_ = *choice;
      editing_ = false;
    }
    for (QScrollArea* area : stack_->findChildren<QScrollArea*>(QString(), Qt::FindDirectChildrenOnly))
      area->verticalScrollBar()->setValue(0);
    refresh();
  });
  connect(side_->search(), &QLineEdit::textChanged, this, &RulesWorkspace::fillList);
  connect(filters_, &RuleFilterBar::changed, this, &RulesWorkspace::fillList);
  connect(&document, &KnowledgeDocument::changed, this, &RulesWorkspace::refreshAll);
  connect(&plan, &PlanDocument::changed, this, &RulesWorkspace::refreshAll);
  connect(rulePage_, &RulePage::copyWanted, this, &RulesWorkspace::copyCurrent);
  connect(rulePage_, &RulePage::removeWanted, this, &RulesWorkspace::askRemove);
  connect(rulePage_, &RulePage::refused, this,
          [this](const std::vector<Error>& errors) { say(text(errors.front()), true); });
  connect(rulePage_, &RulePage::editWanted, this, &RulesWorkspace::edit);
  connect(conditionPage_, &ConditionPage::removeWanted, this, &RulesWorkspace::askRemove);
  connect(conditionPage_, &ConditionPage::editWanted, this, &RulesWorkspace::edit);
  connect(conditionPage_, &ConditionPage::copyWanted, this, &RulesWorkspace::copyCondition);
  connect(conditionPage_, &ConditionPage::ruleWanted, this, &RulesWorkspace::addRule);
  connect(editor_, &OwnEditor::removeWanted, this, &RulesWorkspace::askRemove);
  connect(editor_, &OwnEditor::unkeptChanged, this, &RulesWorkspace::fillList);
  connect(editor_, &OwnEditor::done, this, [this] {
    editing_ = false;
    refresh();
  });
  refreshAll();
}

QWidget* RulesWorkspace::makeSide() {
  side_->addBelowSearch(filters_);
  auto* menu = new QMenu(export_);
  exportThis_ = menu->addAction(tr("This, with what belongs to it \u2026"));
  exportScreening_ = menu->addAction(tr("My conditions, rules, sources and thresholds \u2026"));
  exportAll_ = menu->addAction(tr("All of my own, with movements \u2026"));
  export_->setMenu(menu);
  export_->setStyleSheet(QStringLiteral("QPushButton::menu-indicator { image: none; width: 0; }"));
  newRule_->setProperty("primary", true);
  for (QPushButton* button : {newRule_, newCondition_, import_, export_})
    side_->addButton(button);
  connect(newRule_, &QPushButton::clicked, this, &RulesWorkspace::addRule);
  connect(newCondition_, &QPushButton::clicked, this, &RulesWorkspace::addCondition);
  connect(import_, &QPushButton::clicked, this, &RulesWorkspace::askImport);
  connect(exportThis_, &QAction::triggered, this, [this] {
    askExport(currentWithWhatItNames(),
              QString::fromStdString(current_.rule ? current_.rule->value : current_.condition->value));
  });
  connect(exportScreening_, &QAction::triggered, this,
          [this] { askExport(screeningOf(document_.own()), tr("my-rules")); });
  connect(exportAll_, &QAction::triggered, this, [this] { askExport(document_.own(), tr("my-knowledge")); });
  side_->setMinimumWidth(300);
  return side_;
}

QWidget* RulesWorkspace::makeStage() {
  stack_->addWidget(scrolled(rulePage_));
  stack_->addWidget(scrolled(conditionPage_));
  stack_->addWidget(editor_);
  stack_->setMinimumWidth(480);
  return stack_;
}

const Rule* RulesWorkspace::rule() const {
  return current_.rule ? document_.knowledge()->rules.findRule(*current_.rule) : nullptr;
}

const Condition* RulesWorkspace::condition() const {
  return current_.condition ? document_.knowledge()->rules.findCondition(*current_.condition) : nullptr;
}

bool RulesWorkspace::isThere() const {
  return current_ == RuleChoice{} || rule() || condition() || editor_->isUnkept(current_);
}

std::optional<RuleChoice> RulesWorkspace::firstUnkept() const { return editor_->firstUnkept(); }

QString RulesWorkspace::nameOf(const RuleChoice& choice) const { return editor_->nameOf(choice); }

void RulesWorkspace::dropUnkept() {
  editor_->dropUnkept();
  refreshAll();
}

void RulesWorkspace::show(const RuleChoice& choice) {
  if (!isVisible() || !tree_->has(choice)) {
    side_->search()->clear();
    filters_->clear();
  }
  if (!isVisible()) {
    current_ = choice;
    stale_ = true;
    return;
  }
  tree_->setCurrent(choice);
}

void RulesWorkspace::showEvent(QShowEvent* event) {
  if (stale_)
    refreshAll();
  QWidget::showEvent(event);
}

void RulesWorkspace::refreshAll() {
  stale_ = !isVisible();
  if (stale_)
    return;
  fillList();
  refresh();
}

void RulesWorkspace::fillList() {
  RuleFilter filter = filters_->filter();
  filter.words = side_->search()->text();
  const auto knowledge = document_.knowledge();
  const auto groups = ruleGroups(editor_->over(knowledge->rules), filter,
                                 rulesConcerning(knowledge->rules, plan_.roster(), plan_.day()), editor_->unkept());
  tree_->show(groups, filter.asks());
  side_->showNone(groups.empty());
  if (tree_->current() != current_ && tree_->has(current_))
    tree_->setCurrent(current_);
}

void RulesWorkspace::refresh() {
  // What is gone, as by undo, is not looked at any longer.
  if (!isThere())
    current_ = {};
  const bool own = (current_.rule && isOwn(*current_.rule)) || (current_.condition && isOwn(*current_.condition));
  if (own && (editing_ || editor_->isUnkept(current_))) {
    editing_ = true; // until it is done, though it can be kept meanwhile
    editor_->show(current_);
    stack_->setCurrentIndex(kEditor);
  } else if (const Rule* shown = rule()) {
    rulePage_->show(*shown);
    stack_->setCurrentIndex(kRulePage);
  } else {
    conditionPage_->show(condition());
    stack_->setCurrentIndex(kConditionPage);
  }
  const bool locked = !document_.lockedBy().empty();
  for (QPushButton* button : {newRule_, newCondition_, import_})
    button->setEnabled(!locked);
  export_->setEnabled(!document_.own().empty());
  exportThis_->setEnabled(!currentWithWhatItNames().empty());
  exportScreening_->setEnabled(!screeningOf(document_.own()).empty());
  if (locked)
    say(tr("The rules of this studio cannot be read, so nothing can be changed here: %1")
            .arg(text(document_.lockedBy().front())),
        true);
}

void RulesWorkspace::begin(const RuleChoice& choice) {
  show(choice);
  editor_->focusFirst();
}

void RulesWorkspace::addRule() {
  auto condition = current_.condition;
  if (const Rule* shown = rule())
    condition = shown->condition;
  if (condition && !document_.knowledge()->rules.findCondition(*condition))
    condition.reset(); // a condition that is not kept yet has no rules
  begin(editor_->begin(blankRule(condition, plan_.day())));
}

void RulesWorkspace::addCondition() { begin(editor_->begin(Condition{})); }

void RulesWorkspace::edit() {
  editing_ = true;
  refresh();
  editor_->focusFirst();
}

void RulesWorkspace::copyCurrent() {
  auto copy = current_.rule ? document_.copyOf(*current_.rule) : std::nullopt;
  if (!copy)
    return;
  document_.sealGesture();
  const auto added = document_.add(std::move(*copy), tr("Copy a rule"));
  if (!added)
    return say(text(added.error().front()), true);
  show({*added, {}});
  edit();
}

void RulesWorkspace::copyCondition() {
  const Condition* shown = condition();
  if (!shown)
    return;
  document_.sealGesture();
  const auto added = document_.addCopyOf(ConditionId(shown->id), tr("Copy a condition with its rules"));
  if (!added)
    return say(text(added.error().front()), true);
  show({{}, *added});
  edit();
}

void RulesWorkspace::askRemove() {
  const Rule* ofRule = rule();
  const Condition* ofCondition = condition();
  auto* box = new QMessageBox(this);
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setIcon(QMessageBox::Question);
  box->setTextFormat(Qt::PlainText);
  if (ofRule) {
    box->setWindowTitle(tr("Remove a rule"));
    box->setText(tr("Remove your rule \u201c%1\u201d? It will not speak any longer. Undo brings it back.")
                     .arg(titleText(*ofRule)));
  } else if (ofCondition) {
    box->setWindowTitle(tr("Remove a condition"));
    box->setText(tr("Remove your condition \u201c%1\u201d? Undo brings it back.")
                     .arg(QString::fromStdString(ofCondition->name)));
    QStringList more;
    const RuleBook& book = document_.knowledge()->rules;
    for (const RuleId& id : usesOf(document_.own(), ofCondition->id).rules)
      if (const Rule* with = book.findRule(id))
        more << QStringLiteral("\u2022 ") + titleText(*with);
    if (!more.isEmpty())
      more.prepend(tr("These rules of yours go with it:"));
    if (const QStringList people = peopleWith(ofCondition->id, plan_); !people.isEmpty())
      more << tr("It stays on file for %1, but then no rule knows it.").arg(people.join(QStringLiteral(", ")));
    box->setInformativeText(more.join(QLatin1Char('\n')));
  } else {
    box->setWindowTitle(tr("Not kept yet"));
    box->setText(tr("Remove \u201c%1\u201d? It was never kept, so nothing brings it back.").arg(nameOf(current_)));
  }
  QPushButton* remove = box->addButton(tr("Remove"), QMessageBox::DestructiveRole);
  box->setDefaultButton(box->addButton(QMessageBox::Cancel));
  connect(box, &QMessageBox::buttonClicked, this, [this, remove](QAbstractButton* button) {
    if (button == remove)
      removeCurrent();
  });
  box->open();
}

void RulesWorkspace::removeCurrent() {
  const auto after = tree_->neighbour();
  editor_->drop(current_);
  const auto done = current_.rule        ? document_.remove(*current_.rule, tr("Remove a rule"))
                    : current_.condition ? document_.remove(*current_.condition, tr("Remove a condition"))
                                         : KnowledgeDocument::Done{};
  if (!done)
    return say(text(done.error().front()), true);
  show(after && tree_->has(*after) ? *after : RuleChoice{});
  say(tr("Removed."));
}

void RulesWorkspace::askImport() {
  askFileToOpen(this, tr("Import movements and rules"), tr("Movements and rules"),
                [this](const QString& file) { importFrom(file); });
}

void RulesWorkspace::askExport(OwnKnowledge given, const QString& name) {
  askFileToSave(this, tr("Export"), tr("Movements and rules"), name,
                [this, given = std::move(given)](const QString& file) { exportTo(given, file); });
}

OwnKnowledge RulesWorkspace::currentWithWhatItNames() const {
  return current_.rule        ? withWhatItNames(document_.own(), *current_.rule)
         : current_.condition ? withWhatItNames(document_.own(), *current_.condition)
                              : OwnKnowledge{};
}

void RulesWorkspace::importFrom(const QString& file) {
  document_.sealGesture();
  const auto done = importKnowledge(document_, file);
  if (!done)
    return say(notImportedText(done.error()), true);
  if (!done->taken.rules.empty())
    show({done->taken.rules.front().id, {}});
  else if (!done->taken.conditions.empty())
    show({{}, done->taken.conditions.front().id});
  else if (!done->taken.thresholds.empty())
    show({done->taken.thresholds.begin()->first, {}});
  say(importedText(*done));
}

void RulesWorkspace::exportTo(const OwnKnowledge& given, const QString& file) {
  const auto done = exportKnowledge(given, file);
  say(done ? tr("Saved %1").arg(file) : text(done.error()), !done);
}

void RulesWorkspace::say(const QString& words, bool wrong) { side_->say(words, wrong); }

} // namespace matwright
