#pragma once

#include "ui/document/PlanDocument.h"

#include <QToolButton>

namespace matwright {

class CheckMenu;

// Whom of its people the class is seen for: a button that says it, with a list to tick. Stands out while it is not
// everybody, and is hidden where there is nobody to choose from.
class SeenChooser : public QToolButton {
  Q_OBJECT

public:
  explicit SeenChooser(PlanDocument& document, QWidget* parent = nullptr);

private:
  void refresh();
  void fill();
  void choose(const PersonId& person, bool in);

  PlanDocument& document_;
  CheckMenu* menu_;
};

} // namespace matwright
