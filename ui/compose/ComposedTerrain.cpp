#include "ui/compose/ComposedTerrain.h"

#include "ui/timeline/TerrainText.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr double kZoomStep = 1.25, kClosest = 8;

} // namespace

ComposedTerrain::ComposedTerrain(Composition& composition, QWidget* parent)
    : QAbstractScrollArea(parent), composition_(composition), document_(composition.document()),
      typefaces_(typefacesFrom(font())) {
  setAccessibleName(tr("The composed class"));
  setFocusPolicy(Qt::StrongFocus);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  viewport()->setMouseTracking(true);
  viewport()->setAutoFillBackground(false);
  connect(&document_, &PlanDocument::changed, this, &ComposedTerrain::takeClass);
  // Pictures go by the address of their pose, and poses of other knowledge may have those of the one before.
  connect(&document_, &PlanDocument::knowledgeChanged, this, [this] { figures_.clear(); });
  connect(&composition_, &Composition::keptChanged, this, [this] {
    viewport()->update();
    tellCurrent();
  });
  takeClass();
}

void ComposedTerrain::takeClass() {
  scene_ = sceneOf(document_.snapshot());
  layOut();
  if (current_ && !geometry_.block(*current_))
    setCurrent({});
  tellCurrent();
}

void ComposedTerrain::setWaiting(bool waiting) {
  waiting_ = waiting;
  viewport()->update();
}

void ComposedTerrain::setCurrent(std::optional<StepId> step) {
  const Block* block = step ? geometry_.block(*step) : nullptr;
  if (!block)
    step.reset();
  if (step == current_)
    return;
  current_ = step;
  if (block && horizontalScrollBar()->maximum() > 0)
    horizontalScrollBar()->setValue(static_cast<int>(block->rect.center().x() - geometry_.frame().along() / 2));
  viewport()->update();
  tellCurrent();
  Q_EMIT currentChanged();
}

void ComposedTerrain::layOut() {
  TerrainFrame frame = frameFor(viewport()->size(), measuresOf(typefaces_));
  frame.foot = viewport()->height() > leastHeight(frame, scene_) ? TerrainFoot::all : TerrainFoot::ruler;
  geometry_ = TerrainGeometry(scene_, frame, fittingScale(scene_, frame) * zoom_);
  const int along = static_cast<int>(frame.along());
  horizontalScrollBar()->setPageStep(along);
  horizontalScrollBar()->setSingleStep(40);
  horizontalScrollBar()->setRange(
      0, zoom_ == 1 ? 0 : std::max(0, static_cast<int>(geometry_.contentSize().width()) - along));
  verticalScrollBar()->setPageStep(viewport()->height());
  verticalScrollBar()->setSingleStep(20);
  verticalScrollBar()->setRange(0,
                                std::max(0, static_cast<int>(geometry_.contentSize().height()) - viewport()->height()));
  viewport()->update();
}

void ComposedTerrain::zoomTo(double zoom, qreal viewportX) {
  const Seconds about = geometry_.scale().timeOf(toTerrain({viewportX, 0}).x());
  zoom_ = std::clamp(zoom, 1.0, kClosest);
  layOut();
  horizontalScrollBar()->setValue(
      static_cast<int>(std::lround(geometry_.scale().xOf(about) - (viewportX - geometry_.frame().gutter))));
}

QPointF ComposedTerrain::toViewport(QPointF terrain) const {
  return terrain + QPointF(geometry_.frame().gutter - horizontalScrollBar()->value(), -verticalScrollBar()->value());
}

// A needle with a round head, stuck into the upper edge of the block. Steps of the open class stay in any case.
void ComposedTerrain::paintPins(QPainter& painter) const {
  const Theme& theme = themeFor(palette());
  for (const Block& block : geometry_.blocks()) {
    if (!composition_.isKept(block.id) || composition_.isOpen(block.id))
      continue;
    const QPointF foot(block.rect.center().x(), block.rect.top() + 5);
    painter.setPen(QPen(theme.ink, 1.8));
    painter.drawLine(foot, foot - QPointF(0, 8));
    painter.setPen(QPen(theme.ground, 1));
    painter.setBrush(theme.ink);
    painter.drawEllipse(foot - QPointF(0, 10), 4.2, 4.2);
  }
}

