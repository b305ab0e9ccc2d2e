#pragma once

#include "ui/controls/FaultMarks.h"

#include <QListWidget>

namespace matwright {

// All that is wrong with a thing, one line each, hidden while there is nothing. A line is chosen by a click or by
// Enter.
class FaultList : public QListWidget {
  Q_OBJECT

public:
  explicit FaultList(QWidget* parent = nullptr);

  void show(const std::vector<FaultLine>& faults);

Q_SIGNALS:
  void chosen(int place); // among the faults
};

} // namespace matwright
