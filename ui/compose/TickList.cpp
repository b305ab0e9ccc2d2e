#include "ui/compose/TickList.h"

#include "ui/controls/Labels.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QSignalBlocker>

namespace matwright {
namespace {

// Words beside a box, which a click on them ticks.
class WordLabel : public QLabel {
public:
  WordLabel(const QString& words, QCheckBox* box) : QLabel(words), box_(box) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
  }

protected:
  void mousePressEvent(QMouseEvent*) override { box_->click(); }

private:
  QCheckBox* box_;
};

} // namespace

TickList::TickList(const QString& name, QWidget* parent) : QWidget(parent) {
  setAccessibleName(name);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
}

void TickList::setWords(const std::vector<TickWord>& words) {
  if (page_ && words == words_)
    return;
  const QStringList before = ticked();
  delete page_;
  page_ = new QWidget;
  words_ = words;
  boxes_.clear();
  auto* grid = new QGridLayout(page_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(1, 1);
  int row = 0;
  for (const TickWord& word : words) {
    auto* box = new QCheckBox;
    box->setAccessibleName(word.name);
    box->setAccessibleDescription(word.about);
    grid->addWidget(box, row, 0, Qt::AlignTop);
    grid->addWidget(new WordLabel(word.name, box), row++, 1);
    if (!word.about.isEmpty())
      grid->addWidget(softLabel(word.about), row++, 1);
    connect(box, &QCheckBox::toggled, this, &TickList::changed);
    boxes_.push_back(box);
  }
  layout()->addWidget(page_);
  setTicked(before);
}

QStringList TickList::ticked() const {
  QStringList keys;
  for (std::size_t i = 0; i < boxes_.size(); ++i)
    if (boxes_[i]->isChecked())
      keys << words_[i].key;
  return keys;
}

void TickList::setTicked(const QStringList& keys) {
  for (std::size_t i = 0; i < boxes_.size(); ++i) {
    const QSignalBlocker quiet(boxes_[i]);
    boxes_[i]->setChecked(keys.contains(words_[i].key));
  }
}

} // namespace matwright
