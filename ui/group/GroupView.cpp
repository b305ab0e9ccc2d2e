#include "ui/group/GroupView.h"

#include "ui/controls/Labels.h"
#include "ui/group/GroupDelegate.h"
#include "ui/group/GroupModel.h"

#include <QKeyEvent>
#include <QScopedValueRollback>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

GroupView::GroupView(PlanDocument& document, StepSelection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), model_(new GroupModel(document, this)),
      table_(new QTableView), nobody_(plainLabel(tr("Nobody is in this class yet: choose who comes at the top."))) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(10, 0, 10, 6);
  column->setSpacing(4);
  column->addWidget(nobody_);
  column->addWidget(table_, 1);
  column->addWidget(softLabel(tr("The strongest caution for each person at each step, and how many there are; a folded "
                                 "corner is a variant of theirs. Enter, or a double click, offers what to do instead. "
                                 "An empty field is no clearance.")));

  table_->setVerticalHeader(new GroupHeader(Qt::Vertical));
  table_->setHorizontalHeader(new GroupHeader(Qt::Horizontal));
  table_->setModel(model_);
  auto* delegate = new GroupDelegate(table_);
  table_->setItemDelegate(delegate);
  table_->setShowGrid(false);
  table_->setCornerButtonEnabled(false);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->setAccessibleName(tr("Steps against people"));
  QStyleOptionViewItem option;
  option.font = table_->font();
  const QSize cell = delegate->sizeHint(option, {});
  table_->verticalHeader()->setDefaultSectionSize(cell.height());
  table_->horizontalHeader()->setDefaultSectionSize(cell.width());
  table_->installEventFilter(this);
  setMinimumHeight(160);

  connect(model_, &QAbstractItemModel::modelReset, this, &GroupView::afterReset);
  connect(&selection, &StepSelection::changed, this, &GroupView::followSelection);
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& index) { choose(index); });
  connect(table_, &QTableView::doubleClicked, this, &GroupView::offerInstead);
  connect(table_->horizontalHeader(), &QHeaderView::sectionClicked, this, &GroupView::seeFor);
  connect(table_->verticalHeader(), &QHeaderView::sectionClicked, this, [this](int row) {
    if (const auto step = model_->stepAt(row))
      selection_.select(*step);
  });
  afterReset();
}

void GroupView::afterReset() {
  nobody_->setVisible(model_->columnCount() == 1);
  const QScopedValueRollback quiet(following_, true);
  int column = 0;
  for (int each = 1; person_ && each < model_->columnCount(); ++each)
    if (model_->personAt(each) == person_)
      column = each;
  const int row = step_ ? model_->rowOf(*step_) : -1;
  table_->setCurrentIndex(model_->index(std::max(row, 0), column));
}

// Another view selected a step: its row becomes current, in the column one was in.
void GroupView::followSelection() {
  const auto step = selection_.current();
  if (following_ || !step || step == step_)
    return;
  const int row = model_->rowOf(*step);
  if (row < 0)
    return;
  const QScopedValueRollback quiet(following_, true);
  step_ = step;
  table_->setCurrentIndex(model_->index(row, std::max(0, table_->currentIndex().column())));
}

void GroupView::choose(const QModelIndex& index) {
  if (following_ || !index.isValid())
    return;
  const QScopedValueRollback quiet(following_, true);
  step_ = model_->stepAt(index.row());
  person_ = model_->personAt(index.column());
  if (step_)
    selection_.select(*step_);
  if (!model_->isSums(index.row()) && !model_->isSection(index.row()))
    Q_EMIT cautionWanted(step_, person_);
}

void GroupView::offerInstead(const QModelIndex& index) {
  if (!index.data(GroupModel::kLevelRole).isValid() || !model_->stepAt(index.row()))
    return;
  Q_EMIT insteadWanted(model_->stepAt(index.row()), model_->personAt(index.column()),
                       table_->viewport()->mapToGlobal(table_->visualRect(index).bottomLeft()));
}

void GroupView::seeFor(int column) {
  const auto person = model_->personAt(column);
  const std::vector<PersonId> alone = person ? std::vector{*person} : std::vector<PersonId>{};
  document_.setSeenPeople(document_.seenPeople() == alone ? std::vector<PersonId>{} : alone);
}

bool GroupView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      offerInstead(table_->currentIndex());
      return true;
    }
    if (key == Qt::Key_Space) {
      seeFor(table_->currentIndex().column());
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

} // namespace matwright
