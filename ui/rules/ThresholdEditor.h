#pragma once

#include "ui/document/KnowledgeDocument.h"

#include <QWidget>

class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace matwright {

// The amount by which a rule of the program speaks: to be set where it is the program's own, and only told where it is
// published.
class ThresholdEditor : public QWidget {
  Q_OBJECT

public:
  explicit ThresholdEditor(KnowledgeDocument& document, QWidget* parent = nullptr);

  void show(const Rule& rule); // hidden for a rule without a threshold

Q_SIGNALS:
  void refused(const std::vector<matwright::Error>& errors);

private:
  void set(std::optional<double> amount);

  KnowledgeDocument& document_;
  RuleId rule_;
  QWidget* line_;
  QLabel *side_, *unit_, *about_;
  QDoubleSpinBox* amount_;
  QPushButton* usual_;
};

} // namespace matwright
