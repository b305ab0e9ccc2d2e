// The terrain by keyboard.
#include "ui/timeline/TerrainAccessible.h"
#include "ui/timeline/TerrainView.h"

#include <QKeyEvent>
#include <algorithm>

namespace matwright {
namespace {

// Where a key leads within a row of `count` places; `at` is nothing when no place is taken yet. Sections are given by
// the first place of each that has any.
std::optional<std::size_t> destination(int key, std::optional<std::size_t> at, std::size_t count,
                                       const std::vector<std::size_t>& sectionStarts) {
  if (count == 0)
    return std::nullopt;
  const std::size_t last = count - 1;
  switch (key) {
  case Qt::Key_Home:
    return 0;
  case Qt::Key_End:
    return last;
  case Qt::Key_Left:
    return !at ? last : *at > 0 ? *at - 1 : 0;
  case Qt::Key_Right:
    return !at ? 0 : std::min(*at + 1, last);
  case Qt::Key_Up: { // to the beginning of this section first, then of the one before
    std::optional<std::size_t> found;
    for (const std::size_t start : sectionStarts)
      if (!at || start < *at)
        found = start;
    return found.value_or(0);
  }
  case Qt::Key_Down:
    for (const std::size_t start : sectionStarts)
      if (!at || start > *at)
        return start;
    return at.value_or(last);
  default:
    return std::nullopt;
  }
}

template <class Items> std::vector<std::size_t> sectionStartsIn(const Items& items) {
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (i == 0 || items[i].place.section != items[i - 1].place.section)
      starts.push_back(i);
  return starts;
}

} // namespace

bool TerrainView::moveCurrent(int key, bool extend) {
  const auto& blocks = settled_.geometry.blocks();
  std::optional<std::size_t> at;
  if (const auto current = selection_.current())
    for (std::size_t i = 0; i < blocks.size(); ++i)
      if (blocks[i].id == *current)
        at = i;
  const auto to = destination(key, at, blocks.size(), sectionStartsIn(blocks));
  if (!to)
    return false;
  if (extend && at)
    selection_.extendTo(blocks[*to].id);
  else
    selection_.select(blocks[*to].id);
  showStep(blocks[*to].id);
  return true;
}

bool TerrainView::moveGap(int key) {
  const auto& gaps = settled_.geometry.gaps();
  const Place place = selection_.gap();
  std::optional<std::size_t> at;
  for (std::size_t i = 0; i < gaps.size(); ++i)
    if (gaps[i].place == place)
      at = i;
  const auto to = destination(key, at, gaps.size(), sectionStartsIn(gaps));
  if (!to)
    return false;
  selection_.selectGap(gaps[*to].place);
  return true;
}

void TerrainView::keyPressEvent(QKeyEvent* event) {
  if (gesture_) {
    if (event->key() == Qt::Key_Escape)
      end(false);
    else if (event->key() == Qt::Key_Control)
      followPointer(pointer_, event->modifiers() | Qt::ControlModifier);
    return;
  }
  const Qt::KeyboardModifiers modifiers = event->modifiers() & ~Qt::KeypadModifier;
  const bool plain = modifiers == Qt::NoModifier || modifiers == Qt::ShiftModifier;
  const bool onGap = selection_.hasOwnGap();
  switch (event->key()) {
  case Qt::Key_Left:
  case Qt::Key_Right:
    if (modifiers == Qt::AltModifier) {
      commands_.nudgeSelected(event->key() == Qt::Key_Left ? -1 : 1);
      if (selection_.current())
        showStep(*selection_.current());
      return;
    }
    [[fallthrough]];
  case Qt::Key_Home:
  case Qt::Key_End:
  case Qt::Key_Up:
  case Qt::Key_Down:
    if (plain && (onGap ? moveGap(event->key()) : moveCurrent(event->key(), modifiers == Qt::ShiftModifier)))
      return;
    break;
  case Qt::Key_Plus:
  case Qt::Key_Equal:
    if (modifiers.testFlag(Qt::ControlModifier)) {
      zoomIn();
      return;
    }
    if (event->key() == Qt::Key_Plus) {
      commands_.changeDoseOfSelected(1);
      return;
    }
    break;
  case Qt::Key_Minus:
    if (modifiers.testFlag(Qt::ControlModifier))
      zoomOut();
    else
      commands_.changeDoseOfSelected(-1);
    return;
  case Qt::Key_0:
    if (modifiers == Qt::ControlModifier) {
      zoomToFit();
      return;
    }
    break;
  case Qt::Key_Delete:
  case Qt::Key_Backspace:
    if (modifiers == Qt::NoModifier) {
      commands_.removeSelected();
      return;
    }
    break;
  case Qt::Key_A:
    if (modifiers == Qt::ControlModifier) {
      selection_.selectAll();
      return;
    }
    break;
  case Qt::Key_G:
  case Qt::Key_Insert:
    if (modifiers == Qt::NoModifier) {
      selection_.selectGap(selection_.gap());
      return;
    }
    break;
  case Qt::Key_Escape:
    if (onGap) {
      // Back to the step before the gap, or the one behind it.
      const Place gap = selection_.gap();
      const auto& steps = document_.plan().sections[gap.section].steps;
      if (steps.empty())
        selection_.clear();
      else
        selection_.select(steps[gap.index > 0 ? gap.index - 1 : 0].id);
      return;
    }
    break;
  case Qt::Key_Return:
  case Qt::Key_Enter:
    if (onGap)
      Q_EMIT gapActivated(selection_.gap());
    else if (const auto current = selection_.current())
      Q_EMIT stepActivated(*current);
    else
      break;
    return;
  default:
    break;
  }
  event->ignore();
}

void TerrainView::keyReleaseEvent(QKeyEvent* event) {
  if (gesture_ && event->key() == Qt::Key_Control)
    followPointer(pointer_, event->modifiers() & ~Qt::ControlModifier);
  if (!event->isAutoRepeat() && (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Minus))
    document_.sealGesture();
  QAbstractScrollArea::keyReleaseEvent(event);
}

void TerrainView::focusInEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusInEvent(event);
  viewport()->update();
  announceSelection(*this);
}

void TerrainView::focusOutEvent(QFocusEvent* event) {
  if (gesture_ && event->reason() != Qt::PopupFocusReason)
    end(false);
  QAbstractScrollArea::focusOutEvent(event);
  viewport()->update();
}

} // namespace matwright
