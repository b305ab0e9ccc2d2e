#include "ui/inspector/InspectorPanel.h"

#include "ui/inspector/ClassPage.h"
#include "ui/inspector/SeveralPage.h"
#include "ui/inspector/StepPage.h"

#include <QScrollBar>
#include <QVBoxLayout>

namespace matwright {

InspectorPanel::InspectorPanel(PlanDocument& document, StepSelection& selection, ClassCommands& commands,
                               QWidget* parent)
    : QScrollArea(parent), document_(document), selection_(selection), class_(new ClassPage(document)),
      step_(new StepPage(document, commands)), several_(new SeveralPage(document, selection, commands)) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  // Pages are shown and hidden rather than stacked, so that each is scrolled by its own height alone.
  auto* pages = new QWidget;
  auto* column = new QVBoxLayout(pages);
  column->setContentsMargins(0, 0, 0, 0);
  for (QWidget* page : {static_cast<QWidget*>(class_), static_cast<QWidget*>(step_), static_cast<QWidget*>(several_)})
    column->addWidget(page);
  setWidget(pages);
  setMinimumWidth(260);

  connect(class_, &ClassPage::aboutLoadWanted, this, &InspectorPanel::aboutLoadWanted);
  connect(class_, &ClassPage::composeWanted, this, &InspectorPanel::composeWanted);
  connect(step_, &StepPage::aboutLoadWanted, this, &InspectorPanel::aboutLoadWanted);
  connect(&document, &PlanDocument::changed, this, &InspectorPanel::refresh);
  connect(&selection, &StepSelection::changed, this, [this] {
    document_.sealGesture();
    verticalScrollBar()->setValue(0);
    refresh();
  });
  refresh();
}

void InspectorPanel::setReducedMotion(bool reduced) { step_->setReducedMotion(reduced); }

void InspectorPanel::refresh() {
  const auto current = selection_.current();
  const bool several = selection_.steps().size() > 1;
  const bool one = !several && current && findStep(document_.plan(), *current);
  if (several)
    several_->refresh();
  else if (one)
    step_->show(*current);
  else
    class_->refresh();
  class_->setVisible(!several && !one);
  step_->setVisible(one);
  several_->setVisible(several);
  // Whoever is sent here begins at the first field of what is shown.
  setFocusProxy(several ? static_cast<QWidget*>(several_) : one ? static_cast<QWidget*>(step_) : class_);
}

} // namespace matwright
