#include "ui/movements/MovementReading.h"

#include "ui/controls/FactGrid.h"
#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/figure/FigureView.h"
#include "ui/text/MovementText.h"
#include "ui/text/VocabularyText.h"

#include <QPushButton>

namespace matwright {
MovementReading::MovementReading(QWidget* parent)
    : QWidget(parent), title_(titleLabel({})), about_(plainLabel({})), copy_(new QPushButton(tr("Copy to my own"))),
      figure_(new FigureView), column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(24, 16, 24, 20);
  column_->setSpacing(10);
  column_->addWidget(title_);
  column_->addWidget(softLabel(
      tr("This movement comes with the program and stays as it is. A copy of your own can be changed freely.")));
  copy_->setProperty("primary", true);
  connect(copy_, &QPushButton::clicked, this, &MovementReading::copyWanted);
  column_->addWidget(copy_, 0, Qt::AlignLeft);
  figure_->setFixedHeight(260);
  figure_->setMaximumWidth(640);
  std::array<QString, kWordCount<Breath>> words;
  for (std::size_t i = 0; i < words.size(); ++i)
    words[i] = text(static_cast<Breath>(i));
  figure_->setBreathWords(words);
  figure_->start();
  offerSaving(*figure_);
  column_->addWidget(figure_);
  column_->addWidget(about_);
  column_->addStretch(1);
}

void MovementReading::setCopyAllowed(bool allowed) { copy_->setEnabled(allowed); }

void MovementReading::setReducedMotion(bool reduced) { figure_->setReducedMotion(reduced); }

void MovementReading::show(const Movement& movement, const Knowledge& knowledge) {
  if (facts_ && movement == shown_)
    return;
  shown_ = movement;
  const QString name = QString::fromStdString(movement.name);
  title_->setText(name);
  about_->setText(QString::fromStdString(movement.about));
  figure_->showMovement(movement.poses, movement.tempo, name);
  EnumSet<Region> regions;
  if (!movement.regions.empty())
    regions.insert(movement.regions.front());
  figure_->setRegions(regions);
  if (facts_) {
    facts_->hide();
    facts_->deleteLater();
  }
  facts_ = new QWidget;
  column_->insertWidget(column_->count() - 1, facts_);
  fill(movement, knowledge);
}

void MovementReading::fill(const Movement& movement, const Knowledge& knowledge) {
  auto* column = new QVBoxLayout(facts_);
  column->setContentsMargins(0, 0, 0, 0);
  auto* facts = new FactGrid(14);
  column->addLayout(facts);
  const QString start = positionName(knowledge, movement.start), end = positionName(knowledge, movement.end);
  facts->add(tr("Position"), start == end ? start : tr("%1, ends %2").arg(start, end));
  facts->add(tr("Kind"), withCapital(text(movement.repertoire)));
  facts->add(tr("Dose"), doseText(movement.dose, movement.sides, {}));
  facts->add(tr("Tempo"), tempoText(movement.tempo));
  facts->add(tr("Effort"),
             tr("%1 of %2: %3").arg(movement.effort.value()).arg(Effort::kHighest).arg(text(movement.effort)));
  facts->add(tr("Regions"), listText(movement.regions));
  facts->add(tr("Spine"), listText(movement.spine));
  facts->add(tr("Props"), listText(movement.props));
  facts->add(tr("Asks of the body"),
             movement.features.empty() ? tr("nothing beyond its position") : featureList(movement.features));
  facts->add(tr("Teach before"), listText(knowledge, movement.prerequisites));
  facts->add(tr("Counters"), listText(knowledge, movement.counters));
  facts->add(tr("Set-up"), QString::fromStdString(movement.setUp));
  facts->add(tr("Cue"), QString::fromStdString(movement.action));
  if (movement.options.empty())
    return;
  column->addSpacing(4);
  column->addWidget(headingLabel(tr("Options")));
  for (const Option& option : movement.options)
    column->addWidget(plainLabel(optionText(option)));
}

} // namespace matwright
