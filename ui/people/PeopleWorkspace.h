#pragma once

#include "ui/document/PeopleDocument.h"
#include "ui/document/PlanDocument.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;
class QStackedWidget;

namespace matwright {

class PeopleList;
class PersonEditor;

// Everybody on file, who of them is in the open class, and what is known about each.
class PeopleWorkspace : public QWidget {
  Q_OBJECT

public:
  PeopleWorkspace(PlanDocument& plan, PeopleDocument& people, QWidget* parent = nullptr);

  void showPerson(const PersonId& person);
  PersonId shown() const; // whose page is open; empty for nobody and for somebody who is not on file

Q_SIGNALS:
  void shownChanged();
  void sheetWanted(const PersonId& person);

private:
  QWidget* makeList();
  QWidget* makeEditor();
  void refresh();
  void addPerson();
  void removePerson();
  PersonId current() const;

  PlanDocument& plan_;
  PeopleDocument& people_;
  PeopleList* model_;
  QListView* list_;
  QLabel* inClass_;
  QPushButton* remove_;
  QPushButton* sheet_;
  QStackedWidget* stack_;
  PersonEditor* editor_;
  QLabel* nobody_;
};

} // namespace matwright
