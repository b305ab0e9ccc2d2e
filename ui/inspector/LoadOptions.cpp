#include "ui/inspector/LoadOptions.h"

#include "ui/inspector/LoadOptionDelegate.h"
#include "ui/inspector/RowList.h"
#include "ui/text/LoadText.h"

#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

QString OptionLoad::shown(std::size_t column) const {
  return column == 0 ? QLocale().toString(values[0], 'f', 0) : momentNumber(values[column]);
}

Extreme extremeOf(const std::vector<OptionLoad>& rows, std::size_t row, std::size_t column) {
  const auto less = [column](const OptionLoad& one, const OptionLoad& other) {
    return one.values[column] < other.values[column];
  };
  const auto [least, most] = std::minmax_element(rows.begin(), rows.end(), less);
  const QString own = rows[row].shown(column);
  if (least->shown(column) == most->shown(column))
    return Extreme::none;
  return own == most->shown(column) ? Extreme::greatest : own == least->shown(column) ? Extreme::least : Extreme::none;
}

LoadOptions::LoadOptions(QWidget* parent)
    : QWidget(parent), header_(new LoadOptionHeader),
      list_(new RowList(tr("Options side by side"), [this](int row, int width) {
        return rowHeight(rows_[static_cast<std::size_t>(row)].name, width, list_->font());
      })) {
  list_->setItemDelegate(new LoadOptionDelegate(rows_, inUse_, full_, list_));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(header_);
  column->addWidget(list_);
  setFocusProxy(list_);
  connect(list_, &RowList::chosen, this, &LoadOptions::choose);
}

void LoadOptions::choose(int row) {
  if (rows_[static_cast<std::size_t>(row)].id != inUse_)
    Q_EMIT chosen(rows_[static_cast<std::size_t>(row)].id);
}

void LoadOptions::show(std::vector<OptionLoad> rows, const OptionId& inUse, double full) {
  const bool others = rows_ != rows;
  rows_ = std::move(rows);
  inUse_ = inUse;
  full_ = full;
  const QSignalBlocker quiet(list_);
  if (others) {
    list_->clear();
    for (const OptionLoad& row : rows_)
      list_->addItem(row.name);
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const QString words = spoken(rows_, i, rows_[i].id == inUse_);
    QListWidgetItem* item = list_->item(static_cast<int>(i));
    item->setData(Qt::AccessibleTextRole, words);
    item->setToolTip(words);
    if (rows_[i].id == inUse_)
      list_->setCurrentRow(static_cast<int>(i));
  }
  list_->updateGeometry();
  list_->viewport()->update();
}

} // namespace matwright
