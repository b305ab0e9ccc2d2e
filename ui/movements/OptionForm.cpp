#include "ui/movements/OptionForm.h"

#include "core/base/Text.h"
#include "ui/controls/FaultMarks.h"
#include "ui/controls/FeatureList.h"
#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/OrderedList.h"
#include "ui/controls/TempoEditor.h"
#include "ui/movements/PoseEditor.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QSpinBox>

namespace matwright {
namespace {

constexpr int kPosesHeight = 640;

QString keyOf(Feature feature) {
  return QString::fromLatin1(word(feature).data(), static_cast<qsizetype>(word(feature).size()));
}

void tick(QCheckBox* box, bool on) {
  const QSignalBlocker quiet(box);
  box->setChecked(on);
}

} // namespace

OptionForm::OptionForm(QWidget* parent)
    : QWidget(parent), name_(lineField(tr("Name of the option"), kLongestName)), kind_(new QComboBox),
      how_(new NoteField(tr("How it is done"), kLongestNote, 2)), removesNone_(softLabel({})),
      removes_(new FeatureList), adds_(new OrderedList(tr("Adds"), tr("Find a feature that it adds"))),
      hasEffort_(new QCheckBox(tr("Another effort"))), hasDose_(new QCheckBox(tr("Another dose"))),
      hasTempo_(new QCheckBox(tr("Another tempo"))), hasProps_(new QCheckBox(tr("Other props"))),
      hasPoses_(new QCheckBox(tr("Other poses"))), effort_(new QSpinBox), amount_(new QSpinBox), unit_(new QComboBox),
      dose_(new QWidget), props_(new QWidget), tempo_(new TempoEditor),
      poses_(new PoseEditor(PoseEditor::Arrangement::narrow)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 4, 16, 16);
  column->setSpacing(10);
  auto* grid = fieldGrid();
  column->addLayout(grid);
  for (std::size_t i = 0; i < kWordCount<OptionKind>; ++i)
    kind_->addItem(withCapital(text(static_cast<OptionKind>(i))));
  for (std::size_t i = 0; i < kWordCount<DoseUnit>; ++i)
    unit_->addItem(withCapital(text(static_cast<DoseUnit>(i))));
  std::vector<NamedKey> features;
  for (std::size_t i = 0; i < kWordCount<Feature>; ++i) {
    const auto feature = static_cast<Feature>(i);
    features.push_back({keyOf(feature), QStringLiteral("%1: %2").arg(text(feature), definition(feature))});
  }
  adds_->setStock(features);
  kind_->setMaximumWidth(240);
  name_->setMaximumWidth(420);
  how_->setMaximumWidth(620);
  addRow(*grid, tr("Name"), name_);
  addRow(*grid, tr("Kind"), kind_);
  addRow(*grid, tr("How"), how_);
  column->addWidget(headingLabel(tr("Takes away")));
  column->addWidget(removesNone_);
  column->addWidget(removes_);
  column->addWidget(headingLabel(tr("Adds")));
  column->addWidget(adds_);
  column->addWidget(headingLabel(tr("What else is different")));
  auto* others = fieldGrid();
  column->addLayout(others);

  effort_->setRange(0, Effort::kHighest);
  effort_->setAccessibleName(tr("Effort of the option"));
  effort_->setMaximumWidth(80);
  amount_->setRange(1, Dose::kMost);
  amount_->setAccessibleName(tr("Amount of the option"));
  unit_->setAccessibleName(tr("Unit of the option"));
  for (QWidget* field : {static_cast<QWidget*>(kind_), static_cast<QWidget*>(effort_), static_cast<QWidget*>(amount_),
                         static_cast<QWidget*>(unit_)})
    keepWheelForFocus(field);
  auto* line = new QHBoxLayout(dose_);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(amount_);
  line->addWidget(unit_);
  line->addStretch(1);
  auto* flow = new FlowLayout(props_, 14);
  for (std::size_t i = 0; i < kWordCount<Prop>; ++i) {
    prop_.push_back(new QCheckBox(withCapital(text(static_cast<Prop>(i)))));
    flow->addWidget(prop_.back());
  }
  tempo_->setMaximumWidth(420);
  poses_->setMinimumHeight(kPosesHeight);
  addOverride(*others, hasEffort_, effort_);
  addOverride(*others, hasDose_, dose_);
  addOverride(*others, hasTempo_, tempo_);
  addOverride(*others, hasProps_, props_);
  column->addWidget(hasPoses_);
  column->addWidget(poses_);
  column->addStretch(1);
  connectWords();
  connectOverrides();
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });
}

