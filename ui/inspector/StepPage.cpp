#include "ui/inspector/StepPage.h"

#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/controls/TempoEditor.h"
#include "ui/figure/FigureView.h"
#include "ui/inspector/LoadPart.h"
#include "ui/inspector/OptionChoice.h"
#include "ui/inspector/StepCautions.h"
#include "ui/inspector/StepFactsText.h"
#include "ui/text/VocabularyText.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QToolButton>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

QLabel* rowLabel(const QString& text) {
  QLabel* label = softLabel(text);
  label->setWordWrap(false);
  return label;
}

// About the same length of work in another unit.
Dose inUnit(const Dose& dose, DoseUnit unit, const Tempo& tempo) {
  const double round = lengthOf(tempo).value();
  const bool timed = dose.unit == DoseUnit::seconds;
  double amount = dose.amount;
  if (timed && unit != DoseUnit::seconds)
    amount = dose.amount / round;
  else if (!timed && unit == DoseUnit::seconds)
    amount = dose.amount * round;
  return {std::clamp(static_cast<int>(std::lround(amount)), 1, Dose::kMost), unit};
}

} // namespace

StepPage::StepPage(PlanDocument& document, ClassCommands& commands, QWidget* parent)
    : QWidget(parent), document_(document), commands_(commands), name_(titleLabel({})), place_(softLabel({})),
      unknown_(plainLabel({})), figure_(new FigureView), move_(new QToolButton), replaceButton_(new QToolButton),
      amount_(new QSpinBox), unit_(new QComboBox), side_(new QComboBox), option_(new OptionChoice),
      tempo_(new TempoEditor), work_(plainLabel({})), wayIn_(plainLabel({})), gap_(softLabel({})),
      setUp_(plainLabel({})), action_(plainLabel({})), note_(new NoteField(tr("Note"), kLongestNote, 2)),
      cautions_(new StepCautions), load_(new LoadPart) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 10);
  column->setSpacing(6);
  column->addWidget(name_);
  column->addWidget(place_);
  column->addWidget(unknown_);
  figure_->setFixedHeight(fontMetrics().height() * 8);
  figure_->setBreathWords({text(Breath::in), text(Breath::out), text(Breath::free), text(Breath::hold)});
  offerSaving(*figure_);
  column->addWidget(figure_);
  move_->setText(tr("Show it moving"));
  move_->setCheckable(true);
  move_->setToolTip(tr("Moves the figure at the tempo of this step"));
  auto* buttons = new QWidget;
  auto* line = new FlowLayout(buttons, 6);
  line->addWidget(move_);
  replaceButton_->setText(tr("Replace\u2026"));
  replaceButton_->setAccessibleName(tr("Replace this step"));
  replaceButton_->setToolTip(tr("See what else could stand in the place of this step (Ctrl+R)"));
  line->addWidget(replaceButton_);
  column->addWidget(buttons);

  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(6);
  column->addLayout(grid);
  makeFields(*grid);
  column->addSpacing(4);
  column->addWidget(load_);
  column->addSpacing(4);
  column->addWidget(cautions_);
  column->addStretch(1);
  connectFields();
  setFocusProxy(amount_);
}

void StepPage::makeFields(QGridLayout& grid) {
  int row = 0;
  const auto place = [&](QLabel* label, QWidget* field) {
    grid.addWidget(label, row, 0, Qt::AlignTop);
    grid.addWidget(field, row++, 1);
    return label;
  };
  const auto add = [&](const QString& name, QWidget* field) { return place(besideLabel(name, field), field); };
  const auto tell = [&](const QString& name, QLabel* words) { return place(rowLabel(name), words); };
  auto* dose = new QWidget;
  auto* line = new QHBoxLayout(dose);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(4);
  amount_->setRange(1, Dose::kMost);
  unit_->addItems({tr("repetitions"), tr("breaths"), tr("seconds")});
  unit_->setAccessibleName(tr("Unit of the dose"));
  line->addWidget(amount_);
  line->addWidget(unit_, 1);
  amount_->setAccessibleName(tr("Dose"));
  add(tr("Dose"), dose)->setBuddy(amount_);
  side_->addItems({tr("both, one after the other"), tr("left only"), tr("right only")});
  side_->setAccessibleName(tr("Side"));
  sideLabel_ = add(tr("Side"), side_);
  optionLabel_ = add(tr("Option"), option_);
  add(tr("Tempo"), tempo_);
  tell(tr("Work"), work_);
  tell(tr("Way in"), wayIn_);
  grid.addWidget(gap_, row++, 1);
  setUpLabel_ = tell(tr("Set-up"), setUp_);
  actionLabel_ = tell(tr("Cue"), action_);
  add(tr("Note"), note_);
  for (QLabel* label : {work_, wayIn_, setUp_, action_})
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  for (QWidget* field : {static_cast<QWidget*>(amount_), static_cast<QWidget*>(unit_), static_cast<QWidget*>(side_)})
    keepWheelForFocus(field);
}

