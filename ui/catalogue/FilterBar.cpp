#include "ui/catalogue/FilterBar.h"

#include "ui/controls/ChoiceButton.h"
#include "ui/controls/FlowLayout.h"
#include "ui/text/VocabularyText.h"

#include <QToolButton>

namespace matwright {

FilterBar::FilterBar(QWidget* parent) : QWidget(parent), watch_(new QToolButton), clear_(new QToolButton) {
  auto* line = new FlowLayout(this, 4);
  position_ = addChoice(tr("Position"), &CatalogueFilter::elevations);
  region_ = addChoice(tr("Region"), &CatalogueFilter::regions);
  repertoire_ = addChoice(tr("Kind"), &CatalogueFilter::repertoires);
  watch_->setText(tr("Watch at most"));
  watch_->setCheckable(true);
  watch_->setToolTip(tr("Only movements that add no caution stronger than \"watch\" for the people of this class"));
  clear_->setText(tr("Clear"));
  clear_->setToolTip(tr("Take all filters away"));
  keepCompact(watch_);
  keepCompact(clear_);
  line->addWidget(watch_);
  line->addWidget(clear_);
  connect(watch_, &QToolButton::clicked, this, [this](bool on) {
    filter_.watchAtMost = on;
    refresh();
    Q_EMIT changed();
  });
  connect(clear_, &QToolButton::clicked, this, &FilterBar::clear);
  refresh();
}

void FilterBar::add(QToolButton* button) {
  keepCompact(button);
  layout()->removeWidget(clear_);
  layout()->addWidget(button);
  layout()->addWidget(clear_);
}

template <class Enum> ChoiceButton* FilterBar::addChoice(const QString& title, EnumSet<Enum> CatalogueFilter::*set) {
  auto* choice = new ChoiceButton(title, wordsOf<Enum>([](Enum value) { return text(value); }));
  layout()->addWidget(choice);
  connect(choice, &ChoiceButton::changed, this, [this, set, choice] {
    filter_.*set = choice->values<Enum>();
    refresh();
    Q_EMIT changed();
  });
  return choice;
}

void FilterBar::setFilter(const CatalogueFilter& filter) {
  const bool same = filter == filter_;
  filter_ = filter;
  filter_.words.clear();
  refresh();
  if (!same)
    Q_EMIT changed();
}

void FilterBar::refresh() {
  position_->setValues(filter_.elevations);
  region_->setValues(filter_.regions);
  repertoire_->setValues(filter_.repertoires);
  watch_->setChecked(filter_.watchAtMost);
  clear_->setVisible(filter_.asksForMoreThanWords());
}

} // namespace matwright
