#include "ui/tidy/TidyDialog.h"

#include "ui/controls/Labels.h"
#include "ui/controls/LevelMark.h"
#include "ui/controls/MarkedTree.h"
#include "ui/text/CautionText.h"
#include "ui/text/ErrorText.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"
#include "ui/tidy/TidyQuestion.h"
#include "ui/tidy/TidyRows.h"
#include "ui/tidy/TidyTerrains.h"

#include <QAction>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QScreen>
#include <QSplitter>
#include <QStandardItemModel>
#include <QToolButton>

namespace matwright {
namespace {

constexpr int kStepRole = Qt::UserRole + 20;
constexpr int kPatience = 150; // milliseconds

} // namespace

TidyDialog::TidyDialog(PlanDocument& document, QWidget* parent)
    : QDialog(parent), document_(document), search_(document), question_(new TidyQuestion),
      terrains_(new TidyTerrains(document)), tree_(new MarkedTree(tr("What the order changes"))),
      rows_(new QStandardItemModel(this)), numbers_(largeLabel({}, 1.25)), more_(softLabel({})),
      status_(headingLabel({})), cautions_(plainLabel({})),
      none_(plainLabel(tr("The class has no steps yet: there is nothing to put in order."))),
      mark_(new LevelMark(Level::watch)), stop_(new QPushButton(tr("&Stop"))), keep_(new QPushButton(tr("&Keep Mine"))),
      use_(new QPushButton(tr("&Use This Order"))), pin_(new QAction(tr("&Pin This Step"), this)),
      stepMenu_(new QMenu(this)) {
  setWindowTitle(tr("Tidy the order"));
  pin_->setCheckable(true);
  pin_->setShortcut(QKeySequence(Qt::Key_P));
  pin_->setShortcutContext(Qt::WidgetShortcut); // the letter stays free where one types
  pin_->setToolTip(tr("Keeps the chosen step in its place (P)"));
  terrains_->addAction(pin_);
  tree_->addAction(pin_);
  stepMenu_->addAction(pin_);
  tree_->setModel(rows_);
  tree_->setContextMenuPolicy(Qt::ActionsContextMenu);

  auto* splitter = new QSplitter(Qt::Horizontal);
  splitter->addWidget(terrains_);
  splitter->addWidget(makeSide());
  splitter->setStretchFactor(0, 1);
  splitter->setChildrenCollapsible(false);
  splitter->setSizes({760, 300});
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(14, 10, 14, 10);
  column->setSpacing(8);
  column->addWidget(question_);
  column->addWidget(makeHead());
  column->addWidget(none_);
  column->addWidget(splitter, 1);
  column->addLayout(makeFoot());
  const QSize room = screen()->availableSize();
  resize(std::min(1280, room.width() - 40), std::min(780, room.height() - 60));

  patience_.setSingleShot(true);
  patience_.setInterval(kPatience);
  connect(&patience_, &QTimer::timeout, this, [this] { setWaiting(true); });
  connect(question_, &TidyQuestion::changed, this, &TidyDialog::begin);
  connect(&document_, &PlanDocument::changed, this, &TidyDialog::takeClass);
  connect(&search_, &TidySearch::progressed, this, &TidyDialog::tellProgress);
  connect(&search_, &TidySearch::finished, this, &TidyDialog::showFound);
  connect(stop_, &QPushButton::clicked, &search_, &TidySearch::stop);
  connect(keep_, &QPushButton::clicked, this, &TidyDialog::reject);
  connect(use_, &QPushButton::clicked, this, &TidyDialog::use);
  connect(pin_, &QAction::triggered, this, [this](bool pinned) {
    if (terrains_->current())
      question_->pin(*terrains_->current(), pinned);
  });
  connect(terrains_, &TidyTerrains::currentChanged, this, &TidyDialog::takeCurrent);
  connect(terrains_, &TidyTerrains::stepMenuWanted, stepMenu_, [this](const QPoint& at) { stepMenu_->popup(at); });
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
    if (const QVariant step = index.data(kStepRole); step.isValid())
      terrains_->setCurrent(StepId{step.toLongLong()});
  });
}

// The numbers at the left, what is known of them at the right.
QWidget* TidyDialog::makeHead() {
  auto* head = new QWidget;
  auto* line = new QHBoxLayout(head);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(14);
  auto* figures = new QVBoxLayout;
  figures->setSpacing(1);
  figures->addWidget(numbers_);
  figures->addWidget(more_);
  line->addLayout(figures, 5);
  line->addWidget(status_, 3);
  line->addWidget(stop_);
  return head;
}

QWidget* TidyDialog::makeSide() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(8, 0, 0, 0);
  column->setSpacing(6);
  column->addWidget(tree_, 1);
  column->addWidget(softLabel(standingNotice()));
  side->setMinimumWidth(240);
  return side;
}

// What the order brings stands beside the button that takes it.
QLayout* TidyDialog::makeFoot() {
  auto* pin = new QToolButton;
  pin->setDefaultAction(pin_);
  pin->setToolButtonStyle(Qt::ToolButtonTextOnly);
  use_->setProperty("primary", true);
  use_->setDefault(true);
  for (QPushButton* button : {keep_, stop_})
    button->setAutoDefault(false);
  auto* foot = new QHBoxLayout;
  foot->setSpacing(8);
  foot->addWidget(pin);
  foot->addWidget(question_->pins());
  foot->addStretch(1);
  foot->addWidget(mark_, 0, Qt::AlignVCenter);
  foot->addWidget(cautions_);
  foot->addWidget(keep_);
  foot->addWidget(use_);
  cautions_->setWordWrap(false);
  return foot;
}

void TidyDialog::askFor(const std::vector<StepId>& steps) {
  question_->setPlan(document_.knowledge(), document_.plan());
  question_->setSteps(steps);
}

