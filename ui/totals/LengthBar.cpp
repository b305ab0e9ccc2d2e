#include "ui/totals/LengthBar.h"

#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QPainter>
#include <algorithm>

namespace matwright {

LengthBar::LengthBar(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Length against the target"));
}

void LengthBar::show(const Lengths& lengths) {
  if (lengths == lengths_)
    return;
  lengths_ = lengths;
  const QString words =
      tr("%1 of %2, likely %3 to %4")
          .arg(clock(lengths.length), clock(lengths.target), clock(lengths.likelyFrom), clock(lengths.likelyTo));
  setToolTip(words);
  setAccessibleDescription(words);
  update();
}

double LengthBar::at(Seconds moment) const {
  const Seconds longest = std::max({lengths_.length, lengths_.likelyTo, lengths_.target, Seconds(1)}) * 1.04;
  return width() * std::clamp(moment / longest, 0.0, 1.0);
}

void LengthBar::paintEvent(QPaintEvent*) {
  const Theme& theme = themeFor(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  constexpr double kThickness = 6;
  const double top = (height() - kThickness) / 2.0;
  const double middle = height() / 2.0;

  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  painter.drawRoundedRect(QRectF(0, top, width(), kThickness), kThickness / 2, kThickness / 2);
  painter.setBrush(theme.accent);
  if (lengths_.length > Seconds{})
    painter.drawRoundedRect(QRectF(0, top, std::max(at(lengths_.length), kThickness), kThickness), kThickness / 2,
                            kThickness / 2);

  // The bracket is drawn twice, so that it shows on the bar and beside it.
  const double from = at(lengths_.likelyFrom), to = at(lengths_.likelyTo);
  if (to > from) {
    for (const auto& [colour, thickness] : {std::pair{theme.ground, 3.6}, std::pair{theme.ink, 1.4}}) {
      painter.setPen(QPen(colour, thickness, Qt::SolidLine, Qt::RoundCap));
      painter.drawLine(QPointF(from, middle), QPointF(to, middle));
      painter.drawLine(QPointF(from, middle - 2), QPointF(from, middle + 2));
      painter.drawLine(QPointF(to, middle - 2), QPointF(to, middle + 2));
    }
  }

  painter.setPen(QPen(theme.ink, 2));
  const double target = at(lengths_.target);
  painter.drawLine(QPointF(target, 0), QPointF(target, height()));
}

} // namespace matwright
