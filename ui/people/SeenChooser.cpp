#include "ui/people/SeenChooser.h"

#include "ui/controls/CheckMenu.h"
#include "ui/text/PeopleText.h"

#include <QStyle>
#include <algorithm>

namespace matwright {

SeenChooser::SeenChooser(PlanDocument& document, QWidget* parent)
    : QToolButton(parent), document_(document), menu_(new CheckMenu(this)) {
  setPopupMode(InstantPopup);
  setToolButtonStyle(Qt::ToolButtonTextOnly);
  setMenu(menu_);
  connect(menu_, &QMenu::aboutToShow, this, &SeenChooser::fill);
  connect(&document, &PlanDocument::changed, this, &SeenChooser::refresh);
  refresh();
}

void SeenChooser::refresh() {
  const std::vector<PersonId> chosen = document_.seenPeople();
  setText(chosen.empty() ? tr("Seen for everybody") : tr("Seen for %1").arg(shortNames(chosen, document_.roster())));
  setToolTip(chosen.empty() ? tr("Choose for whom cautions are shown, and what the catalogue would add; the class "
                                 "stays one for all")
                            : tr("Cautions for the others are not shown just now. The card is for everybody."));
  setAccessibleName(text());
  setEnabled(!document_.evaluation().people.empty());
  if (const bool narrowed = !chosen.empty(); property("narrowed").toBool() != narrowed) {
    setProperty("narrowed", narrowed);
    style()->unpolish(this);
    style()->polish(this);
  }
  for (QAction* action : menu_->actions())
    if (action->isCheckable())
      action->setChecked(std::find(chosen.begin(), chosen.end(), PersonId{action->data().toString().toStdString()}) !=
                         chosen.end());
}

void SeenChooser::fill() {
  menu_->clear();
  for (const PersonId& id : document_.evaluation().people) {
    const Person* person = findPerson(document_.roster(), id);
    QString name = QString::fromStdString(person ? person->name : id.value);
    QAction* action = menu_->addAction(name.replace(QLatin1Char('&'), QLatin1String("&&")));
    action->setCheckable(true);
    action->setData(QString::fromStdString(id.value));
    connect(action, &QAction::triggered, this, [this, id](bool in) { choose(id, in); });
  }
  menu_->addSeparator();
  menu_->addAction(tr("Everybody"), this, [this] { document_.setSeenPeople({}); });
  refresh();
}

void SeenChooser::choose(const PersonId& person, bool in) {
  std::vector<PersonId> chosen = document_.seenPeople();
  std::erase(chosen, person);
  if (in)
    chosen.push_back(person);
  document_.setSeenPeople(std::move(chosen));
}

} // namespace matwright
