#include "ui/rules/RuleTree.h"

#include <QScopedValueRollback>
#include <QScrollBar>
#include <QStandardItemModel>

namespace matwright {
namespace {

QString keyOf(const RuleGroup& group) {
  return group.condition ? QString::fromStdString(group.condition->value) : QString();
}

} // namespace

RuleTree::RuleTree(QWidget* parent)
    : MarkedTree(tr("Rules by condition"), parent), model_(new QStandardItemModel(this)) {
  setModel(model_);
  const auto remember = [this](const QModelIndex& index, bool open) {
    if (filling_ || allOpen_ || index.parent().isValid() || static_cast<std::size_t>(index.row()) >= groups_.size())
      return;
    const QString key = keyOf(groups_[static_cast<std::size_t>(index.row())]);
    if (open)
      opened_.insert(key);
    else
      opened_.remove(key);
  };
  connect(this, &QTreeView::expanded, this, [remember](const QModelIndex& index) { remember(index, true); });
  connect(this, &QTreeView::collapsed, this, [remember](const QModelIndex& index) { remember(index, false); });
  connect(selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
    if (!filling_)
      Q_EMIT currentChanged();
  });
}

void RuleTree::show(const std::vector<RuleGroup>& groups, bool open) {
  const QScopedValueRollback quiet(filling_, true);
  const auto before = current();
  const int scrolled = verticalScrollBar()->value();
  const bool seen = viewport()->rect().intersects(visualRect(currentIndex()));
  setUpdatesEnabled(false);
  groups_ = groups;
  allOpen_ = open;
  model_->clear();
  QList<QStandardItem*> headings;
  for (const RuleGroup& group : groups_) {
    auto* heading = new QStandardItem(group.title);
    heading->setData(true, kGroupRole);
    heading->setData(group.body, kBodyRole);
    heading->setData(group.mark, kOwnRole);
    QStringList spoken{group.title, group.body};
    if (!group.mark.isEmpty())
      spoken << group.mark;
    heading->setData(spoken.join(QStringLiteral(", ")), Qt::AccessibleTextRole);
    for (const RuleRow& row : group.rows) {
      auto* item = new QStandardItem(row.title);
      item->setData(static_cast<int>(row.level), kLevelRole);
      item->setData(row.body, kBodyRole);
      item->setData(row.mark, kOwnRole);
      item->setData(row.spoken, Qt::AccessibleTextRole);
      heading->appendRow(item);
    }
    headings << heading;
  }
  model_->invisibleRootItem()->appendRows(headings);
  if (open)
    expandAll();
  for (int at = 0; !open && at < headings.size(); ++at)
    if (opened_.contains(keyOf(groups_[static_cast<std::size_t>(at)])))
      expand(headings.at(at)->index());
  if (before)
    if (const QModelIndex again = find(*before); again.isValid())
      setCurrentIndex(again);
  setUpdatesEnabled(true);
  verticalScrollBar()->setValue(scrolled);
  if (seen && currentIndex().isValid())
    scrollTo(currentIndex()); // it may stand elsewhere now
}

std::optional<RuleChoice> RuleTree::choiceAt(const QModelIndex& index) const {
  if (!index.isValid())
    return std::nullopt;
  const QModelIndex heading = index.parent().isValid() ? index.parent() : index;
  const auto at = static_cast<std::size_t>(heading.row()), row = static_cast<std::size_t>(index.row());
  if (at >= groups_.size())
    return std::nullopt;
  if (heading == index)
    return choiceOf(groups_[at]);
  return row < groups_[at].rows.size() ? std::optional{RuleChoice{groups_[at].rows[row].rule, {}}} : std::nullopt;
}

std::optional<RuleChoice> RuleTree::current() const { return choiceAt(currentIndex()); }

QModelIndex RuleTree::find(const RuleChoice& choice) const {
  for (std::size_t at = 0; at < groups_.size(); ++at) {
    const QModelIndex heading = model_->index(static_cast<int>(at), 0);
    if (choiceOf(groups_[at]) == choice)
      return heading;
    for (std::size_t row = 0; row < groups_[at].rows.size(); ++row)
      if (groups_[at].rows[row].rule == choice.rule)
        return model_->index(static_cast<int>(row), 0, heading);
  }
  return {};
}

void RuleTree::setCurrent(const RuleChoice& choice) {
  const QModelIndex index = find(choice);
  if (!index.isValid())
    return;
  if (index.parent().isValid())
    setExpanded(index.parent(), true);
  setCurrentIndex(index);
  scrollTo(index);
}

std::optional<RuleChoice> RuleTree::neighbour() const {
  const QModelIndex index = currentIndex();
  for (const int row : {index.row() + 1, index.row() - 1})
    if (const auto choice = choiceAt(index.siblingAtRow(row)))
      return choice;
  return choiceAt(index.parent());
}

} // namespace matwright
