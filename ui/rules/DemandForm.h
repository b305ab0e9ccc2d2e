#pragma once

#include "core/screening/ScopeForm.h"

#include <QWidget>
#include <vector>

class QCheckBox;
class QLabel;
class QSpinBox;

namespace matwright {

class FeatureList;

// What a rule looks for: features of which one is enough, features that must come together, heights, an effort, and a
// lever. Only what the scope has a use for is shown.
class DemandForm : public QWidget {
  Q_OBJECT

public:
  // `name` tells one from another, for assistive technology ("What it looks for").
  explicit DemandForm(const QString& name, QWidget* parent = nullptr);

  void show(const Demand& demand, const ScopeForm& form); // emits nothing

Q_SIGNALS:
  void edited(const matwright::Demand& demand, const QString& gesture); // by the user

private:
  void change(const Demand& demand, const QString& gesture = {});
  void addSteps(const QString& name);

  Demand demand_;
  FeatureList *any_, *all_;
  QWidget *features_, *steps_;
  std::vector<QCheckBox*> heights_;
  QSpinBox *effort_, *lever_;
};

} // namespace matwright