void OptionForm::addRow(QGridLayout& grid, const QString& name, QWidget* field) {
  const int row = grid.rowCount();
  grid.addWidget(besideLabel(name, field), row, 0, Qt::AlignTop);
  grid.addWidget(field, row, 1);
}

void OptionForm::addOverride(QGridLayout& grid, QCheckBox* box, QWidget* field) {
  const int row = grid.rowCount();
  box->setMinimumHeight(effort_->sizeHint().height());
  grid.addWidget(box, row, 0, Qt::AlignTop);
  grid.addWidget(field, row, 1, Qt::AlignTop);
}

void OptionForm::change(const std::function<void(Option&)>& edit, const QString& what, const QString& gesture) {
  Option after = option_;
  edit(after);
  if (after == option_)
    return;
  option_ = after;
  Q_EMIT edited(after, what, gesture);
}

void OptionForm::connectWords() {
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& words) {
    change([&](Option& option) { option.name = words.toStdString(); }, tr("Rename an option"), QStringLiteral("name"));
  });
  connect(kind_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Option& option) { option.kind = static_cast<OptionKind>(index); }, tr("Change the kind of an option"));
  });
  connect(how_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Option& option) { option.how = words.toStdString(); }, tr("Change how an option is done"),
           QStringLiteral("how"));
  });
  connect(removes_, &FeatureList::edited, this, [this](FeatureSet ticked) {
    change([&](Option& option) { option.removes = ticked; }, tr("Change what an option takes away"));
  });
  connect(adds_, &OrderedList::edited, this, [this](const QStringList& keys) {
    FeatureSet adds;
    for (const QString& key : keys)
      if (const auto feature = fromWord<Feature>(key.toStdString()))
        adds.insert(*feature);
    change([&](Option& option) { option.adds = adds; }, tr("Change what an option adds"));
    refresh();
  });
}

