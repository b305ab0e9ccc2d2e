#include "ui/inspector/SeveralPage.h"

#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/text/VocabularyText.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace matwright {

SeveralPage::SeveralPage(PlanDocument& document, StepSelection& selection, ClassCommands& commands, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), count_(titleLabel({})), time_(softLabel({})),
      names_(plainLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 10);
  column->setSpacing(8);
  column->addWidget(count_);
  column->addWidget(time_);
  auto* buttons = new FlowLayout(nullptr, 6);
  column->addLayout(buttons);
  const auto add = [&](const QString& words, const QString& hint, const std::function<void()>& act) {
    auto* button = new QPushButton(words);
    button->setToolTip(hint);
    connect(button, &QPushButton::clicked, this, act);
    buttons->addWidget(button);
    if (!focusProxy())
      setFocusProxy(button);
  };
  add(tr("Less"), tr("Make every dose smaller: by one, or by 5 seconds"),
      [&commands] { commands.changeDoseOfSelected(-1); });
  add(tr("More"), tr("Make every dose larger: by one, or by 5 seconds"),
      [&commands] { commands.changeDoseOfSelected(1); });
  add(tr("Duplicate"), tr("Put a copy after the last of them"), [&commands] { commands.duplicateSelected(); });
  add(tr("Remove"), tr("Take them out of the class"), [&commands] { commands.removeSelected(); });
  column->addWidget(names_);
  column->addStretch(1);
}

void SeveralPage::refresh() {
  const auto& steps = selection_.steps();
  count_->setText(tr("%n step(s)", nullptr, static_cast<int>(steps.size())));
  Seconds work, gaps;
  QStringList names;
  for (const StepId id : steps) {
    const Step* step = findStep(document_.plan(), id);
    const TimedStep* timed = document_.evaluation().timed(id);
    if (!step || !timed)
      continue;
    work += timed->work.whole + timed->turning;
    gaps += timed->gap;
    names << tr("%1: %2").arg(
        movementName(document_.knowledge(), step->movement),
        doseText(step->dose, timed->movement ? timed->movement->sides : Sides::together, step->onlySide));
  }
  time_->setText(
      tr("%1 in all: %2 of work, %3 of getting into them").arg(clock(work + gaps), clock(work), clock(gaps)));
  names_->setText(names.join(QLatin1Char('\n')));
}

} // namespace matwright
