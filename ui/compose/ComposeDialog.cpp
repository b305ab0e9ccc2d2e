#include "ui/compose/ComposeDialog.h"

#include "ui/compose/AboutComposed.h"
#include "ui/compose/ComposedList.h"
#include "ui/compose/ComposedTerrain.h"
#include "ui/compose/ObstacleList.h"
#include "ui/compose/WishesForm.h"
#include "ui/controls/Fields.h"
#include "ui/controls/Labels.h"
#include "ui/controls/Scrolled.h"
#include "ui/text/ComposeText.h"
#include "ui/totals/TotalsLine.h"

#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QSplitter>
#include <QStackedWidget>
#include <limits>

namespace matwright {
namespace {

constexpr int kPause = 400, kPatience = 150; // milliseconds

// Whether other names alone make the difference: a class need not be composed anew for them.
bool differInNames(ClassWishes one, const ClassWishes& other) {
  if (one.sections.size() != other.sections.size())
    return false;
  one.name = other.name;
  for (std::size_t i = 0; i < one.sections.size(); ++i)
    one.sections[i].name = other.sections[i].name;
  return one == other;
}

ClassWishes usualWishes(const PlanDocument& document) {
  ClassWishes wishes;
  wishes.name = ComposeDialog::tr("New class").toStdString();
  wishes.length = document.plan().target;
  wishes.people = document.plan().people;
  wishes.pace = document.plan().pace;
  wishes.sections = usualSections(wishes.length);
  return wishes;
}

} // namespace

ComposeDialog::ComposeDialog(PlanDocument& document, QWidget* parent)
    : QDialog(parent), document_(document), composition_(document), form_(new WishesForm), status_(headingLabel({})),
      progress_(new QProgressBar), pages_(new QStackedWidget), found_(new QSplitter(Qt::Vertical)),
      obstacles_(new ObstacleList), terrain_(new ComposedTerrain(composition_)), list_(new ComposedList(composition_)),
      about_(new AboutComposed(composition_)), seed_(new QSpinBox), stop_(new QPushButton(tr("&Stop"))),
      another_(new QPushButton(tr("&Another Class"))), use_(new QPushButton), close_(new QPushButton(tr("&Close"))),
      open_(new QPushButton(tr("&Open Wishes\u2026"))), save_(new QPushButton(tr("Sa&ve Wishes\u2026"))) {
  auto* splitter = new QSplitter(Qt::Horizontal);
  splitter->addWidget(makeForm());
  splitter->addWidget(makeClass());
  splitter->setStretchFactor(1, 1);
  splitter->setChildrenCollapsible(false);
  splitter->setSizes({340, 800});
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(splitter, 1);
  column->addWidget(hairline());
  column->addLayout(makeFoot());
  const QSize room = screen()->availableSize();
  resize(std::min(1280, room.width() - 40), std::min(800, room.height() - 60));
  pause_.setSingleShot(true);
  pause_.setInterval(kPause);
  patience_.setSingleShot(true);
  patience_.setInterval(kPatience);
  connectParts();
}

QWidget* ComposeDialog::makeForm() {
  QScrollArea* form = scrolled(form_);
  form->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  form->setMinimumWidth(310);
  form->setAccessibleName(tr("Wishes"));
  return form;
}

QWidget* ComposeDialog::makeClass() {
  auto* steps = new QWidget;
  auto* lines = new QVBoxLayout(steps);
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(0);
  QLabel* hint = softLabel(tr("Ticked steps stay when the class or a section is composed anew."));
  hint->setContentsMargins(8, 4, 8, 4);
  lines->addWidget(hint);
  lines->addWidget(list_, 1);
  auto* below = new QSplitter(Qt::Horizontal);
  below->addWidget(steps);
  below->addWidget(about_);
  below->setStretchFactor(0, 3);
  below->setStretchFactor(1, 2);
  below->setChildrenCollapsible(false);
  found_->addWidget(terrain_);
  found_->addWidget(below);
  found_->setStretchFactor(0, 2);
  found_->setStretchFactor(1, 3);
  found_->setChildrenCollapsible(false);
  found_->setSizes({260, 340});
  auto* page = new QWidget;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(new TotalsLine(composition_.document()));
  column->addWidget(found_, 1);
  pages_->addWidget(page);
  pages_->addWidget(obstacles_);
  auto* side = new QWidget;
  auto* whole = new QVBoxLayout(side);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->setSpacing(0);
  whole->addLayout(makeStatus());
  whole->addWidget(pages_, 1);
  side->setMinimumWidth(480);
  return side;
}

QLayout* ComposeDialog::makeStatus() {
  progress_->setTextVisible(false);
  progress_->setFixedHeight(8);
  progress_->setMaximumWidth(180);
  progress_->setAccessibleName(tr("Search"));
  for (QWidget* widget : {static_cast<QWidget*>(progress_), static_cast<QWidget*>(stop_)}) {
    QSizePolicy stays = widget->sizePolicy();
    stays.setRetainSizeWhenHidden(true);
    widget->setSizePolicy(stays);
  }
  stop_->setAutoDefault(false);
  auto* line = new QHBoxLayout;
  line->setContentsMargins(12, 8, 12, 4);
  line->setSpacing(10);
  line->addWidget(status_, 1);
  line->addWidget(progress_);
  line->addWidget(stop_);
  return line;
}

QLayout* ComposeDialog::makeFoot() {
  seed_->setRange(0, std::numeric_limits<int>::max());
  seed_->setToolTip(
      tr("The same wishes and the same seed give the same class, on every computer. A class that is to be "
         "unlike the one before goes by that one, too."));
  keepWheelForFocus(seed_);
  another_->setToolTip(tr("A class unlike this one, by the same wishes; steps that are ticked stay"));
  use_->setProperty("primary", true);
  use_->setDefault(true);
  auto* foot = new QHBoxLayout;
  foot->setContentsMargins(12, 8, 12, 8);
  foot->setSpacing(8);
  for (QPushButton* button : {open_, save_, another_, close_})
    button->setAutoDefault(false);
  foot->addWidget(open_);
  foot->addWidget(save_);
  foot->addStretch(1);
  QLabel* seed = fieldLabel(tr("See&d"), seed_);
  seed->setWordWrap(false);
  foot->addWidget(seed);
  foot->addWidget(seed_);
  foot->addWidget(another_);
  foot->addSpacing(12);
  foot->addWidget(close_);
  foot->addWidget(use_);
  return foot;
}

void ComposeDialog::connectParts() {
  connect(form_, &WishesForm::changed, this, &ComposeDialog::takeWishes);
  connect(&pause_, &QTimer::timeout, this, &ComposeDialog::search);
  connect(&patience_, &QTimer::timeout, this, [this] { showBusy(true); });
  connect(&composition_, &Composition::started, this, &ComposeDialog::showStarted);
  connect(&composition_, &Composition::progressed, this, &ComposeDialog::showProgress);
  connect(&composition_, &Composition::finished, this, &ComposeDialog::showFound);
  connect(&composition_, &Composition::surroundingsChanged, this, [this] {
    form_->setKnowledge(document_.knowledge());
    form_->setPeople(document_.knowledge(), document_.roster());
    if (isVisible())
      search();
  });
  connect(&document_, &PlanDocument::changed, this, [this] {
    // What is filled up is the class as it was; another one is begun with.
    if (isVisible() && composition_.completes() && *composition_.open() != document_.plan())
      complete();
  });
  connect(obstacles_, &ObstacleList::wishesWanted, this, &ComposeDialog::takeOthers);
  connect(terrain_, &ComposedTerrain::currentChanged, this, [this] { showCurrent(terrain_->current()); });
  connect(list_, &ComposedList::currentChangedByUser, this, [this] { showCurrent(list_->current()); });
  connect(list_, &ComposedList::sectionWanted, &composition_, &Composition::composeSection);
  connect(stop_, &QPushButton::clicked, &composition_, &Composition::stop);
  connect(another_, &QPushButton::clicked, this, &ComposeDialog::another);
  connect(use_, &QPushButton::clicked, this, &ComposeDialog::use);
  connect(close_, &QPushButton::clicked, this, &ComposeDialog::reject);
  connect(open_, &QPushButton::clicked, this, &ComposeDialog::askWishesToOpen);
  connect(save_, &QPushButton::clicked, this, &ComposeDialog::askWishesToSave);
  connect(seed_, &QSpinBox::valueChanged, this, [this](int seed) {
    form_->setSeed(static_cast<std::uint64_t>(seed));
    takeWishes();
  });
}

void ComposeDialog::setStudio(const QString& folder, const QString& openFile) {
  studio_ = folder;
  form_->setClasses(classesOnFile(folder, openFile));
}

void ComposeDialog::begin(const QString& title, const QString& use) {
  setWindowTitle(title);
  use_->setText(use);
  form_->setCompleting(composition_.completes());
  form_->setKnowledge(document_.knowledge());
  form_->setPeople(document_.knowledge(), document_.roster());
  asked_.reset();
}

void ComposeDialog::composeNew() {
  if (composition_.completes() || !ownWishes_) {
    composition_.beginNew();
    begin(tr("Compose a class"), tr("&Use This Class"));
    takeOthers(ownWishes_.value_or(usualWishes(document_)));
  }
}

void ComposeDialog::complete() {
  composition_.beginFrom(document_.plan());
  begin(tr("Complete this class"), tr("&Put into the Class"));
  takeOthers(wishesFor(document_.plan()));
}

void ComposeDialog::takeOthers(const ClassWishes& wishes) {
  form_->show(wishes);
  showSeed();
  search();
}

void ComposeDialog::showSeed() {
  const QSignalBlocker quiet(seed_);
  seed_->setValue(
      static_cast<int>(std::min(form_->seed(), static_cast<std::uint64_t>(std::numeric_limits<int>::max()))));
}

void ComposeDialog::takeWishes() {
  const ClassWishes wishes = form_->wishes();
  if (!composition_.completes())
    ownWishes_ = wishes;
  if (asked_ && differInNames(*asked_, wishes) && !faultIn(wishes)) {
    asked_ = wishes;
    composition_.rename(wishes);
    return;
  }
  if (faultIn(wishes))
    return search(); // it is told at once
  use_->setEnabled(false);
  pause_.start();
}

void ComposeDialog::search() {
  pause_.stop();
  const ClassWishes wishes = form_->wishes();
  if (!composition_.completes())
    ownWishes_ = wishes;
  const auto fault = faultIn(wishes);
  save_->setEnabled(!fault);
  asked_.reset();
  if (fault) {
    composition_.drop();
    showBusy(false);
    terrain_->setWaiting(true);
    another_->setEnabled(false);
    use_->setEnabled(false);
    list_->setBusy(true);
    status_->setText(text(*fault));
    return;
  }
  if (!isVisible())
    return;
  asked_ = wishes;
  composition_.compose(wishes);
}

void ComposeDialog::another() {
  form_->setSeed(std::min<std::uint64_t>(form_->seed() + 1, kHighestSeed));
  showSeed();
  pause_.stop();
  const ClassWishes wishes = form_->wishes();
  if (!composition_.completes())
    ownWishes_ = wishes;
  asked_ = wishes;
  composition_.composeAnother(wishes);
}

} // namespace matwright
