#include "ui/movements/PoseCanvas.h"

#include "core/figure/Passage.h"
#include "ui/movements/PoseHint.h"
#include "ui/text/FigureText.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <cmath>

namespace matwright {
namespace {

constexpr double kReach = 15;     // pixels, from the pointer to a handle
constexpr double kSpot = 6;       // pixels, radius of a handle
constexpr double kMargin = 26;    // pixels
constexpr double kAround = 0.1;   // statures, kept free around the body
constexpr double kMostRoom = 0.4; // statures, that may be left over beside it
constexpr double kHeld = 0.03;    // statures, from there on a handle is said to be held
constexpr double kSmall = 0.006;  // statures, about a centimetre

Handle neighbour(Handle handle, int by) { return static_cast<Handle>(static_cast<int>(handle) + by); }

bool armsAlike(const Pose& pose) { return pose.arms[0] == pose.arms[1]; }
bool legsAlike(const Pose& pose) { return pose.legs[0] == pose.legs[1]; }
bool isOfArm(Joint joint) { return joint >= Joint::shoulderNear && joint <= Joint::elbowFar; }

double toHalf(double degrees) { return std::round(degrees * 2) / 2 + 0.0; }

} // namespace

Pose writtenAfter(const Pose& written, const Pose& before, const Pose& after, bool together) {
  Pose result = written;
  for (std::size_t i = 0; i < kWordCount<Joint>; ++i) {
    const auto joint = static_cast<Joint>(i);
    const double now = angleOf(after, joint);
    if (std::abs(now - angleOf(before, joint)) < 1e-9)
      continue;
    angleOf(result, joint) = toHalf(now);
    if (together && isOfLimb(joint) && (isOfArm(joint) ? armsAlike(written) : legsAlike(written)))
      angleOf(result, otherSide(joint)) = toHalf(now);
  }
  return result;
}

PoseCanvas::PoseCanvas(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setAccessibleName(tr("Pose"));
  shape_ = *settledOnce(pose_);
  settle(pose_, true);
}

void PoseCanvas::showPose(const Pose& pose, const std::optional<Pose>& ghost) {
  drag_.reset();
  pose_ = pose;
  ghost_ = ghost && ghost->view == pose.view && ghost->flip == pose.flip ? ghost : std::nullopt;
  settle(pose, true);
  updateHint({});
}

void PoseCanvas::setHandle(Handle handle) {
  handle_ = handle;
  updateHint({});
  update();
}

void PoseCanvas::settle(const Pose& pose, bool refit) {
  shown_ = pose;
  // What rests stays in its place, so that the body does not slip about under the pointer.
  shape_ = alignedTo(drag_ ? drag_->shape : shape_, *settledOnce(pose));
  if (refit)
    fit();
  update();
}

// The picture keeps its place and scale while the body fits well enough.
void PoseCanvas::fit() {
  Extent needed = pictureOf(shape_).extent;
  if (ghost_)
    needed.unite(pictureOf(alignedTo(shape_, *settledOnce(*ghost_))).extent);
  const bool seenAsBefore = fittedView_ == shown_.view && fittedFlip_ == shown_.flip;
  const bool within = frame_.lowest.x <= needed.lowest.x && frame_.lowest.y <= needed.lowest.y &&
                      frame_.highest.x >= needed.highest.x && frame_.highest.y >= needed.highest.y;
  const double room = std::max(frame_.width() - needed.width(), frame_.height() - needed.height());
  if (seenAsBefore && within && room < kMostRoom)
    return;
  fittedView_ = shown_.view;
  fittedFlip_ = shown_.flip;
  frame_ = needed;
  frame_.takeIn(needed.lowest, kAround / 2);
  frame_.takeIn(needed.highest, kAround);
  if (shown_.view != View::top)
    frame_.lowest.y = std::max(frame_.lowest.y, -kAround / 4);
}

QRectF PoseCanvas::box() const { return QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin); }

FigureStyle PoseCanvas::style() const {
  FigureStyle style;
  style.colours = figureColours(themeFor(palette()), palette().color(QPalette::Base));
  return style;
}

FigurePlacing PoseCanvas::placing() const { return placingOf(box(), pictureOf(shape_), frame_, style()); }

QPointF PoseCanvas::spotOf(Handle handle) const { return placing().at(seenPlaceOf(shape_, handle)); }

