#include "ui/controls/FactGrid.h"

#include "ui/controls/Labels.h"

namespace matwright {

FactGrid::FactGrid(int spacing) {
  setColumnStretch(1, 1);
  setHorizontalSpacing(spacing);
}

void FactGrid::add(const QString& name, const QString& words) {
  if (words.isEmpty())
    return;
  QLabel* label = softLabel(name);
  label->setWordWrap(false);
  QLabel* value = plainLabel(words);
  value->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  const int row = isEmpty() ? 0 : rowCount();
  addWidget(label, row, 0, Qt::AlignTop);
  addWidget(value, row, 1);
}

} // namespace matwright
