#include "ui/tidy/TidyTerrains.h"

#include "ui/timeline/TerrainText.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr double kZoomStep = 1.25, kClosest = 8;
constexpr std::size_t kMany = 20; // lines: more of them must not hide what they lead to

} // namespace

TidyTerrains::TidyTerrains(const PlanDocument& document, QWidget* parent)
    : QAbstractScrollArea(parent), document_(document), typefaces_(typefacesFrom(font())) {
  setAccessibleName(tr("The class as it is, and tidied"));
  setFocusPolicy(Qt::StrongFocus);
  setFrameShape(QFrame::NoFrame);
  viewport()->setMouseTracking(true);
  viewport()->setAutoFillBackground(false);
  setPicture({document.snapshot(), document.snapshot(), {}});
}

void TidyTerrains::setPicture(TidyPicture picture) {
  // Pictures go by the address of their pose, and poses of other knowledge may have those of the one before.
  if (picture.before.knowledge != picture_.before.knowledge)
    figures_.clear();
  picture_ = std::move(picture);
  layOut();
  if (current_ && !stage_.before.block(*current_))
    setCurrent({});
  else
    tellCurrent();
}

void TidyTerrains::setPinned(std::vector<StepId> pinned) {
  pinned_ = std::move(pinned);
  viewport()->update();
  tellCurrent();
}

void TidyTerrains::setWaiting(bool waiting) {
  waiting_ = waiting;
  viewport()->update();
}

void TidyTerrains::setCurrent(std::optional<StepId> step) {
  const Block* block = step ? stage_.after.block(*step) : nullptr;
  if (!block)
    step.reset();
  if (step == current_)
    return;
  current_ = step;
  if (block && horizontalScrollBar()->maximum() > 0) {
    const qreal x = (block->rect.center().x() + stage_.before.block(*step)->rect.center().x()) / 2;
    horizontalScrollBar()->setValue(static_cast<int>(x - stage_.after.frame().along() / 2));
  }
  viewport()->update();
  tellCurrent();
  Q_EMIT currentChanged();
}

void TidyTerrains::layOut() {
  stage_ =
      stageOf(sceneOf(picture_.before), sceneOf(picture_.after), measuresOf(typefaces_), viewport()->size(), zoom_);
  lines_ = linesOf(stage_, picture_.moves);
  texts_ = textsOf(stage_);
  const int along = static_cast<int>(stage_.after.frame().along());
  horizontalScrollBar()->setPageStep(along);
  horizontalScrollBar()->setSingleStep(40);
  horizontalScrollBar()->setRange(0, zoom_ == 1 ? 0 : std::max(0, static_cast<int>(stage_.size.width()) - along));
  verticalScrollBar()->setPageStep(viewport()->height());
  verticalScrollBar()->setSingleStep(20);
  verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(stage_.size.height()) - viewport()->height()));
  viewport()->update();
}

void TidyTerrains::zoomTo(double zoom, qreal viewportX) {
  const Seconds about = stage_.after.scale().timeOf(toStage({viewportX, 0}).x());
  zoom_ = std::clamp(zoom, 1.0, kClosest);
  layOut();
  horizontalScrollBar()->setValue(
      static_cast<int>(std::lround(stage_.after.scale().xOf(about) - (viewportX - stage_.after.frame().gutter))));
}

QPointF TidyTerrains::toStage(QPointF viewport) const {
  return viewport + QPointF(horizontalScrollBar()->value() - stage_.after.frame().gutter, verticalScrollBar()->value());
}

QPointF TidyTerrains::toViewport(QPointF stage) const { return stage + (QPointF() - toStage({})); }

void TidyTerrains::paintTerrain(QPainter& painter, bool after, const QRectF& visible) {
  const Theme& theme = themeFor(palette());
  TerrainAccent accent;
  if (current_) {
    accent.selected = {*current_};
    accent.current = current_;
    accent.focused = hasFocus();
  }
  for (const TidyMove& move : picture_.moves)
    accent.ghosts.push_back(move.step);
  const TerrainGeometry& geometry = after ? stage_.after : stage_.before;
  TerrainPainter terrain(painter, after ? stage_.afterScene : stage_.beforeScene, geometry, theme, typefaces_, accent,
                         figures_, visible);
  painter.save();
  painter.setClipRect(visible);
  terrain.paintContent();
  painter.restore();
  terrain.paintGutter();
  painter.setFont(typefaces_.heading);
  painter.setPen(theme.ink);
  painter.drawText(QRectF(visible.left() - geometry.frame().gutter + 8, 3, geometry.frame().gutter - 12,
                          geometry.frame().fonts.heading.line),
                   Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, after ? tr("Tidied") : tr("As it is"));
}

void TidyTerrains::paintLines(QPainter& painter) const {
  const Theme& theme = themeFor(palette());
  QRegion free = QRectF(QPointF(), stage_.size).toAlignedRect();
  for (const QRectF& text : texts_)
    free -= text.toAlignedRect();
  painter.save();
  painter.setClipRegion(free, Qt::IntersectClip);
  // The current one last, over the others.
  for (const bool chosen : {false, true})
    for (const TidyLine& line : lines_) {
      if ((current_ == line.step) != chosen)
        continue;
      QColor colour = theme.accent;
      colour.setAlphaF(chosen ? 1.0F : lines_.size() > kMany ? 0.4F : 0.75F);
      painter.setPen(QPen(colour, chosen ? 2.4 : 1.1));
      painter.setBrush(Qt::NoBrush);
      painter.drawPolyline(line.points.data(), static_cast<int>(line.points.size()));
      painter.setPen(Qt::NoPen);
      painter.setBrush(colour);
      const qreal size = chosen ? 5 : 3.5;
      painter.drawEllipse(line.points.front(), size * 0.6, size * 0.6);
      const QPointF tip = line.points.back();
      painter.drawPolygon(QPolygonF({tip, tip + QPointF(-size, -1.8 * size), tip + QPointF(size, -1.8 * size)}));
    }
  painter.restore();
}

