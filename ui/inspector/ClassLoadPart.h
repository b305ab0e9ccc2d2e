#pragma once

#include "ui/document/PlanDocument.h"

#include <QWidget>
#include <array>

class QLabel;

namespace matwright {

class LoadBar;

// What the weight of the body asks of low back, hips and shoulders over the whole class, and where it asks most.
class ClassLoadPart : public QWidget {
  Q_OBJECT

public:
  explicit ClassLoadPart(QWidget* parent = nullptr);

  void show(const Snapshot& snapshot); // hides itself for a class without movements of the catalogue

Q_SIGNALS:
  void aboutWanted();

private:
  struct Joint {
    QLabel* sum;
    LoadBar* bar;
    QLabel* peak;
  };

  QLabel* whom_;
  std::array<Joint, kLoadedJoints> joints_{};
};

} // namespace matwright
