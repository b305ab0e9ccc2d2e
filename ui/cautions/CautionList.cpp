#include "ui/cautions/CautionList.h"

#include "ui/cautions/SwapMenu.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/MarkedTree.h"
#include "ui/text/CautionText.h"
#include "ui/text/VocabularyText.h"

#include <QPlainTextEdit>
#include <QResizeEvent>
#include <QScopedValueRollback>
#include <QScrollBar>
#include <QSplitter>
#include <QStandardItemModel>
#include <QToolButton>
#include <QVBoxLayout>

namespace matwright {
namespace {

constexpr int kNarrowest = 220;
constexpr int kKeyRole = Qt::UserRole + 20;

} // namespace

CautionList::CautionList(PlanDocument& document, StepSelection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), counts_(softLabel({})),
      reasonButton_(new QToolButton), swapButton_(new QToolButton), swaps_(new SwapMenu(document, this)),
      none_(plainLabel({})), splitter_(new QSplitter(Qt::Vertical)), view_(new MarkedTree(tr("Worth a look"))),
      model_(new QStandardItemModel(this)), reason_(new QPlainTextEdit) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(10, 6, 10, 6);
  column->setSpacing(4);
  column->addWidget(makeHead());
  column->addWidget(none_);
  column->addWidget(splitter_, 1);
  column->addWidget(softLabel(standingNotice()));

  view_->setModel(model_);
  view_->setMinimumHeight(fontMetrics().height() * 5);
  splitter_->addWidget(view_);
  reason_->setReadOnly(true);
  reason_->setAccessibleName(tr("Whole reason"));
  reason_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  reason_->setMinimumHeight(fontMetrics().height() * 4);
  reason_->hide();
  splitter_->addWidget(reason_);
  splitter_->setChildrenCollapsible(false);

  connect(&document, &PlanDocument::changed, this, &CautionList::refresh);
  connect(reasonButton_, &QToolButton::toggled, this, [this](bool open) {
    reason_->setVisible(open);
    showReason();
  });
  connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &CautionList::showReason);
  connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &CautionList::showWhetherSwappable);
  connect(swaps_, &QMenu::aboutToShow, this, [this] {
    if (const Caution* caution = currentCaution())
      swaps_->fill(*caution);
  });
  connect(view_, &MarkedTree::chosen, this, &CautionList::jump);
  const auto remember = [this](const QModelIndex& index, bool closed) {
    if (refreshing_)
      return;
    const QString key = index.data(kKeyRole).toString();
    if (closed)
      closed_.insert(key);
    else
      closed_.remove(key);
  };
  connect(view_, &QTreeView::collapsed, this, [remember](const QModelIndex& index) { remember(index, true); });
  connect(view_, &QTreeView::expanded, this, [remember](const QModelIndex& index) { remember(index, false); });
  refresh();
}

QWidget* CautionList::makeHead() {
  auto* head = new QWidget;
  auto* line = new FlowLayout(head, 8);
  QLabel* title = headingLabel(tr("Worth a look"));
  for (QLabel* label : {title, counts_}) {
    label->setWordWrap(false);
    line->addWidget(label);
  }
  reasonButton_->setText(tr("Why"));
  reasonButton_->setAccessibleName(tr("Show the whole reason"));
  reasonButton_->setCheckable(true);
  reasonButton_->setStyleSheet(QStringLiteral("QToolButton { padding: 3px 6px; }"));
  reasonButton_->setToolTip(tr("Show condition, rule, sources and what is disputed for the caution chosen"));
  swapButton_->setText(tr("Instead"));
  swapButton_->setPopupMode(QToolButton::InstantPopup);
  swapButton_->setStyleSheet(reasonButton_->styleSheet());
  swapButton_->setToolTip(tr("Offer other ways to do the step, for one person or for everybody"));
  swapButton_->setMenu(swaps_);
  swapButton_->setEnabled(false);
  line->addWidget(reasonButton_);
  line->addWidget(swapButton_);
  return head;
}

void CautionList::refresh() {
  {
    const QScopedValueRollback quiet(refreshing_, true);
    groups_ = cautionGroups(document_);
    fill(groups_);
  }
  int cautions = 0, remarks = 0;
  for (const CautionGroup& group : groups_)
    (group.level ? cautions : remarks) += static_cast<int>(group.rows.size());
  counts_->setText(tr("%n caution(s)", nullptr, cautions));
  counts_->setToolTip(remarks > 0 ? tr("%n remark(s) about the class", nullptr, remarks) : QString());
  showText(none_, cautions == 0 ? noCautionText(!document_.plan().people.empty()) : QString());
  showReason();
  showWhetherSwappable();
}

