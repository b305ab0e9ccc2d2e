// Dragging in the outline: steps to another place, movements in from the catalogue.
#include "ui/controls/RowText.h"
#include "ui/outline/OutlineModel.h"
#include "ui/outline/OutlineView.h"

#include <QDrag>
#include <QDropEvent>

namespace matwright {
namespace {

bool isWanted(const QMimeData& data) { return data.hasFormat(kMovementMime) || data.hasFormat(kStepIdsMime); }

std::vector<StepId> stepsIn(const QMimeData& data) {
  std::vector<StepId> steps;
  for (const QByteArray& number : data.data(kStepIdsMime).split(' '))
    if (bool fine = false; const qlonglong value = number.toLongLong(&fine))
      if (fine)
        steps.push_back(StepId{value});
  return steps;
}

} // namespace

Place OutlineView::placeAt(const QPoint& point) const {
  const ClassPlan& plan = document_.plan();
  const QModelIndex index = indexAt(QPoint(viewport()->width() / 4, point.y()));
  const auto section = model_->sectionAt(index);
  if (!section)
    return {plan.sections.size() - 1, plan.sections.back().steps.size()};
  const QRect row = visualRect(index.siblingAtColumn(0));
  const bool above = point.y() < row.center().y();
  if (model_->stepAt(index))
    return {*section, static_cast<std::size_t>(index.row()) + (above ? 0 : 1)};
  // The upper half of a heading still belongs to the section before.
  if (above && *section > 0)
    return {*section - 1, plan.sections[*section - 1].steps.size()};
  return {*section, 0};
}

QMimeData* OutlineView::selectedMimeData() const {
  QByteArray numbers;
  for (const StepId step : selection_.steps())
    numbers += (numbers.isEmpty() ? "" : " ") + QByteArray::number(static_cast<qlonglong>(step.value));
  if (numbers.isEmpty())
    return nullptr;
  auto* carried = new QMimeData;
  carried->setData(kStepIdsMime, numbers);
  return carried;
}

void OutlineView::startDrag(Qt::DropActions) {
  QMimeData* carried = selectedMimeData();
  if (!carried)
    return;
  auto* drag = new QDrag(this);
  drag->setMimeData(carried);
  drag->setPixmap(dragPixmap(commands_.describe(selection_.steps()), {}, *this));
  drag->exec(Qt::MoveAction);
}

void OutlineView::dragEnterEvent(QDragEnterEvent* event) {
  if (isWanted(*event->mimeData()))
    event->acceptProposedAction();
  else
    event->ignore();
}

void OutlineView::dragMoveEvent(QDragMoveEvent* event) {
  if (!isWanted(*event->mimeData())) {
    event->ignore();
    return;
  }
  dropPlace_ = placeAt(event->position().toPoint());
  viewport()->update();
  if (hasAutoScroll())
    startAutoScroll();
  event->acceptProposedAction();
}

void OutlineView::dragLeaveEvent(QDragLeaveEvent* event) {
  dropPlace_.reset();
  viewport()->update();
  QTreeView::dragLeaveEvent(event);
}

void OutlineView::dropEvent(QDropEvent* event) {
  stopAutoScroll();
  dropPlace_.reset();
  viewport()->update();
  setState(NoState);
  const QMimeData& carried = *event->mimeData();
  if (!isWanted(carried)) {
    event->ignore();
    return;
  }
  const Place place = placeAt(event->position().toPoint());
  event->acceptProposedAction();
  if (carried.hasFormat(kMovementMime)) {
    commands_.insertMovement({carried.data(kMovementMime).toStdString()}, place);
    return;
  }
  const auto steps = stepsIn(carried);
  if (steps.empty())
    return;
  commands_.moveSteps(steps, place);
  selection_.set(steps, steps.back());
}

} // namespace matwright
