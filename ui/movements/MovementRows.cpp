#include "ui/movements/MovementRows.h"

#include "ui/controls/Labels.h"
#include "ui/controls/RowText.h"
#include "ui/figure/FigurePaint.h"
#include "ui/text/VocabularyText.h"
#include "ui/theme/Theme.h"

#include <QAbstractItemView>
#include <QPainter>
#include <algorithm>

namespace matwright {
namespace {

constexpr int kEdge = 7;
constexpr QSize kFigure{64, 46};

QString searched(const Knowledge& knowledge, const Movement& movement) {
  QStringList words{QString::fromStdString(movement.name), positionName(knowledge, movement.start),
                    text(movement.repertoire)};
  for (const Region region : movement.regions)
    words << text(region);
  return words.join(QLatin1Char(' '));
}

std::vector<RowText> linesOf(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const Theme& theme = rowTheme();
  const bool own = index.data(MovementRows::kOwnRole).toBool();
  return {{index.data().toString(), headingFont(option.font), theme.ink},
          {index.data(MovementRows::kFactsRole).toString(), option.font, own ? theme.accent : theme.inkSoft}};
}

int textLeft() { return kEdge + kFigure.width() + 8; }

} // namespace

MovementRows::MovementRows(const KnowledgeDocument& document, QObject* parent)
    : QAbstractListModel(parent), document_(document) {
  connect(&document, &KnowledgeDocument::changed, this, &MovementRows::refresh);
  refresh();
}

void MovementRows::setWords(const QString& words) {
  words_ = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  refresh();
}

void MovementRows::setUnkept(const std::set<MovementId>& unkept) {
  unkept_ = unkept;
  if (!rows_.empty())
    Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

void MovementRows::refresh() {
  const auto knowledge = document_.knowledge();
  std::vector<const Movement*> rows;
  for (const Movement& movement : knowledge->catalogue.movements()) {
    const QString all = searched(*knowledge, movement);
    if (std::all_of(words_.begin(), words_.end(),
                    [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); }))
      rows.push_back(&movement);
  }
  std::stable_sort(rows.begin(), rows.end(), [](const Movement* a, const Movement* b) {
    if (isOwn(a->id) != isOwn(b->id))
      return isOwn(a->id);
    return QString::fromStdString(a->name).compare(QString::fromStdString(b->name), Qt::CaseInsensitive) < 0;
  });
  const bool same = std::equal(rows.begin(), rows.end(), rows_.begin(), rows_.end(),
                               [](const Movement* a, const Movement* b) { return a->id == b->id; });
  if (same) {
    knowledge_ = knowledge;
    rows_ = std::move(rows);
    if (!rows_.empty())
      Q_EMIT dataChanged(index(0), index(rowCount() - 1));
    return;
  }
  beginResetModel();
  knowledge_ = knowledge;
  rows_ = std::move(rows);
  endResetModel();
}

const Movement* MovementRows::movementAt(const QModelIndex& index) const {
  return index.isValid() && static_cast<std::size_t>(index.row()) < rows_.size()
             ? rows_[static_cast<std::size_t>(index.row())]
             : nullptr;
}

QModelIndex MovementRows::indexOf(const MovementId& movement) const {
  for (std::size_t i = 0; i < rows_.size(); ++i)
    if (rows_[i]->id == movement)
      return index(static_cast<int>(i));
  return {};
}

int MovementRows::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant MovementRows::data(const QModelIndex& index, int role) const {
  const Movement* movement = movementAt(index);
  if (!movement)
    return {};
  const QString name = QString::fromStdString(movement->name);
  const QString where = positionName(*knowledge_, movement->start);
  const bool own = isOwn(movement->id), unkept = unkept_.contains(movement->id);
  const QString facts = unkept ? tr("\u25b2 your own, not kept yet")
                        : own  ? tr("your own \u00b7 %1").arg(where)
                               : where;
  switch (role) {
  case Qt::DisplayRole:
    return name;
  case kFactsRole:
    return facts;
  case kOwnRole:
    return own;
  case kUnkeptRole:
    return unkept;
  case Qt::AccessibleTextRole:
    return QStringLiteral("%1, %2").arg(name, own ? facts : tr("comes with the program, %1").arg(where));
  default:
    return {};
  }
}

MovementRowDelegate::MovementRowDelegate(QAbstractItemView& view) : QStyledItemDelegate(&view), view_(view) {}

void MovementRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  paintRowGround(*painter, option);
  const auto* model = qobject_cast<const MovementRows*>(index.model());
  const Movement* movement = model ? model->movementAt(index) : nullptr;
  if (!movement)
    return;
  FigureStyle style;
  style.colours = figureColours(rowTheme(), QColor());
  const QRect inside = option.rect.adjusted(kEdge, 0, -kEdge, 0);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  paintFigure(
      *painter,
      QRectF(inside.left(), inside.top() + (inside.height() - kFigure.height()) / 2, kFigure.width(), kFigure.height()),
      movement->poses.end, style);
  painter->restore();
  matwright::paint(*painter, option.rect.adjusted(textLeft(), kEdge - 1, -kEdge, 0), linesOf(option, index));
}

QSize MovementRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = view_.viewport()->width();
  const int room = std::max(80, width - textLeft() - kEdge);
  return {width, std::max(heightOf(linesOf(option, index), room) + 2 * kEdge - 2, kFigure.height() + 8)};
}

} // namespace matwright
