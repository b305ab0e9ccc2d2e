#include "ui/timeline/TerrainView.h"

#include "ui/timeline/TerrainAccessible.h"

#include <QEvent>
#include <QHelpEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr double kZoomStep = 1.25;
constexpr double kClosest = 16; // pixels a second: one second can be pointed at

} // namespace

TerrainView::TerrainView(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent)
    : QAbstractScrollArea(parent), document_(document), selection_(selection),
      commands_(commands), stage_{document,
                                  selection,
                                  commands,
                                  [this]() -> const TerrainGeometry& { return settled_.geometry; },
                                  [this]() -> const TerrainScene& { return settled_.scene; },
                                  [this](std::optional<Ghost> ghost) { setGhost(std::move(ghost)); },
                                  [this](const QRectF& frame) {
                                    rubberBand_ = frame;
                                    viewport()->update();
                                  }},
      typefaces_(typefacesFrom(font())) {
  installTerrainAccessibility();
  setAccessibleName(tr("Terrain of the class"));
  setFocusPolicy(Qt::StrongFocus);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  viewport()->setMouseTracking(true);
  viewport()->setAcceptDrops(true);
  viewport()->setAutoFillBackground(false);
  connect(&document, &PlanDocument::changed, this, &TerrainView::takeChange);
  connect(&document, &PlanDocument::loaded, this, &TerrainView::zoomToFit);
  // Pictures go by the address of their pose, and poses of the knowledge before may give theirs to others.
  connect(&document, &PlanDocument::knowledgeChanged, this, [this] { figures_.clear(); });
  connect(&selection, &StepSelection::changed, this, &TerrainView::takeSelection);
  takeChange();
}

TerrainView::~TerrainView() { forgetTerrainAccessibility(*this); }

const TerrainScene& TerrainView::scene() const { return would_ ? would_->scene : settled_.scene; }
const TerrainGeometry& TerrainView::geometry() const { return would_ ? would_->geometry : settled_.geometry; }

TerrainSubject TerrainView::subject() const {
  return {ghost_ ? ghost_->snapshot : document_.snapshot(), document_.knowledge(), document_.roster(), scene()};
}

TerrainSubject TerrainView::settledSubject() const {
  return {document_.snapshot(), document_.knowledge(), document_.roster(), settled_.scene};
}

void TerrainView::takeChange() {
  if (gesture_)
    end(false); // it was about a class that is no more
  settled_.scene = sceneOf(document_.snapshot());
  layOut();
  announceSteps(*this);
}

void TerrainView::takeSelection() {
  viewport()->update();
  if (!press_ && !gesture_) {
    document_.sealGesture();
    if (selection_.current())
      showStep(*selection_.current());
    else if (selection_.hasOwnGap())
      if (const GapSlot* gap = settled_.geometry.gap(selection_.gap())) {
        const qreal x = gap->x - horizontalScrollBar()->value();
        if (x < 20 || x > frame_.along() - 20)
          horizontalScrollBar()->setValue(static_cast<int>(gap->x - frame_.along() / 2));
      }
  }
  announceSelection(*this);
}

void TerrainView::layOut() {
  frame_ = frameFor(viewport()->size(), measuresOf(typefaces_));
  const int least = static_cast<int>(std::ceil(leastHeight(frame_, settled_.scene)));
  if (!gesture_ && least != least_) {
    least_ = least;
    updateGeometry();
  }
  const double fitting = fittingScale(settled_.scene, frame_);
  // While something is dragged the scale stays, so that nothing slips away under the pointer.
  if (!gesture_ && (fitted_ || pixelsPerSecond_ < fitting)) {
    pixelsPerSecond_ = fitting;
    fitted_ = true;
  }
  settled_.geometry = TerrainGeometry(settled_.scene, frame_, pixelsPerSecond_);
  if (would_)
    would_->geometry = TerrainGeometry(would_->scene, frame_, pixelsPerSecond_);
  updateScrollBars();
  viewport()->update();
}

QSize TerrainView::minimumSizeHint() const {
  constexpr int kLeastAsked = 260, kMostAsked = 400;
  return {360, std::clamp(least_, kLeastAsked, kMostAsked)};
}

