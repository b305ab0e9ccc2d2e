#pragma once

#include "core/people/Condition.h"

#include <QWidget>
#include <set>
#include <string>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;
class QVBoxLayout;

namespace matwright {

// One question that is asked about a condition: what it is called, how it is answered, and the choices where it has
// some, in their order. Ids of choices are made from their names while those are first written, and stay from then on.
class ConditionQuestion : public QWidget {
  Q_OBJECT

public:
  explicit ConditionQuestion(QWidget* parent = nullptr);

  void show(const QualifierSpec& spec, bool first); // emits nothing
  void focusName();

Q_SIGNALS:
  void edited(const matwright::QualifierSpec& spec, const QString& gesture);
  void nameLeft(); // it has been written
  void upWanted();
  void removeWanted();

private:
  struct ChoiceRow {
    QWidget* whole;
    QLineEdit* name;
    QToolButton *up, *remove;
  };

  void change(const QualifierSpec& spec, const QString& gesture = {});
  void addRow();
  void renameChoice(std::size_t at, const QString& name);
  void addChoice();

  QualifierSpec spec_;
  std::set<std::string> fresh_; // ids of choices whose names are still being written for the first time
  QLineEdit* name_;
  QComboBox* kind_;
  QLabel* explained_;
  QToolButton *up_, *remove_;
  QWidget* choices_;
  QVBoxLayout* rows_;
  std::vector<ChoiceRow> row_;
  QPushButton* add_;
};

// An id made from a name, unlike those taken. Never empty.
std::string idFromName(const std::string& name, const char* otherwise, const std::set<std::string>& taken);

} // namespace matwright
