#include "ui/catalogue/FilterBar.h"

#include "ui/controls/CheckMenu.h"
#include "ui/controls/FlowLayout.h"
#include "ui/controls/RowText.h"
#include "ui/text/VocabularyText.h"

#include <QToolButton>

namespace matwright {
namespace {

void keepCompact(QToolButton* button) { button->setStyleSheet(QStringLiteral("QToolButton { padding: 3px 6px; }")); }

} // namespace

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

template <class Enum>
FilterBar::Choice FilterBar::addChoice(const QString& title, EnumSet<Enum> CatalogueFilter::*set) {
  Choice choice{new QToolButton, nullptr, title};
  choice.menu = new CheckMenu(choice.button);
  choice.button->setPopupMode(QToolButton::InstantPopup);
  choice.button->setMenu(choice.menu);
  choice.button->setCheckable(true);
  keepCompact(choice.button);
  layout()->addWidget(choice.button);
  for (std::size_t i = 0; i < kWordCount<Enum>; ++i) {
    const auto value = static_cast<Enum>(i);
    QAction* action = choice.menu->addAction(withCapital(text(value)));
    action->setCheckable(true);
    action->setData(static_cast<int>(i));
    connect(action, &QAction::triggered, this, [this, set, value](bool chosen) {
      if (chosen)
        (filter_.*set).insert(value);
      else
        (filter_.*set).erase(value);
      refresh();
      Q_EMIT changed();
    });
  }
  return choice;
}

template <class Enum> void FilterBar::showChoice(const Choice& choice, EnumSet<Enum> chosen) {
  QStringList names;
  chosen.forEach([&](Enum value) { names << withCapital(text(value)); });
  for (QAction* action : choice.menu->actions())
    action->setChecked(chosen.contains(static_cast<Enum>(action->data().toInt())));
  QString words = choice.title;
  if (names.size() == 1)
    words = names.front();
  else if (names.size() > 1)
    words = QStringLiteral("%1: %2").arg(choice.title).arg(names.size());
  choice.button->setText(words + QStringLiteral(" \u25be"));
  choice.button->setChecked(!names.isEmpty());
  choice.button->setToolTip(names.isEmpty()
                                ? tr("%1: any").arg(choice.title)
                                : QStringLiteral("%1: %2").arg(choice.title, names.join(QStringLiteral(", "))));
  choice.button->setAccessibleName(choice.button->toolTip());
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
  showChoice(position_, filter_.elevations);
  showChoice(region_, filter_.regions);
  showChoice(repertoire_, filter_.repertoires);
  watch_->setChecked(filter_.watchAtMost);
  clear_->setVisible(filter_.asksForMoreThanWords());
}

} // namespace matwright
