#include "ui/movements/FactsPage.h"

#include "core/base/Text.h"
#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/OrderedList.h"
#include "ui/figure/FigureView.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QSpinBox>

namespace matwright {
namespace {

template <class Enum> QComboBox* choiceOf() {
  auto* box = new QComboBox;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    box->addItem(withCapital(text(static_cast<Enum>(i))));
  box->setMaximumWidth(380);
  keepWheelForFocus(box);
  return box;
}

template <class Enum> QString keyOf(Enum value) {
  return QString::fromLatin1(word(value).data(), static_cast<qsizetype>(word(value).size()));
}

template <class Enum> std::vector<NamedKey> stockOf() {
  std::vector<NamedKey> stock;
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i)
    stock.push_back({keyOf(static_cast<Enum>(i)), text(static_cast<Enum>(i))});
  return stock;
}

template <class Enum> QStringList keysOf(const std::vector<Enum>& values) {
  QStringList keys;
  for (const Enum value : values)
    keys << keyOf(value);
  return keys;
}

template <class Enum> std::vector<Enum> valuesOf(const QStringList& keys) {
  std::vector<Enum> values;
  for (const QString& key : keys)
    if (const auto value = fromWord<Enum>(key.toStdString()))
      values.push_back(*value);
  return values;
}

QStringList keysOf(const std::vector<MovementId>& ids) {
  QStringList keys;
  for (const MovementId& id : ids)
    keys << QString::fromStdString(id.value);
  return keys;
}

std::vector<MovementId> idsOf(const QStringList& keys) {
  std::vector<MovementId> ids;
  for (const QString& key : keys)
    ids.push_back({key.toStdString()});
  return ids;
}

void choose(QComboBox* box, int index) {
  const QSignalBlocker quiet(box);
  box->setCurrentIndex(index);
}

void put(QSpinBox* box, int value) {
  const QSignalBlocker quiet(box);
  if (box->value() != value)
    box->setValue(value);
}

} // namespace

FactsPage::FactsPage(QWidget* parent)
    : MovementPage(parent), name_(lineField(tr("Name"), kLongestName)), repertoire_(choiceOf<Repertoire>()),
      about_(new NoteField(tr("About"), kLongestNote, 3)), start_(makePosition(tr("Starts in"))),
      end_(makePosition(tr("Ends in"))), sides_(choiceOf<Sides>()), amount_(new QSpinBox), unit_(choiceOf<DoseUnit>()),
      doseWords_(softLabel({})), effort_(new QSpinBox), effortWords_(softLabel({})),
      regions_(new OrderedList(tr("Regions"), tr("Add a region"))),
      spine_(new OrderedList(tr("Spine"), tr("Add what the spine does"))),
      prerequisites_(new OrderedList(tr("Teach before"), tr("Find a movement to teach before"))),
      counters_(new OrderedList(tr("Counter-movements"), tr("Find a movement that undoes it"))) {
  auto* grid = fieldGrid(this);
  grid->setContentsMargins(16, 12, 16, 16);
  name_->setMaximumWidth(460);
  about_->setMaximumWidth(620);
  regions_->setStock(stockOf<Region>());
  regions_->setFirstIsMain(true);
  spine_->setStock(stockOf<SpineAction>());
  spine_->setFirstIsMain(true);
  addField(*grid, MovementField::name, tr("Name"), name_);
  addField(*grid, MovementField::repertoire, tr("Kind"), repertoire_);
  addField(*grid, MovementField::about, tr("About"), about_, softLabel(tr("What it is for, in one or two sentences.")));
  addField(*grid, MovementField::start, tr("Starts in"), start_.whole);
  addField(*grid, MovementField::end, tr("Ends in"), end_.whole,
           softLabel(tr("In a position that has sides: written for the left limb at work.")));
  addField(*grid, MovementField::sides, tr("Sides"), sides_);
  addField(*grid, MovementField::dose, tr("Usual dose"), makeDose());
  addField(*grid, MovementField::effort, tr("Effort"), makeEffort(),
           softLabel(tr("For a practised beginner at the usual dose.")));
  addField(*grid, MovementField::regions, tr("Regions"), regions_);
  addField(*grid, MovementField::spine, tr("Spine"), spine_);
  addField(*grid, MovementField::props, tr("Props"), makeProps(), softLabel(tr("What it cannot be done without.")));
  addField(*grid, MovementField::prerequisites, tr("Teach before"), prerequisites_);
  addField(*grid, MovementField::counters, tr("Counters"), counters_,
           softLabel(tr("What undoes it when done after it, the best first.")));
  grid->setRowStretch(grid->rowCount(), 1);
  connectFields();
  whenFocusLeaves(this, this, [this] { Q_EMIT left(); });
}

