#include "ui/people/PeopleChooser.h"

#include "ui/controls/CheckMenu.h"
#include "ui/people/PeopleList.h"

namespace matwright {

PeopleChooser::PeopleChooser(PlanDocument& plan, PeopleDocument& people, QWidget* parent)
    : QToolButton(parent), plan_(plan), people_(people), menu_(new CheckMenu(this)) {
  setPopupMode(InstantPopup);
  setToolButtonStyle(Qt::ToolButtonTextOnly);
  setMenu(menu_);
  setToolTip(tr("Choose who is in this class: cautions are raised for them"));
  connect(menu_, &QMenu::aboutToShow, this, &PeopleChooser::fill);
  connect(&plan, &PlanDocument::changed, this, &PeopleChooser::refresh);
  connect(&people, &PeopleDocument::changed, this, &PeopleChooser::refresh);
  refresh();
}

void PeopleChooser::refresh() {
  const int count = static_cast<int>(plan_.plan().people.size());
  setText(count == 0 ? tr("Nobody chosen") : tr("%n person(s)", nullptr, count));
  setAccessibleName(tr("In this class: %1").arg(text()));
  for (QAction* action : menu_->actions())
    if (action->isCheckable())
      action->setChecked(isInClass(plan_.plan(), {action->data().toString().toStdString()}));
}

void PeopleChooser::fill() {
  menu_->clear();
  for (const PersonId& id : everybody(plan_, people_)) {
    // A single ampersand would mark a key.
    QAction* action = menu_->addAction(nameOf(id, people_).replace(QLatin1Char('&'), QLatin1String("&&")));
    action->setCheckable(true);
    action->setChecked(isInClass(plan_.plan(), id));
    action->setData(QString::fromStdString(id.value));
    connect(action, &QAction::triggered, this, [this, id](bool in) { setInClass(plan_, id, in); });
  }
  if (menu_->isEmpty())
    menu_->addAction(tr("Nobody is on file yet"))->setEnabled(false);
  menu_->addSeparator();
  menu_->addAction(tr("Everybody on file"), this, [this] { chooseAll(true); });
  menu_->addAction(tr("Nobody"), this, [this] { chooseAll(false); });
  menu_->addSeparator();
  menu_->addAction(tr("People on file\u2026"), this, &PeopleChooser::peopleWanted);
}

void PeopleChooser::chooseAll(bool in) {
  std::vector<PersonId> chosen;
  if (in)
    for (const Person& person : people_.people())
      chosen.push_back(person.id);
  plan_.perform(SetPeople{chosen}, tr("Choose who is in the class"));
}

} // namespace matwright
