#include "ui/inspector/LoadOptionDelegate.h"

#include "ui/text/LoadText.h"
#include "ui/theme/Theme.h"

#include <QCoreApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace matwright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("matwright::LoadOptions", text); }

constexpr double kIndent = 20; // for the mark of the one in use
constexpr double kAround = 3;
constexpr double kBar = 5;
constexpr double kGap = 8; // between columns

QFont smallFont(const QFont& font) {
  QFont small = font;
  small.setPixelSize(std::max(9, static_cast<int>(std::lround(QFontInfo(font).pixelSize() * 0.85))));
  return small;
}

QRectF columnOf(const QRectF& row, std::size_t column) {
  const double width = (row.width() - kIndent - 4) / OptionLoad::kColumns;
  return {row.left() + kIndent + width * static_cast<double>(column), row.top(), width - kGap, row.height()};
}

QString nameOf(std::size_t column) { return column == 0 ? tr("effort") : text(static_cast<LoadedJoint>(column - 1)); }

// A full disc in a ring, or the ring alone.
void paintChoice(QPainter& painter, QPointF centre, bool inUse, const Theme& theme) {
  painter.setPen(QPen(inUse ? theme.accent : theme.inkSoft, 1.4));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(centre, 5, 5);
  if (!inUse)
    return;
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.accent);
  painter.drawEllipse(centre, 2.6, 2.6);
}

// A triangle that points up or down.
void paintExtreme(QPainter& painter, QPointF centre, Extreme extreme, const QColor& colour) {
  const double up = extreme == Extreme::greatest ? -1 : 1;
  painter.setPen(QPen(colour, 1));
  painter.setBrush(extreme == Extreme::greatest ? QBrush(colour) : QBrush(Qt::NoBrush));
  painter.drawPolygon(
      QPolygonF({centre + QPointF(-3.5, -2.5 * up), centre + QPointF(3.5, -2.5 * up), centre + QPointF(0, 3.5 * up)}));
}

} // namespace

QString spoken(const std::vector<OptionLoad>& rows, std::size_t row, bool inUse) {
  QStringList parts{rows[row].name};
  for (std::size_t column = 0; column < OptionLoad::kColumns; ++column) {
    const QString value = column == 0 ? rows[row].shown(0) : momentText(rows[row].values[column]);
    switch (extremeOf(rows, row, column)) {
    case Extreme::none:
      parts << QStringLiteral("%1 %2").arg(nameOf(column), value);
      break;
    case Extreme::least:
      parts << tr("%1 %2 (the least)").arg(nameOf(column), value);
      break;
    case Extreme::greatest:
      parts << tr("%1 %2 (the greatest)").arg(nameOf(column), value);
      break;
    }
  }
  if (inUse)
    parts << tr("in use");
  return parts.join(QStringLiteral(", "));
}

int rowHeight(const QString& name, int width, const QFont& font) {
  const QFontMetricsF metrics(font), small(smallFont(font));
  const QRectF room(0, 0, width - kIndent - 4, 1e4);
  return static_cast<int>(
      std::ceil(2 * kAround + metrics.boundingRect(room, Qt::TextWordWrap, name).height() + small.height() + kBar + 3));
}

QSize LoadOptionDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = option.widget ? option.widget->width() : 240;
  return {width, rowHeight(index.data().toString(), width, option.font)};
}

void LoadOptionDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto at = static_cast<std::size_t>(index.row());
  if (at >= rows_.size())
    return;
  const Theme& theme = themeFor(option.palette);
  const OptionLoad& row = rows_[at];
  const bool inUse = row.id == inUse_;
  const QRectF whole(option.rect);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  if (inUse)
    painter->fillRect(whole, theme.accentSoft);
  if (option.state.testFlag(QStyle::State_HasFocus)) {
    painter->setPen(QPen(theme.accent, 1, Qt::DashLine));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(whole.adjusted(0.5, 0.5, -0.5, -0.5));
  }
  painter->setPen(QPen(theme.line, 1));
  painter->drawLine(whole.bottomLeft() + QPointF(0, -0.5), whole.bottomRight() + QPointF(0, -0.5));

  const QFontMetricsF metrics(option.font), small(smallFont(option.font));
  paintChoice(*painter, {whole.left() + 9, whole.top() + kAround + metrics.height() / 2}, inUse, theme);
  painter->setFont(option.font);
  painter->setPen(theme.ink);
  painter->drawText(whole.adjusted(kIndent, kAround, -4, 0), Qt::TextWordWrap, row.name);

  const double numbers = whole.bottom() - kAround - kBar - 2 - small.height();
  for (std::size_t column = 0; column < OptionLoad::kColumns; ++column) {
    const QRectF cell = columnOf(whole, column);
    const Extreme extreme = extremeOf(rows_, at, column);
    QFont font = smallFont(option.font);
    font.setBold(extreme == Extreme::greatest);
    painter->setFont(font);
    painter->setPen(theme.ink);
    const QString words = row.shown(column);
    painter->drawText(QPointF(cell.left(), numbers + small.ascent()), words);
    if (extreme != Extreme::none)
      paintExtreme(*painter,
                   {cell.left() + QFontMetricsF(font).horizontalAdvance(words) + 8, numbers + small.height() / 2},
                   extreme, theme.ink);
    QRectF bar(cell.left(), whole.bottom() - kAround - kBar, cell.width(), kBar);
    painter->setPen(Qt::NoPen);
    painter->setBrush(theme.line);
    painter->drawRect(QRectF(bar.left(), bar.bottom() - 1, bar.width(), 1));
    bar.setWidth(bar.width() * std::clamp(row.values[column] / (column == 0 ? 10.0 : full_), 0.0, 1.0));
    painter->setBrush(column == 0 ? theme.inkSoft : theme.accent);
    painter->drawRect(bar);
  }
  painter->restore();
}

LoadOptionHeader::LoadOptionHeader(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize LoadOptionHeader::sizeHint() const {
  return {200, static_cast<int>(std::ceil(QFontMetricsF(smallFont(font())).height())) + 4};
}

void LoadOptionHeader::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setFont(smallFont(font()));
  painter.setPen(themeFor(palette()).inkSoft);
  for (std::size_t column = 0; column < OptionLoad::kColumns; ++column)
    painter.drawText(columnOf(QRectF(rect()), column).adjusted(0, 0, kGap, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     nameOf(column));
}

} // namespace matwright
