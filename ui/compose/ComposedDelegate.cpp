#include "ui/compose/ComposedList.h"
#include "ui/compose/ComposedRoles.h"
#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/RowText.h"
#include "ui/theme/Theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace matwright {
namespace {

constexpr int kEdge = 8, kAir = 4, kGap = 8;
constexpr int kBox = 15;

bool isHeading(const QModelIndex& index) { return !index.parent().isValid(); }

// Where the parts of a row stand, from its left and right edges.
struct RowPlaces {
  QRect box, words, length, mark;
};

RowPlaces placesOf(const QRect& row, const QFont& font) {
  RowPlaces places;
  const int mark = levelMarkSize(font), line = QFontMetrics(font).height();
  const int length = QFontMetrics(font).horizontalAdvance(QStringLiteral("00:00"));
  places.box = QRect(row.left() + kEdge, row.top() + kAir + (line - kBox) / 2, kBox, kBox);
  places.mark = QRect(row.right() - kEdge - mark, row.top() + kAir + (line - mark) / 2, mark, mark);
  places.length = QRect(places.mark.left() - kGap - length, row.top() + kAir, length, line);
  places.words = QRect(places.box.right() + kGap, row.top() + kAir,
                       std::max(60, places.length.left() - kGap - places.box.right() - kGap), row.height() - 2 * kAir);
  return places;
}

void paintBox(QPainter& painter, const QRect& box, bool ticked, const QColor& edge) {
  const Theme& theme = rowTheme();
  const QRectF square = QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(edge, 1));
  painter.setBrush(theme.panel);
  painter.drawRoundedRect(square, 3, 3);
  if (ticked) {
    painter.setPen(QPen(theme.ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF tick[] = {square.topLeft() + QPointF(3, 7), square.topLeft() + QPointF(6, 10.5),
                            square.topLeft() + QPointF(11, 3.5)};
    painter.drawPolyline(tick, 3);
  }
  painter.restore();
}

std::vector<RowText> linesOf(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  return {{index.data().toString(), option.font, theme.ink},
          {index.data(kSecondRole).toString(), option.font, theme.inkSoft}};
}

} // namespace

void ComposedDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  if (isHeading(index))
    return; // a widget stands there
  const Theme& theme = rowTheme();
  paintRowGround(*painter, option);
  const RowPlaces places = placesOf(option.rect, option.font);
  paintBox(*painter, places.box, index.data(Qt::CheckStateRole).toInt() == Qt::Checked,
           index.data(kOpenRole).toBool() ? theme.line : theme.inkSoft);
  matwright::paint(*painter, places.words, linesOf(option, index));
  painter->setFont(option.font);
  painter->setPen(theme.inkSoft);
  painter->drawText(places.length, Qt::AlignRight | Qt::AlignVCenter, index.data(kLengthRole).toString());
  if (const QVariant level = index.data(kStepLevelRole); level.isValid())
    paintLevelMark(*painter, places.mark, static_cast<Level>(level.toInt()), theme);
}

QSize ComposedDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  if (isHeading(index)) {
    const QWidget* heading = view_.indexWidget(index);
    return {120, heading ? heading->sizeHint().height() : 34};
  }
  const RowPlaces places = placesOf(QRect(0, 0, view_.viewport()->width(), 100), option.font);
  return {120, heightOf(linesOf(option, index), places.words.width()) + 2 * kAir};
}

bool ComposedDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                                   const QModelIndex& index) {
  if (isHeading(index) || index.data(kOpenRole).toBool())
    return false;
  bool toggles = false;
  if (event->type() == QEvent::MouseButtonRelease) {
    const QRect box = placesOf(option.rect, option.font).box.adjusted(-kEdge, -kAir, kEdge / 2, kAir);
    toggles = box.contains(static_cast<QMouseEvent*>(event)->position().toPoint());
  } else if (event->type() == QEvent::KeyPress) {
    toggles = static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
  }
  if (toggles)
    model->setData(index, index.data(Qt::CheckStateRole).toInt() == Qt::Checked ? Qt::Unchecked : Qt::Checked,
                   Qt::CheckStateRole);
  return toggles;
}

} // namespace matwright
