#include "ui/people/PersonEditor.h"

#include "core/plan/ClassPlan.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/people/ConditionEditor.h"
#include "ui/people/ConditionPicker.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

namespace matwright {
namespace {

// A measure that may be open: one notch below the least that can be, the box says so.
QDoubleSpinBox* measureBox(const QString& name, const QString& unit, double least, double most, int decimals,
                           double step) {
  auto* box = new QDoubleSpinBox;
  box->setAccessibleName(name);
  box->setDecimals(decimals);
  box->setRange(least - std::pow(10., -decimals), most);
  box->setSingleStep(step);
  box->setSuffix(unit);
  box->setSpecialValueText(PersonEditor::tr("not noted"));
  keepWheelForFocus(box);
  return box;
}

std::optional<double> measured(const QDoubleSpinBox& box) {
  return box.value() > box.minimum() ? std::optional{box.value()} : std::nullopt;
}

void showMeasure(QDoubleSpinBox* box, const std::optional<double>& measure) {
  const double value = measure.value_or(box->minimum());
  if (std::abs(box->value() - value) < 0.5 * std::pow(10., -box->decimals()))
    return; // there already: what is being typed stays
  const QSignalBlocker quiet(box);
  box->setValue(value);
}

} // namespace

PersonEditor::PersonEditor(PlanDocument& plan, PeopleDocument& people, QWidget* parent)
    : QWidget(parent), plan_(plan), people_(people), name_(lineField(tr("Name"), kLongestName)),
      initials_(lineField(tr("Initials"), kLongestName)), age_(new QComboBox),
      stature_(measureBox(tr("Stature"), tr(" m"), Person::kShortest, Person::kTallest, 2, 0.01)),
      mass_(measureBox(tr("Body mass"), tr(" kg"), Person::kLightest, Person::kHeaviest, 1, 1)),
      wishes_(new NoteField(tr("Wishes"), kLongestNote, 2)), note_(new NoteField(tr("Note"), kLongestNote, 3)),
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
  add(2, tr("Age"), age_);
  add(3, tr("Stature"), stature_);
  add(4, tr("Body mass"), mass_);
  add(5, tr("Wishes"), wishes_);
  add(6, tr("Note"), note_);
  age_->setAccessibleName(tr("Age"));
  keepWheelForFocus(age_);
  age_->addItem(tr("not noted"));
  for (std::size_t band = 0; band < kWordCount<AgeBand>; ++band)
    age_->addItem(text(static_cast<AgeBand>(band)));
  wishes_->setToolTip(tr("What the person comes for"));
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
  connectProfile();
  for (QWidget* field : std::initializer_list<QWidget*>{name_, initials_, age_, stature_, mass_, wishes_, note_})
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

void PersonEditor::connectProfile() {
  connect(age_, &QComboBox::currentIndexChanged, this, [this](int index) {
    if (index < 0)
      return;
    change(
        [&](Person& person) {
          person.ageBand = index > 0 ? std::optional{static_cast<AgeBand>(index - 1)} : std::nullopt;
        },
        tr("Change an age"), QStringLiteral("age"));
  });
  connect(stature_, &QDoubleSpinBox::valueChanged, this, [this] {
    change([&](Person& person) { person.stature = measured(*stature_); }, tr("Change a stature"),
           QStringLiteral("stature"));
  });
  connect(mass_, &QDoubleSpinBox::valueChanged, this, [this] {
    change([&](Person& person) { person.mass = measured(*mass_); }, tr("Change a body mass"), QStringLiteral("mass"));
  });
  connect(wishes_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Person& person) { person.wishes = words.toStdString(); }, tr("Change wishes"), QStringLiteral("wishes"));
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
  showProfile(*person);
  note_->showNote(QString::fromStdString(person->note));
  std::vector<ConditionId> wanted;
  for (const PersonCondition& held : person->conditions)
    wanted.push_back(held.condition);
  if (wanted != shown_)
    rebuildConditions(*person);
  for (std::size_t i = 0; i < conditions_.size(); ++i)
    conditions_[i]->show(person->conditions[i], plan_.day());
}

void PersonEditor::showProfile(const Person& person) {
  const QSignalBlocker quiet(age_);
  age_->setCurrentIndex(person.ageBand ? static_cast<int>(*person.ageBand) + 1 : 0);
  showMeasure(stature_, person.stature);
  showMeasure(mass_, person.mass);
  wishes_->showNote(QString::fromStdString(person.wishes));
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
