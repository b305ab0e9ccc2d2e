#include "ui/document/ClassCommands.h"

#include "core/store/Store.h"
#include "ui/text/SwapText.h"
#include "ui/text/VocabularyText.h"

#include <QClipboard>
#include <QGuiApplication>
#include <algorithm>

namespace matwright {

ClassCommands::ClassCommands(PlanDocument& document, StepSelection& selection, QObject* parent)
    : QObject(parent), document_(document), selection_(selection) {}

std::optional<InsertSteps> ClassCommands::insertion(const MovementId& movement, Place place) const {
  const Movement* found = document_.knowledge().catalogue.find(movement);
  if (!found)
    return std::nullopt;
  const StepId next{highestStepId(document_.plan()).value + 1};
  return InsertSteps{place, {stepOf(next, *found)}};
}

void ClassCommands::insertMovement(const MovementId& movement, Place place) {
  auto edit = insertion(movement, place);
  if (!edit)
    return;
  const StepId id = document_.mintStepId();
  edit->steps.front().id = id;
  if (document_.perform(*edit, tr("Add %1").arg(movementName(document_.knowledge(), movement))))
    selection_.select(id);
}

void ClassCommands::moveSteps(const std::vector<StepId>& steps, Place place) {
  document_.perform(MoveSteps{steps, place}, tr("Move %1").arg(describe(steps)));
}

void ClassCommands::replaceStep(StepId step, const Swap& swap) {
  const Step* now = findStep(document_.plan(), step);
  if (now)
    document_.perform(ReplaceStep{step, swapped(*now, swap)},
                      tr("%1 in place of %2").arg(swapName(swap), describe({step})));
}

void ClassCommands::setDose(StepId step, const Dose& dose, bool continued) {
  document_.perform(SetDose{step, dose}, tr("Change the dose of %1").arg(describe({step})),
                    continued ? QStringLiteral("dose:%1").arg(step.value) : QString());
}

void ClassCommands::removeSelected() {
  const auto steps = selection_.steps();
  if (steps.empty())
    return;
  const auto place = placeOf(document_.plan(), steps.front());
  if (!document_.perform(RemoveSteps{steps}, tr("Remove %1").arg(describe(steps))))
    return;
  // What stood after the removed steps is selected next, else what stood before.
  const auto& left = document_.plan().sections[place->section].steps;
  if (place->index < left.size())
    selection_.select(left[place->index].id);
  else if (!left.empty())
    selection_.select(left.back().id);
}

void ClassCommands::duplicateSelected() {
  const auto ids = selection_.steps();
  if (ids.empty())
    return;
  const auto last = placeOf(document_.plan(), ids.back());
  pasteSteps(selectedSteps(), {last->section, last->index + 1}, tr("Duplicate %1").arg(describe(ids)));
}

void ClassCommands::copySelected() const {
  const auto steps = selectedSteps();
  if (steps.empty())
    return;
  auto* data = new QMimeData;
  data->setData(kStepsMime, QByteArray::fromStdString(stepsText(steps)));
  QStringList lines;
  for (const Step& step : steps) {
    const Movement* movement = document_.knowledge().catalogue.find(step.movement);
    lines << QStringLiteral("%1 \u2013 %2")
                 .arg(movementName(document_.knowledge(), step.movement),
                      doseText(step.dose, movement ? movement->sides : Sides::together, step.onlySide));
  }
  data->setText(lines.join(QLatin1Char('\n')));
  QGuiApplication::clipboard()->setMimeData(data);
}

void ClassCommands::cutSelected() {
  copySelected();
  removeSelected();
}

bool ClassCommands::canPaste() const {
  const QMimeData* data = QGuiApplication::clipboard()->mimeData();
  return data && data->hasFormat(kStepsMime);
}

void ClassCommands::paste() {
  if (!canPaste())
    return;
  const QByteArray bytes = QGuiApplication::clipboard()->mimeData()->data(kStepsMime);
  auto steps = parseSteps({bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (steps && !steps->empty())
    pasteSteps(std::move(*steps), selection_.gap(), tr("Paste"));
}

void ClassCommands::pasteSteps(std::vector<Step> steps, Place place, const QString& what) {
  std::vector<StepId> ids;
  for (Step& step : steps) {
    step.id = document_.mintStepId();
    ids.push_back(step.id);
  }
  if (document_.perform(InsertSteps{place, std::move(steps)}, what))
    selection_.set(ids, ids.back());
}

void ClassCommands::nudgeSelected(int by) {
  const auto steps = selection_.steps();
  if (steps.empty())
    return;
  const ClassPlan& plan = document_.plan();
  Place place = *placeOf(plan, by < 0 ? steps.front() : steps.back());
  if (by < 0) {
    if (place.index > 0)
      --place.index;
    else if (place.section > 0)
      place = {place.section - 1, plan.sections[place.section - 1].steps.size()};
    else
      return;
  } else {
    if (place.index + 1 < plan.sections[place.section].steps.size())
      place.index += 2;
    else if (place.section + 1 < plan.sections.size())
      place = {place.section + 1, 0};
    else
      return;
  }
  moveSteps(steps, place);
}

void ClassCommands::changeDoseOfSelected(int by) {
  EditGroup group;
  for (const Step& step : selectedSteps()) {
    const int stride = step.dose.unit == DoseUnit::seconds ? 5 : 1;
    group.edits.push_back(SetDose{step.id, Dose{step.dose.amount + by * stride, step.dose.unit}});
  }
  if (!group.edits.empty())
    document_.perform(group, tr("Change the dose of %1").arg(describe(selection_.steps())),
                      QStringLiteral("dose of selection"));
}

void ClassCommands::addSection(const QString& name) {
  document_.perform(InsertSection{selection_.gap().section + 1, name.toStdString()}, tr("Add a section"));
}

void ClassCommands::splitAtGap(const QString& name) {
  document_.perform(SplitSection{selection_.gap(), name.toStdString()}, tr("Split the section"));
}

bool ClassCommands::canReplace() const {
  return selection_.steps().size() == 1 && findStep(document_.plan(), selection_.steps().front());
}

void ClassCommands::wantReplacements() {
  if (canReplace())
    Q_EMIT replacementsWanted(selection_.steps().front());
}

QString ClassCommands::describe(const std::vector<StepId>& steps) const {
  if (steps.size() == 1)
    if (const Step* step = findStep(document_.plan(), steps.front()))
      return movementName(document_.knowledge(), step->movement);
  return tr("%n step(s)", nullptr, static_cast<int>(steps.size()));
}

std::vector<Step> ClassCommands::selectedSteps() const {
  std::vector<Step> steps;
  for (StepId id : selection_.steps())
    if (const Step* step = findStep(document_.plan(), id))
      steps.push_back(*step);
  return steps;
}

} // namespace matwright
