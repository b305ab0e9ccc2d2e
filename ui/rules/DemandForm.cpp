#include "ui/rules/DemandForm.h"

#include "ui/controls/FaultMarks.h"
#include "ui/controls/FeatureList.h"
#include "ui/controls/Fields.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/Labels.h"
#include "ui/controls/RowText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

namespace matwright {

DemandForm::DemandForm(const QString& name, QWidget* parent)
    : QWidget(parent), any_(new FeatureList), all_(new FeatureList), features_(new QWidget), steps_(new QWidget),
      effort_(new QSpinBox), lever_(new QSpinBox) {
  setAccessibleName(name);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(8);
  column->addWidget(features_);
  column->addWidget(steps_);
  auto* lists = new QVBoxLayout(features_);
  lists->setContentsMargins(0, 0, 0, 0);
  lists->setSpacing(6);
  lists->addWidget(headingLabel(tr("One of these is enough")));
  lists->addWidget(any_);
  lists->addWidget(headingLabel(tr("All of these together")));
  lists->addWidget(all_);
  any_->setBrief(tr("%1: one of these is enough").arg(name));
  all_->setBrief(tr("%1: all of these together").arg(name));
  addSteps(name);
  setFocusProxy(any_);
  connect(any_, &FeatureList::edited, this, [this](FeatureSet ticked) {
    Demand after = demand_;
    after.any = ticked;
    change(after);
  });
  connect(all_, &FeatureList::edited, this, [this](FeatureSet ticked) {
    Demand after = demand_;
    after.all = ticked;
    change(after);
  });
}

void DemandForm::addSteps(const QString& name) {
  auto* grid = fieldGrid(steps_);
  grid->setContentsMargins(0, 0, 0, 0);
  auto* heights = new QWidget;
  auto* flow = new FlowLayout(heights, 14);
  for (std::size_t i = 0; i < kWordCount<Elevation>; ++i) {
    const auto height = static_cast<Elevation>(i);
    auto* box = new QCheckBox(text(height));
    box->setAccessibleName(QStringLiteral("%1: %2").arg(name, text(height)));
    connect(box, &QCheckBox::toggled, this, [this, height](bool on) {
      Demand after = demand_;
      if (on)
        after.at.insert(height);
      else
        after.at.erase(height);
      change(after);
    });
    flow->addWidget(box);
    heights_.push_back(box);
  }
  auto* column = new QVBoxLayout;
  column->setSpacing(2);
  column->addWidget(heights);
  column->addWidget(softLabel(tr("The step begins or ends in one of these. None ticked: wherever it is done.")));
  QLabel* heading = besideLabel(tr("Heights"), heights_.front());
  grid->addWidget(heading, 0, 0, Qt::AlignTop);
  grid->addLayout(column, 0, 1);
  effort_->setRange(0, Effort::kHighest);
  effort_->setSpecialValueText(tr("any"));
  effort_->setAccessibleName(tr("%1: effort from").arg(name));
  effort_->setMinimumWidth(72);
  keepWheelForFocus(effort_);
  grid->addWidget(besideLabel(tr("Effort from"), effort_), 1, 0, Qt::AlignTop);
  grid->addWidget(effort_, 1, 1, Qt::AlignTop | Qt::AlignLeft);
  connect(effort_, &QSpinBox::valueChanged, this, [this](int effort) {
    Demand after = demand_;
    after.effortFrom = effort;
    change(after, QStringLiteral("effort"));
  });
  lever_->setRange(0, Demand::kMostLever);
  lever_->setSingleStep(5);
  lever_->setSpecialValueText(tr("any"));
  lever_->setSuffix(tr(" %"));
  lever_->setAccessibleName(tr("%1: long lever from").arg(name));
  lever_->setToolTip(tr("The low back bears this share, or more, of what two straight legs weigh when they are held "
                        "level. A rigid-body estimate of weight alone."));
  lever_->setMinimumWidth(72);
  keepWheelForFocus(lever_);
  grid->addWidget(besideLabel(tr("Long lever from"), lever_), 2, 0, Qt::AlignTop);
  auto* beside = new QVBoxLayout;
  beside->setSpacing(2);
  beside->addWidget(lever_, 0, Qt::AlignLeft);
  beside->addWidget(softLabel(tr("Of what two straight legs held level weigh about the low back.")));
  grid->addLayout(beside, 2, 1);
  connect(lever_, &QSpinBox::valueChanged, this, [this](int lever) {
    Demand after = demand_;
    after.leverFrom = lever;
    change(after, QStringLiteral("lever"));
  });
}

void DemandForm::change(const Demand& demand, const QString& gesture) {
  if (demand == demand_)
    return;
  demand_ = demand;
  Q_EMIT edited(demand, gesture);
}

void DemandForm::show(const Demand& demand, const ScopeForm& form) {
  demand_ = demand;
  any_->show(demand.any, {});
  all_->show(demand.all, {});
  for (std::size_t i = 0; i < heights_.size(); ++i) {
    const QSignalBlocker quiet(heights_[i]);
    heights_[i]->setChecked(demand.at.contains(static_cast<Elevation>(i)));
  }
  const QSignalBlocker quiet(effort_);
  effort_->setValue(demand.effortFrom);
  const QSignalBlocker still(lever_);
  lever_->setValue(demand.leverFrom);
  features_->setVisible(form.asks);
  steps_->setVisible(form.asks && form.onSteps);
}

} // namespace matwright
