#include "ui/figure/FigureView.h"

#include "ui/theme/Theme.h"

#include <QPaintEvent>
#include <QPainter>
#include <QStyle>
#include <QStyleOption>

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
  poses_ = poses;
  single_ = !movesInOnePicture(poses);
  passage_.emplace(*settledOnce(single_ ? poses.end : poses.start), *settledOnce(poses.end));
  still_ = single_ ? pictureOf(KeyPoses{poses.end, poses.end}) : pictureOf(*passage_);
  frame_ = still_.frame;
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

// The word of the phase with the count within it, such as "breathe in 3".
void FigureView::paintBreath(QPainter& painter, const QRectF& box) {
  const QString& word = breathWords_[static_cast<std::size_t>(moment_.breath)];
  if (word.isEmpty())
    return;
  painter.setPen(themeFor(palette()).inkSoft);
  painter.drawText(box, Qt::AlignTop | Qt::AlignRight, QStringLiteral("%1 %2").arg(word).arg(moment_.count));
}

void FigureView::paintEvent(QPaintEvent*) {
  if (!passage_)
    return;
  QPainter painter(this);
  FigureStyle style;
  style.colours = figureColours(themeFor(palette()), palette().color(backgroundRole()));
  style.regions = regions_;
  const QRectF box = QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin);
  const Picture picture = pictureOf(passage_->at(moment_.share));
  paintFigure(painter, box, picture, still_.ghost ? &*still_.ghost : nullptr, frame_, style);
  if (hasFocus()) {
    QStyleOptionFocusRect frame;
    frame.initFrom(this);
    QWidget::style()->drawPrimitive(QStyle::PE_FrameFocusRect, &frame, &painter, this);
  }
  if (isMoving())
    paintBreath(painter, box);
  else if (moment_.share >= 1)
    paintPaths(painter, still_.paths, placingOf(box, picture, frame_, style), style);
}

} // namespace matwright
