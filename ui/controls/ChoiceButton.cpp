#include "ui/controls/ChoiceButton.h"

#include "ui/controls/CheckMenu.h"

namespace matwright {

ChoiceButton::ChoiceButton(const QString& title, const QStringList& words, QWidget* parent)
    : QToolButton(parent), title_(title), words_(words), menu_(new CheckMenu(this)) {
  setPopupMode(QToolButton::InstantPopup);
  setMenu(menu_);
  setCheckable(true);
  keepCompact(this);
  for (int place = 0; place < words.size(); ++place) {
    QAction* action = menu_->addAction(words.at(place));
    action->setCheckable(true);
    connect(action, &QAction::triggered, this, [this, place](bool chosen) {
      if (chosen)
        chosen_.insert(place);
      else
        chosen_.erase(place);
      refresh();
      Q_EMIT changed();
    });
  }
  refresh();
}

void ChoiceButton::setChosen(const std::set<int>& chosen) {
  chosen_ = chosen;
  refresh();
}

void ChoiceButton::refresh() {
  QStringList names;
  for (int place = 0; place < words_.size(); ++place) {
    menu_->actions().at(place)->setChecked(chosen_.contains(place));
    if (chosen_.contains(place))
      names << words_.at(place);
  }
  QString words = title_;
  if (names.size() == 1)
    words = names.front();
  else if (names.size() > 1)
    words = QStringLiteral("%1: %2").arg(title_).arg(names.size());
  setText(words + QStringLiteral(" \u25be"));
  setChecked(!names.isEmpty());
  setToolTip(names.isEmpty() ? tr("%1: any").arg(title_)
                             : QStringLiteral("%1: %2").arg(title_, names.join(QStringLiteral(", "))));
  setAccessibleName(toolTip());
}

void keepCompact(QToolButton* button) { button->setStyleSheet(QStringLiteral("QToolButton { padding: 3px 6px; }")); }

} // namespace matwright
