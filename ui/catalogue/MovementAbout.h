#pragma once

#include "core/knowledge/Knowledge.h"

#include <QDialog>

namespace matwright {

// All that the catalogue says about one movement, in a window of its own.
class MovementAbout : public QDialog {
  Q_OBJECT

public:
  MovementAbout(const Knowledge& knowledge, const Movement& movement, QWidget* parent = nullptr);
};

} // namespace matwright
