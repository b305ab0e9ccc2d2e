#include "ui/movements/PoseEditor.h"

#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/figure/FigureView.h"
#include "ui/movements/PoseCanvas.h"
#include "ui/movements/PoseForm.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QToolButton>

namespace matwright {
namespace {

constexpr QSize kThumbnail{136, 92};

QIcon thumbnail(const Pose& pose, const QWidget& on) {
  const qreal ratio = on.devicePixelRatioF();
  QPixmap pixmap(kThumbnail * ratio);
  pixmap.setDevicePixelRatio(ratio);
  pixmap.fill(Qt::transparent);
  FigureStyle style;
  style.colours = figureColours(themeFor(on.palette()), QColor());
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  paintFigure(painter, QRectF(QPointF(4, 4), QSizeF(kThumbnail) - QSizeF(8, 8)), pose, style);
  return QIcon(pixmap);
}

} // namespace

PoseEditor::PoseEditor(Arrangement arrangement, QWidget* parent)
    : QWidget(parent), canvas_(new PoseCanvas), form_(new PoseForm), hint_(plainLabel({})), ends_{},
      moving_(new FigureView), play_(new QPushButton(tr("Play"))), position_(new QComboBox), copy_(new QPushButton),
      together_(new QCheckBox(tr("Both sides together"))) {
  const bool above = arrangement == Arrangement::narrow;
  auto* whole = new QBoxLayout(above ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->setSpacing(12);
  whole->addWidget(makeSide(above));
  auto* row = new QHBoxLayout;
  row->setSpacing(12);
  whole->addLayout(row, 1);
  auto* middle = new QVBoxLayout;
  middle->setSpacing(6);
  middle->addWidget(makeTools());
  middle->addWidget(canvas_, 1);
  hint_->setMinimumHeight(2 * fontMetrics().lineSpacing());
  hint_->setAlignment(Qt::AlignTop);
  middle->addWidget(hint_);
  row->addLayout(middle, 1);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(form_);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setFixedWidth(form_->sizeHint().width() + scroll->verticalScrollBar()->sizeHint().width() + 6);
  row->addWidget(scroll);

  connect(canvas_, &PoseCanvas::previewed, form_, &PoseForm::show);
  connect(canvas_, &PoseCanvas::hintChanged, hint_, &QLabel::setText);
  connect(canvas_, &PoseCanvas::edited, this,
          [this](const Pose& pose, const QString& gesture) { take(pose, tr("Change a pose"), gesture); });
  connect(form_, &PoseForm::edited, this,
          [this](const Pose& pose, const QString& gesture) { take(pose, tr("Change a pose"), gesture); });
  connect(form_, &PoseForm::left, this, &PoseEditor::left);
  whenFocusLeaves(canvas_, this, [this] { Q_EMIT left(); });
  refresh();
}

QWidget* PoseEditor::makeSide(bool above) {
  auto* side = new QWidget;
  auto* column = new QBoxLayout(above ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  const QString names[] = {tr("Start"), tr("End")};
  for (std::size_t i = 0; i < ends_.size(); ++i) {
    auto* button = new QToolButton;
    button->setText(names[i]);
    button->setCheckable(true);
    button->setAutoExclusive(true);
    button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    button->setIconSize(kThumbnail);
    button->setAccessibleName(i == 0 ? tr("Edit the start pose") : tr("Edit the end pose"));
    connect(button, &QToolButton::clicked, this, [this, i] { editEnd(i == 1); });
    column->addWidget(button);
    ends_[i] = button;
  }
  moving_->setFixedSize(kThumbnail.width() + 22, kThumbnail.height() + 30);
  if (!above) {
    column->addSpacing(6);
    column->addWidget(softLabel(tr("One repetition")));
  }
  column->addWidget(moving_);
  play_->setCheckable(true);
  connect(play_, &QPushButton::toggled, this, [this](bool on) {
    play_->setText(on ? tr("Stop") : tr("Play"));
    if (on)
      moving_->start();
    else
      moving_->stop();
  });
  std::array<QString, kWordCount<Breath>> words;
  for (std::size_t i = 0; i < words.size(); ++i)
    words[i] = text(static_cast<Breath>(i));
  moving_->setBreathWords(words);
  offerSaving(*moving_);
  column->addWidget(play_, 0, above ? Qt::AlignVCenter : Qt::Alignment());
  column->addStretch(1);
  return side;
}

QWidget* PoseEditor::makeTools() {
  auto* tools = new QWidget;
  auto* line = new FlowLayout(tools, 6);
  position_->setAccessibleName(tr("Take the pose of a position"));
  position_->setToolTip(tr("Takes the pose of a position, with what rests there"));
  keepWheelForFocus(position_);
  connect(position_, &QComboBox::activated, this, [this](int index) {
    if (index > 0)
      take(positions_[static_cast<std::size_t>(index) - 1].pose, tr("Take a position's pose"), {});
    position_->setCurrentIndex(0);
  });
  auto* mirror = new QPushButton(tr("Exchange sides"));
  mirror->setToolTip(tr("Near limbs become far ones; side bends and turns go the other way"));
  connect(mirror, &QPushButton::clicked, this, [this] { take(sidesExchanged(edited_()), tr("Exchange sides"), {}); });
  connect(copy_, &QPushButton::clicked, this,
          [this] { take(end_ ? poses_.start : poses_.end, tr("Copy a pose"), {}); });
  together_->setChecked(true);
  together_->setToolTip(tr("While both arms or both legs are alike, what you do to one is done to the other"));
  connect(together_, &QCheckBox::toggled, canvas_, &PoseCanvas::setTogether);
  line->addWidget(position_);
  line->addWidget(copy_);
  line->addWidget(mirror);
  line->addWidget(together_);
  return tools;
}

void PoseEditor::setPositions(const std::vector<Position>& positions) {
  if (positions_ == positions)
    return;
  positions_ = positions;
  const QSignalBlocker quiet(position_);
  position_->clear();
  position_->addItem(tr("Pose of a position \u2026"));
  for (const Position& position : positions)
    position_->addItem(QString::fromStdString(position.name));
}

void PoseEditor::setReducedMotion(bool reduced) {
  moving_->setReducedMotion(reduced);
  play_->setVisible(!reduced);
}

void PoseEditor::show(const KeyPoses& poses, const Tempo& tempo, const QString& name) {
  const bool same = poses == poses_ && tempo == tempo_ && name == name_;
  poses_ = poses;
  tempo_ = tempo;
  name_ = name;
  if (!same)
    refresh();
}

void PoseEditor::editEnd(bool end) {
  if (end_ != end)
    Q_EMIT left();
  end_ = end;
  refresh();
}

void PoseEditor::take(const Pose& pose, const QString& what, const QString& gesture) {
  KeyPoses after = poses_;
  (end_ ? after.end : after.start) = pose;
  const QString key =
      gesture.isEmpty() ? QString() : (end_ ? QStringLiteral("end/") : QStringLiteral("start/")) + gesture;
  Q_EMIT edited(after, what, key);
  // Whoever listens shows what came of it; when that is nothing, the old poses are shown again.
  refresh();
}

void PoseEditor::refresh() {
  const Pose& pose = edited_();
  canvas_->setAccessibleName(end_ ? tr("End pose") : tr("Start pose"));
  if (canvas_->pose() != pose || !canvas_->isDragging())
    canvas_->showPose(pose, end_ ? poses_.start : poses_.end);
  form_->show(pose);
  copy_->setText(end_ ? tr("Copy from start") : tr("Copy from end"));
  for (std::size_t i = 0; i < ends_.size(); ++i)
    ends_[i]->setChecked((i == 1) == end_);
  showFigures();
}

void PoseEditor::showFigures() {
  ends_[0]->setIcon(thumbnail(poses_.start, *this));
  ends_[1]->setIcon(thumbnail(poses_.end, *this));
  moving_->showMovement(poses_, tempo_, tr("%1, one repetition").arg(name_));
}

} // namespace matwright
