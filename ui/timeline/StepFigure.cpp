#include "ui/timeline/StepFigure.h"

#include "ui/figure/FigurePaint.h"
#include "ui/theme/Theme.h"

#include <cmath>

namespace matwright {
namespace {

constexpr std::size_t kMostPictures = 600;

FigureStyle styleFor(qreal width, std::optional<Region> region, const Theme& theme, const QColor& paper) {
  FigureStyle style;
  style.colours.near = theme.bodyNear;
  style.colours.far = theme.bodyFar;
  style.colours.accent = theme.bodyAccent;
  style.colours.floor = theme.floor;
  style.colours.paper = paper;
  style.floor = false;
  style.thinnest = width < 40 ? 1.3 : 1.7;
  if (region && width >= 44)
    style.regions.insert(*region);
  return style;
}

} // namespace

void FigurePictures::paint(QPainter& painter, const QRectF& box, const Pose* pose, std::optional<Region> region,
                           const Theme& theme, const QColor& paper) {
  if (box.width() < 6 || box.height() < 6)
    return;
  if (!pose) {
    painter.save();
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(std::min({box.width(), box.height(), 26.0})));
    painter.setFont(font);
    painter.setPen(theme.inkSoft);
    painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
    painter.restore();
    return;
  }
  const qreal ratio = painter.device()->devicePixelRatio();
  const QSize size(static_cast<int>(std::floor(box.width())), static_cast<int>(std::floor(box.height())));
  const Key key{pose,         size.width(), size.height(), static_cast<int>(std::lround(ratio * 100)),
                paper.rgba(), theme.dark};
  auto known = pictures_.find(key);
  if (known == pictures_.end()) {
    if (pictures_.size() >= kMostPictures)
      pictures_.clear();
    QPixmap picture(size * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    QPainter into(&picture);
    into.setRenderHint(QPainter::Antialiasing);
    paintFigure(into, QRectF(QPointF(), QSizeF(size)), *pose, styleFor(box.width(), region, theme, paper));
    known = pictures_.emplace(key, std::move(picture)).first;
  }
  const QPointF corner(box.center().x() - size.width() / 2.0, box.bottom() - size.height());
  // On whole pixels, so that thin limbs stay sharp.
  painter.drawPixmap(QPointF(std::round(corner.x()), std::round(corner.y())), known->second);
}

} // namespace matwright
