#include "ui/inspector/LoadBar.h"

#include "ui/theme/Theme.h"

#include <QPainter>
#include <algorithm>

namespace matwright {

LoadBar::LoadBar(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAttribute(Qt::WA_TransparentForMouseEvents);
}

void LoadBar::show(double peak, double mean, double mark, double full) {
  peak_ = peak;
  mean_ = mean;
  mark_ = mark;
  full_ = std::max(full, 1e-9);
  update();
}

void LoadBar::paintEvent(QPaintEvent*) {
  const Theme& theme = themeFor(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF track = QRectF(rect()).adjusted(0.5, 1.5, -0.5, -1.5);
  const auto upTo = [&](double value) {
    QRectF part = track;
    part.setWidth(track.width() * std::clamp(value / full_, 0.0, 1.0));
    return part;
  };
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  painter.drawRect(QRectF(track.left(), track.center().y() - 0.5, track.width(), 1));
  painter.setBrush(theme.accentSoft);
  painter.setPen(QPen(theme.accent, 1));
  if (peak_ > 0)
    painter.drawRect(upTo(peak_));
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.accent);
  painter.drawRect(upTo(mean_));
  if (mark_ > 0 && mark_ <= full_) {
    const double x = std::min(upTo(mark_).right(), track.right() - 0.5);
    painter.setPen(QPen(theme.ink, 1.4));
    painter.drawLine(QPointF(x, 0), QPointF(x, height()));
  }
}

} // namespace matwright
