#include "ui/rules/RuleForm.h"

#include "ui/controls/FaultRows.h"
#include "ui/controls/Labels.h"
#include "ui/controls/Scrolled.h"
#include "ui/rules/RuleFormGrounds.h"
#include "ui/rules/RuleFormLook.h"
#include "ui/rules/RuleFormWho.h"
#include "ui/rules/RuleFormWords.h"
#include "ui/rules/SourcePicker.h"
#include "ui/text/FaultText.h"
#include "ui/text/RuleMeaning.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

RuleForm::RuleForm(KnowledgeDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), drafts_(document, &OwnKnowledge::rules), meaning_(plainLabel({})),
      reach_(softLabel({})), state_(plainLabel({})), list_(new FaultRows), who_(new RuleFormWho),
      grounds_(new RuleFormGrounds) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 8);
  column->setSpacing(6);
  meaning_->setFont(headingFont(meaning_->font()));
  meaning_->setAccessibleName(tr("What the rule means"));
  column->addWidget(meaning_);
  column->addWidget(reach_);
  auto* page = new QWidget;
  auto* parts = new QVBoxLayout(page);
  parts->setContentsMargins(2, 4, 14, 12);
  parts->setSpacing(10);
  area_ = scrolled(page);
  column->addWidget(area_, 1);
  column->addWidget(state_);
  column->addWidget(list_);
  for (RuleFormPart* part : {static_cast<RuleFormPart*>(who_), static_cast<RuleFormPart*>(new RuleFormLook),
                             static_cast<RuleFormPart*>(new RuleFormWords), static_cast<RuleFormPart*>(grounds_)}) {
    parts->addWidget(part);
    addPart(part);
  }
  parts->addStretch(1);
  connect(&grounds_->picker(), &SourcePicker::added, this, &RuleForm::takeSource);
  connect(&grounds_->picker(), &SourcePicker::changed, this, &RuleForm::changeSource);
  connect(list_, &FaultRows::chosen, this, &RuleForm::goTo);
  connect(&document, &KnowledgeDocument::changed, this, &RuleForm::refresh);
}

void RuleForm::addPart(RuleFormPart* part) {
  parts_.push_back(part);
  connect(part, &RuleFormPart::edited, this, &RuleForm::take);
  connect(part, &RuleFormPart::left, &document_, &KnowledgeDocument::sealGesture);
}

void RuleForm::setRule(const RuleId& rule) {
  document_.sealGesture();
  if (id_ != rule) {
    area_->verticalScrollBar()->setValue(0);
    grounds_->picker().closeForm();
  }
  id_ = rule;
  refresh();
}

void RuleForm::focusFirst() { who_->focusFirst(); }

void RuleForm::begin(const Rule& rule) {
  document_.sealGesture();
  drafts_.put(rule, tr("Add a rule"));
  setRule(rule.id);
  Q_EMIT keptChanged();
}

void RuleForm::drop(const RuleId& rule) {
  drafts_.drop(rule);
  refresh();
  Q_EMIT keptChanged();
}

void RuleForm::dropUnkept() {
  drafts_.clear();
  refresh();
  Q_EMIT keptChanged();
}

QString RuleForm::keyOf(const QString& gesture) const {
  return gesture.isEmpty() ? QString() : QStringLiteral("%1/%2").arg(QString::fromStdString(id_.value), gesture);
}

void RuleForm::take(const Rule& rule, const QString& what, const QString& gesture) {
  if (rule.id != id_ || (!findById(document_.own().rules, id_) && !hasUnkept(id_)))
    return;
  const bool was = hasUnkept(id_);
  drafts_.put(rule, what, keyOf(gesture));
  if (draft_ != rule) // the document has not said so by itself
    refresh();
  if (was != hasUnkept(id_))
    Q_EMIT keptChanged();
  Q_EMIT edited();
}

void RuleForm::takeSource(Source source) {
  document_.sealGesture();
  source.id = mintSourceId(*document_.knowledge(), source.cite);
  Rule rule = draft_;
  rule.sources.push_back(source.id);
  const QString what = tr("Add a source");
  OwnKnowledge after = document_.own();
  after.sources.push_back(source);
  for (Rule& each : after.rules)
    if (each.id == id_)
      each = rule;
  // Where the rule cannot be kept yet, the source is kept by itself.
  if (document_.change(after, what)) {
    grounds_->picker().closeForm();
    Q_EMIT edited();
    return;
  }
  const auto added = document_.add(source, what);
  if (!added)
    return grounds_->picker().refuse(needText(added.error().front()));
  grounds_->picker().closeForm();
  take(rule, what, {});
}

void RuleForm::changeSource(const Source& source, const QString& what, const QString& gesture) {
  const auto done = document_.replace(
      source, what,
      gesture.isEmpty() ? QString() : QStringLiteral("%1/%2").arg(QString::fromStdString(source.id.value), gesture));
  if (!done)
    grounds_->picker().refuse(tr("Not kept yet. %1").arg(needText(done.error().front())));
}

void RuleForm::refresh() {
  drafts_.followDocument();
  const Rule* draft = drafts_.find(id_);
  if (const Rule* shown = draft ? draft : findById(document_.own().rules, id_))
    fill(*shown);
}

void RuleForm::fill(const Rule& rule) {
  draft_ = rule;
  const auto knowledge = document_.knowledge();
  for (RuleFormPart* part : parts_)
    part->show(rule, knowledge);
  meaning_->setText(meaningText(rule, knowledge->rules));
  reach_->setText(reachOf(rule));
  faults_ = placedFaults(rule, document_.own(), document_.builtIn());
  const auto lines = byField(faults_);
  for (RuleFormPart* part : parts_)
    part->showFaults(lines);
  const std::vector<FaultLine> told = withFieldNames(faults_);
  list_->show(told);
  state_->setText(
      keptText(!hasUnkept(id_), told,
               tr("What you change is kept with the studio when the class is saved. Whether the rule is true "
                  "and complete, only you can say; what it does not speak of is not thereby safe.")));
}

QString RuleForm::reachOf(const Rule& rule) {
  const auto knowledge = document_.knowledge();
  if (const auto names = concerned_.of(rule, knowledge)) {
    const auto all = static_cast<int>(knowledge->catalogue.movements().size());
    const auto some = static_cast<int>(names->size());
    if (some == 0)
      return tr("No movement of the catalogue asks for this as it is written.");
    const QString count = tr("%n movement(s) of the catalogue ask for this as written", nullptr, some);
    return some > 3 ? tr("%1, of %2.").arg(count).arg(all)
                    : tr("%1: %2.").arg(count, names->join(QStringLiteral(", ")));
  }
  if (rule.scope == Scope::wholeClass)
    return tr("It looks at no movement: it speaks for every class.");
  if (namesNothing(rule.asks))
    return tr("It looks for nothing yet, so it never speaks.");
  const auto& changes = knowledge->transitions.changes();
  const auto some = std::count_if(changes.begin(), changes.end(), [&](const Change& change) {
    return met(rule.asks, Asked{change.features, {}, {}}).has_value();
  });
  return tr("%1 of the %2 charted changes of position ask for this.").arg(some).arg(changes.size());
}

void RuleForm::goTo(int place) {
  if (place < 0 || static_cast<std::size_t>(place) >= faults_.size())
    return;
  const Field field = faults_[static_cast<std::size_t>(place)].field;
  for (RuleFormPart* part : parts_)
    if (part->has(field))
      return part->goTo(field);
}

} // namespace matwright
