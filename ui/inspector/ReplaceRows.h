#pragma once

#include "core/evaluate/Swaps.h"
#include "ui/document/PlanDocument.h"
#include "ui/text/SwapText.h"

#include <QStyledItemDelegate>

namespace matwright {

struct MovementRow;

// One movement that could stand in the place of a step, as it is read. It points into the knowledge that it came from.
struct ReplaceRow {
  const Movement* movement = nullptr;
  const Option* option = nullptr;
  QString name;    // with its option
  QString dose;    // "8 alternating - 1:04"
  QString changes; // to the length of the class, to changes of position, to moving, to props
  QString likeness;
  QStringList unprepared; // but for what all of them leave so
  std::vector<SwapLine> cautions;
  QString details; // what it is, and the cautions one by one

  QString spoken() const; // all of it but the details
};

std::vector<ReplaceRow> replaceRows(const PlanDocument& document, const Step& step, const std::vector<Swap>& swaps);

// Paints them.
class ReplaceRows : public QStyledItemDelegate {
public:
  explicit ReplaceRows(QObject* parent) : QStyledItemDelegate(parent) {}

  void setRows(std::vector<ReplaceRow> rows) { rows_ = std::move(rows); }
  const std::vector<ReplaceRow>& rows() const { return rows_; }
  int height(int row, const QFont& font, int width) const;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
  MovementRow shown(int row, const QFont& font) const;

  std::vector<ReplaceRow> rows_;
};

} // namespace matwright
