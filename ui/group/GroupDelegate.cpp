#include "ui/group/GroupDelegate.h"

#include "core/people/Level.h"
#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/RowText.h"
#include "ui/group/GroupModel.h"
#include "ui/theme/Theme.h"

#include <QPainter>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kGap = 4, kEdge = 10, kFold = 8;
constexpr int kNamesWidest = 250;
constexpr double kOutside = 0.3; // how much is left of what is not looked at

QFont smaller(const QFont& font) {
  QFont made = font;
  made.setPixelSize(std::max(10, QFontMetrics(font).height() * 2 / 3));
  return made;
}

// A folded corner.
void paintVariant(QPainter& painter, const QRect& cell, const QColor& colour) {
  const QPointF corner = cell.topRight() + QPoint(1, 0);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawPolygon(QPolygonF({corner, corner - QPointF(kFold, 0), corner + QPointF(0, kFold)}));
}

} // namespace

void GroupDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const Theme& theme = rowTheme();
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  if (option.state.testFlag(QStyle::State_Selected))
    painter->fillRect(option.rect, theme.accentSoft);
  painter->setPen(theme.line);
  painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  if (index.data(GroupModel::kSectionRole).toBool()) {
    painter->restore();
    return;
  }
  if (index.column() > 0)
    painter->drawLine(option.rect.topLeft(), option.rect.bottomLeft());
  if (index.data(GroupModel::kOutsideRole).toBool())
    painter->setOpacity(kOutside);

  const QVariant level = index.data(GroupModel::kLevelRole);
  const int count = index.data(GroupModel::kCountRole).toInt();
  const QString number = level.isValid() && count > 1 ? QString::number(count) : QString();
  const QFont small = smaller(option.font);
  const QFontMetrics smallMetrics(small);
  const int side = levelMarkSize(option.font) - 2;
  int width = level.isValid() ? side : 0;
  if (!number.isEmpty())
    width += kGap + smallMetrics.horizontalAdvance(number);
  int left = option.rect.center().x() - width / 2;
  if (level.isValid()) {
    paintLevelMark(*painter, QRectF(left, option.rect.center().y() - side / 2, side, side),
                   static_cast<Level>(level.toInt()), theme);
    left += side + kGap;
  }
  painter->setFont(small);
  painter->setPen(theme.ink);
  painter->drawText(QRect(left, option.rect.top(), option.rect.width(), option.rect.height()),
                    Qt::AlignLeft | Qt::AlignVCenter, number);
  if (index.data(GroupModel::kVariedRole).toBool())
    paintVariant(*painter, option.rect, theme.inkSoft);
  if (option.state.testFlag(QStyle::State_HasFocus)) {
    painter->setOpacity(1);
    painter->setPen(QPen(theme.accent, 2));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
  }
  painter->restore();
}

QSize GroupDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
  const QFontMetrics small(smaller(option.font));
  return {levelMarkSize(option.font) + small.horizontalAdvance(QStringLiteral("00")) + 4 * kGap,
          levelMarkSize(option.font) + 8};
}

GroupHeader::GroupHeader(Qt::Orientation orientation, QWidget* parent) : QHeaderView(orientation, parent) {
  setSectionsClickable(true);
  setHighlightSections(false);
  setSectionResizeMode(Fixed);
}

QSize GroupHeader::sizeHint() const {
  if (orientation() == Qt::Horizontal)
    return {QHeaderView::sizeHint().width(), fontMetrics().height() + 12};
  int widest = 0;
  const QFontMetrics bold(headingFont(font()));
  for (int row = 0; model() && row < model()->rowCount(); ++row)
    widest = std::max(widest, bold.horizontalAdvance(model()->headerData(row, orientation()).toString()));
  return {std::min(widest + 2 * kEdge, kNamesWidest), QHeaderView::sizeHint().height()};
}

void GroupHeader::paintSection(QPainter* painter, const QRect& area, int section) const {
  const Theme& theme = rowTheme();
  const bool rows = orientation() == Qt::Vertical;
  const bool heading = rows && model()->headerData(section, orientation(), GroupModel::kSectionRole).toBool();
  const bool outside = !rows && model()->headerData(section, orientation(), GroupModel::kOutsideRole).toBool();
  painter->save();
  painter->fillRect(area, theme.ground);
  painter->setPen(theme.line);
  painter->drawLine(area.bottomLeft(), area.bottomRight());
  const QFont used = rows && !heading ? font() : headingFont(font());
  painter->setFont(used);
  painter->setPen(outside ? theme.inkSoft : theme.ink);
  const QRect inside = area.adjusted(rows ? kEdge : 2, 0, rows ? -kEdge : -2, 0);
  const QString name = model()->headerData(section, orientation()).toString();
  painter->drawText(inside, (rows ? Qt::AlignLeft : Qt::AlignHCenter) | Qt::AlignVCenter,
                    QFontMetrics(used).elidedText(name, Qt::ElideRight, inside.width()));
  painter->restore();
}

} // namespace matwright
