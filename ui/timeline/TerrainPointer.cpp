// The terrain under a pointer: presses that become clicks or gestures, and drags that come in from outside.
#include "ui/timeline/TerrainView.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QScrollBar>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kEdge = 30;          // from the border of the view: there it scrolls while something is dragged
constexpr int kEdgeInterval = 30;  // milliseconds
constexpr qreal kEdgeFastest = 18; // pixels each time

// The steps that were dragged out of another view of this class.
std::vector<StepId> stepsIn(const QMimeData& data, const ClassPlan& plan) {
  std::vector<StepId> steps;
  for (const QByteArray& number : data.data(kStepIdsMime).split(' ')) {
    bool read = false;
    const StepId id{number.toLongLong(&read)};
    if (read && findStep(plan, id) && std::find(steps.begin(), steps.end(), id) == steps.end())
      steps.push_back(id);
  }
  return steps;
}

} // namespace

void TerrainView::begin(std::unique_ptr<TerrainGesture> gesture) {
  gesture_ = std::move(gesture);
  edgeScroll_.start(kEdgeInterval, this);
}

void TerrainView::end(bool commit) {
  edgeScroll_.stop();
  press_.reset();
  // Out of the view before it acts: what it does comes back as a change of the class.
  const auto gesture = std::move(gesture_);
  if (commit)
    gesture->finish();
  else
    gesture->cancel();
  layOut();
  updateCursor(pointer_);
}

void TerrainView::followPointer(QPointF viewport_, Qt::KeyboardModifiers modifiers) {
  pointer_ = viewport_;
  pointerModifiers_ = modifiers;
  gesture_->moveTo(toTerrain(viewport_), modifiers);
  viewport()->setCursor(gesture_->cursor());
  viewport()->update();
}

std::unique_ptr<TerrainGesture> TerrainView::gestureFrom(const Press& press) {
  switch (press.hit.kind) {
  case TerrainHit::Kind::block: {
    const StepId id = settled_.geometry.blocks()[*press.hit.step].id;
    if (!selection_.contains(id))
      selection_.select(id);
    return std::make_unique<MoveGesture>(stage_, selection_.steps());
  }
  case TerrainHit::Kind::blockEdge:
    selection_.select(settled_.geometry.blocks()[*press.hit.step].id);
    return std::make_unique<StretchGesture>(stage_, *press.hit.step, toTerrain(press.at));
  case TerrainHit::Kind::connector:
  case TerrainHit::Kind::gap:
  case TerrainHit::Kind::ground:
    return std::make_unique<RubberBandGesture>(stage_, toTerrain(press.at));
  case TerrainHit::Kind::section:
    return nullptr;
  }
  return nullptr;
}

void TerrainView::click(const Press& press) {
  switch (press.hit.kind) {
  case TerrainHit::Kind::block:
  case TerrainHit::Kind::blockEdge: {
    const StepId id = settled_.geometry.blocks()[*press.hit.step].id;
    if (press.modifiers.testFlag(Qt::ControlModifier))
      selection_.toggle(id);
    else if (press.selectsAlone)
      selection_.select(id);
    return;
  }
  case TerrainHit::Kind::connector:
  case TerrainHit::Kind::gap:
    selection_.selectGap(press.hit.place);
    return;
  case TerrainHit::Kind::section: {
    std::vector<StepId> steps;
    for (const Block& block : settled_.geometry.blocks())
      if (block.place.section == press.hit.section)
        steps.push_back(block.id);
    if (steps.empty())
      selection_.selectGap({press.hit.section, 0});
    else
      selection_.set(steps, steps.front());
    return;
  }
  case TerrainHit::Kind::ground:
    if (!(press.modifiers & (Qt::ControlModifier | Qt::ShiftModifier)))
      selection_.clear();
    return;
  }
}

void TerrainView::mousePressEvent(QMouseEvent* event) {
  pointer_ = event->position();
  if (gesture_) { // another button while dragging
    if (event->button() == Qt::RightButton)
      end(false);
    return;
  }
  if (event->button() != Qt::LeftButton || event->position().x() < frame_.gutter)
    return;
  Press press{event->position(), settled_.geometry.hit(toTerrain(event->position())), event->modifiers()};
  press_ = press;
  if (press.hit.kind != TerrainHit::Kind::block && press.hit.kind != TerrainHit::Kind::blockEdge)
    return;
  const StepId id = settled_.geometry.blocks()[*press.hit.step].id;
  if (press.modifiers.testFlag(Qt::ShiftModifier))
    selection_.extendTo(id);
  else if (press.modifiers.testFlag(Qt::ControlModifier))
    return;
  else if (!selection_.contains(id))
    selection_.select(id);
  else
    press_->selectsAlone = true;
}

void TerrainView::mouseMoveEvent(QMouseEvent* event) {
  pointer_ = event->position();
  if (gesture_) {
    followPointer(event->position(), event->modifiers());
    return;
  }
  if (!press_ || !event->buttons().testFlag(Qt::LeftButton)) {
    updateCursor(event->position());
    return;
  }
  const qreal far = (event->position() - press_->at).manhattanLength();
  const int start = press_->hit.kind == TerrainHit::Kind::blockEdge ? 3 : QApplication::startDragDistance();
  if (far < start)
    return;
  if (auto gesture = gestureFrom(*press_)) {
    begin(std::move(gesture));
    followPointer(event->position(), event->modifiers());
  }
}

void TerrainView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton)
    return;
  if (gesture_) {
    followPointer(event->position(), event->modifiers());
    end(true);
    return;
  }
  if (press_)
    click(*press_);
  press_.reset();
  document_.sealGesture();
}

