#include "ui/catalogue/CataloguePanel.h"

#include "ui/catalogue/CatalogueModel.h"
#include "ui/catalogue/CataloguePreview.h"
#include "ui/catalogue/FilterBar.h"
#include "ui/catalogue/MovementAbout.h"
#include "ui/catalogue/MovementList.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/controls/SaveFigure.h"
#include "ui/text/PeopleText.h"
#include "ui/text/VocabularyText.h"

#include <QKeyEvent>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace matwright {
namespace {

constexpr int kDelay = 60;        // milliseconds: several changes in a row are ranked once
constexpr int kRest = 120;        // milliseconds that a row is looked at before it is shown in large
constexpr int kLeastHeight = 420; // pixels: a lower panel has room for the list alone

} // namespace

CataloguePanel::CataloguePanel(PlanDocument& document, StepSelection& selection, ClassCommands& commands,
                               QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), commands_(commands),
      search_(searchField(tr("Find a movement"), tr("Find a movement"))), filters_(new FilterBar),
      ranked_(softLabel({})), alphabetical_(new QToolButton), stack_(new QStackedWidget),
      model_(new CatalogueModel(this)), list_(new MovementList), empty_(plainLabel({})),
      clear_(new QPushButton(tr("Clear words and filters"))), preview_(new CataloguePreview) {
  timer_.setSingleShot(true);
  timer_.setInterval(kDelay);
  list_->setModel(model_);
  list_->setAccessibleName(tr("Movements"));
  arrange();

  connect(&timer_, &QTimer::timeout, this, &CataloguePanel::refreshNow);
  connect(&document, &PlanDocument::changed, this, &CataloguePanel::schedule);
  connect(&selection, &StepSelection::changed, this, &CataloguePanel::schedule);
  // What is typed is looked for from the top of the list on.
  connect(search_, &QLineEdit::textChanged, this, [this] { applyFilter({}); });
  connect(filters_, &FilterBar::changed, this, [this] { applyFilter(currentMovement()); });
  connect(clear_, &QPushButton::clicked, this, [this] {
    search_->clear();
    filters_->clear();
    focusSearch();
  });
  connect(alphabetical_, &QToolButton::toggled, this, [this](bool on) {
    const MovementId current = currentMovement();
    model_->setAlphabetical(on);
    afterArranging(current);
  });
  connect(list_, &MovementList::insertWanted, this, &CataloguePanel::insert);
  connect(list_, &MovementList::menuWanted, this, &CataloguePanel::showMenu);
  search_->installEventFilter(this);
  settled_.setSingleShot(true);
  settled_.setInterval(kRest);
  connect(&settled_, &QTimer::timeout, this, [this] {
    preview_->show(model_->movementAt(hovered_.isValid() ? QModelIndex(hovered_) : list_->currentIndex()));
  });
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { watch({}); });
  connect(list_, &MovementList::hovered, this, &CataloguePanel::watch);
  connect(list_, &MovementList::watchedChanged, preview_, &CataloguePreview::setWatched);
  refreshNow();
}

void CataloguePanel::arrange() {
  search_->setToolTip(tr("By name, region, position, kind or what the spine does"));
  alphabetical_->setText(tr("A\u2013Z"));
  alphabetical_->setCheckable(true);
  alphabetical_->setToolTip(tr("List by name instead of by what fits"));
  alphabetical_->setAccessibleName(tr("List by name"));

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 8, 4);
  column->setSpacing(6);
  column->addWidget(search_);
  column->addWidget(filters_);
  filters_->add(alphabetical_);
  column->addWidget(ranked_);
  column->addWidget(stack_, 1);
  column->addWidget(preview_);

  auto* nothing = new QWidget;
  auto* inside = new QVBoxLayout(nothing);
  inside->addWidget(empty_);
  inside->addWidget(clear_, 0, Qt::AlignLeft);
  inside->addStretch(1);
  stack_->addWidget(list_);
  stack_->addWidget(nothing);
  setMinimumWidth(220);
}

void CataloguePanel::focusSearch() {
  search_->setFocus(Qt::ShortcutFocusReason);
  search_->selectAll();
}

void CataloguePanel::schedule() {
  if (document_.snapshot().revision == revision_ && gap_ == selection_.gap())
    return;
  stale_ = true;
  if (isVisible())
    timer_.start();
}

void CataloguePanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_)
    timer_.start(0);
}

void CataloguePanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  preview_->setVisible(height() >= kLeastHeight);
}

