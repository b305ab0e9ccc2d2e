#include "ui/controls/MovementRow.h"

#include "ui/controls/LevelMark.h"
#include "ui/figure/FigurePaint.h"
#include "ui/theme/Theme.h"

#include <QPixmapCache>
#include <QWidget>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kEdge = 7;
constexpr int kApart = 3; // what stands below from what stands beside

// The same for poses that look the same; movements of one's own may get others while they are edited.
quint64 lookOf(const Pose& pose) {
  std::size_t look = 0;
  for (const SpineAngles& part : {pose.lumbar, pose.thorax, pose.neck})
    look = qHashMulti(look, part.bend, part.side, part.turn);
  for (const ArmAngles& arm : pose.arms)
    look = qHashMulti(look, arm.shoulder, arm.out, arm.elbow);
  for (const LegAngles& leg : pose.legs)
    look = qHashMulti(look, leg.hip, leg.out, leg.turn, leg.knee, leg.ankle);
  pose.on.forEach([&](Contact contact) { look = qHashMulti(look, static_cast<int>(contact)); });
  for (std::size_t i = 0; i < pose.supports.size(); ++i)
    pose.supports[i].forEach([&](Contact contact) { look = qHashMulti(look, i, static_cast<int>(contact)); });
  if (pose.holds)
    look = qHashMulti(look, static_cast<int>(pose.holds->what), static_cast<int>(pose.holds->at));
  pose.wall.forEach([&](WallContact contact) { look = qHashMulti(look, static_cast<int>(contact)); });
  return qHashMulti(look, pose.lean, pose.roll, static_cast<int>(pose.view), pose.flip);
}

int textLeft() { return kEdge + MovementRow::kFigure.width() + 8; }
int textRight(const MovementRow& row, const QFont& font) {
  return kEdge + (row.keepsLevel ? levelMarkSize(font) + 4 : 0);
}
int heightBelow(const MovementRow& row, int width) {
  return row.below.empty() ? 0 : kApart + heightOf(row.below, width);
}

} // namespace

QPixmap movementPixmap(const Movement& movement, const Option* option, const QSize& size, const QWidget& on) {
  const Theme& theme = rowTheme();
  const Pose& pose = posesOf(movement, option).end;
  const qreal ratio = on.devicePixelRatioF();
  const QString key = QStringLiteral("matwright/%1/%2x%3/%4/%5/%6")
                          .arg(lookOf(pose), 0, 16)
                          .arg(size.width())
                          .arg(size.height())
                          .arg(ratio)
                          .arg(theme.dark)
                          .arg(static_cast<int>(movement.regions.front()));
  QPixmap pixmap;
  if (QPixmapCache::find(key, &pixmap))
    return pixmap;
  pixmap = QPixmap(size * ratio);
  pixmap.setDevicePixelRatio(ratio);
  pixmap.fill(Qt::transparent);
  FigureStyle style;
  style.colours = figureColours(theme, QColor());
  style.regions = {movement.regions.front()};
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  paintFigure(painter, QRectF(1, 1, size.width() - 2, size.height() - 3), pose, style);
  painter.end();
  QPixmapCache::insert(key, pixmap);
  return pixmap;
}

void paint(QPainter& painter, const QStyleOptionViewItem& option, const MovementRow& row, const QWidget& on) {
  paintRowGround(painter, option);
  const QRect inside = option.rect.adjusted(kEdge, kEdge - 1, -kEdge, -kEdge + 1);
  const int under = heightBelow(row, inside.width());
  painter.drawPixmap(inside.left(),
                     inside.top() + std::max(0, (inside.height() - under - MovementRow::kFigure.height()) / 2),
                     movementPixmap(*row.movement, row.option, MovementRow::kFigure, on));
  paint(painter, option.rect.adjusted(textLeft(), kEdge - 1, -textRight(row, option.font), 0), row.lines);
  paint(painter, inside.adjusted(0, inside.height() - under + kApart, 0, 0), row.below);
  if (row.level) {
    const int side = levelMarkSize(option.font);
    paintLevelMark(painter, QRectF(inside.right() - side + 1, inside.top(), side, side), *row.level, rowTheme());
  }
}

int heightOf(const MovementRow& row, const QFont& font, int width) {
  const int beside = heightOf(row.lines, std::max(60, width - textLeft() - textRight(row, font)));
  return std::max(beside, MovementRow::kFigure.height()) + heightBelow(row, width - 2 * kEdge) + 2 * kEdge - 2;
}

} // namespace matwright