void CautionList::fill(const std::vector<CautionGroup>& groups) {
  const QString current = view_->currentIndex().data(kKeyRole).toString();
  const int scrolled = view_->verticalScrollBar()->value();
  model_->clear();
  QStandardItem* again = nullptr;
  for (const CautionGroup& group : groups) {
    auto* heading = new QStandardItem(group.title);
    heading->setData(true, kGroupRole);
    heading->setData(group.key, kKeyRole);
    if (group.level)
      heading->setData(static_cast<int>(*group.level), kLevelRole);
    for (const CautionRow& row : group.rows) {
      auto* item = new QStandardItem(row.title);
      item->setData(row.key, kKeyRole);
      item->setData(row.body, kBodyRole);
      item->setData(row.instead, kInsteadRole);
      if (row.level)
        item->setData(static_cast<int>(*row.level), kLevelRole);
      QStringList spoken{row.title};
      for (const QString& part : {row.body, row.instead})
        if (!part.isEmpty())
          spoken << part;
      item->setData(spoken.join(QStringLiteral(". ")), Qt::AccessibleTextRole);
      heading->appendRow(item);
      if (row.key == current)
        again = item;
    }
    model_->appendRow(heading);
    view_->setExpanded(heading->index(), !closed_.contains(group.key));
  }
  if (again)
    view_->setCurrentIndex(again->index());
  view_->verticalScrollBar()->setValue(scrolled);
}

const CautionRow* CautionList::rowAt(const QModelIndex& index) const {
  if (!index.isValid() || !index.parent().isValid())
    return nullptr;
  const auto group = static_cast<std::size_t>(index.parent().row());
  const auto row = static_cast<std::size_t>(index.row());
  return group < groups_.size() && row < groups_[group].rows.size() ? &groups_[group].rows[row] : nullptr;
}

void CautionList::showReason() {
  if (!reasonButton_->isChecked() || refreshing_)
    return;
  const CautionRow* row = rowAt(view_->currentIndex());
  const QString words = row ? wholeReason(document_, *row) : tr("Choose a caution to read its whole reason.");
  if (reason_->toPlainText() != words)
    reason_->setPlainText(words);
}

const Caution* CautionList::currentCaution() const {
  const CautionRow* row = rowAt(view_->currentIndex());
  return row && row->level ? &document_.seen().cautions[row->index] : nullptr;
}

void CautionList::showWhetherSwappable() {
  const Caution* caution = refreshing_ ? nullptr : currentCaution();
  swapButton_->setEnabled(caution && caution->step);
}

bool CautionList::showCaution(std::optional<StepId> step, const std::optional<PersonId>& person) {
  const Evaluation& seen = document_.seen();
  for (std::size_t group = 0; group < groups_.size(); ++group)
    for (std::size_t row = 0; row < groups_[group].rows.size(); ++row) {
      const CautionRow& candidate = groups_[group].rows[row];
      if (!candidate.level || candidate.step != step || seen.whom(seen.cautions[candidate.index]) != person)
        continue;
      const QModelIndex heading = model_->index(static_cast<int>(group), 0);
      view_->expand(heading);
      const QModelIndex found = model_->index(static_cast<int>(row), 0, heading);
      view_->setCurrentIndex(found);
      view_->scrollTo(found);
      return true;
    }
  return false;
}

void CautionList::offerSwaps(std::optional<StepId> step, const std::optional<PersonId>& person, const QPoint& at) {
  if (showCaution(step, person) && swapButton_->isEnabled())
    swaps_->popup(at);
}

void CautionList::jump(const QModelIndex& index) {
  const CautionRow* row = rowAt(index);
  if (!row || !row->step)
    return;
  const StepId step = *row->step;
  selection_.select(step);
  Q_EMIT stepWanted(step);
}

QSize CautionList::minimumSizeHint() const {
  return {kNarrowest, layout()->totalMinimumHeightForWidth(std::max(width(), kNarrowest))};
}

void CautionList::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->oldSize().width() != width())
    updateGeometry();
  // Beside the list where there is room, else below it.
  const bool wide = width() >= 640 && width() > height() * 3 / 2;
  splitter_->setOrientation(wide ? Qt::Horizontal : Qt::Vertical);
}

} // namespace matwright