void CataloguePanel::setReducedMotion(bool reduced) { preview_->setReducedMotion(reduced); }

// Shows a row in large once it has been looked at for a moment: the one under the pointer, else the chosen one.
void CataloguePanel::watch(const QModelIndex& hovered) {
  hovered_ = hovered;
  settled_.start();
}

void CataloguePanel::refreshNow() {
  timer_.stop();
  timer_.setInterval(kDelay);
  stale_ = false;
  revision_ = document_.snapshot().revision;
  // Another gap, or other people, is another question: its best answer is shown, not the row one stood on before.
  const bool moved = gap_ != selection_.gap() || seenPeople_ != document_.seenPeople();
  gap_ = selection_.gap();
  seenPeople_ = document_.seenPeople();
  const MovementId current = moved ? MovementId{} : currentMovement();
  model_->setCandidates(
      document_.snapshot().knowledge,
      candidatesFor(document_.knowledge(), document_.plan(), document_.roster(), document_.day(), *gap_, seenPeople_));
  afterArranging(current);
}

void CataloguePanel::applyFilter(const MovementId& current) {
  CatalogueFilter filter = filters_->filter();
  filter.words = search_->text();
  model_->setFilter(filter);
  afterArranging(current);
}

void CataloguePanel::afterArranging(const MovementId& current) {
  const QModelIndex again = model_->indexOf(current);
  list_->setCurrentIndex(again.isValid() ? again : model_->index(0));
  if (!again.isValid())
    list_->scrollToTop();
  const QString order = alphabetical_->isChecked() ? tr("By name; figures are for %1") : tr("Ranked for %1");
  const QString people = shortNames(document_.seenPeople(), document_.roster());
  ranked_->setText(people.isEmpty() ? order.arg(gapText()) : tr("%1, for %2").arg(order.arg(gapText()), people));
  watch({});
  const bool none = model_->rowCount() == 0;
  const QString words = search_->text().trimmed();
  if (words.isEmpty())
    empty_->setText(tr("No movement passes these filters. Take one away."));
  else if (filters_->filter().asksForMoreThanWords())
    empty_->setText(
        tr("No movement is found by \"%1\" with these filters. Use fewer words or take a filter away.").arg(words));
  else
    empty_->setText(tr("No movement is found by \"%1\". Use fewer words or only their beginnings.").arg(words));
  stack_->setCurrentIndex(none ? 1 : 0);
}

QString CataloguePanel::gapText() const {
  const ClassPlan& plan = document_.plan();
  const Place gap = gap_.value_or(selection_.gap());
  if (gap.section >= plan.sections.size())
    return tr("the first step");
  const Section& section = plan.sections[gap.section];
  if (gap.index > 0 && gap.index <= section.steps.size())
    return tr("the gap after \"%1\"").arg(movementName(document_.knowledge(), section.steps[gap.index - 1].movement));
  return tr("the start of \"%1\"").arg(QString::fromStdString(section.name));
}

MovementId CataloguePanel::currentMovement() const {
  const Movement* movement = model_->movementAt(list_->currentIndex());
  return movement ? movement->id : MovementId{};
}

void CataloguePanel::insert(const QModelIndex& index) {
  if (const Movement* movement = model_->movementAt(index))
    commands_.insertMovement(MovementId(movement->id), selection_.gap());
}

void CataloguePanel::showMenu(const QModelIndex& index, const QPoint& globalPoint) {
  const Movement* movement = model_->movementAt(index);
  if (!movement)
    return;
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->addAction(tr("Put it into %1").arg(gapText()), this,
                  [this, id = movement->id] { commands_.insertMovement(id, selection_.gap()); });
  menu->addAction(tr("About this movement"), this, [this, id = movement->id] {
    if (const Movement* found = document_.knowledge().catalogue.find(id))
      (new MovementAbout(document_.knowledge(), *found, window()))->show();
  });
  menu->addAction(saveFigureWords(), this, [this, id = movement->id] {
    if (const Movement* found = document_.knowledge().catalogue.find(id))
      askToSaveFigure(window(), {found->poses, {found->regions.front()}, QString::fromStdString(found->name)});
  });
  menu->popup(globalPoint);
}

bool CataloguePanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
      insert(list_->currentIndex());
      return true;
    }
    if (key == Qt::Key_Escape && !search_->text().isEmpty()) {
      search_->clear();
      return true;
    }
    if (key == Qt::Key_Down) {
      list_->setFocus();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

} // namespace matwright
