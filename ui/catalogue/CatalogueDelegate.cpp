#include "ui/catalogue/CatalogueDelegate.h"

#include "ui/catalogue/CatalogueModel.h"
#include "ui/controls/Labels.h"
#include "ui/controls/MovementRow.h"
#include "ui/theme/Theme.h"

namespace matwright {
namespace {

MovementRow rowOf(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  const auto* model = qobject_cast<const CatalogueModel*>(index.model());
  MovementRow row;
  row.movement = model ? model->movementAt(index) : nullptr;
  row.lines = {{index.data().toString(), headingFont(option.font), theme.ink},
               {index.data(CatalogueModel::kFactsRole).toString(), option.font, theme.inkSoft},
               {index.data(CatalogueModel::kAddedRole).toString(), option.font, theme.accent}};
  row.keepsLevel = true;
  if (const QVariant level = index.data(CatalogueModel::kLevelRole); level.isValid())
    row.level = static_cast<Level>(level.toInt());
  return row;
}

} // namespace

CatalogueDelegate::CatalogueDelegate(QAbstractItemView& view) : QStyledItemDelegate(&view), view_(view) {}

void CatalogueDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  if (const MovementRow row = rowOf(option, index); row.movement)
    matwright::paint(*painter, option, row, view_);
}

QSize CatalogueDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = view_.viewport()->width();
  return {width, heightOf(rowOf(option, index), option.font, width)};
}

} // namespace matwright
