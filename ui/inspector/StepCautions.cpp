#include "ui/inspector/StepCautions.h"

#include "ui/controls/Labels.h"
#include "ui/text/CautionText.h"

#include <QVBoxLayout>
#include <algorithm>

namespace matwright {
namespace {

std::vector<CautionLines> linesFor(const PlanDocument& document, StepId step) {
  std::vector<CautionLines> all;
  for (const Caution& caution : document.seen().cautions)
    if (caution.step == step)
      all.push_back(linesOf(caution, document.knowledge(), document.plan(), document.seen(), document.roster()));
  return all;
}

} // namespace

StepCautions::StepCautions(QWidget* parent) : QWidget(parent), column_(new QVBoxLayout), none_(softLabel({})) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(headingLabel(tr("For these people")));
  column->addWidget(none_);
  column->addLayout(column_);
  column->addWidget(softLabel(standingNotice()));
}

void StepCautions::show(const PlanDocument& document, StepId step) {
  const std::vector<CautionLines> wanted = linesFor(document, step);
  showText(none_, wanted.empty() ? noCautionText(!document.plan().people.empty()) : QString());
  if (std::equal(wanted.begin(), wanted.end(), cards_.begin(), cards_.end(),
                 [](const CautionLines& lines, const CautionCard* card) { return lines == card->lines(); }))
    return;
  // What was being read stays open.
  QStringList open;
  for (CautionCard* card : cards_) {
    if (card->isOpen())
      open << card->lines().who + card->lines().about;
    card->hide();
    card->deleteLater();
  }
  cards_.clear();
  for (const CautionLines& lines : wanted) {
    auto* card = new CautionCard(lines);
    card->setOpen(open.contains(lines.who + lines.about));
    column_->addWidget(card);
    cards_.push_back(card);
  }
}

} // namespace matwright