void TerrainView::updateScrollBars() {
  const QSizeF content = geometry().contentSize();
  const auto policy = fitted_ ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded;
  if (!gesture_ && horizontalScrollBarPolicy() != policy)
    setHorizontalScrollBarPolicy(policy);
  const int along = static_cast<int>(frame_.along());
  // A gesture may lengthen the class; the room to scroll into it grows with it and shrinks again afterwards.
  horizontalScrollBar()->setPageStep(along);
  horizontalScrollBar()->setSingleStep(40);
  horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(content.width())) - along));
  verticalScrollBar()->setPageStep(viewport()->height());
  verticalScrollBar()->setSingleStep(20);
  verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(content.height())) - viewport()->height()));
}

void TerrainView::setGhost(std::optional<Ghost> ghost) {
  if (!ghost && !ghost_)
    return;
  ghost_ = std::move(ghost);
  if (ghost_) {
    TerrainScene scene = sceneOf(ghost_->snapshot);
    TerrainGeometry geometry(scene, frame_, pixelsPerSecond_);
    would_ = Laid{std::move(scene), std::move(geometry)};
  } else {
    would_.reset();
  }
  updateScrollBars();
  viewport()->update();
  Q_EMIT previewChanged(ghost_ ? std::optional{ghost_->snapshot} : std::nullopt);
}

QPointF TerrainView::toTerrain(QPointF viewport) const {
  return viewport + QPointF(horizontalScrollBar()->value() - frame_.gutter, verticalScrollBar()->value());
}

QRectF TerrainView::toViewport(const QRectF& terrain) const {
  return terrain.translated(frame_.gutter - horizontalScrollBar()->value(), -verticalScrollBar()->value());
}

void TerrainView::showStep(StepId step) {
  const Block* block = settled_.geometry.block(step);
  if (!block)
    return;
  const qreal left = horizontalScrollBar()->value(), right = left + frame_.along();
  const QRectF& rect = block->rect;
  if (rect.left() < left + 8)
    horizontalScrollBar()->setValue(static_cast<int>(rect.left() - std::min(60.0, frame_.along() / 4)));
  else if (rect.right() > right - 8)
    horizontalScrollBar()->setValue(static_cast<int>(
        std::min(rect.left() - 8, rect.right() - frame_.along() + std::min(60.0, frame_.along() / 4))));
  const qreal top = verticalScrollBar()->value();
  if (rect.top() < top)
    verticalScrollBar()->setValue(static_cast<int>(rect.top() - 8));
  else if (rect.bottom() > top + viewport()->height())
    verticalScrollBar()->setValue(static_cast<int>(rect.bottom() + 8 - viewport()->height()));
}

void TerrainView::zoomIn() {
  const Block* current = selection_.current() ? settled_.geometry.block(*selection_.current()) : nullptr;
  const qreal x = current ? toViewport(current->rect).center().x() : frame_.gutter + frame_.along() / 2;
  const bool inSight = x >= frame_.gutter && x <= viewport()->width();
  zoomTo(pixelsPerSecond_ * kZoomStep, inSight ? x : frame_.gutter + frame_.along() / 2);
}

void TerrainView::zoomOut() { zoomTo(pixelsPerSecond_ / kZoomStep, frame_.gutter + frame_.along() / 2); }

void TerrainView::zoomToFit() { zoomTo(0, frame_.gutter); }

void TerrainView::zoomTo(double pixelsPerSecond, qreal viewportX) {
  if (gesture_)
    return;
  const Seconds about = settled_.geometry.scale().timeOf(toTerrain({viewportX, 0}).x());
  const double fitting = fittingScale(settled_.scene, frame_);
  fitted_ = pixelsPerSecond <= fitting * 1.001;
  pixelsPerSecond_ = fitted_ ? fitting : std::min(pixelsPerSecond, std::max(kClosest, fitting));
  layOut();
  if (!fitted_)
    horizontalScrollBar()->setValue(
        static_cast<int>(std::lround(settled_.geometry.scale().xOf(about) - (viewportX - frame_.gutter))));
  Q_EMIT scaleChanged(pixelsPerSecond_, fitted_);
}

