#include "ui/compose/ComposedList.h"

#include "ui/compose/ComposedRoles.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QContextMenuEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QMenu>
#include <QPushButton>
#include <QStandardItemModel>
#include <algorithm>

namespace matwright {
namespace {

QString nameOf(const Section& section, std::size_t place) {
  return section.name.empty() ? ComposedList::tr("Section %1").arg(place + 1) : QString::fromStdString(section.name);
}

std::optional<Level> strongestAt(const Evaluation& evaluation, StepId step) {
  std::optional<Level> strongest;
  for (const Caution& caution : evaluation.cautions)
    if (caution.step == step && (!strongest || caution.level > *strongest))
      strongest = caution.level;
  return strongest;
}

} // namespace

ComposedList::ComposedList(Composition& composition, QWidget* parent)
    : QTreeView(parent), composition_(composition), rows_(new QStandardItemModel(this)) {
  setAccessibleName(tr("Steps of the composed class"));
  setModel(rows_);
  setItemDelegate(new ComposedDelegate(*this));
  setHeaderHidden(true);
  setRootIsDecorated(false);
  setItemsExpandable(false);
  setIndentation(0);
  setMouseTracking(true);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setEditTriggers(NoEditTriggers);
  header()->setStretchLastSection(true);
  setMinimumWidth(230);
  connect(&composition_.document(), &PlanDocument::changed, this, &ComposedList::refresh);
  connect(&composition_, &Composition::keptChanged, this, &ComposedList::refreshKept);
  connect(rows_, &QStandardItemModel::itemChanged, this, [this](QStandardItem* item) {
    if (!filling_)
      composition_.keep(StepId{item->data(kStepRole).toLongLong()}, item->checkState() == Qt::Checked);
  });
  connect(selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
    if (!filling_)
      Q_EMIT currentChangedByUser();
  });
  refresh();
}

void ComposedList::refresh() {
  const std::optional<StepId> before = current();
  filling_ = true;
  rows_->clear();
  const Snapshot& snapshot = composition_.document().snapshot();
  std::size_t place = 0;
  for (std::size_t i = 0; i < snapshot.plan->sections.size(); ++i) {
    const Section& section = snapshot.plan->sections[i];
    auto* heading = new QStandardItem(nameOf(section, i));
    heading->setData(static_cast<qulonglong>(i), kSectionRole);
    heading->setFlags(Qt::ItemIsEnabled);
    for (const Step& step : section.steps) {
      const TimedStep& timed = snapshot.evaluation->schedule.steps[place++];
      auto* item = new QStandardItem(movementName(*snapshot.knowledge, step.movement));
      QStringList second;
      if (composition_.completes() && !composition_.isOpen(step.id))
        second << tr("new");
      if (!step.option.empty())
        second << optionName(*snapshot.knowledge, step.movement, step.option);
      second << doseText(step.dose, timed.movement ? timed.movement->sides : Sides::together, step.onlySide);
      const QString length = clock(timed.work.whole + timed.turning);
      item->setData(static_cast<qlonglong>(step.id.value), kStepRole);
      item->setData(second.join(QStringLiteral(" \u00b7 ")), kSecondRole);
      item->setData(length, kLengthRole);
      item->setData(composition_.isOpen(step.id), kOpenRole);
      if (const auto level = strongestAt(*snapshot.evaluation, step.id))
        item->setData(static_cast<int>(*level), kStepLevelRole);
      item->setCheckable(true);
      item->setEditable(false);
      heading->appendRow(item);
    }
    rows_->appendRow(heading);
  }
  expandAll();
  for (std::size_t i = 0; i < snapshot.plan->sections.size(); ++i)
    setIndexWidget(rows_->index(static_cast<int>(i), 0), headingOf(i));
  filling_ = false;
  refreshKept();
  setCurrent(before);
}

QWidget* ComposedList::headingOf(std::size_t section) {
  const Snapshot& snapshot = composition_.document().snapshot();
  const Schedule& schedule = snapshot.evaluation->schedule;
  const Section& its = snapshot.plan->sections[section];
  const Seconds end = section + 1 < schedule.sectionBegin.size() ? schedule.sectionBegin[section + 1] : schedule.length;
  auto* heading = new QWidget;
  heading->setAutoFillBackground(true);
  auto* line = new QHBoxLayout(heading);
  line->setContentsMargins(8, 4, 8, 2);
  line->setSpacing(8);
  const QString name = nameOf(its, section);
  line->addWidget(headingLabel(name), 1);
  auto* facts = softLabel(clock(end - schedule.sectionBegin[section]));
  facts->setWordWrap(false);
  line->addWidget(facts);
  auto* button = new QPushButton(tr("Another"));
  button->setObjectName(QStringLiteral("another"));
  button->setAccessibleName(tr("Another for the section %1").arg(name));
  button->setToolTip(tr("Composes this section anew; the rest of the class stays"));
  button->setStyleSheet(QStringLiteral("QPushButton { padding: 2px 8px; }"));
  button->setAutoDefault(false);
  connect(button, &QPushButton::clicked, this, [this, section] { Q_EMIT sectionWanted(section); });
  line->addWidget(button);
  return heading;
}

