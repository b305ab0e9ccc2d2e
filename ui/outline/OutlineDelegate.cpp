#include "ui/outline/OutlineDelegate.h"

#include "core/movement/Dose.h"
#include "core/plan/ClassPlan.h"
#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/RowText.h"
#include "ui/outline/OutlineModel.h"
#include "ui/theme/Theme.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QPainter>
#include <QSpinBox>
#include <QTreeView>

namespace matwright {
namespace {

constexpr int kEdge = 8;
constexpr int kAir = 4;

bool isHeading(const QModelIndex& index) { return !index.parent().isValid(); }
OutlineColumn columnOf(const QModelIndex& index) { return static_cast<OutlineColumn>(index.column()); }

std::vector<RowText> nameLines(const QTreeView& view, const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  QFont font = option.font;
  font.setItalic(index.data(kUnknownRole).toBool());
  std::vector<RowText> lines{{index.data().toString(), font, theme.ink},
                             {index.data(kSecondLineRole).toString(), option.font, theme.inkSoft}};
  if (view.isColumnHidden(static_cast<int>(OutlineColumn::begins)))
    lines.push_back({index.data(kFactsRole).toString(), option.font, theme.inkSoft});
  return lines;
}

void paintHeading(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  const QRect inside = option.rect.adjusted(kEdge, 2 * kAir, -kEdge, -kAir);
  const QString facts = index.data(kFactsRole).toString();
  const int wide = QFontMetrics(option.font).horizontalAdvance(facts) + 2;
  paint(painter, inside.adjusted(0, 0, -wide - kEdge, 0),
        {{index.data().toString(), headingFont(option.font), theme.ink}});
  paint(painter, QRect(inside.right() - wide + 1, inside.top(), wide, inside.height()),
        {{facts, option.font, theme.inkSoft}});
  painter.setPen(QPen(theme.line, 1));
  painter.drawLine(option.rect.bottomLeft() + QPoint(kEdge, 0), option.rect.bottomRight() - QPoint(kEdge, 0));
}

} // namespace

OutlineDelegate::OutlineDelegate(QTreeView& view) : QStyledItemDelegate(&view), view_(view) {}

void OutlineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const Theme& theme = rowTheme();
  if (option.state.testFlag(QStyle::State_Selected))
    painter->fillRect(option.rect, theme.accentSoft);
  if (isHeading(index)) {
    paintHeading(*painter, option, index);
  } else if (columnOf(index) == OutlineColumn::name) {
    matwright::paint(*painter, option.rect.adjusted(kEdge, kAir, -kAir, -kAir), nameLines(view_, option, index));
  } else if (columnOf(index) == OutlineColumn::caution) {
    const QVariant level = index.data(kLevelRole);
    const int side = levelMarkSize(option.font);
    if (level.isValid())
      paintLevelMark(*painter, QRectF(option.rect.right() - side - kAir, option.rect.top() + kAir, side, side),
                     static_cast<Level>(level.toInt()), theme);
  } else {
    painter->setFont(option.font);
    painter->setPen(columnOf(index) == OutlineColumn::dose ? theme.ink : theme.inkSoft);
    painter->drawText(option.rect.adjusted(kAir, kAir, -kAir, -kAir), index.data(Qt::TextAlignmentRole).toInt(),
                      index.data().toString());
  }
  const bool current = view_.hasFocus() && view_.currentIndex().siblingAtColumn(0) == index;
  if (current) {
    painter->setPen(QPen(theme.accent, 2));
    painter->drawLine(option.rect.topLeft() + QPoint(1, 2), option.rect.bottomLeft() + QPoint(1, -2));
  }
}

QSize OutlineDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QFontMetrics metrics(option.font);
  if (isHeading(index)) {
    if (index.column() != 0)
      return {};
    const int facts = metrics.horizontalAdvance(index.data(kFactsRole).toString()) + 2;
    const int room = view_.viewport()->width() - 3 * kEdge - facts;
    const int tall = heightOf({index.data().toString(), headingFont(option.font), {}}, std::max(40, room));
    return {0, tall + 3 * kAir + 1};
  }
  if (columnOf(index) == OutlineColumn::name) {
    const int room = view_.header()->sectionSize(0) - kEdge - kAir;
    return {120, heightOf(nameLines(view_, option, index), std::max(60, room)) + 2 * kAir};
  }
  if (columnOf(index) == OutlineColumn::caution)
    return {levelMarkSize(option.font) + 2 * kAir, levelMarkSize(option.font) + 2 * kAir};
  return {metrics.horizontalAdvance(index.data().toString()) + 2 * kAir + 2, metrics.height() + 2 * kAir};
}

QWidget* OutlineDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  if (isHeading(index)) {
    auto* name = new QLineEdit(parent);
    name->setMaxLength(static_cast<int>(kLongestName));
    name->setAccessibleName(tr("Name of the section"));
    return name;
  }
  auto* amount = new QSpinBox(parent);
  amount->setRange(1, Dose::kMost);
  amount->setAccessibleName(tr("Dose"));
  return amount;
}

void OutlineDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                           const QModelIndex& index) const {
  QRect area = option.rect;
  area.setHeight(std::max(area.height(), editor->sizeHint().height()));
  if (isHeading(index))
    area.setWidth(view_.viewport()->width() - area.left() - kEdge);
  else
    area.setWidth(std::max(area.width(), editor->sizeHint().width()));
  editor->setGeometry(area);
}

} // namespace matwright
