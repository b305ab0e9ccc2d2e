#include "ui/controls/MarkedTree.h"

#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/RowText.h"
#include "ui/theme/Theme.h"

#include <QKeyEvent>
#include <QPainter>
#include <optional>

namespace matwright {
namespace {

constexpr int kEdge = 6;

std::optional<Level> levelOf(const QModelIndex& index) {
  const QVariant level = index.data(kLevelRole);
  return level.isValid() ? std::optional{static_cast<Level>(level.toInt())} : std::nullopt;
}

std::vector<RowText> linesOf(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  const bool remark = !index.data(kGroupRole).toBool() && !levelOf(index);
  return {{index.data().toString(), remark ? option.font : headingFont(option.font), theme.ink},
          {index.data(kBodyRole).toString(), option.font, theme.inkSoft},
          {index.data(kInsteadRole).toString(), option.font, theme.ink},
          {index.data(kOwnRole).toString(), option.font, theme.accent}};
}

// Where the mark begins, and the text, from the left edge of the row.
int markLeft(const QModelIndex& index) { return index.data(kGroupRole).toBool() ? kEdge + 14 : kEdge + 6; }
int textLeft(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const bool unmarked = index.data(kGroupRole).toBool() && !levelOf(index);
  return markLeft(index) + (unmarked ? 0 : levelMarkSize(option.font) + 7);
}

void paintOpenSign(QPainter& painter, const QPointF& centre, bool open, const QColor& colour) {
  QPolygonF sign({QPointF(-3, -4), QPointF(3, 0), QPointF(-3, 4)});
  if (open)
    sign = QPolygonF({QPointF(-4, -3), QPointF(4, -3), QPointF(0, 3)});
  sign.translate(centre);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawPolygon(sign);
}

} // namespace

MarkedTree::MarkedTree(const QString& name, QWidget* parent) : QTreeView(parent) {
  setItemDelegate(new MarkedRowDelegate(*this));
  setHeaderHidden(true);
  setRootIsDecorated(false);
  setIndentation(0);
  setExpandsOnDoubleClick(false);
  setWordWrap(true);
  setUniformRowHeights(false);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setMouseTracking(true);
  setAccessibleName(name);
  connect(this, &QTreeView::clicked, this, &MarkedTree::choose);
}

void MarkedTree::choose(const QModelIndex& index) {
  if (index.data(kGroupRole).toBool())
    setExpanded(index, !isExpanded(index));
  else if (index.isValid())
    Q_EMIT chosen(index);
}

void MarkedTree::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    choose(currentIndex());
  else
    QTreeView::keyPressEvent(event);
}

void MarkedTree::resizeEvent(QResizeEvent* event) {
  QTreeView::resizeEvent(event);
  if (event->size().width() != event->oldSize().width())
    QMetaObject::invokeMethod(
        this, [this] { doItemsLayout(); }, Qt::QueuedConnection);
}

MarkedRowDelegate::MarkedRowDelegate(QTreeView& view) : QStyledItemDelegate(&view), view_(view) {}

void MarkedRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  painter->setRenderHint(QPainter::Antialiasing);
  paintRowGround(*painter, option);
  const QRect inside = option.rect.adjusted(markLeft(index), 4, -kEdge, -4);
  const int side = levelMarkSize(option.font);
  const Theme& theme = rowTheme();
  if (const auto level = levelOf(index)) {
    paintLevelMark(*painter, QRectF(inside.left(), inside.top(), side, side), *level, theme);
  } else if (!index.data(kGroupRole).toBool()) {
    painter->setPen(Qt::NoPen);
    painter->setBrush(theme.inkSoft);
    painter->drawEllipse(QRectF(inside.left() + side / 2.0 - 2, inside.top() + side / 2.0 - 2, 4, 4));
  }
  if (index.data(kGroupRole).toBool())
    paintOpenSign(*painter, QPointF(option.rect.left() + kEdge + 5, inside.top() + side / 2.0), view_.isExpanded(index),
                  theme.inkSoft);
  matwright::paint(*painter, option.rect.adjusted(textLeft(option, index), 4, -kEdge, -4), linesOf(option, index));
}

QSize MarkedRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = view_.viewport()->width();
  if (width != width_ || option.font != font_) {
    heights_.clear();
    width_ = width;
    font_ = option.font;
  }
  const int left = textLeft(option, index);
  const std::vector<RowText> lines = linesOf(option, index);
  QString key = QString::number(left);
  for (const RowText& line : lines)
    key += QLatin1Char('\n') + line.text;
  const auto known = heights_.constFind(key);
  const int text = known != heights_.cend() ? *known : heightOf(lines, std::max(60, width - left - kEdge));
  heights_.insert(key, text);
  return {width, std::max(text, levelMarkSize(option.font)) + 8};
}

} // namespace matwright
