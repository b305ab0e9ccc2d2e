#include "ui/tidy/TidyQuestion.h"

#include "ui/controls/CheckMenu.h"
#include "ui/controls/FlowLayout.h"
#include "ui/text/TidyText.h"
#include "ui/text/VocabularyText.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

namespace matwright {
namespace {

// What an entry of the scope's list means.
constexpr int kWhole = -1, kSteps = -2;

bool contains(const std::vector<StepId>& steps, StepId step) {
  return std::find(steps.begin(), steps.end(), step) != steps.end();
}

} // namespace

TidyQuestion::TidyQuestion(QWidget* parent)
    : QWidget(parent), scope_(new QComboBox), wishes_{}, pins_(new QToolButton(this)), pinMenu_(new CheckMenu(this)) {
  scope_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  auto* tidy = new QWidget;
  auto* row = new QHBoxLayout(tidy);
  row->setContentsMargins(0, 0, 8, 0);
  auto* name = new QLabel(tr("&Tidy"));
  name->setBuddy(scope_);
  scope_->setAccessibleName(tr("What is tidied"));
  row->addWidget(name);
  row->addWidget(scope_);
  auto* flow = new FlowLayout(this, 10);
  flow->setContentsMargins(0, 0, 0, 0);
  flow->addWidget(tidy);
  const TidyReason reasons[] = {TidyReason::counterMovement, TidyReason::otherRegion, TidyReason::wishedArc,
                                TidyReason::fewerRises};
  for (std::size_t i = 0; i < wishes_.size(); ++i) {
    const TidyWishWords words = wordsFor(reasons[i]);
    wishes_[i] = new QCheckBox(words.name);
    wishes_[i]->setToolTip(
        QStringLiteral("<p>%1</p><p>%2</p>")
            .arg(words.about, tr("A wish weighs against the seconds of moving. The amounts are the program's own: "
                                 "common practice, no source.")));
    wishes_[i]->setAccessibleDescription(words.about);
    connect(wishes_[i], &QCheckBox::toggled, this, &TidyQuestion::changed);
    flow->addWidget(wishes_[i]);
  }
  pins_->setPopupMode(QToolButton::InstantPopup);
  pins_->setMenu(pinMenu_);
  pins_->setToolTip(tr("Steps that keep their places. Choose a step in the picture or in the list, and press P"));
  const int line = scope_->sizeHint().height(); // what stands in one line is level
  for (QCheckBox* wish : wishes_)
    wish->setMinimumHeight(line);
  connect(scope_, &QComboBox::activated, this, &TidyQuestion::changed);
  connect(pinMenu_, &QMenu::aboutToShow, this, &TidyQuestion::fillPins);
  // An action may have been chosen, which must not be deleted while it speaks.
  connect(pinMenu_, &QMenu::aboutToHide, this, &TidyQuestion::fillPins, Qt::QueuedConnection);
  fillScope();
  fillPins();
}

void TidyQuestion::setPlan(const Knowledge& knowledge, const ClassPlan& plan) {
  names_.clear();
  sections_.clear();
  for (const Section& section : plan.sections) {
    auto& [name, ids] = sections_.emplace_back(QString::fromStdString(section.name), std::vector<StepId>());
    for (const Step& step : section.steps) {
      ids.push_back(step.id);
      names_.emplace_back(step.id, movementName(knowledge, step.movement));
    }
  }
  const auto isGone = [&](StepId step) { return !findStep(plan, step); };
  std::erase_if(steps_, isGone);
  std::erase_if(pinned_, isGone);
  fillScope();
  fillPins();
}

void TidyQuestion::setSteps(const std::vector<StepId>& steps) {
  steps_.clear();
  int chosen = kWhole;
  if (steps.size() > 1) {
    const auto section = std::find_if(sections_.begin(), sections_.end(), [&](const auto& each) {
      return each.second.size() == steps.size() &&
             std::all_of(steps.begin(), steps.end(), [&](StepId step) { return contains(each.second, step); });
    });
    if (section != sections_.end()) {
      chosen = static_cast<int>(section - sections_.begin());
    } else if (steps.size() < names_.size()) {
      steps_ = steps;
      chosen = kSteps;
    }
  }
  fillScope();
  scope_->setCurrentIndex(std::max(0, scope_->findData(chosen)));
  Q_EMIT changed();
}

void TidyQuestion::fillScope() {
  const int chosen = scope_->count() > 0 ? scope_->currentData().toInt() : kWhole;
  scope_->clear();
  scope_->addItem(tr("The whole class"), kWhole);
  for (std::size_t i = 0; i < sections_.size(); ++i)
    if (sections_[i].second.size() > 0)
      scope_->addItem(sections_[i].first.isEmpty() ? tr("Section %1").arg(i + 1)
                                                   : tr("Section: %1").arg(sections_[i].first),
                      static_cast<int>(i));
  if (steps_.size() > 1)
    scope_->addItem(tr("%1 selected steps").arg(steps_.size()), kSteps);
  scope_->setCurrentIndex(std::max(0, scope_->findData(chosen)));
}

void TidyQuestion::fillPins() {
  pinMenu_->clear();
  for (const auto& [step, name] : names_) {
    if (!isPinned(step))
      continue;
    QAction* action = pinMenu_->addAction(name);
    action->setCheckable(true);
    action->setChecked(true);
    connect(action, &QAction::toggled, this, [this, id = step](bool pinned) {
      // The menu stays as it is while it is open, so that one can change one's mind.
      if (pinned)
        pinned_.push_back(id);
      else
        std::erase(pinned_, id);
      pins_->setText(tr("Pinned: %1").arg(pinned_.size()));
      Q_EMIT changed();
    });
  }
  if (pinned_.size() > 1) {
    pinMenu_->addSeparator();
    connect(pinMenu_->addAction(tr("Release All")), &QAction::triggered, this, [this] {
      pinned_.clear();
      Q_EMIT changed();
    });
  }
  pins_->setText(pinned_.empty() ? tr("Pinned: none") : tr("Pinned: %1").arg(pinned_.size()));
  pins_->setEnabled(!pinned_.empty());
}

TidyRequest TidyQuestion::request() const {
  TidyRequest request;
  const int chosen = scope_->currentData().toInt();
  if (chosen == kSteps)
    request.steps = steps_;
  else if (chosen != kWhole)
    request.section = static_cast<std::size_t>(chosen);
  request.pinned = pinned_;
  request.wishes = {wishes_[0]->isChecked(), wishes_[1]->isChecked(), wishes_[2]->isChecked(), wishes_[3]->isChecked()};
  return request;
}

bool TidyQuestion::isPinned(StepId step) const { return contains(pinned_, step); }

void TidyQuestion::pin(StepId step, bool pinned) {
  if (pinned == isPinned(step))
    return;
  if (pinned)
    pinned_.push_back(step);
  else
    std::erase(pinned_, step);
  fillPins();
  Q_EMIT changed();
}

} // namespace matwright
