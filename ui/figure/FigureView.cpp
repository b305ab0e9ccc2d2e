#include "ui/figure/FigureView.h"

#include "ui/theme/Theme.h"

#include <QPaintEvent>
#include <QPainter>

namespace matwright {

namespace {

constexpr int kTick = 33;        // milliseconds
constexpr int kFrameSamples = 8; // shapes that the frame must hold
constexpr int kMargin = 6;       // pixels

RepetitionMoment endMoment() {
  RepetitionMoment moment;
  moment.share = 1;
  return moment;
}

} // namespace

FigureView::FigureView(QWidget* parent) : QWidget(parent) {
  timer_.setInterval(kTick);
  timer_.setTimerType(Qt::PreciseTimer);
  connect(&timer_, &QTimer::timeout, this, &FigureView::tick);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void FigureView::showPose(const Pose& pose, const QString& name) { setShapes({pose, pose}, name); }

void FigureView::showMovement(const KeyPoses& poses, const Tempo& tempo, const QString& name) {
  tempo_ = tempo;
  setShapes(poses, name);
}

void FigureView::showNothing() {
  passage_.reset();
  setAccessibleName({});
  started_ = false;
  updateTimer();
  update();
}

void FigureView::setShapes(const KeyPoses& poses, const QString& name) {
  single_ = poses.start == poses.end || poses.start.view != poses.end.view || poses.start.flip != poses.end.flip;
  passage_.emplace(*settledOnce(single_ ? poses.end : poses.start), *settledOnce(poses.end));
  frame_ = {};
  for (int i = 0; i <= kFrameSamples; ++i)
    frame_.unite(pictureOf(passage_->at(static_cast<double>(i) / kFrameSamples)).extent);
  setAccessibleName(name);
  moment_ = endMoment();
  if (started_)
    clock_.restart();
  updateTimer();
  update();
}

void FigureView::setRegions(EnumSet<Region> regions) {
  regions_ = regions;
  update();
}

void FigureView::setBreathWords(const std::array<QString, kWordCount<Breath>>& words) {
  breathWords_ = words;
  update();
}

void FigureView::start() {
  started_ = true;
  clock_.restart();
  updateTimer();
}

void FigureView::stop() {
  started_ = false;
  updateTimer();
}

void FigureView::setReducedMotion(bool reduced) {
  reduced_ = reduced;
  updateTimer();
}

RepetitionMoment FigureView::moment() const { return moment_; }

void FigureView::seek(Seconds since) {
  moment_ = isWellFormed(tempo_) ? momentAt(tempo_, since) : endMoment();
  update();
}

bool FigureView::canMove() const {
  return started_ && !reduced_ && isVisible() && passage_ && !single_ && isWellFormed(tempo_);
}

void FigureView::updateTimer() {
  if (canMove() == timer_.isActive())
    return;
  if (canMove()) {
    timer_.start();
    tick();
  } else {
    timer_.stop();
    moment_ = endMoment();
    update();
  }
}

void FigureView::tick() { seek(Seconds(static_cast<double>(clock_.elapsed()) / 1000)); }

QSize FigureView::sizeHint() const { return {280, 180}; }
QSize FigureView::minimumSizeHint() const { return {80, 64}; }

void FigureView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  clock_.restart();
  updateTimer();
}

void FigureView::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  updateTimer();
}

void FigureView::paintEvent(QPaintEvent*) {
  if (!passage_)
    return;
  QPainter painter(this);
  const Theme& theme = themeFor(palette());
  FigureStyle style;
  style.colours = figureColours(theme, palette().color(backgroundRole()));
  style.regions = regions_;
  QRectF box = QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin);
  const QString& word = breathWords_[static_cast<std::size_t>(moment_.breath)];
  if (isMoving() && !word.isEmpty()) {
    painter.setPen(theme.inkSoft);
    painter.drawText(box, Qt::AlignTop | Qt::AlignRight, word);
  }
  const Picture picture = pictureOf(passage_->at(moment_.share));
  if (single_) {
    paintFigure(painter, box, picture, nullptr, frame_, style);
    return;
  }
  const Picture ghost = pictureOf(passage_->start());
  paintFigure(painter, box, picture, &ghost, frame_, style);
}

} // namespace matwright
