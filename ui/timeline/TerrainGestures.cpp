#include "ui/timeline/TerrainGestures.h"

#include "ui/text/VocabularyText.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr int kSecondsStride = 5; // of doses in seconds

struct TerrainGestureText {
  Q_DECLARE_TR_FUNCTIONS(TerrainGestureText)
};

// The dose whose end is nearest to a moment.
Dose doseEndingAt(const TimedStep& timed, const Step& step, Seconds end) {
  const Sides sides = timed.movement ? timed.movement->sides : Sides::together;
  const Work one = workOf({1, step.dose.unit}, step.tempo, sides, step.onlySide);
  if (one.whole.value() <= 0)
    return step.dose;
  const double wanted = (end - timed.workBegin - timed.turning) / one.whole;
  const int stride = step.dose.unit == DoseUnit::seconds ? kSecondsStride : 1;
  const double amount = std::clamp(std::round(wanted / stride) * stride, 1.0, static_cast<double>(Dose::kMost));
  return {std::max(stride, static_cast<int>(amount)), step.dose.unit};
}

} // namespace

bool TerrainGesture::showPreview(const Edit& edit, std::vector<StepId> steps, const QString& about) {
  auto would = stage_.document.preview(edit);
  if (!would) {
    stage_.showGhost(std::nullopt);
    return false;
  }
  Ghost ghost;
  const EditEffect effect = effectBetween(stage_.document.seen(), *would->seen);
  ghost.level = effect.strongest;
  ghost.chip = *would->plan == stage_.document.plan() ? TerrainGestureText::tr("no change") : effectText(effect);
  if (!about.isEmpty())
    ghost.chip = QStringLiteral("%1 \u00b7 %2").arg(about, ghost.chip);
  ghost.steps = std::move(steps);
  ghost.snapshot = std::move(*would);
  stage_.showGhost(std::move(ghost));
  return true;
}

InsertGesture::InsertGesture(TerrainStage& stage, MovementId movement)
    : TerrainGesture(stage), movement_(std::move(movement)) {}

void InsertGesture::moveTo(QPointF at, Qt::KeyboardModifiers) {
  const Place place = stage_.settled().dropPlace(at.x());
  if (place_ == place)
    return;
  place_ = place;
  const auto edit = stage_.commands.insertion(movement_, place);
  possible_ = edit && showPreview(*edit, {edit->steps.front().id});
}

void InsertGesture::finish() {
  stage_.showGhost(std::nullopt);
  if (place_ && possible_)
    stage_.commands.insertMovement(movement_, *place_);
}

void InsertGesture::cancel() { stage_.showGhost(std::nullopt); }

MoveGesture::MoveGesture(TerrainStage& stage, std::vector<StepId> steps)
    : TerrainGesture(stage), steps_(std::move(steps)) {}

std::vector<Step> MoveGesture::copiesFrom(StepId firstId) const {
  std::vector<Step> copies;
  forEachStep(stage_.document.plan(), [&](const Step& step) {
    if (std::find(steps_.begin(), steps_.end(), step.id) == steps_.end())
      return;
    copies.push_back(step);
    copies.back().id = StepId{firstId.value + static_cast<std::int64_t>(copies.size()) - 1};
  });
  return copies;
}

void MoveGesture::moveTo(QPointF at, Qt::KeyboardModifiers modifiers) {
  const Place place = stage_.settled().dropPlace(at.x());
  const bool copies = modifiers.testFlag(Qt::ControlModifier);
  if (place_ == place && copies_ == copies)
    return;
  place_ = place;
  copies_ = copies;
  if (copies) {
    auto made = copiesFrom(StepId{highestStepId(stage_.document.plan()).value + 1});
    std::vector<StepId> ids;
    for (const Step& step : made)
      ids.push_back(step.id);
    possible_ = showPreview(InsertSteps{place, std::move(made)}, std::move(ids), TerrainGestureText::tr("copy"));
  } else {
    possible_ = showPreview(MoveSteps{steps_, place}, steps_);
  }
}

void MoveGesture::finish() {
  stage_.showGhost(std::nullopt);
  if (!place_ || !possible_)
    return;
  if (!copies_) {
    stage_.commands.moveSteps(steps_, *place_);
    return;
  }
  auto made = copiesFrom({});
  std::vector<StepId> ids;
  for (Step& step : made) {
    step.id = stage_.document.mintStepId();
    ids.push_back(step.id);
  }
  if (!ids.empty() && stage_.document.perform(InsertSteps{*place_, std::move(made)},
                                              TerrainGestureText::tr("Copy %1").arg(stage_.commands.describe(steps_))))
    stage_.selection.set(ids, ids.back());
}

void MoveGesture::cancel() { stage_.showGhost(std::nullopt); }

StretchGesture::StretchGesture(TerrainStage& stage, std::size_t step, QPointF pressed) : TerrainGesture(stage) {
  const Block& block = stage.settled().blocks()[step];
  step_ = block.id;
  grip_ = pressed.x() - block.rect.right();
}

void StretchGesture::moveTo(QPointF at, Qt::KeyboardModifiers) {
  const Step* step = findStep(stage_.document.plan(), step_);
  const TimedStep* timed = stage_.document.evaluation().timed(step_);
  const Block* block = stage_.settled().block(step_);
  if (!step || !timed || !block)
    return;
  const qreal along = at.x() - grip_ - block->rect.left();
  const Seconds end = timed->workBegin + Seconds(along / stage_.settled().scale().pixelsPerSecond());
  const Dose dose = doseEndingAt(*timed, *step, end);
  if (dose_ == dose)
    return;
  dose_ = dose;
  showPreview(SetDose{step_, dose}, {step_},
              doseText(dose, timed->movement ? timed->movement->sides : Sides::together, step->onlySide));
}

void StretchGesture::finish() {
  stage_.showGhost(std::nullopt);
  if (dose_)
    stage_.commands.setDose(step_, *dose_);
}

void StretchGesture::cancel() { stage_.showGhost(std::nullopt); }

RubberBandGesture::RubberBandGesture(TerrainStage& stage, QPointF pressed)
    : TerrainGesture(stage), pressed_(pressed), before_(stage.selection.steps()),
      currentBefore_(stage.selection.current()) {}

void RubberBandGesture::moveTo(QPointF at, Qt::KeyboardModifiers modifiers) {
  const QRectF frame = QRectF(pressed_, at).normalized();
  stage_.showRubberBand(frame);
  std::vector<StepId> steps;
  if (modifiers & (Qt::ControlModifier | Qt::ShiftModifier))
    steps = before_;
  for (const std::size_t index : stage_.settled().blocksIn(frame)) {
    const StepId id = stage_.settled().blocks()[index].id;
    if (std::find(steps.begin(), steps.end(), id) == steps.end())
      steps.push_back(id);
  }
  stage_.selection.set(steps, steps.empty() ? std::nullopt : std::optional{steps.back()});
}

void RubberBandGesture::finish() { stage_.showRubberBand({}); }

void RubberBandGesture::cancel() {
  stage_.showRubberBand({});
  stage_.selection.set(before_, currentBefore_);
}

} // namespace matwright