void TerrainView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || event->position().x() < frame_.gutter)
    return;
  press_.reset();
  const TerrainHit hit = settled_.geometry.hit(toTerrain(event->position()));
  if (hit.kind == TerrainHit::Kind::block || hit.kind == TerrainHit::Kind::blockEdge) {
    const StepId id = settled_.geometry.blocks()[*hit.step].id;
    selection_.select(id);
    Q_EMIT stepActivated(id);
  } else if (hit.kind == TerrainHit::Kind::section) {
    Q_EMIT sectionActivated(hit.section);
  } else if (hit.kind == TerrainHit::Kind::gap || hit.kind == TerrainHit::Kind::connector) {
    selection_.selectGap(hit.place);
    Q_EMIT gapActivated(hit.place);
  }
}

void TerrainView::contextMenuEvent(QContextMenuEvent* event) {
  event->accept();
  if (gesture_)
    return;
  if (event->reason() == QContextMenuEvent::Keyboard) {
    if (const auto current = selection_.current()) {
      showStep(*current);
      const QRectF rect = toViewport(settled_.geometry.block(*current)->rect);
      Q_EMIT stepContextMenu(viewport()->mapToGlobal(rect.bottomLeft().toPoint()), *current);
    } else if (const GapSlot* gap = settled_.geometry.gap(selection_.gap())) {
      const QRectF rect = toViewport(QRectF(gap->x, settled_.geometry.terrain().center().y(), 1, 1));
      Q_EMIT gapContextMenu(viewport()->mapToGlobal(rect.topLeft().toPoint()), gap->place);
    }
    return;
  }
  const QPointF at = toTerrain(viewport()->mapFromGlobal(event->globalPos()));
  const TerrainHit hit = settled_.geometry.hit(at);
  if (hit.kind == TerrainHit::Kind::block || hit.kind == TerrainHit::Kind::blockEdge) {
    const StepId id = settled_.geometry.blocks()[*hit.step].id;
    if (!selection_.contains(id))
      selection_.select(id);
    Q_EMIT stepContextMenu(event->globalPos(), id);
    return;
  }
  const bool exact = hit.kind == TerrainHit::Kind::gap || hit.kind == TerrainHit::Kind::connector;
  const Place place = exact ? hit.place : settled_.geometry.dropPlace(at.x());
  selection_.selectGap(place);
  Q_EMIT gapContextMenu(event->globalPos(), place);
}

void TerrainView::updateCursor(QPointF at) {
  Qt::CursorShape shape = Qt::ArrowCursor;
  if (at.x() >= frame_.gutter)
    switch (settled_.geometry.hit(toTerrain(at)).kind) {
    case TerrainHit::Kind::blockEdge:
      shape = Qt::SizeHorCursor;
      break;
    case TerrainHit::Kind::block:
    case TerrainHit::Kind::section:
      shape = Qt::PointingHandCursor;
      break;
    case TerrainHit::Kind::connector:
    case TerrainHit::Kind::gap:
      shape = Qt::IBeamCursor;
      break;
    case TerrainHit::Kind::ground:
      break;
    }
  viewport()->setCursor(shape);
}

void TerrainView::timerEvent(QTimerEvent* event) {
  if (event->timerId() != edgeScroll_.timerId()) {
    QAbstractScrollArea::timerEvent(event);
    return;
  }
  if (!gesture_) {
    edgeScroll_.stop();
    return;
  }
  const qreal before = frame_.gutter + kEdge - pointer_.x(), behind = pointer_.x() - (viewport()->width() - kEdge);
  const qreal deep = std::max(before, behind);
  if (deep <= 0)
    return;
  const int by = static_cast<int>(std::clamp(deep / kEdge, 0.1, 1.0) * kEdgeFastest) + 1;
  const int old = horizontalScrollBar()->value();
  horizontalScrollBar()->setValue(old + (before > behind ? -by : by));
  if (horizontalScrollBar()->value() != old)
    followPointer(pointer_, pointerModifiers_);
}

void TerrainView::dragEnterEvent(QDragEnterEvent* event) {
  if (gesture_)
    end(false);
  pointer_ = event->position();
  const QMimeData& carried = *event->mimeData();
  if (carried.hasFormat(kMovementMime)) {
    const MovementId id{carried.data(kMovementMime).toStdString()};
    if (!document_.knowledge().catalogue.find(id))
      return;
    begin(std::make_unique<InsertGesture>(stage_, id));
  } else if (carried.hasFormat(kStepIdsMime)) {
    auto steps = stepsIn(carried, document_.plan());
    if (steps.empty())
      return;
    begin(std::make_unique<MoveGesture>(stage_, std::move(steps)));
  } else {
    return;
  }
  dragMoveEvent(event);
}

void TerrainView::dragMoveEvent(QDragMoveEvent* event) {
  if (!gesture_) {
    event->ignore();
    return;
  }
  followPointer(event->position(), event->modifiers());
  const bool moves = event->mimeData()->hasFormat(kStepIdsMime) && !event->modifiers().testFlag(Qt::ControlModifier);
  event->setDropAction(moves ? Qt::MoveAction : Qt::CopyAction);
  event->accept();
}

void TerrainView::dragLeaveEvent(QDragLeaveEvent*) {
  if (gesture_)
    end(false);
}

void TerrainView::dropEvent(QDropEvent* event) {
  if (!gesture_) {
    event->ignore();
    return;
  }
  followPointer(event->position(), event->modifiers());
  event->setDropAction(event->mimeData()->hasFormat(kStepIdsMime) && !event->modifiers().testFlag(Qt::ControlModifier)
                           ? Qt::MoveAction
                           : Qt::CopyAction);
  event->accept();
  end(true);
  setFocus(Qt::MouseFocusReason);
}

} // namespace matwright