void TidyDialog::showEvent(QShowEvent* event) {
  takeClass();
  QDialog::showEvent(event);
}

void TidyDialog::hideEvent(QHideEvent* event) {
  patience_.stop();
  search_.drop();
  QDialog::hideEvent(event);
}

void TidyDialog::takeClass() {
  question_->setPlan(document_.knowledge(), document_.plan());
  begin();
}

void TidyDialog::begin() {
  if (!isVisible())
    return;
  const Snapshot& snapshot = document_.snapshot();
  const bool any = !snapshot.evaluation->schedule.steps.empty();
  none_->setVisible(!any);
  terrains_->parentWidget()->setVisible(any);
  std::vector<StepId> pinned;
  forEachStep(*snapshot.plan, [&](const Step& step) {
    if (question_->isPinned(step.id))
      pinned.push_back(step.id);
  });
  terrains_->setPinned(std::move(pinned));
  if (shown_ != snapshot.revision) {
    terrains_->setPicture({snapshot, snapshot, {}});
    rows_->clear();
    shown_ = snapshot.revision;
  }
  search_.begin(question_->request());
  status_->setText(tr("Searching\u2026"));
  showText(cautions_, {});
  mark_->hide();
  use_->setEnabled(false);
  stop_->setEnabled(true);
  patience_.start();
  showPin();
}

// What is shown is of the search before.
void TidyDialog::setWaiting(bool waiting) {
  terrains_->setWaiting(waiting);
  numbers_->setDisabled(waiting);
  more_->setDisabled(waiting);
}

void TidyDialog::tellProgress(const TidyProgress& progress) { status_->setText(progressText(progress)); }

void TidyDialog::showFound() {
  patience_.stop();
  setWaiting(false);
  stop_->setEnabled(false);
  if (!search_.found()) {
    status_->setText(text(*search_.refusal()));
    return;
  }
  const TidyFound& found = *search_.found();
  const bool moves = !found.result.moves.empty();
  terrains_->setPicture({found.before, found.after, found.result.moves});
  status_->setText(outcomeText(found.result, found.request.wishes));
  showNumbers(found.result.before, found.result.after);
  showText(cautions_, moves ? broughtText(found.result) : QString());
  if (const auto strongest = strongestOf(found.result.come)) {
    mark_->setLevel(*strongest);
    mark_->show();
  }
  use_->setEnabled(moves);
  fillRows();
  takeCurrent();
}

void TidyDialog::showNumbers(const TidyCost& before, const TidyCost& after) {
  const TidyFound& found = *search_.found();
  const bool moves = !found.result.moves.empty();
  const auto fromTo = [moves](const QString& was, const QString& is) {
    return moves && was != is ? QStringLiteral("%1 \u2192 %2").arg(was, is) : is;
  };
  numbers_->setText(tr("Moving %1, changes of position %2")
                        .arg(fromTo(secondsText(before.moving), secondsText(after.moving)),
                             fromTo(QString::number(before.changes), QString::number(after.changes))));
  QStringList parts;
  if (const QString saved = savedText(before, after); !saved.isEmpty())
    parts << withCapital(saved);
  if (before.wished > Seconds{} || after.wished > Seconds{}) {
    const bool any = !(found.request.wishes == TidyWishes{});
    parts << (any ? tr("Wishes %1") : tr("Ways that are not charted %1"))
                 .arg(fromTo(secondsText(before.wished), secondsText(after.wished)));
  }
  parts << tr("Class %1")
               .arg(fromTo(clock(found.before.evaluation->schedule.length),
                           clock(found.after.evaluation->schedule.length)));
  more_->setText(parts.join(QStringLiteral(" \u00b7 ")));
}

void TidyDialog::fillRows() {
  rows_->clear();
  for (const TidyRowGroup& group : rowsOf(*search_.found(), document_.roster())) {
    auto* heading = new QStandardItem(group.title);
    heading->setData(true, kGroupRole);
    for (const TidyRow& row : group.rows) {
      auto* item = new QStandardItem(row.title);
      item->setData(row.body, kBodyRole);
      item->setData(row.instead, kInsteadRole);
      if (row.level)
        item->setData(static_cast<int>(*row.level), kLevelRole);
      if (row.step)
        item->setData(static_cast<qlonglong>(row.step->value), kStepRole);
      item->setData(QStringList{row.title, row.body, row.instead}.join(QStringLiteral(". ")), Qt::AccessibleTextRole);
      heading->appendRow(item);
    }
    rows_->appendRow(heading);
  }
  tree_->expandAll();
}

// The row that says how the current step moves is the current one, too.
void TidyDialog::takeCurrent() {
  const auto current = terrains_->current();
  if (tree_->currentIndex().data(kStepRole) !=
      (current ? QVariant(static_cast<qlonglong>(current->value)) : QVariant())) {
    QModelIndex found;
    for (int group = 0; group < rows_->rowCount(); ++group)
      for (int row = 0; current && row < rows_->item(group)->rowCount(); ++row)
        if (const QStandardItem* item = rows_->item(group)->child(row);
            item->data(kStepRole).toLongLong() == current->value && !item->data(kLevelRole).isValid())
          found = item->index();
    const QSignalBlocker quiet(terrains_);
    tree_->setCurrentIndex(found);
  }
  showPin();
}

void TidyDialog::showPin() {
  const auto current = terrains_->current();
  pin_->setEnabled(current.has_value());
  pin_->setChecked(current && question_->isPinned(*current));
}

void TidyDialog::use() {
  if (!search_.found())
    return;
  const Edit edit = editOf(document_.plan(), search_.found()->result);
  accept();
  document_.perform(edit, tr("Tidy the order"));
}

} // namespace matwright
