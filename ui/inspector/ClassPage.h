#pragma once

#include "ui/document/PlanDocument.h"

#include <QWidget>

class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace matwright {

class ClassList;
class ClassLoadPart;
class DateField;
class NoteField;

// The class itself: name, day, length aimed at, note, and the pace of the group.
class ClassPage : public QWidget {
  Q_OBJECT

public:
  explicit ClassPage(PlanDocument& document, QWidget* parent = nullptr);

  void refresh();

Q_SIGNALS:
  void aboutLoadWanted();
  void composeWanted();

private:
  void connectFields();
  void changePace(const QString& field);
  void seal();

  PlanDocument& document_;
  QLineEdit* name_;
  DateField* date_;
  QSpinBox* target_;
  NoteField* note_;
  QDoubleSpinBox* mobility_;
  QSpinBox* words_;
  QSpinBox* settle_;
  QLabel* choose_;
  QPushButton* compose_; // while there is no step
  ClassList* people_;
  ClassLoadPart* load_;
};

} // namespace matwright
