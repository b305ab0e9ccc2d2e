#pragma once

#include "ui/document/ClassCommands.h"

#include <QWidget>

class QLabel;

namespace matwright {

// Several steps at once: what they take together, and what can be done to all of them.
class SeveralPage : public QWidget {
  Q_OBJECT

public:
  SeveralPage(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent = nullptr);

  void refresh();

private:
  PlanDocument& document_;
  StepSelection& selection_;
  QLabel *count_, *time_, *names_;
};

} // namespace matwright
