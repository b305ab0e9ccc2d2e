// One figure in a window: a pose, or a movement from its start pose (faint) to its end pose, standing still, with an
// arrow along its way, or moving at its tempo.
#pragma once

#include "core/body/Body.h"
#include "core/figure/Passage.h"
#include "core/movement/Movement.h"
#include "core/movement/Repetition.h"
#include "ui/figure/FigurePaint.h"
#include "ui/figure/MovementPaint.h"

#include <QElapsedTimer>
#include <QString>
#include <QTimer>
#include <QWidget>
#include <array>

namespace matwright {

class FigureView : public QWidget {
  Q_OBJECT

public:
  explicit FigureView(QWidget* parent = nullptr);

  // `name` is what assistive technology reads, such as the movement with its option.
  void showPose(const Pose& pose, const QString& name);
  void showMovement(const KeyPoses& poses, const Tempo& tempo, const QString& name);
  void showNothing();

  void setRegions(EnumSet<Region> regions);
  // The words for breath phases, by Breath; shown with the count while the figure moves. Empty words are not shown.
  void setBreathWords(const std::array<QString, kWordCount<Breath>>& words);

  // Moves from the start of a repetition, until stopped. Nothing moves while motion is reduced, while the view is
  // hidden, or when it shows a single pose or two that are seen from different sides.
  void start();
  void stop();
  void setReducedMotion(bool reduced);
  bool isMoving() const { return timer_.isActive(); }

  // What is shown; a single pose is both of its ends.
  const KeyPoses& poses() const { return poses_; }
  EnumSet<Region> regions() const { return regions_; }
  bool isEmpty() const { return !passage_; }

  // The moment shown; the end pose when nothing moves.
  RepetitionMoment moment() const;
  // Shows the moment at a time of the movement, as when it moves.
  void seek(Seconds since);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  void setShapes(const KeyPoses& poses, const QString& name);
  bool canMove() const;
  void updateTimer();
  void tick();
  void paintBreath(QPainter& painter, const QRectF& box);

  KeyPoses poses_;
  std::optional<Passage> passage_; // none when nothing is shown
  MovementPicture still_;
  bool single_ = true; // start and end are one pose, or cannot be shown together
  Extent frame_;       // of all that a repetition shows
  Tempo tempo_;
  EnumSet<Region> regions_;
  std::array<QString, kWordCount<Breath>> breathWords_;
  QTimer timer_;
  QElapsedTimer clock_;
  bool started_ = false, reduced_ = false;
  RepetitionMoment moment_;
};

} // namespace matwright
