#include "ui/catalogue/CatalogueDelegate.h"

#include "ui/catalogue/CatalogueModel.h"
#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/RowText.h"
#include "ui/figure/FigurePaint.h"
#include "ui/theme/Theme.h"

#include <QPainter>
#include <QPixmapCache>

namespace matwright {
namespace {

constexpr int kEdge = 7;

std::vector<RowText> linesOf(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  return {{index.data().toString(), headingFont(option.font), theme.ink},
          {index.data(CatalogueModel::kFactsRole).toString(), option.font, theme.inkSoft},
          {index.data(CatalogueModel::kAddedRole).toString(), option.font, theme.accent}};
}

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

int textLeft() { return kEdge + CatalogueDelegate::kFigure.width() + 8; }
int textRight(const QFont& font) { return kEdge + levelMarkSize(font) + 4; }

} // namespace

QPixmap movementPixmap(const Movement& movement, const QSize& size, const QWidget& on) {
  const Theme& theme = rowTheme();
  const qreal ratio = on.devicePixelRatioF();
  const QString key = QStringLiteral("matwright/%1/%2x%3/%4/%5/%6")
                          .arg(lookOf(movement.poses.end), 0, 16)
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
  paintFigure(painter, QRectF(1, 1, size.width() - 2, size.height() - 3), movement.poses.end, style);
  painter.end();
  QPixmapCache::insert(key, pixmap);
  return pixmap;
}

CatalogueDelegate::CatalogueDelegate(QAbstractItemView& view) : QStyledItemDelegate(&view), view_(view) {}

void CatalogueDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  paintRowGround(*painter, option);
  const auto* model = qobject_cast<const CatalogueModel*>(index.model());
  const Movement* movement = model ? model->movementAt(index) : nullptr;
  if (!movement)
    return;
  const QRect inside = option.rect.adjusted(kEdge, kEdge - 1, -kEdge, -kEdge + 1);
  painter->drawPixmap(inside.left(), inside.top() + std::max(0, (inside.height() - kFigure.height()) / 2),
                      movementPixmap(*movement, kFigure, view_));
  matwright::paint(*painter, option.rect.adjusted(textLeft(), kEdge - 1, -textRight(option.font), 0),
                   linesOf(option, index));
  const QVariant level = index.data(CatalogueModel::kLevelRole);
  if (level.isValid()) {
    const int side = levelMarkSize(option.font);
    paintLevelMark(*painter, QRectF(inside.right() - side + 1, inside.top(), side, side),
                   static_cast<Level>(level.toInt()), rowTheme());
  }
}

QSize CatalogueDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = view_.viewport()->width();
  const int room = std::max(60, width - textLeft() - textRight(option.font));
  const int tall = std::max(heightOf(linesOf(option, index), room), kFigure.height());
  return {width, tall + 2 * kEdge - 2};
}

} // namespace matwright