FactsPage::PositionField FactsPage::makePosition(const QString& name) {
  PositionField made{new QWidget, new QComboBox, new FigureView};
  auto* line = new QHBoxLayout(made.whole);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(12);
  made.choice->setAccessibleName(name);
  made.choice->setMaximumWidth(380);
  made.choice->setMinimumWidth(240);
  keepWheelForFocus(made.choice);
  made.figure->setFixedSize(110, 64);
  line->addWidget(made.choice, 1, Qt::AlignTop);
  line->addWidget(made.figure);
  line->addStretch(1);
  made.whole->setFocusProxy(made.choice);
  return made;
}

QWidget* FactsPage::makeDose() {
  auto* whole = new QWidget;
  auto* line = new QHBoxLayout(whole);
  line->setContentsMargins(0, 0, 0, 0);
  amount_->setRange(1, Dose::kMost);
  amount_->setAccessibleName(tr("Amount"));
  keepWheelForFocus(amount_);
  unit_->setAccessibleName(tr("Unit"));
  doseWords_->setWordWrap(false);
  line->addWidget(amount_);
  line->addWidget(unit_);
  line->addWidget(doseWords_, 1);
  whole->setFocusProxy(amount_);
  return whole;
}

QWidget* FactsPage::makeEffort() {
  auto* whole = new QWidget;
  auto* line = new QHBoxLayout(whole);
  line->setContentsMargins(0, 0, 0, 0);
  effort_->setRange(0, Effort::kHighest);
  effort_->setAccessibleName(tr("Effort"));
  keepWheelForFocus(effort_);
  effortWords_->setWordWrap(false);
  line->addWidget(effort_);
  line->addWidget(effortWords_, 1);
  whole->setFocusProxy(effort_);
  return whole;
}

QWidget* FactsPage::makeProps() {
  auto* whole = new QWidget;
  auto* line = new FlowLayout(whole, 14);
  for (std::size_t i = 0; i < kWordCount<Prop>; ++i) {
    const auto prop = static_cast<Prop>(i);
    auto* box = new QCheckBox(withCapital(text(prop)));
    connect(box, &QCheckBox::toggled, this, [this, prop](bool on) {
      change(
          [&](Movement& movement) {
            if (on)
              movement.props.insert(prop);
            else
              movement.props.erase(prop);
          },
          tr("Change the props"));
    });
    line->addWidget(box);
    props_.push_back(box);
  }
  whole->setFocusProxy(props_.front());
  return whole;
}

