#include "ui/inspector/ClassLoadPart.h"

#include "ui/controls/Labels.h"
#include "ui/inspector/LoadBar.h"
#include "ui/inspector/LoadPart.h"
#include "ui/text/LoadText.h"
#include "ui/text/VocabularyText.h"

#include <QHBoxLayout>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright {

ClassLoadPart::ClassLoadPart(QWidget* parent) : QWidget(parent), whom_(softLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 4);
  column->setSpacing(2);
  QToolButton* about = aboutLoadButton();
  connect(about, &QToolButton::clicked, this, &ClassLoadPart::aboutWanted);
  auto* head = new QHBoxLayout;
  head->addWidget(headingLabel(tr("Load over the class")), 1);
  head->addWidget(about);
  column->addLayout(head);
  column->addWidget(whom_);
  column->addSpacing(2);
  const QString unit = tr("The mean moment of each step, times its time of work, added up: 100 N\u00b7m \u00d7 min is "
                          "100 N\u00b7m for one minute, or 10 N\u00b7m for ten.");
  for (Joint& joint : joints_) {
    joint = {plainLabel({}), new LoadBar, softLabel({})};
    joint.sum->setToolTip(unit);
    column->addWidget(joint.sum);
    column->addWidget(joint.bar);
    column->addWidget(joint.peak);
  }
}

void ClassLoadPart::show(const Snapshot& snapshot) {
  const ClassLoad& load = snapshot.evaluation->load;
  const auto& steps = snapshot.evaluation->schedule.steps;
  setVisible(std::any_of(steps.begin(), steps.end(), [](const TimedStep& step) { return step.movement != nullptr; }));
  const double unit = newtonMetres(snapshot.body);
  whom_->setText(tr("For a body of the settings: %1. Its weight alone, and a limit for nobody.")
                     .arg(bodyText(snapshot.knowledge->loads->table(), snapshot.body)));
  const double full = *std::max_element(load.momentSeconds.begin(), load.momentSeconds.end());
  for (std::size_t i = 0; i < kLoadedJoints; ++i) {
    const auto joint = static_cast<LoadedJoint>(i);
    joints_[i].sum->setText(
        tr("%1: %2").arg(withCapital(text(joint)), momentMinutesText(load.momentSeconds[i] * unit)));
    joints_[i].bar->show(load.momentSeconds[i], load.momentSeconds[i], 0, full);
    QString peak;
    if (const auto at = heaviestStep(load, joint)) {
      const Step* step = findStep(*snapshot.plan, steps[*at].id);
      peak = tr("Peak %1 at step %2, %3")
                 .arg(momentText(load.peak[i] * unit))
                 .arg(*at + 1)
                 .arg(movementName(*snapshot.knowledge, step->movement));
    }
    showText(joints_[i].peak, peak);
  }
}

} // namespace matwright
