#pragma once

#include "core/body/Feature.h"

#include <QWidget>
#include <map>

class QCheckBox;
class QLabel;
class QLineEdit;

namespace matwright {

// All features as boxes to tick, each with its definition beside it. Some may be locked: they hold already, and say
// why.
class FeatureList : public QWidget {
  Q_OBJECT

public:
  explicit FeatureList(QWidget* parent = nullptr);

  // Emits nothing. `locked`: ticked for a reason that stands beside the definition ("from Face up, legs long").
  void show(FeatureSet ticked, const std::map<Feature, QString>& locked);
  FeatureSet ticked() const { return ticked_; }
  // Brief: only what is ticked is shown, until something is searched for or all are asked for.
  void setBrief(const QString& name); // what the list is of, for assistive technology
  // Only these are offered; all unless said.
  void setOffered(FeatureSet offered);

Q_SIGNALS:
  void edited(matwright::FeatureSet ticked, matwright::Feature feature);

private:
  struct Row {
    QCheckBox* box;
    QLabel* definition;
    QLabel* heading; // of its group
  };

  void filter();

  FeatureSet ticked_, offered_;
  std::map<Feature, QString> locked_;
  QLineEdit* find_;
  bool brief_ = false;
  QCheckBox* onlyTicked_; // where the list is brief: all of them
  QLabel* none_;
  std::map<Feature, Row> rows_;
};

} // namespace matwright
