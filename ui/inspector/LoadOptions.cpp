#include "ui/inspector/LoadOptions.h"

#include "ui/inspector/LoadOptionDelegate.h"
#include "ui/text/LoadText.h"

#include <QEvent>
#include <QKeyEvent>
#include <QListWidget>
#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

namespace {

// As tall as its rows are at its width.
class RowList : public QListWidget {
public:
  RowList() {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
  }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override {
    int height = 0;
    for (int i = 0; i < count(); ++i)
      height += rowHeight(item(i)->text(), width, font());
    return height;
  }
  QSize sizeHint() const override { return {200, heightForWidth(200)}; }
  QSize minimumSizeHint() const override { return {120, 0}; }
};

} // namespace

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

LoadOptions::LoadOptions(QWidget* parent) : QWidget(parent), header_(new LoadOptionHeader), list_(new RowList) {
  list_->setAccessibleName(tr("Options side by side"));
  list_->setItemDelegate(new LoadOptionDelegate(rows_, inUse_, full_, list_));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff); // the page scrolls
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setSelectionMode(QAbstractItemView::SingleSelection);
  list_->setResizeMode(QListView::Adjust);
  list_->installEventFilter(this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(header_);
  column->addWidget(list_);
  setFocusProxy(list_);
  connect(list_, &QListWidget::itemClicked, this, [this](const QListWidgetItem* item) { choose(list_->row(item)); });
}

void LoadOptions::choose(int row) {
  if (row >= 0 && rows_[static_cast<std::size_t>(row)].id != inUse_)
    Q_EMIT chosen(rows_[static_cast<std::size_t>(row)].id);
}

bool LoadOptions::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter) {
      choose(list_->currentRow());
      return true;
    }
  } else if (event->type() == QEvent::Wheel) {
    event->ignore(); // for the page
    return true;
  }
  return QWidget::eventFilter(watched, event);
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
