// Fields with their names beside them, and below each what is wrong with it.
#pragma once

#include <QString>
#include <map>
#include <vector>

class QGridLayout;
class QLabel;
class QWidget;

namespace matwright {

struct FaultLine {
  QString words;
  bool hint = false; // unusual, and may have its reason
  friend bool operator==(const FaultLine&, const FaultLine&) = default;
};

// What is wrong, in a label of its own: with a sign before it, and hidden while there is nothing.
QLabel* faultLabel();
void showFaults(QLabel* label, const std::vector<FaultLine>& faults);
QString lineOf(const FaultLine& fault); // with the sign of a fault or a hint before it

// Where the faults of each field are said, by a number for the field. The widgets live as long as this.
class FaultMarks {
public:
  // A row of a grid: the name, the field, and below it the hint and what is wrong.
  void addField(QGridLayout& grid, int field, const QString& name, QWidget* widget, QLabel* hint = nullptr);
  // A field that stands elsewhere; `note` is where its faults are said.
  void mark(int field, QWidget* widget, QLabel* note, QLabel* name = nullptr);

  bool has(int field) const { return marks_.contains(field); }
  // Below each field what is wrong with it; the field is marked. What is of no field here is left out of account.
  void show(const std::multimap<int, FaultLine>& faults) const;
  void goTo(int field) const; // the focus goes there, and it is scrolled to

private:
  struct Mark {
    QWidget* widget;
    QLabel* note;
    QLabel* name; // may be null
  };

  std::map<int, Mark> marks_;
};

// Two columns, names and fields, and room that is left over beside them.
QGridLayout* fieldGrid(QWidget* page = nullptr);

// What is said above the faults of a thing of one's own: that it cannot be kept yet, that something is not right, or
// `otherwise`, where there are hints at the most.
QString keptText(bool kept, const std::vector<FaultLine>& faults, const QString& otherwise);

} // namespace matwright
