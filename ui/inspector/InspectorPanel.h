#pragma once

#include "ui/document/ClassCommands.h"

#include <QScrollArea>

namespace matwright {

class ClassPage;
class SeveralPage;
class StepPage;

// What is selected, to be read and changed: one step, several at once, or the class itself when nothing is.
class InspectorPanel : public QScrollArea {
  Q_OBJECT

public:
  InspectorPanel(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent = nullptr);

  void setReducedMotion(bool reduced); // the figure stands still

Q_SIGNALS:
  void aboutLoadWanted(); // somebody wants to read what load figures are
  void composeWanted();   // a class from wishes, in place of one without steps

private:
  void refresh();

  PlanDocument& document_;
  StepSelection& selection_;
  ClassPage* class_;
  StepPage* step_;
  SeveralPage* several_;
};

} // namespace matwright
