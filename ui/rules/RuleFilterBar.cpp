#include "ui/rules/RuleFilterBar.h"

#include "ui/controls/ChoiceButton.h"
#include "ui/controls/FlowLayout.h"
#include "ui/text/RuleText.h"
#include "ui/text/VocabularyText.h"

namespace matwright {
namespace {

enum Only { kContested, kOwn, kOpen, kChanged, kOnFile };

} // namespace

RuleFilterBar::RuleFilterBar(QWidget* parent) : QWidget(parent), clear_(new QToolButton) {
  auto* line = new FlowLayout(this, 4);
  level_ = new ChoiceButton(tr("Level"), wordsOf<Level>([](Level level) { return text(level); }));
  scope_ = new ChoiceButton(tr("Where"), wordsOf<Scope>([](Scope scope) { return shortText(scope); }));
  strength_ = new ChoiceButton(tr("Rests on"), wordsOf<Strength>([](Strength each) { return shortText(each); }));
  only_ = new ChoiceButton(tr("Only"), {tr("Disputed"), tr("My own"), tr("A threshold I may change"),
                                        tr("A threshold I have changed"), tr("Concerns people on file")});
  for (ChoiceButton* choice : {level_, scope_, strength_, only_}) {
    line->addWidget(choice);
    connect(choice, &ChoiceButton::changed, this, [this] {
      refresh();
      Q_EMIT changed();
    });
  }
  clear_->setText(tr("Clear"));
  clear_->setToolTip(tr("Take all filters away"));
  keepCompact(clear_);
  line->addWidget(clear_);
  connect(clear_, &QToolButton::clicked, this, &RuleFilterBar::clear);
  refresh();
}

RuleFilter RuleFilterBar::filter() const {
  RuleFilter filter;
  filter.levels = level_->values<Level>();
  filter.scopes = scope_->values<Scope>();
  filter.strengths = strength_->values<Strength>();
  const auto& only = only_->chosen();
  filter.contested = only.contains(kContested);
  filter.own = only.contains(kOwn);
  filter.open = only.contains(kOpen);
  filter.changed = only.contains(kChanged);
  filter.onFile = only.contains(kOnFile);
  return filter;
}

void RuleFilterBar::clear() {
  const bool asked = filter().asksForMoreThanWords();
  for (ChoiceButton* choice : {level_, scope_, strength_, only_})
    choice->setChosen({});
  refresh();
  if (asked)
    Q_EMIT changed();
}

void RuleFilterBar::refresh() { clear_->setVisible(filter().asksForMoreThanWords()); }

} // namespace matwright
