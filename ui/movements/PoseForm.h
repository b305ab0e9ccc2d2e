#pragma once

#include "core/figure/Joint.h"

#include <QWidget>
#include <array>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QGridLayout;
class QVBoxLayout;

namespace matwright {

class SupportForm;

// All angles of a pose as numbers, what rests on floor, wall and other things, and where it is seen from.
class PoseForm : public QWidget {
  Q_OBJECT

public:
  explicit PoseForm(QWidget* parent = nullptr);

  void show(const Pose& pose); // emits nothing

Q_SIGNALS:
  // Done by the user; `gesture` is the same for what should be one entry of the undo list.
  void edited(const matwright::Pose& pose, const QString& gesture);
  void left(); // a field lost the focus

private:
  QDoubleSpinBox* addAngle(Joint joint);
  void addTable(QVBoxLayout& column, const QString& heading, const QStringList& columns,
                const std::vector<std::pair<QString, std::vector<Joint>>>& rows);
  void addContacts(QVBoxLayout& column);
  void edit(const QString& gesture);

  Pose pose_;
  std::array<QDoubleSpinBox*, kWordCount<Joint>> angles_{};
  std::array<QCheckBox*, kWordCount<Contact>> on_{};
  std::array<QCheckBox*, kWordCount<WallContact>> wall_{};
  SupportForm* supports_;
  QComboBox* view_;
  QCheckBox* flip_;
};

} // namespace matwright
