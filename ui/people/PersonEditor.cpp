#include "ui/people/PersonEditor.h"

#include "core/plan/ClassPlan.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/people/ConditionEditor.h"
#include "ui/people/ConditionPicker.h"

#include <QGridLayout>
#include <QVBoxLayout>

namespace matwright {

PersonEditor::PersonEditor(PlanDocument& plan, PeopleDocument& people, QWidget* parent)
    : QWidget(parent), plan_(plan), people_(people), name_(lineField(tr("Name"), kLongestName)),
      initials_(lineField(tr("Initials"), kLongestName)), note_(new NoteField(tr("Note"), kLongestNote, 3)),
      conditionColumn_(new QVBoxLayout) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 10, 16, 10);
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(12);
  const auto add = [&](int row, const QString& name, QWidget* field) {
    grid->addWidget(besideLabel(name, field), row, 0, Qt::AlignTop);
    grid->addWidget(field, row, 1);
  };
  add(0, tr("Name"), name_);
  add(1, tr("Initials"), initials_);
  add(2, tr("Note"), note_);
  name_->setToolTip(tr("May be an alias"));
  initials_->setToolTip(tr("Printed on the card in place of the name"));
  column->addLayout(grid);
  column->addSpacing(8);
  column->addWidget(headingLabel(tr("Conditions")));
  column->addLayout(conditionColumn_);
  auto* picker = new ConditionPicker(plan.knowledge().rules.conditions);
  column->addWidget(picker);
  column->addStretch(1);

  connect(name_, &QLineEdit::textEdited, this, [this](const QString& words) {
    // A name is never empty on file; while the field is, the last one stands.
    if (words.trimmed().isEmpty())
      return;
    change(
        [&](Person& person) {
          const bool usual = person.initials == initialsFrom(person.name);
          person.name = words.trimmed().toStdString();
          if (usual)
            person.initials = initialsFrom(person.name);
        },
        tr("Change a name"), QStringLiteral("name"));
  });
  connect(initials_, &QLineEdit::textEdited, this, [this](const QString& words) {
    change([&](Person& person) { person.initials = words.toStdString(); }, tr("Change initials"),
           QStringLiteral("initials"));
  });
  connect(note_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Person& person) { person.note = words.toStdString(); }, tr("Change a note"), QStringLiteral("note"));
  });
  connect(picker, &ConditionPicker::picked, this, &PersonEditor::addCondition);
  for (QWidget* field : {static_cast<QWidget*>(name_), static_cast<QWidget*>(initials_), static_cast<QWidget*>(note_)})
    whenFocusLeaves(field, this, [this] {
      people_.sealGesture();
      refresh();
    });
  connect(&people, &PeopleDocument::changed, this, &PersonEditor::refresh);
  connect(&plan, &PlanDocument::changed, this, &PersonEditor::refresh);
  connect(&plan, &PlanDocument::knowledgeChanged, this, [this, picker] {
    picker->setConditions(plan_.knowledge().rules.conditions);
    shown_.clear(); // what is known of the conditions shown may have changed
    refresh();
  });
}

void PersonEditor::setPerson(const PersonId& person) {
  people_.sealGesture();
  id_ = person;
  refresh();
}

void PersonEditor::focusName() {
  name_->setFocus();
  name_->selectAll();
}

void PersonEditor::change(const std::function<void(Person&)>& edit, const QString& what, const QString& field) {
  const Person* found = people_.find(id_);
  if (!found)
    return;
  Person person = *found;
  edit(person);
  people_.change(person, what,
                 field.isEmpty() ? QString() : QStringLiteral("%1/%2").arg(QString::fromStdString(id_.value), field));
}

void PersonEditor::addCondition(const ConditionId& condition) {
  change(
      [&](Person& person) {
        PersonCondition held;
        held.condition = condition;
        person.conditions.push_back(held);
      },
      tr("Add a condition"));
}

void PersonEditor::refresh() {
  const Person* person = people_.find(id_);
  setEnabled(person != nullptr);
  if (!person)
    return;
  // While the name is being typed, a space at its end is not taken away.
  const QString name = QString::fromStdString(person->name);
  if (!name_->hasFocus() || name_->text().trimmed() != name)
    if (!name_->hasFocus() || !name_->text().trimmed().isEmpty())
      showText(name_, name);
  showText(initials_, QString::fromStdString(person->initials));
  note_->showNote(QString::fromStdString(person->note));
  std::vector<ConditionId> wanted;
  for (const PersonCondition& held : person->conditions)
    wanted.push_back(held.condition);
  if (wanted != shown_)
    rebuildConditions(*person);
  for (std::size_t i = 0; i < conditions_.size(); ++i)
    conditions_[i]->show(person->conditions[i], plan_.day());
}

void PersonEditor::rebuildConditions(const Person& person) {
  for (ConditionEditor* editor : conditions_) {
    editor->hide();
    editor->deleteLater();
  }
  conditions_.clear();
  shown_.clear();
  for (const PersonCondition& held : person.conditions) {
    auto* editor = new ConditionEditor(plan_.knowledge().rules, held.condition);
    const std::size_t at = conditions_.size();
    conditions_.push_back(editor);
    shown_.push_back(held.condition);
    conditionColumn_->addWidget(editor);
    connect(editor, &ConditionEditor::edited, this, [this, at](const PersonCondition& now, const QString& field) {
      change([&](Person& changed) { changed.conditions[at] = now; }, tr("Change a condition"),
             QStringLiteral("condition%1/%2").arg(at).arg(field));
    });
    connect(editor, &ConditionEditor::removeWanted, this, [this, at] {
      change(
          [&](Person& changed) {
            changed.conditions.erase(changed.conditions.begin() + static_cast<std::ptrdiff_t>(at));
          },
          tr("Remove a condition"));
    });
    whenFocusLeaves(editor, this, [this] { people_.sealGesture(); });
  }
}

} // namespace matwright
