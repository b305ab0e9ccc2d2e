#include "ui/inspector/InspectorPanel.h"

#include "ui/inspector/ClassPage.h"
#include "ui/inspector/ReplacePage.h"
#include "ui/inspector/SeveralPage.h"
#include "ui/inspector/StepPage.h"

#include <QApplication>
#include <QScrollBar>
#include <QVBoxLayout>

namespace matwright {

InspectorPanel::InspectorPanel(PlanDocument& document, StepSelection& selection, ClassCommands& commands,
                               QWidget* parent)
    : QScrollArea(parent), document_(document), selection_(selection), class_(new ClassPage(document)),
      step_(new StepPage(document, commands)), several_(new SeveralPage(document, selection, commands)),
      replace_(new ReplacePage(document, commands)) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  // Pages are shown and hidden rather than stacked, so that each is scrolled by its own height alone.
  auto* pages = new QWidget;
  auto* column = new QVBoxLayout(pages);
  column->setContentsMargins(0, 0, 0, 0);
  for (QWidget* page : std::initializer_list<QWidget*>{class_, step_, several_, replace_})
    column->addWidget(page);
  setWidget(pages);
  setMinimumWidth(260);

  connect(class_, &ClassPage::aboutLoadWanted, this, &InspectorPanel::aboutLoadWanted);
  connect(class_, &ClassPage::composeWanted, this, &InspectorPanel::composeWanted);
  connect(step_, &StepPage::aboutLoadWanted, this, &InspectorPanel::aboutLoadWanted);
  connect(replace_, &ReplacePage::left, this, &InspectorPanel::leaveReplacements);
  connect(replace_, &ReplacePage::rowReached, this, [this](const QRect& row) {
    const QPoint at = replace_->mapTo(widget(), row.center());
    ensureVisible(at.x(), at.y(), 0, row.height() / 2);
  });
  connect(&commands, &ClassCommands::replacementsWanted, this, &InspectorPanel::showReplacements);
  connect(&document, &PlanDocument::changed, this, &InspectorPanel::refresh);
  connect(&selection, &StepSelection::changed, this, [this] {
    document_.sealGesture();
    replacing_.reset();
    verticalScrollBar()->setValue(0);
    refresh();
  });
  refresh();
}

void InspectorPanel::setReducedMotion(bool reduced) { step_->setReducedMotion(reduced); }

void InspectorPanel::showReplacements(StepId step) {
  if (!replacing_)
    before_ = QApplication::focusWidget();
  replacing_ = step;
  refresh();
  verticalScrollBar()->setValue(0);
  replace_->setFocus();
}

void InspectorPanel::leaveReplacements() {
  const bool inside = replace_->isAncestorOf(QApplication::focusWidget());
  replacing_.reset();
  refresh();
  verticalScrollBar()->setValue(0);
  if (inside && before_)
    before_->setFocus();
}

void InspectorPanel::refresh() {
  const auto current = selection_.current();
  const bool several = selection_.steps().size() > 1;
  const bool one = !several && current && findStep(document_.plan(), *current);
  if (!one || replacing_ != current || !isVisible())
    replacing_.reset();
  if (several)
    several_->refresh();
  else if (replacing_)
    replace_->show(*replacing_);
  else if (one)
    step_->show(*current);
  else
    class_->refresh();
  class_->setVisible(!several && !one);
  step_->setVisible(one && !replacing_);
  several_->setVisible(several);
  replace_->setVisible(replacing_.has_value());
  // Whoever is sent here begins at the first field of what is shown.
  setFocusProxy(several      ? static_cast<QWidget*>(several_)
                : replacing_ ? static_cast<QWidget*>(replace_)
                : one        ? static_cast<QWidget*>(step_)
                             : class_);
}

} // namespace matwright