void OptionForm::connectOverrides() {
  connect(hasEffort_, &QCheckBox::toggled, this, [this](bool on) {
    change([&](Option& option) { option.effort = on ? std::optional(movement_.effort) : std::nullopt; },
           tr("Change the effort of an option"));
    refresh();
  });
  connect(hasDose_, &QCheckBox::toggled, this, [this](bool on) {
    change([&](Option& option) { option.dose = on ? std::optional(movement_.dose) : std::nullopt; },
           tr("Change the dose of an option"));
    refresh();
  });
  connect(hasTempo_, &QCheckBox::toggled, this, [this](bool on) {
    change([&](Option& option) { option.tempo = on ? std::optional(movement_.tempo) : std::nullopt; },
           tr("Change the tempo of an option"));
    refresh();
  });
  connect(hasProps_, &QCheckBox::toggled, this, [this](bool on) {
    change([&](Option& option) { option.props = on ? std::optional(movement_.props) : std::nullopt; },
           tr("Change the props of an option"));
    refresh();
  });
  connect(hasPoses_, &QCheckBox::toggled, this, [this](bool on) {
    change([&](Option& option) { option.poses = on ? std::optional(movement_.poses) : std::nullopt; },
           tr("Change the poses of an option"));
    refresh();
  });
  connect(effort_, &QSpinBox::valueChanged, this, [this](int effort) {
    change([&](Option& option) { option.effort = Effort(effort); }, tr("Change the effort of an option"),
           QStringLiteral("effort"));
  });
  connect(amount_, &QSpinBox::valueChanged, this, [this](int amount) {
    change([&](Option& option) { option.dose->amount = amount; }, tr("Change the dose of an option"),
           QStringLiteral("dose"));
  });
  connect(unit_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Option& option) { option.dose->unit = static_cast<DoseUnit>(index); },
           tr("Change the dose of an option"));
  });
  connect(tempo_, &TempoEditor::edited, this, [this](const Tempo& tempo, const QString& field) {
    change([&](Option& option) { option.tempo = tempo; }, tr("Change the tempo of an option"),
           field.isEmpty() ? QString() : QStringLiteral("tempo/") + field);
    refresh();
  });
  for (std::size_t i = 0; i < prop_.size(); ++i)
    connect(prop_[i], &QCheckBox::toggled, this, [this, prop = static_cast<Prop>(i)](bool on) {
      change(
          [&](Option& option) {
            if (on)
              option.props->insert(prop);
            else
              option.props->erase(prop);
          },
          tr("Change the props of an option"));
    });
  connect(poses_, &PoseEditor::edited, this,
          [this](const KeyPoses& poses, const QString& what, const QString& gesture) {
            change([&](Option& option) { option.poses = poses; }, what,
                   gesture.isEmpty() ? QString() : QStringLiteral("poses/") + gesture);
            refresh();
          });
  connect(poses_, &PoseEditor::left, this, &OptionForm::left);
}

void OptionForm::show(const Movement& movement, const Option& option, const Knowledge& knowledge) {
  movement_ = movement;
  option_ = option;
  FeatureSet present = movement.features | option.removes;
  for (const PositionId& id : {movement.start, movement.end})
    if (const Position* position = knowledge.transitions.find(id))
      present |= position->features;
  removes_->setOffered(present);
  poses_->setPositions(knowledge.transitions.positions());
  showText(removesNone_, present.empty() ? tr("The movement asks for nothing that could be taken away.") : QString());
  removes_->setVisible(!present.empty());
  refresh();
}

void OptionForm::focusName() {
  name_->setFocus();
  name_->selectAll();
}

void OptionForm::setReducedMotion(bool reduced) { poses_->setReducedMotion(reduced); }

void OptionForm::refresh() {
  showText(name_, QString::fromStdString(option_.name));
  how_->showNote(QString::fromStdString(option_.how));
  removes_->show(option_.removes, {});
  QStringList adds;
  option_.adds.forEach([&adds](Feature feature) { adds << keyOf(feature); });
  adds_->show(adds);
  tick(hasEffort_, option_.effort.has_value());
  tick(hasDose_, option_.dose.has_value());
  tick(hasTempo_, option_.tempo.has_value());
  tick(hasProps_, option_.props.has_value());
  tick(hasPoses_, option_.poses.has_value());
  effort_->setVisible(option_.effort.has_value());
  dose_->setVisible(option_.dose.has_value());
  tempo_->setVisible(option_.tempo.has_value());
  props_->setVisible(option_.props.has_value());
  poses_->setVisible(option_.poses.has_value());
  const QSignalBlocker quietKind(kind_), quietEffort(effort_), quietAmount(amount_), quietUnit(unit_);
  kind_->setCurrentIndex(static_cast<int>(option_.kind));
  effort_->setValue(effortOf(movement_, &option_).value());
  amount_->setValue(doseOf(movement_, &option_).amount);
  unit_->setCurrentIndex(static_cast<int>(doseOf(movement_, &option_).unit));
  tempo_->show(tempoOf(movement_, &option_));
  for (std::size_t i = 0; i < prop_.size(); ++i)
    tick(prop_[i], propsOf(movement_, &option_).contains(static_cast<Prop>(i)));
  if (option_.poses)
    poses_->show(*option_.poses, tempoOf(movement_, &option_), QString::fromStdString(option_.name));
}

} // namespace matwright