void FactsPage::connectFields() {
  connect(name_, &QLineEdit::textEdited, this, [this](const QString& words) {
    change([&](Movement& movement) { movement.name = words.toStdString(); }, tr("Rename a movement"),
           QStringLiteral("name"));
  });
  connect(about_, &NoteField::edited, this, [this](const QString& words) {
    change([&](Movement& movement) { movement.about = words.toStdString(); }, tr("Change what it is for"),
           QStringLiteral("about"));
  });
  connect(repertoire_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Movement& movement) { movement.repertoire = static_cast<Repertoire>(index); }, tr("Change the kind"));
  });
  connect(sides_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Movement& movement) { movement.sides = static_cast<Sides>(index); }, tr("Change the sides"));
  });
  connect(start_.choice, &QComboBox::currentIndexChanged, this, [this] {
    change([&](Movement& movement) { moveTo(movement.start, movement.poses.start, start_); },
           tr("Change where it starts"));
    showPosition(start_, movement().start);
  });
  connect(end_.choice, &QComboBox::currentIndexChanged, this, [this] {
    change([&](Movement& movement) { moveTo(movement.end, movement.poses.end, end_); }, tr("Change where it ends"));
    showPosition(end_, movement().end);
  });
  connect(amount_, &QSpinBox::valueChanged, this, [this](int amount) {
    change([&](Movement& movement) { movement.dose.amount = amount; }, tr("Change the dose"), QStringLiteral("dose"));
  });
  connect(unit_, &QComboBox::currentIndexChanged, this, [this](int index) {
    change([&](Movement& movement) { movement.dose.unit = static_cast<DoseUnit>(index); }, tr("Change the dose"));
  });
  connect(effort_, &QSpinBox::valueChanged, this, [this](int effort) {
    change([&](Movement& movement) { movement.effort = Effort(effort); }, tr("Change the effort"),
           QStringLiteral("effort"));
  });
  connect(regions_, &OrderedList::edited, this, [this](const QStringList& keys) {
    change([&](Movement& movement) { movement.regions = valuesOf<Region>(keys); }, tr("Change the regions"));
  });
  connect(spine_, &OrderedList::edited, this, [this](const QStringList& keys) {
    change([&](Movement& movement) { movement.spine = valuesOf<SpineAction>(keys); }, tr("Change what the spine does"));
  });
  connect(prerequisites_, &OrderedList::edited, this, [this](const QStringList& keys) {
    change([&](Movement& movement) { movement.prerequisites = idsOf(keys); }, tr("Change what is taught before"));
  });
  connect(counters_, &OrderedList::edited, this, [this](const QStringList& keys) {
    change([&](Movement& movement) { movement.counters = idsOf(keys); }, tr("Change the counter-movements"));
  });
}

void FactsPage::moveTo(PositionId& place, Pose& pose, const PositionField& field) const {
  const Position* before = knowledge().transitions.find(place);
  place = {field.choice->currentData().toString().toStdString()};
  const Position* after = knowledge().transitions.find(place);
  if (before && after && pose == before->pose)
    pose = after->pose;
}

void FactsPage::focusName() {
  name_->setFocus();
  name_->selectAll();
}

void FactsPage::showPosition(const PositionField& field, const PositionId& id) {
  const QSignalBlocker quiet(field.choice);
  const auto& positions = knowledge().transitions.positions();
  if (field.choice->count() < static_cast<int>(positions.size())) {
    field.choice->clear();
    for (const Position& position : positions)
      field.choice->addItem(QString::fromStdString(position.name), QString::fromStdString(position.id.value));
  }
  field.choice->setCurrentIndex(field.choice->findData(QString::fromStdString(id.value)));
  const Position* position = knowledge().transitions.find(id);
  if (position)
    field.figure->showPose(position->pose, QString::fromStdString(position->name));
  else
    field.figure->showNothing();
}

void FactsPage::refresh() {
  const Movement& now = movement();
  showText(name_, QString::fromStdString(now.name));
  about_->showNote(QString::fromStdString(now.about));
  choose(repertoire_, static_cast<int>(now.repertoire));
  choose(sides_, static_cast<int>(now.sides));
  choose(unit_, static_cast<int>(now.dose.unit));
  put(amount_, now.dose.amount);
  put(effort_, now.effort.value());
  doseWords_->setText(
      tr("%1, %2 of work")
          .arg(doseText(now.dose, now.sides, {}), clock(workOf(now.dose, now.tempo, now.sides, {}).whole)));
  effortWords_->setText(tr("of %1: %2").arg(Effort::kHighest).arg(text(now.effort)));
  showPosition(start_, now.start);
  showPosition(end_, now.end);
  for (std::size_t i = 0; i < props_.size(); ++i) {
    const QSignalBlocker quiet(props_[i]);
    props_[i]->setChecked(now.props.contains(static_cast<Prop>(i)));
  }
  std::vector<NamedKey> others;
  for (const Movement& other : knowledge().catalogue.movements())
    if (other.id != now.id)
      others.push_back({QString::fromStdString(other.id.value), QString::fromStdString(other.name)});
  prerequisites_->setStock(others);
  counters_->setStock(others);
  regions_->show(keysOf(now.regions));
  spine_->show(keysOf(now.spine));
  prerequisites_->show(keysOf(now.prerequisites));
  counters_->show(keysOf(now.counters));
}

} // namespace matwright
