#pragma once

#include "core/plan/ClassWishes.h"

#include <QToolButton>
#include <QWidget>
#include <optional>

namespace matwright {

// The points of an arc of effort in a picture, to be drawn with pointer or keys: Left and Right choose a point, Up and
// Down raise and lower it by half a step, with Shift Left and Right move it in time.
class ArcEditor : public QWidget {
  Q_OBJECT

public:
  explicit ArcEditor(QWidget* parent = nullptr);

  const EffortArc& arc() const { return arc_; }
  void show(const EffortArc& arc); // emits nothing

  QPointF placeOf(const ArcPoint& point) const; // in the widget
  QSize sizeHint() const override { return {240, 92}; }
  QSize minimumSizeHint() const override { return {120, 70}; }

Q_SIGNALS:
  void changed();

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  QRectF area() const;
  void put(std::size_t point, double at, double effort); // between its neighbours, on half steps
  void tell();

  EffortArc arc_ = usualArc();
  std::size_t current_ = 0;
  bool dragging_ = false;
};

// Shapes of arcs to choose from as small pictures, over one that can be drawn.
class ArcChoice : public QWidget {
  Q_OBJECT

public:
  explicit ArcChoice(QWidget* parent = nullptr);

  const EffortArc& arc() const { return editor_->arc(); }
  void show(const EffortArc& arc); // emits nothing
  QString summary() const;         // the name of the shape

Q_SIGNALS:
  void changed(); // by the user

protected:
  void changeEvent(QEvent* event) override;

private:
  void refresh();

  std::vector<QToolButton*> shapes_;
  ArcEditor* editor_;
};

} // namespace matwright
