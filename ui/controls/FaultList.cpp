#include "ui/controls/FaultList.h"

#include <algorithm>

namespace matwright {
namespace {

constexpr int kMostLines = 4; // seen at once

} // namespace

FaultList::FaultList(QWidget* parent) : QListWidget(parent) {
  setAccessibleName(tr("What is to be put right"));
  setWordWrap(true);
  setSelectionMode(QAbstractItemView::SingleSelection);
  connect(this, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { Q_EMIT chosen(row(item)); });
  connect(this, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) { Q_EMIT chosen(row(item)); });
}

void FaultList::show(const std::vector<FaultLine>& faults) {
  clear();
  for (const FaultLine& fault : faults)
    addItem(lineOf(fault));
  setVisible(!faults.empty());
  const int lines = std::min(kMostLines, static_cast<int>(faults.size()));
  setFixedHeight(lines * (fontMetrics().lineSpacing() + 8) + 6);
}

} // namespace matwright