void ComposedList::refreshKept() {
  filling_ = true;
  for (int section = 0; section < rows_->rowCount(); ++section) {
    const QStandardItem* heading = rows_->item(section);
    for (int row = 0; row < heading->rowCount(); ++row) {
      QStandardItem* item = heading->child(row);
      const bool kept = composition_.isKept(StepId{item->data(kStepRole).toLongLong()});
      item->setCheckState(kept ? Qt::Checked : Qt::Unchecked);
      QStringList spoken{item->text(), item->data(kSecondRole).toString(), item->data(kLengthRole).toString()};
      if (const QVariant level = item->data(kStepLevelRole); level.isValid())
        spoken << text(static_cast<Level>(level.toInt()));
      if (kept)
        spoken << tr("stays");
      item->setData(spoken.join(QStringLiteral(", ")), Qt::AccessibleTextRole);
    }
    if (QWidget* widget = indexWidget(heading->index()))
      widget->findChild<QPushButton*>(QStringLiteral("another"))
          ->setEnabled(!busy_ && composition_.canComposeSection(static_cast<std::size_t>(section)));
  }
  filling_ = false;
  viewport()->update();
}

void ComposedList::setBusy(bool busy) {
  busy_ = busy;
  refreshKept();
}

std::optional<StepId> ComposedList::current() const {
  const QVariant step = currentIndex().data(kStepRole);
  return step.isValid() ? std::optional(StepId{step.toLongLong()}) : std::nullopt;
}

QModelIndex ComposedList::indexOf(StepId step) const {
  for (int section = 0; section < rows_->rowCount(); ++section)
    for (int row = 0; row < rows_->item(section)->rowCount(); ++row)
      if (const QStandardItem* item = rows_->item(section)->child(row);
          item->data(kStepRole).toLongLong() == step.value)
        return item->index();
  return {};
}

void ComposedList::setCurrent(std::optional<StepId> step) {
  if (step == current())
    return;
  filling_ = true;
  const QModelIndex index = step ? indexOf(*step) : QModelIndex();
  setCurrentIndex(index);
  if (!index.isValid())
    clearSelection();
  filling_ = false;
}

std::optional<std::size_t> ComposedList::sectionAt(const QModelIndex& index) const {
  const QModelIndex heading = index.parent().isValid() ? index.parent() : index;
  return heading.isValid() ? std::optional(static_cast<std::size_t>(heading.row())) : std::nullopt;
}

void ComposedList::resizeEvent(QResizeEvent* event) {
  QTreeView::resizeEvent(event);
  scheduleDelayedItemsLayout(); // rows are as high as their words need
}

void ComposedList::keyPressEvent(QKeyEvent* event) {
  const auto section = sectionAt(currentIndex());
  if (event->key() == Qt::Key_R && event->modifiers() == Qt::NoModifier && section && !busy_ &&
      composition_.canComposeSection(*section))
    Q_EMIT sectionWanted(*section);
  else
    QTreeView::keyPressEvent(event);
}

void ComposedList::contextMenuEvent(QContextMenuEvent* event) {
  const bool keyboard = event->reason() == QContextMenuEvent::Keyboard;
  const QModelIndex index = keyboard ? currentIndex() : indexAt(event->pos());
  const auto section = sectionAt(index);
  if (!section)
    return;
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  if (const QVariant step = index.data(kStepRole); step.isValid()) {
    QAction* keep = menu->addAction(tr("Keep this step (Space)"));
    keep->setCheckable(true);
    keep->setChecked(index.data(Qt::CheckStateRole).toInt() == Qt::Checked);
    keep->setEnabled(!index.data(kOpenRole).toBool());
    connect(keep, &QAction::triggered, this,
            [this, id = StepId{step.toLongLong()}](bool kept) { composition_.keep(id, kept); });
  }
  QAction* another = menu->addAction(tr("Another for this section (R)"));
  another->setEnabled(!busy_ && composition_.canComposeSection(*section));
  connect(another, &QAction::triggered, this, [this, which = *section] { Q_EMIT sectionWanted(which); });
  menu->popup(keyboard ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos());
}

} // namespace matwright
