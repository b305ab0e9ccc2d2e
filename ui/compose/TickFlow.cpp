#include "ui/compose/TickFlow.h"

#include "ui/controls/ChoiceButton.h"
#include "ui/controls/FlowLayout.h"

#include <QSignalBlocker>
#include <QToolButton>
#include <algorithm>

namespace matwright {

TickFlow::TickFlow(const QString& name, std::vector<TickWord> words, QWidget* parent)
    : QWidget(parent), flow_(new FlowLayout(this, 4)) {
  flow_->setContentsMargins(0, 0, 0, 0);
  setAccessibleName(name);
  for (const TickWord& word : words)
    add(word);
}

void TickFlow::add(const TickWord& word) {
  auto* button = new QToolButton;
  button->setText(word.name);
  button->setToolTip(word.about);
  button->setAccessibleName(QStringLiteral("%1: %2").arg(accessibleName(), word.name));
  button->setAccessibleDescription(word.about);
  button->setCheckable(true);
  keepCompact(button);
  connect(button, &QToolButton::toggled, this, [this, key = word.key](bool on) {
    if (on)
      ticked_.insert(key);
    else
      ticked_.erase(key);
    Q_EMIT changed();
  });
  flow_->addWidget(button);
  words_.push_back(word);
  buttons_.push_back(button);
}

void TickFlow::setTicked(const std::set<QString>& ticked, const std::vector<TickWord>& others) {
  for (const TickWord& other : others)
    if (ticked.contains(other.key) &&
        std::none_of(words_.begin(), words_.end(), [&](const TickWord& word) { return word.key == other.key; }))
      add(other);
  ticked_.clear();
  for (std::size_t i = 0; i < words_.size(); ++i) {
    const QSignalBlocker quiet(buttons_[i]);
    buttons_[i]->setChecked(ticked.contains(words_[i].key));
    if (ticked.contains(words_[i].key))
      ticked_.insert(words_[i].key);
  }
}

QString TickFlow::summary() const {
  QStringList names;
  for (const TickWord& word : words_)
    if (ticked_.contains(word.key))
      names << word.name;
  return names.join(QStringLiteral(", "));
}

} // namespace matwright
