#pragma once

#include "core/movement/Movement.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace matwright {

// The option in which a movement is done, and what it changes.
class OptionChoice : public QWidget {
  Q_OBJECT

public:
  explicit OptionChoice(QWidget* parent = nullptr);

  // An option that the movement does not have is shown by its id.
  void show(const Movement& movement, const OptionId& option);

Q_SIGNALS:
  void chosen(const matwright::OptionId& option); // empty: as written

private:
  QComboBox* choice_;
  QLabel *how_, *removes_, *adds_;
};

} // namespace matwright
