#pragma once

#include "ui/document/PeopleDocument.h"
#include "ui/document/PlanDocument.h"

#include <QToolButton>

namespace matwright {

class CheckMenu;

// Who is in this class: a button that says how many, with a list to tick.
class PeopleChooser : public QToolButton {
  Q_OBJECT

public:
  PeopleChooser(PlanDocument& plan, PeopleDocument& people, QWidget* parent = nullptr);

Q_SIGNALS:
  void peopleWanted(); // the user wants to see who is on file

private:
  void refresh();
  void fill();
  void chooseAll(bool in);

  PlanDocument& plan_;
  PeopleDocument& people_;
  CheckMenu* menu_;
};

} // namespace matwright
