#include "ui/compose/ArcEditor.h"

#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/theme/Theme.h"

#include <QEvent>
#include <QIcon>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr double kStep = 0.5, kShift = 0.05;
constexpr qreal kReach = 14; // how far beside a point a press still means it
constexpr QSize kPicture{42, 20};

struct Shape {
  QString name;
  EffortArc arc;
};

// Common practice, no source; the first is usualArc().
const std::vector<Shape>& shapes() {
  static const std::vector<Shape> all{{ArcChoice::tr("Up, along, and down"), usualArc()},
                                      {ArcChoice::tr("Strong early"), {{0, 3}, {0.2, 7}, {0.5, 5}, {1, 1}}},
                                      {ArcChoice::tr("Strong late"), {{0, 2}, {0.45, 4}, {0.75, 7}, {1, 1}}},
                                      {ArcChoice::tr("Two waves"), {{0, 2}, {0.25, 6}, {0.45, 3}, {0.7, 7}, {1, 1}}},
                                      {ArcChoice::tr("Even"), {{0, 3}, {0.15, 4}, {0.85, 4}, {1, 2}}}};
  return all;
}

QPolygonF lineOf(const EffortArc& arc, const QRectF& area) {
  QPolygonF line;
  const auto at = [&](double x, double effort) {
    return QPointF(area.left() + x * area.width(), area.bottom() - effort / 10 * area.height());
  };
  line << at(0, effortAt(arc, 0));
  for (const ArcPoint& point : arc)
    line << at(point.at, point.effort);
  line << at(1, effortAt(arc, 1));
  return line;
}

QIcon pictureOf(const EffortArc& arc, const Theme& theme, qreal ratio) {
  QPixmap picture(kPicture * ratio);
  picture.setDevicePixelRatio(ratio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.ink, 1.6));
  painter.drawPolyline(lineOf(arc, QRectF(2, 2, kPicture.width() - 4, kPicture.height() - 4)));
  return QIcon(picture);
}

} // namespace

ArcEditor::ArcEditor(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Arc of effort"));
  setToolTip(
      tr("How much effort when: drag the points, or choose one with the arrow keys, raise and lower it with Up and "
         "Down, and move it in time with Shift"));
  tell();
}

void ArcEditor::show(const EffortArc& arc) {
  if (arc == arc_)
    return;
  arc_ = arc;
  current_ = std::min(current_, arc_.size() - 1);
  tell();
  update();
}

QRectF ArcEditor::area() const {
  const int line = fontMetrics().height();
  return QRectF(rect()).adjusted(fontMetrics().horizontalAdvance(QStringLiteral("10")) + 10, 7, -8, -line - 5);
}

QPointF ArcEditor::placeOf(const ArcPoint& point) const {
  const QRectF inside = area();
  return {inside.left() + point.at * inside.width(), inside.bottom() - point.effort / 10 * inside.height()};
}

