#include "ui/compose/TickList.h"

#include <QSignalBlocker>

namespace matwright {
namespace {

constexpr int kKeyRole = Qt::UserRole + 1;
constexpr int kMostLines = 6;

} // namespace

TickList::TickList(const QString& name, QWidget* parent) : QListWidget(parent) {
  setAccessibleName(name);
  setWordWrap(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  connect(this, &QListWidget::itemChanged, this, &TickList::changed);
}

void TickList::setWords(const std::vector<TickWord>& words) {
  const QStringList before = ticked();
  const QSignalBlocker quiet(this);
  clear();
  for (const TickWord& word : words) {
    auto* item = new QListWidgetItem(
        word.about.isEmpty() ? word.name : QStringLiteral("%1 \u00b7 %2").arg(word.name, word.about), this);
    item->setData(kKeyRole, word.key);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
  }
  setTicked(before);
  updateGeometry();
}

QStringList TickList::ticked() const {
  QStringList keys;
  for (int row = 0; row < count(); ++row)
    if (item(row)->checkState() == Qt::Checked)
      keys << item(row)->data(kKeyRole).toString();
  return keys;
}

void TickList::setTicked(const QStringList& keys) {
  const QSignalBlocker quiet(this);
  for (int row = 0; row < count(); ++row)
    item(row)->setCheckState(keys.contains(item(row)->data(kKeyRole).toString()) ? Qt::Checked : Qt::Unchecked);
}

QSize TickList::sizeHint() const {
  const int line = count() > 0 ? sizeHintForRow(0) : fontMetrics().height() + 6;
  return {240, std::min(std::max(count(), 1), kMostLines) * line + 4};
}

} // namespace matwright
