#pragma once

#include "core/figure/PoseDrag.h"
#include "ui/figure/FigurePaint.h"

#include <QString>
#include <QWidget>
#include <optional>

namespace matwright {

// A pose, large, with handles at its joints: dragged with the mouse, or turned with the arrow keys. Tab goes from
// handle to handle. It changes nothing itself: what it shows while a handle is dragged becomes the pose only when
// somebody takes it from edited().
class PoseCanvas : public QWidget {
  Q_OBJECT

public:
  explicit PoseCanvas(QWidget* parent = nullptr);

  // `ghost` is drawn faintly behind when it is seen from the same side. Ends a drag that is under way.
  void showPose(const Pose& pose, const std::optional<Pose>& ghost);
  // Limbs that are alike move together.
  void setTogether(bool together) { together_ = together; }

  const Pose& pose() const { return shown_; } // with what is being dragged
  bool isDragging() const { return drag_.has_value(); }
  Handle handle() const { return handle_; }
  void setHandle(Handle handle);
  QPointF spotOf(Handle handle) const; // in the widget
  const QString& hint() const { return hint_; }

  QSize sizeHint() const override { return {520, 420}; }
  QSize minimumSizeHint() const override { return {280, 240}; }

Q_SIGNALS:
  void previewed(const matwright::Pose& pose); // while a handle is dragged
  // Done by the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::Pose& pose, const QString& gesture);
  void hintChanged(const QString& hint); // on the handle, and on a limit that was reached

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;

private:
  struct Held {
    Settled shape; // at the beginning of the drag
    Pose pose;
    QPointF offset; // from the pointer to the handle
  };

  void settle(const Pose& pose, bool refit);
  void fit();
  // `held`: why the handle does not come along, if it does not.
  void updateHint(EnumSet<Joint> atLimit, const QString& held = {});
  QString toolTipFor(Handle handle) const;
  std::optional<Handle> handleAt(QPointF point, bool far) const;
  void turn(std::size_t which, double degrees);
  void moveSeat(Point2 by);
  QRectF box() const;
  FigureStyle style() const;
  FigurePlacing placing() const;
  void paintHandles(QPainter& painter) const;

  Pose pose_, shown_;
  std::optional<Pose> ghost_;
  Settled shape_;
  Extent frame_;
  View fittedView_ = View::side;
  bool fittedFlip_ = false;
  Handle handle_ = Handle::kneeNear;
  std::optional<Handle> hovered_;
  std::optional<Held> drag_;
  bool stopped_ = false, held_ = false;
  bool together_ = true;
  QString hint_;
};

// What a drag makes of a pose as it is written: angles that the drag turned, rounded to half degrees; all others as
// they were. `before` and `after` are settled angles. With `together`, limbs that were alike stay alike.
Pose writtenAfter(const Pose& written, const Pose& before, const Pose& after, bool together);

} // namespace matwright
