#pragma once

#include "ui/controls/CautionCard.h"
#include "ui/document/PlanDocument.h"

#include <QWidget>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace matwright {

// The cautions of one step, for the people of the class.
class StepCautions : public QWidget {
  Q_OBJECT

public:
  explicit StepCautions(QWidget* parent = nullptr);

  void show(const PlanDocument& document, StepId step);

private:
  QVBoxLayout* column_;
  QLabel* none_;
  std::vector<CautionCard*> cards_;
};

} // namespace matwright