std::optional<Handle> PoseCanvas::handleAt(QPointF point, bool far) const {
  std::optional<Handle> found;
  double best = kReach;
  for (std::size_t i = 0; i < kWordCount<Handle>; ++i) {
    const auto handle = static_cast<Handle>(i);
    const QPointF away = spotOf(handle) - point;
    double distance = std::hypot(away.x(), away.y());
    if (distance > kReach)
      continue;
    // Of handles that lie on one another the chosen one is taken, else the near one.
    distance -= handle == handle_ ? 6 : 0;
    distance += isFar(handle) == far ? 0 : 3;
    if (!found || distance < best) {
      found = handle;
      best = distance;
    }
  }
  return found;
}

QString PoseCanvas::toolTipFor(Handle handle) const {
  const QString name = withCapital(text(handle));
  if (isFar(handle) || !isFar(neighbour(handle, 1)))
    return name;
  const QPointF apart = spotOf(handle) - spotOf(neighbour(handle, 1));
  return std::hypot(apart.x(), apart.y()) < kReach ? tr("%1; with Alt the far one").arg(name) : name;
}

void PoseCanvas::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton)
    return;
  const auto handle = handleAt(event->position(), event->modifiers().testFlag(Qt::AltModifier));
  if (!handle)
    return;
  setHandle(*handle);
  drag_ = Held{shape_, pose_, spotOf(*handle) - event->position()};
}

void PoseCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (!drag_) {
    const auto over = handleAt(event->position(), event->modifiers().testFlag(Qt::AltModifier));
    if (over != hovered_) {
      hovered_ = over;
      setCursor(over ? Qt::OpenHandCursor : Qt::ArrowCursor);
      setToolTip(over ? toolTipFor(*over) : QString());
      update();
    }
    return;
  }
  const FigurePlacing where = placing();
  const QPointF at = event->position() + drag_->offset;
  const Point2 pointer{(at.x() - where.x) / where.scale, (where.y - at.y()) / where.scale};
  const Drag drag = dragged(drag_->shape, handle_, pointer);
  const Pose pose = writtenAfter(drag_->pose, drag_->shape.articulation.pose, drag.pose, together_);
  settle(pose, false);
  const Point2 now = seenPlaceOf(shape_, handle_);
  const bool behind = std::hypot(now.x - pointer.x, now.y - pointer.y) > drag.miss + kHeld;
  if (handle_ == Handle::seat)
    updateHint(drag.atLimit, drag.miss > kHeld && drag.atLimit.empty() ? heldHint(handle_, shown_) : QString());
  else
    updateHint(drag.atLimit, behind ? heldHint(handle_, shown_) : QString());
  Q_EMIT previewed(shown_);
}

void PoseCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (!drag_ || event->button() != Qt::LeftButton)
    return;
  const Pose before = drag_->pose, after = shown_;
  drag_.reset();
  settle(after, true);
  if (before != after) {
    pose_ = after;
    Q_EMIT edited(after, {});
  }
}

void PoseCanvas::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  hovered_.reset();
  update();
}

void PoseCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  update();
}

void PoseCanvas::focusInEvent(QFocusEvent* event) {
  if (event->reason() == Qt::TabFocusReason)
    handle_ = static_cast<Handle>(0);
  else if (event->reason() == Qt::BacktabFocusReason)
    handle_ = static_cast<Handle>(kWordCount<Handle> - 1);
  QWidget::focusInEvent(event);
  updateHint({});
  update();
}

void PoseCanvas::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

bool PoseCanvas::focusNextPrevChild(bool next) {
  const int last = static_cast<int>(kWordCount<Handle>) - 1;
  if (next ? static_cast<int>(handle_) == last : static_cast<int>(handle_) == 0)
    return QWidget::focusNextPrevChild(next);
  setHandle(neighbour(handle_, next ? 1 : -1));
  return true;
}

void PoseCanvas::keyPressEvent(QKeyEvent* event) {
  const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? 5 : 1;
  const bool seat = handle_ == Handle::seat;
  switch (event->key()) {
  case Qt::Key_Escape:
    if (!drag_)
      break;
    settle(drag_->pose, false);
    drag_.reset();
    updateHint({});
    Q_EMIT previewed(shown_);
    return;
  case Qt::Key_Up:
    return seat ? moveSeat({0, kSmall * step}) : turn(0, step);
  case Qt::Key_Down:
    return seat ? moveSeat({0, -kSmall * step}) : turn(0, -step);
  case Qt::Key_Right:
    return seat ? moveSeat({kSmall * step, 0}) : turn(1, step);
  case Qt::Key_Left:
    return seat ? moveSeat({-kSmall * step, 0}) : turn(1, -step);
  case Qt::Key_PageUp:
    return turn(2, step);
  case Qt::Key_PageDown:
    return turn(2, -step);
  default:
    break;
  }
  QWidget::keyPressEvent(event);
}