void StepPage::connectFields() {
  connect(move_, &QToolButton::toggled, this, [this](bool moving) {
    if (moving)
      figure_->start();
    else
      figure_->stop();
  });
  connect(replaceButton_, &QToolButton::clicked, &commands_, &ClassCommands::wantReplacements);
  connect(amount_, &QSpinBox::valueChanged, this, [this](int amount) {
    if (const Step* now = step())
      commands_.setDose(id_, {amount, now->dose.unit}, true);
  });
  connect(unit_, &QComboBox::currentIndexChanged, this,
          [this](int index) { changeUnit(static_cast<DoseUnit>(index)); });
  connect(side_, &QComboBox::currentIndexChanged, this, [this](int index) {
    const std::optional<Side> side = index == 0 ? std::nullopt : std::optional{index == 1 ? Side::left : Side::right};
    document_.perform(SetOnlySide{id_, side}, tr("Change the side of %1").arg(commands_.describe({id_})));
  });
  connect(option_, &OptionChoice::chosen, this, &StepPage::chooseOption);
  connect(load_, &LoadPart::chosen, this, &StepPage::chooseOption);
  connect(load_, &LoadPart::aboutWanted, this, &StepPage::aboutLoadWanted);
  connect(tempo_, &TempoEditor::edited, this, [this](const Tempo& tempo, const QString& field) {
    document_.perform(SetTempo{id_, tempo}, tr("Change the tempo of %1").arg(commands_.describe({id_})),
                      field.isEmpty() ? QString() : key(QStringLiteral("tempo/") + field));
  });
  connect(tempo_, &TempoEditor::left, this, &StepPage::seal);
  connect(note_, &NoteField::edited, this, [this](const QString& note) {
    document_.perform(SetStepNote{id_, note.toStdString()}, tr("Change the note of %1").arg(commands_.describe({id_})),
                      key(QStringLiteral("note")));
  });
  whenFocusLeaves(amount_, this, [this] { seal(); });
  whenFocusLeaves(note_, this, [this] { seal(); });
}

void StepPage::seal() {
  document_.sealGesture();
  if (step())
    show(id_); // what was refused while it was typed is shown as it stands
}

QString StepPage::key(const QString& field) const { return QStringLiteral("step%1/%2").arg(id_.value).arg(field); }

void StepPage::setReducedMotion(bool reduced) {
  figure_->setReducedMotion(reduced);
  move_->setEnabled(!reduced);
  if (reduced)
    move_->setChecked(false);
}

void StepPage::changeUnit(DoseUnit unit) {
  if (const Step* now = step())
    commands_.setDose(id_, inUnit(now->dose, unit, now->tempo));
}

void StepPage::chooseOption(const OptionId& option) {
  const Step* now = step();
  const Movement* movement = now ? document_.knowledge().catalogue.find(now->movement) : nullptr;
  if (!movement)
    return;
  const Option* found = findOption(*movement, option);
  document_.perform(SetOption{id_, option, doseOf(*movement, found), tempoOf(*movement, found)},
                    tr("Change the option of %1").arg(commands_.describe({id_})));
}

void StepPage::show(StepId id) {
  if (id != id_)
    move_->setChecked(false);
  id_ = id;
  const Step* now = step();
  if (!now)
    return;
  const Movement* movement = document_.knowledge().catalogue.find(now->movement);
  showMovement(*now, movement);
  showFields(*now, movement);
  showFacts(*now);
  cautions_->show(document_, id);
}

void StepPage::showMovement(const Step& now, const Movement* movement) {
  name_->setText(movementName(document_.knowledge(), now.movement));
  showText(unknown_, movement
                         ? QString()
                         : tr("This movement is not in the catalogue. It keeps its place, its dose and its tempo, but "
                              "it cannot be drawn, and nothing can be screened."));
  for (QWidget* part :
       {static_cast<QWidget*>(figure_), static_cast<QWidget*>(move_), static_cast<QWidget*>(option_),
        static_cast<QWidget*>(optionLabel_), static_cast<QWidget*>(setUpLabel_), static_cast<QWidget*>(setUp_),
        static_cast<QWidget*>(actionLabel_), static_cast<QWidget*>(action_), static_cast<QWidget*>(load_)})
    part->setVisible(movement != nullptr);
  const bool sided = movement && movement->sides == Sides::each;
  side_->setVisible(sided);
  sideLabel_->setVisible(sided);
  if (!movement)
    return;
  const Option* option = findOption(*movement, now.option);
  QString words = name_->text();
  if (option)
    words += QStringLiteral(", %1").arg(QString::fromStdString(option->name));
  figure_->setRegions({movement->regions.front()});
  figure_->showMovement(posesOf(*movement, option), now.tempo, words);
  option_->show(*movement, now.option);
  load_->show(document_.snapshot(), *movement, now);
  setUp_->setText(QString::fromStdString(movement->setUp));
  action_->setText(QString::fromStdString(movement->action));
}

void StepPage::showFields(const Step& now, const Movement* movement) {
  const QSignalBlocker quietAmount(amount_), quietUnit(unit_), quietSide(side_);
  if (amount_->value() != now.dose.amount)
    amount_->setValue(now.dose.amount);
  unit_->setCurrentIndex(static_cast<int>(now.dose.unit));
  if (movement && movement->sides == Sides::each)
    unit_->setToolTip(tr("each side"));
  else
    unit_->setToolTip({});
  side_->setCurrentIndex(!now.onlySide ? 0 : *now.onlySide == Side::left ? 1 : 2);
  tempo_->show(now.tempo);
  note_->showNote(QString::fromStdString(now.note));
}

void StepPage::showFacts(const Step& now) {
  const StepFactsText facts = factsOf(document_.snapshot(), document_.knowledge(), now.id);
  place_->setText(facts.place);
  work_->setText(facts.work);
  wayIn_->setText(facts.cues.isEmpty() ? facts.wayIn : QStringLiteral("%1\n%2").arg(facts.wayIn, facts.cues));
  showText(gap_, facts.gap);
}

} // namespace matwright
