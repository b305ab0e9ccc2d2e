#include "ui/people/ConditionEditor.h"

#include "core/plan/ClassPlan.h"
#include "ui/controls/DateField.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/people/ClearanceEditor.h"
#include "ui/people/QualifierField.h"

#include <QGridLayout>
#include <QPushButton>
#include <QToolButton>

namespace matwright {
namespace {

FeatureSet featuresAskedFor(const RuleBook& book, const ConditionId& condition) {
  FeatureSet features;
  for (const Rule& rule : book.rules)
    if (rule.condition == condition)
      features |= rule.asks.any | rule.asks.all;
  return features;
}

} // namespace

ConditionEditor::ConditionEditor(const RuleBook& book, const ConditionId& id, QWidget* parent)
    : QWidget(parent), offered_(featuresAskedFor(book, id)), openHint_(softLabel({})),
      note_(new NoteField(tr("Note on the condition"), kLongestNote, 2)) {
  const Condition* condition = book.findCondition(id);
  const QString name = QString::fromStdString(condition ? condition->name : id.value);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 6, 0, 10);
  column->setSpacing(5);

  column->addWidget(hairline());
  auto* head = new QHBoxLayout;
  auto* remove = new QToolButton;
  remove->setText(tr("Remove"));
  remove->setAccessibleName(tr("Remove the condition: %1").arg(name));
  connect(remove, &QToolButton::clicked, this, &ConditionEditor::removeWanted);
  head->addWidget(headingLabel(name), 1);
  head->addWidget(remove, 0, Qt::AlignTop);
  column->addLayout(head);
  column->addWidget(softLabel(condition ? QString::fromStdString(condition->about)
                                        : tr("No rule knows this condition, so nothing is screened for it.")));
  if (condition)
    addQualifiers(*condition, column);
  column->addWidget(openHint_);
  if (condition)
    addClearances(column);
  column->addWidget(fieldLabel(tr("Note"), note_));
  note_->setAccessibleName(tr("Note on %1").arg(name));
  column->addWidget(note_);
  connect(note_, &NoteField::edited, this, [this](const QString& note) {
    held_.note = note.toStdString();
    Q_EMIT edited(held_, QStringLiteral("note"));
  });
}

void ConditionEditor::addQualifiers(const Condition& condition, QVBoxLayout* column) {
  auto* grid = new QGridLayout;
  grid->setColumnStretch(0, 3);
  grid->setColumnStretch(1, 2);
  grid->setHorizontalSpacing(12);
  int row = 0;
  for (const QualifierSpec& spec : condition.qualifiers) {
    auto* field = new QualifierField(spec);
    QLabel* label = plainLabel(QString::fromStdString(spec.name));
    label->setContentsMargins(0, 6, 0, 0);
    grid->addWidget(label, row, 0, Qt::AlignTop);
    grid->addWidget(field, row++, 1, Qt::AlignTop);
    qualifiers_.push_back(field);
    connect(field, &QualifierField::edited, this, [this, id = spec.id](const std::optional<QualifierValue>& value) {
      if (value)
        held_.qualifiers[id] = *value;
      else
        held_.qualifiers.erase(id);
      Q_EMIT edited(held_, QStringLiteral("known/%1").arg(QString::fromStdString(id)));
    });
  }
  column->addLayout(grid);
}

void ConditionEditor::addClearances(QVBoxLayout* column) {
  clearanceColumn_ = new QVBoxLayout;
  clearanceColumn_->setSpacing(2);
  column->addLayout(clearanceColumn_);
  auto* add = new QPushButton(tr("Add a clearance"));
  add->setToolTip(tr("What the person's clinician allowed"));
  column->addWidget(add, 0, Qt::AlignLeft);
  connect(add, &QPushButton::clicked, this, [this] {
    Clearance clearance;
    clearance.given = fromQDate(QDate::currentDate());
    held_.clearances.push_back(clearance);
    Q_EMIT edited(held_, QStringLiteral("clearances"));
  });
}

void ConditionEditor::show(const PersonCondition& held, Date day) {
  held_ = held;
  bool open = false;
  for (QualifierField* field : qualifiers_) {
    const auto known = held.qualifiers.find(field->spec().id);
    open |= known == held.qualifiers.end();
    field->show(known == held.qualifiers.end() ? std::nullopt : std::optional{known->second}, day);
  }
  showText(openHint_,
           open ? tr("What is not known mostly counts as if it held, to be on the careful side.") : QString());
  note_->showNote(QString::fromStdString(held.note));
  showClearances(day);
}

void ConditionEditor::showClearances(Date day) {
  if (!clearanceColumn_)
    return;
  while (clearances_.size() > held_.clearances.size()) {
    clearances_.back()->hide();
    clearances_.back()->deleteLater();
    clearances_.pop_back();
  }
  while (clearances_.size() < held_.clearances.size()) {
    auto* editor = new ClearanceEditor(offered_);
    const std::size_t at = clearances_.size();
    clearances_.push_back(editor);
    clearanceColumn_->addWidget(editor);
    connect(editor, &ClearanceEditor::edited, this, [this, at](const Clearance& clearance, const QString& field) {
      held_.clearances[at] = clearance;
      Q_EMIT edited(held_, QStringLiteral("clearances/%1/%2").arg(at).arg(field));
    });
    connect(editor, &ClearanceEditor::removeWanted, this, [this, at] {
      held_.clearances.erase(held_.clearances.begin() + static_cast<std::ptrdiff_t>(at));
      Q_EMIT edited(held_, QStringLiteral("clearances"));
    });
  }
  for (std::size_t i = 0; i < clearances_.size(); ++i)
    clearances_[i]->show(held_.clearances[i], day);
}

} // namespace matwright