void ArcEditor::paintEvent(QPaintEvent*) {
  const Theme& theme = themeFor(palette());
  const QRectF inside = area();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.line, 1));
  painter.setBrush(theme.panel);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
  painter.setFont(font());
  for (const int effort : {0, 5, 10}) {
    const qreal y = inside.bottom() - effort / 10.0 * inside.height();
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(inside.left(), y), QPointF(inside.right(), y));
    painter.setPen(theme.inkSoft);
    painter.drawText(QRectF(0, y - 10, inside.left() - 5, 20), Qt::AlignRight | Qt::AlignVCenter,
                     QString::number(effort));
  }
  const QRectF foot(inside.left(), inside.bottom() + 2, inside.width(), height() - inside.bottom() - 3);
  painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, tr("beginning"));
  painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter, tr("end"));
  painter.setPen(QPen(theme.accent, 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(lineOf(arc_, inside));
  for (std::size_t i = 0; i < arc_.size(); ++i) {
    const bool chosen = hasFocus() && i == current_;
    painter.setPen(QPen(theme.accent, 1.5));
    painter.setBrush(chosen ? theme.accent : theme.panel);
    const qreal radius = chosen ? 5.5 : 4;
    painter.drawEllipse(placeOf(arc_[i]), radius, radius);
  }
  if (hasFocus()) {
    painter.setPen(QPen(theme.accent, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
  }
}

void ArcEditor::put(std::size_t point, double at, double effort) {
  const double least = point == 0 ? 0 : arc_[point - 1].at, most = point + 1 < arc_.size() ? arc_[point + 1].at : 1;
  const bool end = (point == 0 && arc_[0].at == 0) || (point + 1 == arc_.size() && arc_[point].at == 1);
  const ArcPoint moved{end ? arc_[point].at : std::clamp(at, least, most),
                       std::clamp(std::round(effort / kStep) * kStep, 0.0, 10.0)};
  if (moved == arc_[point])
    return;
  arc_[point] = moved;
  tell();
  update();
  Q_EMIT changed();
}

void ArcEditor::tell() {
  const ArcPoint& point = arc_[current_];
  setAccessibleDescription(tr("Point %1 of %2: at %3 % of the class, effort %4 of 10")
                               .arg(current_ + 1)
                               .arg(arc_.size())
                               .arg(std::lround(point.at * 100))
                               .arg(point.effort));
}

void ArcEditor::mousePressEvent(QMouseEvent* event) {
  double nearest = kReach;
  for (std::size_t i = 0; i < arc_.size(); ++i)
    if (const QPointF off = placeOf(arc_[i]) - event->position(); std::hypot(off.x(), off.y()) < nearest) {
      nearest = std::hypot(off.x(), off.y());
      current_ = i;
      dragging_ = true;
    }
  tell();
  update();
}

void ArcEditor::mouseMoveEvent(QMouseEvent* event) {
  const QRectF inside = area();
  if (dragging_)
    put(current_, (event->position().x() - inside.left()) / inside.width(),
        (inside.bottom() - event->position().y()) / inside.height() * 10);
}

void ArcEditor::mouseReleaseEvent(QMouseEvent*) { dragging_ = false; }

void ArcEditor::keyPressEvent(QKeyEvent* event) {
  const ArcPoint point = arc_[current_];
  const int key = event->key();
  const int along = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
  if (key == Qt::Key_Up || key == Qt::Key_Down) {
    put(current_, point.at, point.effort + (key == Qt::Key_Up ? kStep : -kStep));
  } else if (along != 0 && event->modifiers().testFlag(Qt::ShiftModifier)) {
    put(current_, point.at + along * kShift, point.effort);
  } else if (along != 0) {
    current_ =
        static_cast<std::size_t>(std::clamp(static_cast<int>(current_) + along, 0, static_cast<int>(arc_.size()) - 1));
    tell();
    update();
  } else {
    QWidget::keyPressEvent(event);
  }
}

void ArcEditor::focusInEvent(QFocusEvent* event) {
  update();
  QWidget::focusInEvent(event);
}

void ArcEditor::focusOutEvent(QFocusEvent* event) {
  update();
  QWidget::focusOutEvent(event);
}

ArcChoice::ArcChoice(QWidget* parent) : QWidget(parent), editor_(new ArcEditor) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  auto* line = new QWidget;
  auto* flow = new FlowLayout(line, 4);
  flow->setContentsMargins(0, 0, 0, 0);
  for (const Shape& shape : shapes()) {
    auto* button = new QToolButton;
    button->setCheckable(true);
    button->setIconSize(kPicture);
    button->setToolTip(shape.name);
    button->setAccessibleName(tr("Effort: %1").arg(shape.name));
    button->setStyleSheet(QStringLiteral("QToolButton { padding: 2px 3px; }"));
    connect(button, &QToolButton::clicked, this, [this, arc = shape.arc] {
      editor_->show(arc);
      refresh();
      Q_EMIT changed();
    });
    flow->addWidget(button);
    shapes_.push_back(button);
  }
  column->addWidget(line);
  column->addWidget(editor_);
  connect(editor_, &ArcEditor::changed, this, [this] {
    refresh();
    Q_EMIT changed();
  });
  refresh();
}

void ArcChoice::show(const EffortArc& arc) {
  editor_->show(arc);
  refresh();
}

QString ArcChoice::summary() const {
  for (const Shape& shape : shapes())
    if (shape.arc == arc())
      return shape.name;
  return tr("An own shape");
}

void ArcChoice::refresh() {
  for (std::size_t i = 0; i < shapes_.size(); ++i) {
    shapes_[i]->setChecked(shapes()[i].arc == arc());
    shapes_[i]->setIcon(pictureOf(shapes()[i].arc, themeFor(palette()), devicePixelRatioF()));
  }
}

void ArcChoice::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange)
    refresh();
  QWidget::changeEvent(event);
}

} // namespace matwright
