#pragma once

#include "ui/document/ClassCommands.h"

#include <QPointer>
#include <QScrollArea>

namespace matwright {

class ClassPage;
class ReplacePage;
class SeveralPage;
class StepPage;

// What is selected, to be read and changed: one step, several at once, or the class itself when nothing is. When it is
// asked for, what else could stand in the place of the step; worked out only while it is seen.
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
  void showReplacements(StepId step);
  void leaveReplacements();

  PlanDocument& document_;
  StepSelection& selection_;
  ClassPage* class_;
  StepPage* step_;
  SeveralPage* several_;
  ReplacePage* replace_;
  std::optional<StepId> replacing_; // the step whose replacements are shown
  QPointer<QWidget> before_;        // had the keyboard's attention before them
};

} // namespace matwright