TerrainAccent TerrainView::accent() const {
  TerrainAccent accent;
  accent.selected = selection_.steps();
  accent.current = selection_.current();
  accent.focused = hasFocus();
  if (ghost_) {
    accent.ghosts = ghost_->steps;
  } else {
    accent.gap = selection_.gap();
    accent.ownGap = selection_.hasOwnGap();
  }
  accent.rubberBand = rubberBand_;
  return accent;
}

void TerrainView::paintEvent(QPaintEvent*) {
  const Theme& theme = themeFor(palette());
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), theme.ground);
  const TerrainAccent shown = accent();
  const QPointF origin(frame_.gutter - horizontalScrollBar()->value(), -verticalScrollBar()->value());
  const QRectF visible(horizontalScrollBar()->value(), verticalScrollBar()->value(), frame_.along(),
                       viewport()->height());
  TerrainPainter terrain(painter, scene(), geometry(), theme, typefaces_, shown, figures_, visible);
  painter.translate(origin);
  painter.save();
  painter.setClipRect(visible);
  terrain.paintContent();
  painter.restore();
  terrain.paintGutter();
  painter.translate(-origin);
  if (hasFocus()) {
    painter.setPen(QPen(theme.accent, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(viewport()->rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
  if (ghost_)
    paintChip(painter, pointer_, viewport()->rect(), ghost_->chip, ghost_->level, typefaces_.name, theme);
}

void TerrainView::resizeEvent(QResizeEvent*) { layOut(); }

void TerrainView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
    typefaces_ = typefacesFrom(font());
    layOut();
  } else if (event->type() == QEvent::PaletteChange) {
    figures_.clear();
    viewport()->update();
  }
  QAbstractScrollArea::changeEvent(event);
}

void TerrainView::scrollContentsBy(int, int) {
  viewport()->update();
  announceGeometry(*this);
}

bool TerrainView::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const QString tip = gesture_ ? QString() : toolTipAt(help->pos());
    if (tip.isEmpty())
      QToolTip::hideText();
    else
      QToolTip::showText(help->globalPos(), tip, viewport());
    return true;
  }
  if (event->type() == QEvent::Leave)
    viewport()->unsetCursor();
  return QAbstractScrollArea::viewportEvent(event);
}

QString TerrainView::toolTipAt(QPointF viewport) const {
  const QPointF at = toTerrain(viewport);
  if (viewport.x() < frame_.gutter)
    return {};
  const Seconds moment = geometry().scale().timeOf(at.x());
  if (geometry().effortStrip().contains(at))
    return effortToolTip(subject(), moment);
  if (geometry().spineStrip().contains(at))
    return spineToolTip(subject(), moment);
  const TerrainHit hit = geometry().hit(at);
  switch (hit.kind) {
  case TerrainHit::Kind::block:
  case TerrainHit::Kind::blockEdge:
    return stepToolTip(subject(), *hit.step);
  case TerrainHit::Kind::connector:
    return wayToolTip(subject(), *hit.step);
  case TerrainHit::Kind::section:
    return sectionToolTip(subject(), hit.section);
  case TerrainHit::Kind::gap:
  case TerrainHit::Kind::ground:
    return {};
  }
  return {};
}

void TerrainView::wheelEvent(QWheelEvent* event) {
  const QPoint turn = event->angleDelta();
  if (event->modifiers().testFlag(Qt::ControlModifier)) {
    zoomTo(pixelsPerSecond_ * std::pow(kZoomStep, turn.y() / 120.0), std::max(event->position().x(), frame_.gutter));
    event->accept();
    return;
  }
  const bool upAndDown = verticalScrollBar()->maximum() > 0 && !event->modifiers().testFlag(Qt::ShiftModifier);
  if (upAndDown && turn.y() != 0) {
    QAbstractScrollArea::wheelEvent(event);
    return;
  }
  const QPoint pixels = event->pixelDelta();
  const int along =
      pixels.isNull() ? (turn.x() != 0 ? turn.x() : turn.y()) / 2 : (pixels.x() != 0 ? pixels.x() : pixels.y());
  horizontalScrollBar()->setValue(horizontalScrollBar()->value() - along);
  event->accept();
}

} // namespace matwright
