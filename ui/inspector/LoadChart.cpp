#include "ui/inspector/LoadChart.h"

#include "core/movement/Repetition.h"
#include "ui/text/LoadText.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QEvent>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

constexpr double kSample = 22; // length of a sample of a line
constexpr double kBetween = 12;

QFont smallFont(const QFont& font) {
  QFont small = font;
  small.setPixelSize(std::max(9, static_cast<int>(std::lround(QFontInfo(font).pixelSize() * 0.85))));
  return small;
}

QPen penOf(LoadedJoint joint, const Theme& theme) {
  switch (joint) {
  case LoadedJoint::lowBack:
    return {theme.accent, 2.2, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin};
  case LoadedJoint::hip:
    return {theme.ink, 1.5, Qt::DashLine, Qt::FlatCap, Qt::RoundJoin};
  case LoadedJoint::shoulder:
    return {theme.ink, 1.8, Qt::DotLine, Qt::FlatCap, Qt::RoundJoin};
  }
  return {};
}

QString seconds(double value) {
  return QLocale().toString(value, 'f', value < 10 && value != std::floor(value) ? 1 : 0);
}

} // namespace

double roundScale(double value) {
  if (!(value > 0))
    return 1;
  const double power = std::pow(10.0, std::floor(std::log10(value)));
  for (const double step : {1.0, 2.0, 4.0, 5.0, 6.0, 8.0})
    if (value <= step * power * (1 + 1e-9))
      return step * power;
  return 10 * power;
}

LoadChart::LoadChart(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(tr("Moments through one repetition"));
}

void LoadChart::show(std::shared_ptr<const MovementLoad> load, const Tempo& tempo, const BodySize& body) {
  load_ = std::move(load);
  tempo_ = tempo;
  unit_ = newtonMetres(body);
  full_ = roundScale(std::max(*std::max_element(load_->peak.begin(), load_->peak.end()) * unit_, 1.0));
  setAccessibleDescription(about());
  updateGeometry();
  update();
}

double LoadChart::valueAt(LoadedJoint joint, double share) const {
  const double place = std::clamp(share, 0.0, 1.0) * static_cast<double>(MovementLoad::kTimes - 1);
  const std::size_t before = std::min(static_cast<std::size_t>(place), MovementLoad::kTimes - 2);
  const auto at = static_cast<std::size_t>(joint);
  return std::lerp(load_->course[before][at], load_->course[before + 1][at], place - static_cast<double>(before)) *
         unit_;
}

// "low back from 12 N·m, most 62 N·m after 3 s (breathe out)".
QString LoadChart::about() const {
  const double whole = lengthOf(tempo_).value();
  QStringList parts;
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    const auto joint = static_cast<LoadedJoint>(i);
    const auto most = std::max_element(load_->course.begin(), load_->course.end(),
                                       [i](const auto& one, const auto& other) { return one[i] < other[i]; });
    const double share =
        static_cast<double>(most - load_->course.begin()) / static_cast<double>(MovementLoad::kTimes - 1);
    const std::size_t phase = momentAt(tempo_, Seconds(whole * std::min(share, 0.999))).phase;
    parts << tr("%1 begins at %2, most is %3 after %4 s (%5)")
                 .arg(text(joint), momentText(valueAt(joint, 0)), momentText(valueAt(joint, share)),
                      seconds(whole * share), text(tempo_.phases[phase].breath));
  }
  return parts.join(QStringLiteral("; "));
}

QString LoadChart::momentAbout(double share) const {
  const Seconds at = lengthOf(tempo_) * std::min(share, 0.999);
  QStringList parts{
      tr("After %1 s, %2").arg(seconds(at.value()), text(tempo_.phases[momentAt(tempo_, at).phase].breath))};
  for (std::size_t i = 0; i < kLoadedJoints; ++i)
    parts << QStringLiteral("%1 %2").arg(text(static_cast<LoadedJoint>(i)),
                                         momentText(valueAt(static_cast<LoadedJoint>(i), share)));
  return parts.join(QLatin1Char('\n'));
}

std::vector<LoadChart::Sample> LoadChart::samples(double width) const {
  const QFontMetricsF metrics(smallFont(font()));
  std::vector<Sample> all;
  double x = 0, y = 0;
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    const auto joint = static_cast<LoadedJoint>(i);
    const double wide = kSample + 5 + metrics.horizontalAdvance(text(joint));
    if (x > 0 && x + wide > width) {
      x = 0;
      y += metrics.height();
    }
    all.push_back({joint, QRectF(x, y, wide, metrics.height())});
    x += wide + kBetween;
  }
  return all;
}

QRectF LoadChart::plot() const {
  const QFontMetricsF metrics(smallFont(font()));
  const double left =
      std::max(metrics.horizontalAdvance(momentNumber(full_)), metrics.horizontalAdvance(momentNumber(full_ / 2))) + 8;
  const double below = metrics.height() + 3 + samples(width()).back().rect.bottom() + 3;
  return QRectF(rect()).adjusted(left, 2 * metrics.height() + 3, -2, -below);
}

