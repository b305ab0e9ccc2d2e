#include "ui/people/PeopleWorkspace.h"

#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/ListSide.h"
#include "ui/people/PeopleList.h"
#include "ui/people/PersonEditor.h"
#include "ui/text/CautionText.h"

#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace matwright {

PeopleWorkspace::PeopleWorkspace(PlanDocument& plan, PeopleDocument& people, QWidget* parent)
    : QWidget(parent), plan_(plan), people_(people), model_(new PeopleList(plan, people, this)), list_(new QListView),
      inClass_(softLabel({})), remove_(new QPushButton(tr("Remove from file"))),
      sheet_(new QPushButton(tr("Sheet for the clinician\u2026"))), stack_(new QStackedWidget),
      editor_(new PersonEditor(plan, people)), nobody_(softLabel({})) {
  QVBoxLayout* column = addListAndStage(*this, makeList(), makeEditor(), {360, 720}, {1, 2});
  QLabel* notice = softLabel(standingNotice() + QLatin1Char(' ') +
                             tr("These are health data: the program keeps them in files on this computer, readable by "
                                "the owner of this account "
                                "alone, and sends them nowhere."));
  notice->setContentsMargins(14, 6, 14, 8);
  column->addWidget(notice);

  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &PeopleWorkspace::refresh);
  connect(model_, &QAbstractItemModel::modelReset, this, &PeopleWorkspace::refresh);
  connect(&people, &PeopleDocument::changed, this, &PeopleWorkspace::refresh);
  connect(&plan, &PlanDocument::changed, this, &PeopleWorkspace::refresh);
  refresh();
}

QWidget* PeopleWorkspace::makeList() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(12, 10, 8, 8);
  column->addWidget(titleLabel(tr("People on file")));
  column->addWidget(inClass_);
  list_->setModel(model_);
  list_->setItemDelegate(new PeopleDelegate(*list_));
  list_->setResizeMode(QListView::Adjust);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setMouseTracking(true);
  list_->setAccessibleName(tr("People on file"));
  column->addWidget(list_, 1);
  auto* buttons = new FlowLayout(nullptr, 6);
  auto* add = new QPushButton(tr("Add a person"));
  add->setProperty("primary", true);
  buttons->addWidget(add);
  buttons->addWidget(remove_);
  buttons->addWidget(sheet_);
  sheet_->setToolTip(tr("What to leave out, ask first, adapt and watch for this person, with reasons, sources and open "
                        "questions, to print and take along"));
  column->addLayout(buttons);
  connect(add, &QPushButton::clicked, this, &PeopleWorkspace::addPerson);
  connect(remove_, &QPushButton::clicked, this, &PeopleWorkspace::removePerson);
  connect(sheet_, &QPushButton::clicked, this, [this] { Q_EMIT sheetWanted(shown()); });
  side->setMinimumWidth(280);
  return side;
}

QWidget* PeopleWorkspace::makeEditor() {
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(editor_);
  nobody_->setAlignment(Qt::AlignCenter);
  nobody_->setContentsMargins(40, 40, 40, 40);
  stack_->addWidget(nobody_);
  stack_->addWidget(scroll);
  stack_->setMinimumWidth(380);
  return stack_;
}

PersonId PeopleWorkspace::current() const { return model_->personAt(list_->currentIndex()); }

void PeopleWorkspace::showPerson(const PersonId& person) {
  if (const QModelIndex index = model_->indexOf(person); index.isValid()) {
    list_->setCurrentIndex(index);
    list_->scrollTo(index);
  }
}

void PeopleWorkspace::refresh() {
  // After the list began anew the same person is found again, else the first.
  if (!list_->currentIndex().isValid() && model_->rowCount() > 0) {
    const QModelIndex again = model_->indexOf(editor_->person());
    list_->setCurrentIndex(again.isValid() ? again : model_->index(0));
    return;
  }
  const PersonId person = current();
  const bool onFile = people_.find(person) != nullptr;
  if (onFile && editor_->person() != person)
    editor_->setPerson(person);
  nobody_->setText(
      model_->rowCount() == 0
          ? tr("Nobody is on file yet. Add the people you teach, and what you know that matters on the mat.")
          : tr("This person is not on file, so nothing can be screened for them. Take them out of the class, "
               "or add them to the file."));
  stack_->setCurrentIndex(onFile ? 1 : 0);
  remove_->setEnabled(onFile);
  sheet_->setEnabled(onFile);
  inClass_->setText(tr("%n in this class; tick who comes.", nullptr, static_cast<int>(plan_.plan().people.size())));
  list_->doItemsLayout();
  Q_EMIT shownChanged();
}

PersonId PeopleWorkspace::shown() const {
  const PersonId person = current();
  return people_.find(person) ? person : PersonId{};
}

void PeopleWorkspace::addPerson() {
  people_.sealGesture();
  const PersonId id = people_.add(tr("New person"), tr("Add a person"));
  showPerson(id);
  editor_->focusName();
}

void PeopleWorkspace::removePerson() {
  // The class keeps naming them, and says that they are not on file: nobody leaves a class unnoticed.
  const QModelIndex index = list_->currentIndex();
  const PersonId person = model_->personAt(index);
  const PersonId next =
      model_->personAt(index.siblingAtRow(index.row() + 1 < model_->rowCount() ? index.row() + 1 : index.row() - 1));
  people_.remove(person, tr("Remove a person"));
  showPerson(next);
}

} // namespace matwright