void PoseCanvas::turn(std::size_t which, double degrees) {
  const auto joints = jointsOf(handle_);
  if (drag_ || which >= joints.size())
    return;
  const Joint joint = joints[which];
  Pose after = turned(pose_, joint, degrees);
  if (together_ && isOfLimb(joint) && (isOfArm(joint) ? armsAlike(pose_) : legsAlike(pose_)))
    angleOf(after, otherSide(joint)) = angleOf(after, joint);
  const bool stopped = angleOf(after, joint) != angleOf(pose_, joint) + degrees;
  if (after != pose_) {
    pose_ = after;
    settle(after, true);
    Q_EMIT edited(after, QString::fromLatin1(word(joint).data(), static_cast<qsizetype>(word(joint).size())));
  }
  updateHint(stopped ? EnumSet<Joint>{joint} : EnumSet<Joint>{});
}

void PoseCanvas::moveSeat(Point2 by) {
  if (drag_)
    return;
  const Point2 at = seenPlaceOf(shape_, Handle::seat);
  const Drag drag = dragged(shape_, Handle::seat, {at.x + by.x, at.y + by.y});
  const Pose after = writtenAfter(pose_, shape_.articulation.pose, drag.pose, together_);
  const bool stayed = after == pose_;
  if (!stayed) {
    pose_ = after;
    settle(after, true);
    Q_EMIT edited(after, QStringLiteral("seat"));
  }
  updateHint(drag.atLimit, stayed ? heldHint(handle_, shown_) : QString());
}

void PoseCanvas::updateHint(EnumSet<Joint> atLimit, const QString& held) {
  stopped_ = !atLimit.empty();
  held_ = !held.isEmpty() && !stopped_;
  hint_ = stopped_ ? limitHint(atLimit, shown_) : held_ ? held : handleHint(handle_, shown_);
  setAccessibleDescription(hint_);
  QAccessibleEvent told(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&told);
  Q_EMIT hintChanged(hint_);
  update();
}

void PoseCanvas::paintHandles(QPainter& painter) const {
  const Theme& theme = themeFor(palette());
  const bool keys = hasFocus();
  const auto paintOne = [&](Handle handle) {
    const QPointF at = spotOf(handle);
    const bool chosen = handle == handle_ && (keys || drag_);
    const bool lit = chosen || (hovered_ && *hovered_ == handle);
    const double radius = isFar(handle) ? kSpot - 1.5 : kSpot;
    painter.setPen(QPen(theme.panel, lit ? 5 : 4));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(at, radius, radius);
    painter.setPen(QPen(theme.accent, 2, isFar(handle) ? Qt::DotLine : Qt::SolidLine));
    painter.setBrush(lit ? theme.accent : theme.panel);
    if (handle == Handle::seat)
      painter.drawRect(QRectF(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius));
    else
      painter.drawEllipse(at, radius, radius);
    if (chosen) {
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(theme.accent, 1.5));
      painter.drawEllipse(at, radius + 5, radius + 5);
    }
  };
  for (const bool far : {true, false})
    for (std::size_t i = 0; i < kWordCount<Handle>; ++i)
      if (isFar(static_cast<Handle>(i)) == far)
        paintOne(static_cast<Handle>(i));
  if (keys || drag_)
    paintOne(handle_);
  if (!stopped_ && !held_)
    return;
  // Words beside it: it goes no further.
  const QPointF at = spotOf(handle_);
  const QString words = stopped_ ? tr("at its limit") : tr("rests on the floor");
  const QFontMetrics metrics(font());
  QRectF note(at.x() + 14, at.y() - metrics.height() - 12, metrics.horizontalAdvance(words) + 14, metrics.height() + 6);
  if (note.right() > width() - 4)
    note.moveRight(at.x() - 14);
  note.moveTop(std::max(4.0, note.top()));
  painter.setPen(QPen(theme.accent, 1.5));
  painter.setBrush(theme.panel);
  painter.drawRoundedRect(note, 4, 4);
  painter.setPen(theme.ink);
  painter.drawText(note, Qt::AlignCenter, words);
}

void PoseCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Theme& theme = themeFor(palette());
  painter.setPen(QPen(hasFocus() ? theme.accent : theme.line, hasFocus() ? 1.5 : 1));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
  const Picture picture = pictureOf(shape_);
  if (ghost_) {
    const Picture faint = pictureOf(alignedTo(shape_, *settledOnce(*ghost_)));
    paintFigure(painter, box(), picture, &faint, frame_, style());
  } else {
    paintFigure(painter, box(), picture, nullptr, frame_, style());
  }
  if (isEnabled())
    paintHandles(painter);
}

} // namespace matwright
