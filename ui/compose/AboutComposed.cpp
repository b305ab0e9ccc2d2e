#include "ui/compose/AboutComposed.h"

#include "ui/controls/CautionCard.h"
#include "ui/controls/Labels.h"
#include "ui/text/CautionText.h"
#include "ui/text/ComposeText.h"
#include "ui/text/ReasonText.h"
#include "ui/text/VocabularyText.h"

#include <QScrollBar>
#include <QVBoxLayout>

namespace matwright {
namespace {

QVBoxLayout* columnOf(QWidget* part) {
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  return column;
}

} // namespace

AboutComposed::AboutComposed(Composition& composition, QWidget* parent)
    : QScrollArea(parent), composition_(composition), stepPart_(new QWidget), stepColumn_(columnOf(stepPart_)),
      classPart_(new QWidget), classColumn_(columnOf(classPart_)) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("About the composed class"));
  setMinimumWidth(220);
  auto* page = new QWidget;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(12, 8, 12, 8);
  column->setSpacing(10);
  column->addWidget(stepPart_);
  column->addWidget(classPart_);
  column->addStretch(1);
  setWidget(page);
  connect(&composition_.document(), &PlanDocument::changed, this, &AboutComposed::refresh);
  connect(&composition_, &Composition::finished, this, &AboutComposed::fillClass);
  connect(&composition_, &Composition::keptChanged, this, &AboutComposed::fillStep);
  connect(&composition_, &Composition::explained, this, &AboutComposed::takeReasons);
  refresh();
}

void AboutComposed::showStep(std::optional<StepId> step) {
  if (step == step_)
    return;
  step_ = step;
  verticalScrollBar()->setValue(0);
  fillStep();
  fillClass();
}

void AboutComposed::refresh() {
  if (step_ && !findStep(composition_.document().plan(), *step_))
    step_.reset();
  fillStep();
  fillClass();
}

void AboutComposed::fillStep() {
  delete stepRows_;
  stepRows_ = nullptr;
  why_ = nullptr;
  stepPart_->setVisible(step_.has_value());
  composition_.explain(step_);
  if (!step_)
    return;
  stepRows_ = new QWidget;
  auto* rows = columnOf(stepRows_);
  const Snapshot& snapshot = composition_.document().snapshot();
  const Knowledge& knowledge = *snapshot.knowledge;
  const Step& step = *findStep(*snapshot.plan, *step_);
  rows->addWidget(titleLabel(movementName(knowledge, step.movement)));
  QStringList facts;
  const Movement* movement = knowledge.catalogue.find(step.movement);
  if (!step.option.empty())
    facts << optionName(knowledge, step.movement, step.option);
  facts << doseText(step.dose, movement ? movement->sides : Sides::together, step.onlySide);
  rows->addWidget(softLabel(facts.join(QStringLiteral(" \u00b7 "))));
  rows->addWidget(headingLabel(tr("Why it is here")));
  why_ = plainLabel(composition_.shown() ? tr("\u2026") : tr("It is in your class."));
  rows->addWidget(why_);
  bool any = false;
  for (const Caution& caution : snapshot.evaluation->cautions) {
    if (caution.step != step_)
      continue;
    if (!any)
      rows->addWidget(headingLabel(tr("Cautions")));
    any = true;
    rows->addWidget(new CautionCard(
        linesOf(caution, knowledge, *snapshot.plan, *snapshot.evaluation, composition_.document().roster())));
  }
  if (!any)
    rows->addWidget(softLabel(noCautionText(!snapshot.plan->people.empty())));
  rows->addWidget(hairline());
  stepColumn_->addWidget(stepRows_);
}

void AboutComposed::takeReasons(const Explained& explained) {
  if (!why_ || explained.step != step_ || !composition_.shown())
    return;
  const Composed& shown = *composition_.shown();
  const ComposeNames names{*shown.knowledge, composition_.document().roster(), shown.wishes};
  QStringList lines;
  for (const ComposeReason& fact : explained.facts)
    lines << QStringLiteral("\u2022 ") + withCapital(text(fact, names));
  lines << withCapital(explained.reasons.kept ? text(explained.reasons, names)
                                              : comparedText(explained.reasons, names));
  why_->setText(lines.join(QLatin1Char('\n')));
}

void AboutComposed::fillClass() {
  delete classRows_;
  classRows_ = new QWidget;
  auto* rows = columnOf(classRows_);
  if (composition_.shown()) {
    const ComposeResult& result = composition_.shown()->result;
    if (!step_)
      rows->addWidget(softLabel(tr("Choose a step to read why it is here.")));
    if (!result.shortfalls.empty()) {
      rows->addWidget(headingLabel(tr("Less of the focus than wished")));
      for (const Shortfall& shortfall : result.shortfalls)
        rows->addWidget(plainLabel(text(shortfall)));
    }
    if (const QString cost = text(result.cost); !cost.isEmpty()) {
      rows->addWidget(headingLabel(tr("What the class costs")));
      rows->addWidget(softLabel(cost));
    }
  }
  rows->addWidget(softLabel(tr("Composing goes by what is on file and by what the rules know. What it does not know it "
                               "cannot heed.")));
  rows->addWidget(softLabel(standingNotice()));
  classColumn_->addWidget(classRows_);
}

} // namespace matwright