// A needle with a round head, stuck into the upper edge of the block.
void TidyTerrains::paintPins(QPainter& painter) const {
  const Theme& theme = themeFor(palette());
  for (const auto& [geometry, top] : {std::pair(&stage_.before, 0.0), std::pair(&stage_.after, stage_.afterTop)})
    for (const StepId step : pinned_) {
      const Block* block = geometry->block(step);
      if (!block)
        continue;
      const QPointF foot(block->rect.center().x(), top + block->rect.top() + 5);
      painter.setPen(QPen(theme.ink, 1.8));
      painter.drawLine(foot, foot - QPointF(0, 8));
      painter.setPen(QPen(theme.ground, 1));
      painter.setBrush(theme.ink);
      painter.drawEllipse(foot - QPointF(0, 10), 4.2, 4.2);
    }
}

void TidyTerrains::paintEvent(QPaintEvent*) {
  const Theme& theme = themeFor(palette());
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), theme.ground);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF origin = toViewport({});
  const qreal left = horizontalScrollBar()->value(), along = stage_.after.frame().along();
  painter.save();
  painter.translate(origin);
  paintTerrain(painter, false, QRectF(left, 0, along, stage_.beforeBottom()));
  painter.translate(0, stage_.afterTop);
  if (waiting_)
    painter.setOpacity(0.35);
  paintTerrain(painter, true, QRectF(left, 0, along, stage_.size.height() - stage_.afterTop));
  painter.translate(0, -stage_.afterTop);
  painter.setClipRect(QRectF(left, 0, along, stage_.size.height()));
  paintLines(painter);
  painter.setOpacity(1);
  paintPins(painter);
  painter.restore();
  if (hasFocus()) {
    painter.setPen(QPen(theme.accent, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(viewport()->rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
}

void TidyTerrains::resizeEvent(QResizeEvent*) { layOut(); }

void TidyTerrains::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
    typefaces_ = typefacesFrom(font());
    layOut();
  } else if (event->type() == QEvent::PaletteChange) {
    figures_.clear();
    viewport()->update();
  }
  QAbstractScrollArea::changeEvent(event);
}

QString TidyTerrains::spoken(StepId step) const {
  const auto place = [&](const TerrainScene& scene) {
    return static_cast<std::size_t>(
        std::find_if(scene.steps.begin(), scene.steps.end(), [&](const TerrainStep& each) { return each.id == step; }) -
        scene.steps.begin());
  };
  QStringList parts{spokenStep({picture_.after, *picture_.after.knowledge, document_.roster(), stage_.afterScene},
                               place(stage_.afterScene))};
  if (std::any_of(picture_.moves.begin(), picture_.moves.end(),
                  [&](const TidyMove& move) { return move.step == step; }))
    parts << tr("moves here from step %1").arg(place(stage_.beforeScene) + 1);
  if (std::find(pinned_.begin(), pinned_.end(), step) != pinned_.end())
    parts << tr("pinned");
  return parts.join(QStringLiteral(", "));
}

void TidyTerrains::tellCurrent() { setAccessibleDescription(current_ ? spoken(*current_) : QString()); }

QString TidyTerrains::toolTipAt(QPointF viewport) const {
  const auto hit = viewport.x() < stage_.after.frame().gutter ? std::nullopt : hitOn(stage_, toStage(viewport));
  if (!hit)
    return {};
  const Snapshot& snapshot = hit->after ? picture_.after : picture_.before;
  return stepToolTip(
      {snapshot, *snapshot.knowledge, document_.roster(), hit->after ? stage_.afterScene : stage_.beforeScene},
      hit->step);
}

bool TidyTerrains::viewportEvent(QEvent* event) {
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

void TidyTerrains::mousePressEvent(QMouseEvent* event) {
  const auto hit = hitOn(stage_, toStage(event->position()));
  setCurrent(hit ? std::optional((hit->after ? stage_.afterScene : stage_.beforeScene).steps[hit->step].id)
                 : std::nullopt);
}

void TidyTerrains::contextMenuEvent(QContextMenuEvent* event) {
  if (!current_)
    return;
  const QPointF block = toViewport(stage_.after.block(*current_)->rect.center() + QPointF(0, stage_.afterTop));
  Q_EMIT stepMenuWanted(event->reason() == QContextMenuEvent::Keyboard ? viewport()->mapToGlobal(block.toPoint())
                                                                       : event->globalPos());
}

void TidyTerrains::wheelEvent(QWheelEvent* event) {
  if (event->modifiers().testFlag(Qt::ControlModifier)) {
    zoomTo(zoom_ * std::pow(kZoomStep, event->angleDelta().y() / 120.0), event->position().x());
    event->accept();
    return;
  }
  QAbstractScrollArea::wheelEvent(event);
}

void TidyTerrains::keyPressEvent(QKeyEvent* event) {
  const std::vector<TerrainStep>& steps = stage_.afterScene.steps;
  const auto at =
      std::find_if(steps.begin(), steps.end(), [&](const TerrainStep& step) { return step.id == current_; });
  const qreal middle = stage_.after.frame().gutter + stage_.after.frame().along() / 2;
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

void TidyTerrains::focusInEvent(QFocusEvent* event) {
  viewport()->update();
  QAbstractScrollArea::focusInEvent(event);
}

void TidyTerrains::focusOutEvent(QFocusEvent* event) {
  viewport()->update();
  QAbstractScrollArea::focusOutEvent(event);
}

} // namespace matwright
