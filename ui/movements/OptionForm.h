#pragma once

#include "core/knowledge/Knowledge.h"

#include <QWidget>
#include <functional>
#include <vector>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace matwright {

class FeatureList;
class NoteField;
class OrderedList;
class PoseEditor;
class TempoEditor;

// One option of a movement: what it is called and how it is said, what it takes away and adds, and what else it
// changes.
class OptionForm : public QWidget {
  Q_OBJECT

public:
  explicit OptionForm(QWidget* parent = nullptr);

  // Emits nothing. `option` is one of the movement's.
  void show(const Movement& movement, const Option& option, const Knowledge& knowledge);
  void focusName();
  void setReducedMotion(bool reduced);

Q_SIGNALS:
  // Done by the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::Option& option, const QString& what, const QString& gesture);
  void left();

private:
  void addRow(QGridLayout& grid, const QString& name, QWidget* field);
  // A field that is hidden until its box says that the option changes it.
  void addOverride(QGridLayout& grid, QCheckBox* box, QWidget* field);
  void connectWords();
  void connectOverrides();
  void change(const std::function<void(Option&)>& edit, const QString& what, const QString& gesture = {});
  void refresh();

  Movement movement_;
  Option option_;
  QLineEdit* name_;
  QComboBox* kind_;
  NoteField* how_;
  QLabel* removesNone_;
  FeatureList* removes_;
  OrderedList* adds_;
  QCheckBox *hasEffort_, *hasDose_, *hasTempo_, *hasProps_, *hasPoses_;
  QSpinBox *effort_, *amount_;
  QComboBox* unit_;
  QWidget *dose_, *props_;
  std::vector<QCheckBox*> prop_;
  TempoEditor* tempo_;
  PoseEditor* poses_;
};

} // namespace matwright
