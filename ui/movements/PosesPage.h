#pragma once

#include "ui/movements/MovementPage.h"

namespace matwright {

class PoseEditor;

// The two ends of one repetition.
class PosesPage : public MovementPage {
  Q_OBJECT

public:
  explicit PosesPage(QWidget* parent = nullptr);

  void setReducedMotion(bool reduced);

protected:
  void refresh() override;

private:
  PoseEditor* editor_;
};

} // namespace matwright