void ComposedTerrain::paintEvent(QPaintEvent*) {
  const Theme& theme = themeFor(palette());
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), theme.ground);
  painter.setRenderHint(QPainter::Antialiasing);
  TerrainAccent accent;
  if (current_) {
    accent.selected = {*current_};
    accent.current = current_;
    accent.focused = hasFocus();
  }
  if (composition_.completes())
    for (const Block& block : geometry_.blocks())
      if (!composition_.isOpen(block.id))
        accent.ghosts.push_back(block.id);
  const QRectF visible(horizontalScrollBar()->value(), verticalScrollBar()->value(), geometry_.frame().along(),
                       viewport()->height());
  painter.save();
  painter.translate(toViewport({}));
  if (waiting_)
    painter.setOpacity(0.35);
  TerrainPainter terrain(painter, scene_, geometry_, theme, typefaces_, accent, figures_, visible);
  painter.save();
  painter.setClipRect(visible);
  terrain.paintContent();
  paintPins(painter);
  painter.restore();
  terrain.paintGutter();
  painter.restore();
  if (hasFocus()) {
    painter.setPen(QPen(theme.accent, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(viewport()->rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
}

void ComposedTerrain::resizeEvent(QResizeEvent*) { layOut(); }

void ComposedTerrain::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
    typefaces_ = typefacesFrom(font());
    layOut();
  } else if (event->type() == QEvent::PaletteChange) {
    figures_.clear();
    viewport()->update();
  }
  QAbstractScrollArea::changeEvent(event);
}

void ComposedTerrain::tellCurrent() {
  const auto at = std::find_if(scene_.steps.begin(), scene_.steps.end(),
                               [this](const TerrainStep& step) { return step.id == current_; });
  if (at == scene_.steps.end())
    return setAccessibleDescription({});
  const QString spoken = spokenStep({document_.snapshot(), document_.knowledge(), document_.roster(), scene_},
                                    static_cast<std::size_t>(at - scene_.steps.begin()));
  setAccessibleDescription(composition_.isKept(*current_) ? tr("%1, stays").arg(spoken) : spoken);
}

QString ComposedTerrain::toolTipAt(QPointF viewport) const {
  if (viewport.x() < geometry_.frame().gutter)
    return {};
  const TerrainSubject subject{document_.snapshot(), document_.knowledge(), document_.roster(), scene_};
  const TerrainHit hit = geometry_.hit(toTerrain(viewport));
  switch (hit.kind) {
  case TerrainHit::Kind::block:
  case TerrainHit::Kind::blockEdge:
    return stepToolTip(subject, *hit.step);
  case TerrainHit::Kind::connector:
    return wayToolTip(subject, *hit.step);
  case TerrainHit::Kind::section:
    return sectionToolTip(subject, hit.section);
  case TerrainHit::Kind::gap:
  case TerrainHit::Kind::ground:
    break;
  }
  return {};
}

bool ComposedTerrain::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const QString tip = toolTipAt(help->pos());
    if (tip.isEmpty())
      QToolTip::hideText();
    else
      QToolTip::showText(help->globalPos(), tip, viewport());
    return true;
  }
  return QAbstractScrollArea::viewportEvent(event);
}

void ComposedTerrain::mousePressEvent(QMouseEvent* event) {
  const TerrainHit hit = geometry_.hit(toTerrain(event->position()));
  const bool block = hit.kind == TerrainHit::Kind::block || hit.kind == TerrainHit::Kind::blockEdge;
  setCurrent(block ? std::optional(scene_.steps[*hit.step].id) : std::nullopt);
}

void ComposedTerrain::wheelEvent(QWheelEvent* event) {
  if (event->modifiers().testFlag(Qt::ControlModifier)) {
    zoomTo(zoom_ * std::pow(kZoomStep, event->angleDelta().y() / 120.0), event->position().x());
    event->accept();
    return;
  }
  QAbstractScrollArea::wheelEvent(event);
}

void ComposedTerrain::keyPressEvent(QKeyEvent* event) {
  const std::vector<TerrainStep>& steps = scene_.steps;
  const auto at =
      std::find_if(steps.begin(), steps.end(), [&](const TerrainStep& step) { return step.id == current_; });
  const qreal middle = geometry_.frame().gutter + geometry_.frame().along() / 2;
  const bool control = event->modifiers().testFlag(Qt::ControlModifier);
  const int key = event->key();
  if (control && (key == Qt::Key_Plus || key == Qt::Key_Equal))
    zoomTo(zoom_ * kZoomStep, middle);
  else if (control && key == Qt::Key_Minus)
    zoomTo(zoom_ / kZoomStep, middle);
  else if (control && key == Qt::Key_0)
    zoomTo(1, middle);
  else if (steps.empty())
    QAbstractScrollArea::keyPressEvent(event);
  else if (key == Qt::Key_Home || (key == Qt::Key_Right && at == steps.end()))
    setCurrent(steps.front().id);
  else if (key == Qt::Key_End || (key == Qt::Key_Left && at == steps.end()))
    setCurrent(steps.back().id);
  else if (key == Qt::Key_Right)
    setCurrent((at + 1 == steps.end() ? at : at + 1)->id);
  else if (key == Qt::Key_Left)
    setCurrent((at == steps.begin() ? at : at - 1)->id);
  else
    QAbstractScrollArea::keyPressEvent(event);
}

void ComposedTerrain::focusInEvent(QFocusEvent* event) {
  viewport()->update();
  QAbstractScrollArea::focusInEvent(event);
}

void ComposedTerrain::focusOutEvent(QFocusEvent* event) {
  viewport()->update();
  QAbstractScrollArea::focusOutEvent(event);
}

} // namespace matwright