int LoadChart::heightForWidth(int width) const {
  const QFontMetricsF metrics(smallFont(font()));
  return static_cast<int>(std::ceil(3 * metrics.height() + 9 + samples(width).back().rect.bottom())) +
         std::clamp(width / 4, 64, 140);
}

QSize LoadChart::sizeHint() const { return {260, heightForWidth(260)}; }
QSize LoadChart::minimumSizeHint() const { return {160, heightForWidth(160)}; }

void LoadChart::paintPhases(QPainter& painter, const QRectF& plot) const {
  const Theme& theme = themeFor(palette());
  const QFontMetricsF metrics(painter.font());
  const double whole = std::max(1, countsOf(tempo_));
  double done = 0;
  bool shaded = false;
  for (const Phase& phase : tempo_.phases) {
    const double left = plot.left() + plot.width() * done / whole;
    done += phase.counts;
    const double right = plot.left() + plot.width() * done / whole;
    const QRectF band(left, plot.top() - metrics.height() - 1, right - left, plot.height() + metrics.height() + 1);
    if (shaded)
      painter.fillRect(band, theme.accentSoft);
    shaded = !shaded;
    painter.setPen(QPen(theme.line, 1));
    if (done < whole)
      painter.drawLine(QPointF(right, band.top()), QPointF(right, plot.bottom()));
    const QString word = shortText(phase.breath);
    painter.setPen(theme.inkSoft);
    if (metrics.horizontalAdvance(word) + 2 <= band.width())
      painter.drawText(QRectF(band.left(), band.top(), band.width(), metrics.height()), Qt::AlignCenter, word);
  }
}

void LoadChart::paintScale(QPainter& painter, const QRectF& plot) const {
  const Theme& theme = themeFor(palette());
  const QFontMetricsF metrics(painter.font());
  for (const double value : {0.0, full_ / 2, full_}) {
    const double y = plot.bottom() - plot.height() * value / full_;
    painter.setPen(QPen(value > 0 ? theme.line : theme.inkSoft, 1));
    painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    painter.setPen(theme.inkSoft);
    painter.drawText(QRectF(0, y - metrics.height() / 2, plot.left() - 5, metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, value > 0 ? momentNumber(value) : QStringLiteral("0"));
  }
  painter.drawText(QRectF(0, 0, width(), metrics.height()), Qt::AlignLeft, tr("N\u00b7m"));
  const QRectF under(plot.left(), plot.bottom() + 3, plot.width(), metrics.height());
  painter.drawText(under, Qt::AlignLeft, QStringLiteral("0"));
  painter.drawText(under, Qt::AlignRight, tr("%1 s").arg(seconds(lengthOf(tempo_).value())));
  painter.drawText(under, Qt::AlignHCenter, tr("one repetition"));
}

void LoadChart::paintEvent(QPaintEvent*) {
  if (!load_)
    return;
  const Theme& theme = themeFor(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(smallFont(font()));
  const QRectF plot = this->plot();
  paintPhases(painter, plot);
  paintScale(painter, plot);
  painter.setBrush(Qt::NoBrush);
  for (std::size_t i = kLoadedJoints; i-- > 0;) { // the low back lies on top
    QPainterPath path;
    for (std::size_t k = 0; k < MovementLoad::kTimes; ++k) {
      const double share = static_cast<double>(k) / static_cast<double>(MovementLoad::kTimes - 1);
      const QPointF point(plot.left() + plot.width() * share,
                          plot.bottom() - plot.height() * load_->course[k][i] * unit_ / full_);
      k == 0 ? path.moveTo(point) : path.lineTo(point);
    }
    painter.setPen(penOf(static_cast<LoadedJoint>(i), theme));
    painter.drawPath(path);
  }
  const std::vector<Sample> all = samples(width());
  const double top = height() - all.back().rect.bottom() - 1;
  for (const Sample& sample : all) {
    const QRectF rect = sample.rect.translated(0, top);
    painter.setPen(penOf(sample.joint, theme));
    painter.drawLine(QPointF(rect.left(), rect.center().y()), QPointF(rect.left() + kSample, rect.center().y()));
    painter.setPen(theme.ink);
    painter.drawText(rect.adjusted(kSample + 5, 0, 1, 0), Qt::AlignLeft | Qt::AlignVCenter, text(sample.joint));
  }
}

bool LoadChart::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip || !load_)
    return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const QRectF inside = plot();
  const double x = help->pos().x();
  if (x < inside.left() || x > inside.right())
    QToolTip::hideText();
  else
    QToolTip::showText(help->globalPos(), momentAbout((x - inside.left()) / std::max(inside.width(), 1.0)), this);
  return true;
}

} // namespace matwright
