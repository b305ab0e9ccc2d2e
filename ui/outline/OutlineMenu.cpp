// What can be done to a row of the outline from its menu.
#include "ui/outline/OutlineModel.h"
#include "ui/outline/OutlineView.h"

#include <QContextMenuEvent>
#include <QMenu>

namespace matwright {

void OutlineView::contextMenuEvent(QContextMenuEvent* event) {
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  const QModelIndex index = byKey ? currentIndex() : indexAt(event->pos());
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  if (const auto step = model_->stepAt(index)) {
    if (!selection_.contains(*step))
      selection_.select(*step);
    fillStepMenu(*menu);
  } else if (const auto section = model_->sectionAt(index)) {
    fillSectionMenu(*menu, *section);
  } else {
    menu->addAction(tr("Add a section"), this, [this] { commands_.addSection(tr("New section")); });
  }
  menu->popup(byKey && index.isValid() ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos());
  event->accept();
}

void OutlineView::fillStepMenu(QMenu& menu) {
  menu.addAction(tr("Change the dose"), this, [this] {
    if (const auto current = selection_.current())
      edit(model_->indexOf(*current, OutlineColumn::dose));
  });
  menu.addAction(tr("Replace this step\u2026"), &commands_, &ClassCommands::wantReplacements)
      ->setEnabled(commands_.canReplace());
  menu.addSeparator();
  menu.addAction(tr("Move earlier"), this, [this] { nudge(-1); });
  menu.addAction(tr("Move later"), this, [this] { nudge(1); });
  menu.addAction(tr("Begin a new section after this"), this, [this] { commands_.splitAtGap(tr("New section")); });
  menu.addAction(tr("Tidy the selected steps\u2026"), this, [this] { Q_EMIT tidyWanted(selection_.steps()); })
      ->setEnabled(selection_.steps().size() > 1);
  menu.addSeparator();
  menu.addAction(tr("Cut"), &commands_, &ClassCommands::cutSelected);
  menu.addAction(tr("Copy"), &commands_, &ClassCommands::copySelected);
  menu.addAction(tr("Paste after"), &commands_, &ClassCommands::paste)->setEnabled(commands_.canPaste());
  menu.addAction(tr("Duplicate"), &commands_, &ClassCommands::duplicateSelected);
  menu.addAction(tr("Remove"), &commands_, &ClassCommands::removeSelected);
}

void OutlineView::fillSectionMenu(QMenu& menu, std::size_t section) {
  const std::size_t count = document_.plan().sections.size();
  menu.addAction(tr("Rename"), this, [this, section] { edit(model_->indexOfSection(section)); });
  menu.addSeparator();
  menu.addAction(tr("Move the section earlier"), this,
                 [this, section] {
                   document_.perform(MoveSection{section, section - 1}, tr("Move the section"));
                 })
      ->setEnabled(section > 0);
  menu.addAction(tr("Move the section later"), this,
                 [this, section] {
                   document_.perform(MoveSection{section, section + 1}, tr("Move the section"));
                 })
      ->setEnabled(section + 1 < count);
  std::vector<StepId> steps;
  for (const Step& step : document_.plan().sections[section].steps)
    steps.push_back(step.id);
  menu.addAction(tr("Tidy this section\u2026"), this, [this, steps] { Q_EMIT tidyWanted(steps); })
      ->setEnabled(steps.size() > 1);
  menu.addSeparator();
  menu.addAction(tr("Add a section after"), this, [this, section] {
    document_.perform(InsertSection{section + 1, tr("New section").toStdString()}, tr("Add a section"));
  });
  QAction* remove = menu.addAction(tr("Remove the heading"), this, [this, section] {
    document_.perform(RemoveSection{section}, tr("Remove the section"));
  });
  remove->setToolTip(tr("Its steps go to the section beside it"));
  remove->setEnabled(count > 1);
}

} // namespace matwright
