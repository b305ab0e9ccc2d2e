#pragma once

#include "core/people/Person.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace matwright {

class CheckMenu;
class DateField;

// What a person's clinician allowed or instructed: when, until when, by whom, and for which features.
class ClearanceEditor : public QWidget {
  Q_OBJECT

public:
  // `offered`: the features that rules for the condition ask for; others that are already chosen are offered too.
  explicit ClearanceEditor(FeatureSet offered, QWidget* parent = nullptr);

  void show(const Clearance& clearance, Date day);

Q_SIGNALS:
  void edited(const matwright::Clearance& clearance, const QString& field); // `field`: which was edited
  void removeWanted();

private:
  void fillFeatures();
  void showState(Date day);

  FeatureSet offered_;
  Clearance clearance_;
  DateField *given_, *until_;
  QComboBox* says_; // agreed, or a written instruction and its level
  QLineEdit *by_, *note_;
  QToolButton* features_;
  CheckMenu* menu_;
  QLabel *featureWords_, *state_;
};

} // namespace matwright
